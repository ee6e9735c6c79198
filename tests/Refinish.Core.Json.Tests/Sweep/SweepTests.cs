using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.Json;
using System.Text.Json.Nodes;
using Refinish.Jobs;
using Xunit;
using Xunit.Abstractions;

namespace Refinish.Json.Tests;

/// <summary>
/// Sets every number, time and choice of a job to its least and its greatest legal value, plans, and reads all that the plan says: nothing may
/// throw, no number may be none, no money negative, and what cannot be done is said of the job's own things.
/// </summary>
public abstract class InputSweep(ITestOutputHelper output)
{
    // Reading a plan's document plans again, which takes as long as all the rest: every third case is read.
    private const int ReadsAgain = 3;

    private protected void Sweep(string name, Func<SweptInput, bool> part)
    {
        JsonNode document = SweepBases.Document(name);
        SweptInput[] inputs = [.. SweepBases.Inputs(name).Where(part)];
        List<string> faults = [];
        int cases = 0;
        foreach (SweptInput input in inputs)
        {
            foreach (JsonNode value in InputLimits.Of(document, input))
            {
                SweepCase one = new(name, [(input, value)]);
                faults.AddRange(one.Faults(readAgain: cases++ % ReadsAgain == 0).Select(fault => one + fault));
            }
        }

        output.WriteLine(cases.ToString(CultureInfo.InvariantCulture) + " cases of " + inputs.Length.ToString(CultureInfo.InvariantCulture) + " inputs");
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }
}

/// <summary>The inputs of a tub in an occupied house, with every figure of its shop.</summary>
public class HouseSweepTests(ITestOutputHelper output) : InputSweep(output)
{
    [Theory]
    [InlineData("$.catalogue")]
    [InlineData("$.shop")]
    [InlineData("$.premises $.fixtures $.terms $.start $.replacement")]
    public void Plans_at_the_ends_of_each_input(string places)
    {
        string[] under = places.Split(' ');
        Sweep("house", input => under.Any(place => input.Path.StartsWith(place, StringComparison.Ordinal)));
    }

    [Fact]
    public void No_input_of_the_house_is_under_another_place() =>
        Assert.All(SweepBases.Inputs("house"), input => Assert.Contains(
            new[] { "$.catalogue", "$.shop", "$.premises", "$.fixtures", "$.terms", "$.start", "$.replacement" },
            place => input.Path.StartsWith(place, StringComparison.Ordinal)));
}

/// <summary>What the other jobs add: each kind of fixture and defect, clocks, climates, own products, own work.</summary>
public class OtherSweepTests(ITestOutputHelper output) : InputSweep(output)
{
    public static TheoryData<string> Others => [.. SweepBases.Names.Where(name => name != "house" && SweepBases.Inputs(name).Any())];

    [Theory]
    [MemberData(nameof(Others))]
    public void Plans_at_the_ends_of_each_input(string name) => Sweep(name, _ => true);
}

public class SweepTests(ITestOutputHelper output)
{
    [Fact]
    public void Every_input_that_a_job_can_have_is_swept()
    {
        SweptInput[] swept = [.. SweepBases.Names.SelectMany(SweepBases.Inputs)];
        output.WriteLine(swept.Length.ToString(CultureInfo.InvariantCulture) + " inputs: "
            + string.Join(", ", swept.CountBy(input => input.Kind).OrderBy(kind => kind.Key).Select(kind => kind.Value.ToString(CultureInfo.InvariantCulture) + " " + kind.Key)));
        Assert.Empty(SweptInput.All.Except(swept.Select(input => input.Name)));
    }

    /// <summary>A job as it stands has no fault; otherwise each of its cases would seem to have it.</summary>
    [Fact]
    public void The_jobs_themselves_are_without_a_fault()
    {
        foreach (string name in SweepBases.Names.Where(name => SweepBases.Inputs(name).Any()))
        {
            Assert.True(JobJson.TryRead(SweepBases.Document(name).ToJsonString(), out Job? job, out IReadOnlyList<JsonFault> faults), name + ": " + string.Join('\n', faults));
            output.WriteLine(name + ": " + job!.Plan());
            Assert.Empty(PlanFaults.Of(job, readAgain: true));
        }
    }

    /// <summary>Pairs at random, always the same ones; <c>REFINISH_SWEEP_PAIRS</c> takes more and <c>REFINISH_SWEEP_SEED</c> others.</summary>
    [Fact]
    public void Plans_at_the_ends_of_two_inputs_at_once()
    {
        Random random = new(Setting("REFINISH_SWEEP_SEED", 21));
        string[] names = [.. SweepBases.Names.Where(name => SweepBases.Inputs(name).Any())];
        List<string> faults = [];
        int planned = 0;
        for (int i = Setting("REFINISH_SWEEP_PAIRS", 40); i > 0; i--)
        {
            string name = random.Next(3) > 0 ? "house" : names[random.Next(names.Length)];
            JsonNode document = SweepBases.Document(name);
            SweptInput[] inputs = [.. SweptInput.Of(document)];
            (SweptInput, JsonNode)[] pair = [.. Enumerable.Range(0, 2).Select(_ => inputs[random.Next(inputs.Length)])
                .Select(input => (input, ends: InputLimits.Of(document, input))).Where(each => each.ends.Count > 0)
                .Select(each => (each.input, each.ends[random.Next(each.ends.Count)]))];
            SweepCase one = new(name, pair);
            planned += one.Job is null ? 0 : 1;
            faults.AddRange(one.Faults(readAgain: false).Select(fault => one + fault));
        }

        output.WriteLine(planned.ToString(CultureInfo.InvariantCulture) + " pairs planned; the others are refused when read");
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    /// <summary>One case again, as a failure prints it; the first of the house unless another is asked for: <c>REFINISH_SWEEP_CASE='house | $.fixtures[0].share={"value":1,"unit":"%"}'</c>.</summary>
    [Fact]
    public void Plans_the_case_that_is_asked_for()
    {
        SweptInput first = SweepBases.Inputs("house").First();
        SweepCase printed = new("house", [(first, InputLimits.Of(SweepBases.Document("house"), first)[0])]);
        SweepCase one = SweepCase.Parse(Environment.GetEnvironmentVariable("REFINISH_SWEEP_CASE") ?? printed.ToString().Split('\'')[1]);
        output.WriteLine(one.Job?.Plan().ToString() ?? "refused when read: " + one.Refusal);
        Assert.Empty(one.Faults(readAgain: true));
    }

    private static int Setting(string name, int otherwise) =>
        Environment.GetEnvironmentVariable(name) is { Length: > 0 } set ? int.Parse(set, CultureInfo.InvariantCulture) : otherwise;
}

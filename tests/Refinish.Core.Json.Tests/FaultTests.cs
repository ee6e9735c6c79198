using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text.Json;
using System.Text.Json.Nodes;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Jobs;
using Xunit;

namespace Refinish.Json.Tests;

public class FaultTests
{
    private static readonly string Good = JobJson.Write(Examples.Bathroom());
    private static readonly string Everything = JobJson.Write(Examples.Everything());
    private static readonly string Plan = PlanJson.Write(Examples.Bathroom().Plan());

    // All of a caution but whom it concerns.
    private const string OwnCaution = "[{\"code\":\"own\",\"hazard\":\"slip\",\"sentence\":\"Wet.\",\"decidedBy\":\"the owner\","
        + "\"source\":{\"kind\":\"invented\",\"document\":\"x\"},\"concerns\":";

    /// <summary>
    /// What is put where in a good document; whether the schema sees it too; the fault that is found, where, and what its sentence names.
    /// </summary>
    public static TheoryData<string, string, bool, string, JsonFaultKind, string> Broken => new()
    {
        { "$.fixtures[0].fixture.rimLength.value", "9346", false, "$.fixtures[0].fixture.rimLength.value", JsonFaultKind.OutOfRange,
            "9346 mm" },
        { "$.fixtures[0].fixture.rimLength.value", "9346", false, "$.fixtures[0].fixture.rimLength.value", JsonFaultKind.OutOfRange,
            "at most 2500 mm" },
        { "$.fixtures[0].fixture.rimLength.value", "\"1346\"", true, "$.fixtures[0].fixture.rimLength.value", JsonFaultKind.WrongType,
            "a number" },
        { "$.fixtures[0].fixture.rimLength.value", "1e999", false, "$.fixtures[0].fixture.rimLength.value", JsonFaultKind.OutOfRange,
            "too large" },
        { "$.shop.prices.options[0].cautions", OwnCaution + "[]}]", false, "$.shop.prices.options[0].cautions[0].concerns",
            JsonFaultKind.OutOfRange, "crew, customer, occupant" },
        { "$.shop.prices.options[0].cautions", OwnCaution + "[\"none\"]}]", true, "$.shop.prices.options[0].cautions[0].concerns[0]",
            JsonFaultKind.UnknownKind, "crew, customer, occupant" },
        { "$.fixtures[0].fixture.rimLength.unit", "\"kg\"", true, "$.fixtures[0].fixture.rimLength.unit", JsonFaultKind.UnknownUnit,
            "length" },
        { "$.fixtures[0].fixture.rimLength.unit", "\"\\\"\"", true, "$.fixtures[0].fixture.rimLength.unit", JsonFaultKind.UnknownUnit,
            "\"in\" meant" },
        { "$.fixtures[0].fixture.rimLength.unit", "\"inches\"", true, "$.fixtures[0].fixture.rimLength.unit", JsonFaultKind.UnknownUnit,
            "\"in\" meant" },
        { "$.fixtures[0].fixture.rimLength.unit", "\"MM\"", true, "$.fixtures[0].fixture.rimLength.unit", JsonFaultKind.UnknownUnit,
            "\"mm\" meant" },
        { "$.fixtures[0].fixture.rimLength.unit", "7", true, "$.fixtures[0].fixture.rimLength.unit", JsonFaultKind.WrongType, "symbol" },
        { "$.fixtures[0].fixture.rimLength", "1346", true, "$.fixtures[0].fixture.rimLength", JsonFaultKind.WrongType, "value and unit" },
        { "$.fixtures[0].fixture.rimLength", "null", true, "$.fixtures[0].fixture.rimLength", JsonFaultKind.WrongType, "null" },
        { "$.fixtures[0].fixture.rimLength", "{\"value\":1346}", true, "$.fixtures[0].fixture.rimLength.unit", JsonFaultKind.Missing,
            "missing" },
        { "$.fixtures[0].fixture.rimLength", "{\"unit\":\"mm\"}", true, "$.fixtures[0].fixture.rimLength.value", JsonFaultKind.Missing,
            "missing" },
        { "$.fixtures[0].fixture.rimLength", "{\"value\":1346,\"unit\":\"mm\",\"note\":1}", true, "$.fixtures[0].fixture.rimLength.note",
            JsonFaultKind.UnknownField, "value and unit" },
        { "$.fixtures[0].fixture.rimLength", "{\"value\":1346,\"unit\":\"mm\",\"value\":1}", false,
            "$.fixtures[0].fixture.rimLength.value", JsonFaultKind.DuplicateField, "twice" },
        { "$.fixtures[0].fixture.rimLenght", "1", true, "$.fixtures[0].fixture.rimLenght", JsonFaultKind.UnknownField,
            "no field of this name" },
        { "$.fixtures[0].fixture.floorLength.value", "1718", false, "$.fixtures[0].fixture", JsonFaultKind.Contradiction,
            "floorLength is 1718 mm" },
        { "$.fixtures[0].fixture.kind", "\"recesedBathtub\"", true, "$.fixtures[0].fixture.kind", JsonFaultKind.UnknownKind,
            "\"recessedBathtub\" meant" },
        { "$.fixtures[0].fixture.kind", "3", true, "$.fixtures[0].fixture.kind", JsonFaultKind.WrongType, "a text" },
        { "$.fixtures[0].fixture", "{}", true, "$.fixtures[0].fixture.kind", JsonFaultKind.Missing, "recessedBathtub" },
        { "$.fixtures[0].fixture", "[]", true, "$.fixtures[0].fixture", JsonFaultKind.WrongType, "an array" },
        { "$.fixtures[0].survey.material", "\"enameledCastIron\"", false, "$.fixtures[0].survey.material", JsonFaultKind.UnknownKind,
            "\"enamelledCastIron\" meant" },
        { "$.fixtures[0].survey.defects[0].diameter.value", "0", false, "$.fixtures[0].survey.defects[0].diameter.value",
            JsonFaultKind.OutOfRange, "more than 0" },
        { "$.fixtures[0].survey.failedCleaningCycles", "1.5", true, "$.fixtures[0].survey.failedCleaningCycles", JsonFaultKind.WrongType,
            "whole number" },
        { "$.fixtures[0].survey.substrateWet", "\"no\"", true, "$.fixtures[0].survey.substrateWet", JsonFaultKind.WrongType,
            "true or false" },
        { "$.fixtures[1].id", "\"tub\"", false, "$.fixtures", JsonFaultKind.OutOfRange, "'tub' twice" },
        { "$.fixtures", "[]", false, "$.fixtures", JsonFaultKind.OutOfRange, "at least 1" },
        { "$.fixtures", "{}", true, "$.fixtures", JsonFaultKind.WrongType, "an array" },
        { "$.name", "\" \"", true, "$.name", JsonFaultKind.OutOfRange, "empty" },
        { "$.name", "5", true, "$.name", JsonFaultKind.WrongType, "a text" },
        { "$.name", "\"\\ud800\"", false, "$.name", JsonFaultKind.Malformed, "Unicode" },
        { "$.start", "\"2027-03-01T08:00:00\"", false, "$.start", JsonFaultKind.WrongType, "offset" },
        { "$.start", "\"1. March 2027\"", false, "$.start", JsonFaultKind.WrongType, "offset" },
        { "$.start", "\"0027-03-01T08:00:00Z\"", false, "$.start", JsonFaultKind.OutOfRange, "1900" },
        { "$.shop.calendar.shifts[0].hours.until", "\"25:00\"", true, "$.shop.calendar.shifts[0].hours.until", JsonFaultKind.WrongType,
            "24:00" },
        { "$.shop.calendar.shifts[0].hours.until", "\"07:00\"", false, "$.shop.calendar.shifts[0].hours.until", JsonFaultKind.OutOfRange,
            "later than the start of work" },
        { "$.shop.losses.residue.value", "80", false, "$.shop.losses.residue.value", JsonFaultKind.OutOfRange, "at most 50 %" },
        { "$.premises.difficulty", "9", false, "$.premises.difficulty", JsonFaultKind.OutOfRange, "at most 3" },
        { "$.shop.cups.cups[0].capacity.unit", "\"gal\"", true, "$.shop.cups.cups[0].capacity.unit", JsonFaultKind.UnknownUnit,
            "\"imp gal\"" },
        { "$.shop.cups.cups[0].capacity.unit", "\"fl oz\"", true, "$.shop.cups.cups[0].capacity.unit", JsonFaultKind.UnknownUnit,
            "the two differ" },
        { "$.catalogue.systems[0].steps[2].coats", "0", false, "$.catalogue.systems[0].steps[2].coats", JsonFaultKind.OutOfRange,
            "at least 1" },
        { "$.catalogue.products[0].solvents[0].massFraction.value", "20", false, "$.catalogue.products[0].solvents",
            JsonFaultKind.OutOfRange, "100 %" },
        { "$.catalogue.products[0].parts[0].parts", "-1", false, "$.catalogue.products[0].parts[0].parts",
            JsonFaultKind.OutOfRange, "at least 1×10⁻⁶" },
        { "$.catalogue.products[0].cure.touchDry.value", "9999", false, "$.catalogue.products[0]", JsonFaultKind.Contradiction,
            "not after waterService" },
        { "$.catalogue.products[0].cure.touchDry.value", "1e300", false, "$.catalogue.products[0].cure.touchDry.value",
            JsonFaultKind.OutOfRange, "too large" },
        { "$.catalogue.products[0].source.kind", "\"rumour\"", true, "$.catalogue.products[0].source.kind", JsonFaultKind.UnknownKind,
            "invented" },
        { "$.shop.prices.labourRate", "\"26\"", true, "$.shop.prices.labourRate", JsonFaultKind.WrongType, "a number" },
        { "$.shop.prices.labourRate", "-1", false, "$.shop.prices.labourRate", JsonFaultKind.OutOfRange, "at least 0" },
        { "$.shop.prices.labourRate", "1e40", false, "$.shop.prices.labourRate", JsonFaultKind.OutOfRange, "too large" },
        { "$.shop.labour[0].fixed", "{\"minimum\":1,\"mode\":2,\"maximum\":3,\"unit\":\"min\"}", true, "$.shop.labour[0].fixed.unit",
            JsonFaultKind.UnknownUnit, "given in h" },
        { "$.shop.labour[0].fixed", "{\"minimum\":1,\"mode\":3,\"maximum\":2,\"unit\":\"h\"}", false, "$.shop.labour[0].fixed.maximum",
            JsonFaultKind.OutOfRange, "at least mode" },
        { "$.fixtures[0].survey.yearBuilt", "78", false, "$.fixtures[0].survey.yearBuilt", JsonFaultKind.OutOfRange, "1500" },
        { "$.shop.warranty.years", "500", false, "$.shop.warranty.years", JsonFaultKind.OutOfRange, "at most 50" },
        { "$.shop.warranty.years", "5000000000", false, "$.shop.warranty.years", JsonFaultKind.WrongType, "whole number" },
        { "$.shop.system", "\"epoxy-urethan\"", false, "$.shop.system", JsonFaultKind.UnknownId, "\"epoxy-urethane\" meant" },
        { "$.shop.system", "\"generic/epoxy\"", false, "$.shop.system", JsonFaultKind.UnknownId, "one of the library's" },
        { "$.shop.system", "7", true, "$.shop.system", JsonFaultKind.WrongType, "identifier of a coating system" },
        { "$.catalogue.products[1].solvents[0].solvent", "\"1-2-3\"", false, "$.catalogue.products[1].solvents[0].solvent",
            JsonFaultKind.UnknownId, "a solvent" },
        { "$.catalogue.products[1].id", "\"epoxy-primer\"", false, "$.catalogue.products", JsonFaultKind.Contradiction,
            "\"epoxy-primer\" is defined twice" },
        { "$.catalogue.products", "{}", true, "$.catalogue.products", JsonFaultKind.WrongType, "an array" },
        { "$.catalogue.productz", "1", true, "$.catalogue.productz", JsonFaultKind.UnknownField, "no field of this name" },
        { "$.catalogue.systems[0].steps[2].dryFilmPerCoat.value", "900", false, "$.catalogue.systems[0].steps[2].dryFilmPerCoat.value",
            JsonFaultKind.OutOfRange, "900 µm" },
        { "$.catalogue.systems[0].steps[0].kind", "\"paint\"", true, "$.catalogue.systems[0].steps[0].kind", JsonFaultKind.UnknownKind,
            "wipe" },
        { "$.premises.rooms", "[]", false, "$.premises.rooms", JsonFaultKind.OutOfRange, "at least 1" },
        { "$.premises.rooms[0].id", "\"a/b\"", false, "$.premises.rooms[0].id", JsonFaultKind.OutOfRange, "no '/'" },
        { "$.premises.rooms[0].climate.kind", "\"tropical\"", true, "$.premises.rooms[0].climate.kind", JsonFaultKind.UnknownKind,
            "logged" },
        { "$.premises.rooms[0].climate.surface.value", "99", false, "$.premises.rooms[0].climate.surface.value", JsonFaultKind.OutOfRange,
            "at most 60 °C" },
        { "$.premises.rooms[0].climate.air", "null", true, "$.premises.rooms[0].climate.air", JsonFaultKind.WrongType, "null" },
        { "$.fixtures[0].options[0].rate.value", "5000", false, "$.fixtures[0].options[0].rate.value", JsonFaultKind.OutOfRange,
            "at most 1000 g/m²" },
        { "$.shop.crew[1].id", "\"first\"", false, "$.shop.crew", JsonFaultKind.OutOfRange, "'first' twice" },
        { "$.shop.paid", "\"hourly\"", true, "$.shop.paid", JsonFaultKind.UnknownKind, "onSite" },
        { "$.changes", "[{\"kind\":\"strike\",\"id\":\" \"}]", true, "$.changes[0].id", JsonFaultKind.OutOfRange, "empty" },
        { "$.days", "[{\"days\":[]}]", false, "$.days[0].days", JsonFaultKind.OutOfRange, "at least 1" },
        { "$.format", "\"refinish/plan\"", true, "$.format", JsonFaultKind.UnknownVersion, "refinish/job" },
        { "$.version", "1", true, "$.version", JsonFaultKind.UnknownVersion, "reads version 2" },
        { "$.version", "\"2\"", true, "$.version", JsonFaultKind.UnknownVersion, "reads version 2" },
    };

    [Theory]
    [MemberData(nameof(Broken))]
    public void One_thing_wrong_gives_one_fault_at_its_place(string at, string json, bool inSchema, string path, JsonFaultKind kind,
        string names)
    {
        _ = inSchema;
        Assert.False(JobJson.TryRead(Put(Good, at, json), out Job? job, out IReadOnlyList<JsonFault> faults));
        Assert.Null(job);
        JsonFault fault = Assert.Single(faults);
        Assert.Equal(path, fault.Path);
        Assert.Equal(kind, fault.Kind);
        Assert.Contains(names, fault.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void All_that_is_wrong_is_found_in_one_pass_even_within_one_object()
    {
        string json = Good;
        foreach ((string at, string put) in ((string, string)[])
        [
            ("$.fixtures[0].fixture.rimLength.value", "9346"), ("$.fixtures[0].fixture.rimWidth.unit", "\"furlong\""),
                ("$.fixtures[0].fixture.depth.value", "-3"),
            ("$.fixtures[1].fixture.faucetHoles", "99"), ("$.shop.losses.residue.value", "80"), ("$.shop.gun.fluidRate", "160"),
                ("$.shop.warranty.claimProbability.value", "180"),
            ("$.catalogue.products[1].volumeSolids.value", "148"), ("$.shop.labour[3].isOnSite", "1"),
                ("$.premises.rooms[0].climate.surface", "[]"),
        ])
        {
            json = Put(json, at, put);
        }

        Assert.False(JobJson.TryRead(json, out _, out IReadOnlyList<JsonFault> faults));
        string[] expected =
        [
            "$.catalogue.products[1].volumeSolids.value", "$.fixtures[0].fixture.depth.value", "$.fixtures[0].fixture.rimLength.value",
            "$.fixtures[0].fixture.rimWidth.unit", "$.fixtures[1].fixture.faucetHoles", "$.premises.rooms[0].climate.surface",
                "$.shop.gun.fluidRate",
            "$.shop.labour[3].isOnSite", "$.shop.losses.residue.value", "$.shop.warranty.claimProbability.value",
        ];
        Assert.Equal(expected, faults.Select(fault => fault.Path).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_exception_tells_the_first_fault_and_how_many_more_there_are()
    {
        RefinishJsonException refused = Assert.Throws<RefinishJsonException>(() =>
            JobJson.Read("{\"format\":\"refinish/job\",\"version\":2}"));
        Assert.IsAssignableFrom<JsonException>(refused);
        Assert.Equal(5, refused.Faults.Count);
        Assert.Equal("$.id", refused.Path);
        Assert.Equal("$.id: The field is missing. (and 4 more)", refused.Message);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("{\"format\":\"refinish/job\",}")]
    [InlineData("// note\n{}")]
    public void What_is_no_json_is_told_with_its_line(string json)
    {
        RefinishJsonException refused = Assert.Throws<RefinishJsonException>(() => JobJson.Read(json));
        Assert.Equal(JsonFaultKind.Malformed, Assert.Single(refused.Faults).Kind);
        Assert.NotNull(refused.LineNumber);
        Assert.False(JobJson.TryRead(json, out _, out IReadOnlyList<JsonFault> faults));
        Assert.Single(faults);
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("7")]
    public void What_is_no_object_is_told(string json)
    {
        Assert.False(JobJson.TryRead(json, out _, out IReadOnlyList<JsonFault> faults));
        Assert.Equal(("$", JsonFaultKind.WrongType), (Assert.Single(faults).Path, faults[0].Kind));
    }

    [Fact]
    public void Nesting_beyond_the_limit_of_the_platform_is_refused()
    {
        Assert.False(JobJson.TryRead(new string('[', 65) + new string(']', 65), out _, out IReadOnlyList<JsonFault> faults));
        Assert.Equal(JsonFaultKind.Malformed, Assert.Single(faults).Kind);
    }

    [Fact]
    public void A_document_with_thousands_of_faults_ends_after_a_hundred()
    {
        string fields = string.Join(",", Enumerable.Range(0, 5000).Select(i => "\"x" + i + "\":1"));
        Assert.False(JobJson.TryRead("{\"format\":\"refinish/job\",\"version\":2," + fields + "}", out _,
            out IReadOnlyList<JsonFault> faults));
        Assert.Equal(100, faults.Count);
    }

    [Fact]
    public void A_name_that_is_no_plain_word_is_quoted_in_the_path()
    {
        Assert.False(JobJson.TryRead(Good.Replace("\"difficulty\"", "\"it's hard\"", StringComparison.Ordinal), out _,
            out IReadOnlyList<JsonFault> faults));
        Assert.Equal("$.premises['it\\'s hard']", faults[0].Path);
    }

    [Fact]
    public void Missing_arguments_are_refused_by_name()
    {
        Assert.Throws<ArgumentNullException>("json", () => JobJson.Read((string)null!));
        Assert.Throws<ArgumentNullException>("stream", () => JobJson.Read((Stream)null!));
        Assert.Throws<ArgumentNullException>("job", () => JobJson.Write(null!));
        Assert.Throws<ArgumentNullException>("layout", () => JobJson.Write(Examples.Least(), null!));
        Assert.Throws<ArgumentOutOfRangeException>("units",
            () => JobJson.Write(new Utf8JsonWriter(new MemoryStream()), Examples.Least(), (DisplayUnits)7));
        Assert.Throws<ArgumentNullException>("json", () => JobJson.TryRead((string)null!, out _, out _));
        Assert.Throws<ArgumentNullException>("json", () => PlanJson.Read((string)null!));
        Assert.Throws<ArgumentNullException>("plan", () => PlanJson.Write(null!));
        Assert.Throws<ArgumentOutOfRangeException>("Units", () => new JsonLayout { Units = (DisplayUnits)7 });
        Assert.Throws<ArgumentOutOfRangeException>("units", () => RefinishJson.ResolverFor((DisplayUnits)7));
    }

    /// <summary>
    /// Values are exchanged, dropped and replaced all over the document: whatever comes of it, it is read or refused with faults, and never
    /// anything else.
    /// </summary>
    [Property(MaxTest = 400)]
    public void However_a_document_is_spoilt_it_is_read_or_refused(int seed)
    {
        string json = Spoilt(seed % 2 == 0 ? Good : Everything, new Random(seed));
        bool read = JobJson.TryRead(json, out Job? job, out IReadOnlyList<JsonFault> faults);
        Assert.Equal(read, job is not null);
        Assert.Equal(read, faults.Count == 0);
        Assert.All(faults, fault => Assert.StartsWith("$", fault.Path, StringComparison.Ordinal));
    }

    /// <summary>The same for plans, whose job is planned again in reading: what cannot be planned is an objection of the plan.</summary>
    [Property(MaxTest = 60)]
    public void However_a_plan_is_spoilt_it_is_read_or_refused(int seed)
    {
        bool read = PlanJson.TryRead(Spoilt(Plan, new Random(seed)), out StoredPlan? plan, out IReadOnlyList<JsonFault> faults);
        Assert.Equal(read, plan is not null);
        Assert.Equal(read, faults.Count == 0);
    }

    /// <summary>The document of 0.2 is told by its version, not field by field.</summary>
    [Fact]
    public void A_document_of_an_earlier_version_is_refused_by_its_version_alone()
    {
        Assert.False(JobJson.TryRead("{\"format\":\"refinish/job\",\"version\":1,\"name\":\"x\",\"site\":{}}", out _,
            out IReadOnlyList<JsonFault> faults));
        Assert.Equal(("$.version", JsonFaultKind.UnknownVersion), (Assert.Single(faults).Path, faults[0].Kind));
        Assert.Contains("version 1", faults[0].Sentence, StringComparison.Ordinal);
        Assert.Contains("earlier version of the library", faults[0].Sentence, StringComparison.Ordinal);
        Assert.False(JobJson.TryRead("{\"format\":\"refinish/job\",\"version\":3}", out _, out faults));
        Assert.DoesNotContain("earlier version", Assert.Single(faults).Sentence, StringComparison.Ordinal);
    }

    /// <summary>What no constructor refuses is for the plan to object to.</summary>
    [Fact]
    public void A_room_that_the_premises_do_not_have_is_an_objection_of_the_plan_and_no_fault()
    {
        Job job = JobJson.Read(Put(Good, "$.fixtures[0].room", "\"attic\""));
        Assert.Contains(job.Plan().Objections, objection => objection.Kind == ObjectionKind.Input && objection.About == "tub");
    }

    private static string Spoilt(string document, Random random)
    {
        JsonNode root = JsonNode.Parse(document)!;
        for (int i = random.Next(1, 6); i > 0; i--)
        {
            Spoil(root, random);
        }

        string json = root.ToJsonString();
        if (random.Next(4) == 0)
        {
            int cut = random.Next(json.Length);
            json = json[..cut] + (char)random.Next(32, 0xDFFF) + json[(cut + 1)..];
        }

        return json;
    }

    /// <summary>The document with another value at a path of the form that faults have.</summary>
    internal static string Put(string document, string path, string json)
    {
        JsonNode root = JsonNode.Parse(document)!;
        string[] parts = path[2..].Replace("[", ".[", StringComparison.Ordinal).Split('.');
        JsonNode owner = root;
        foreach (string part in parts[..^1])
        {
            owner = part[0] == '[' ? owner[int.Parse(part[1..^1], System.Globalization.CultureInfo.InvariantCulture)]! : owner[part]!;
        }

        // By way of a mark, because numbers beyond a double, half a surrogate pair and a field that stands twice do not pass through a
        // tree.
        owner[parts[^1]] = "@@";
        return root.ToJsonString().Replace("\"@@\"", json, StringComparison.Ordinal);
    }

    private static void Spoil(JsonNode node, Random random)
    {
        JsonNode[] children = node switch { JsonObject o => [.. o.Select(pair => pair.Value!).Where(v => v is not null)],
            JsonArray a => [.. a.Where(v => v is not null)!], _ => [] };
        if (children.Length > 0 && random.Next(5) > 0)
        {
            Spoil(children[random.Next(children.Length)], random);
        }
        else if (node is JsonObject owner && owner.Count > 0)
        {
            string name = owner.ElementAt(random.Next(owner.Count)).Key;
            string[] values = ["null", "true", "-1", "0", "1e300", "\"\"", "\"mm\"", "[]", "{}", "[[1]]", "{\"value\":1,\"unit\":\"mm\"}"];
            switch (random.Next(3))
            {
                case 0: owner.Remove(name); break;
                case 1: owner["x" + name] = owner[name]?.DeepClone(); break;
                default: owner[name] = JsonNode.Parse(values[random.Next(values.Length)]); break;
            }
        }
    }

    [Fact]
    public void Beyond_the_last_fault_that_is_told_nothing_costs_more()
    {
        // One more field costs what the parser keeps of it; a suggestion of how it may be meant costs 7 kB.
        long few = Cost(1000);
        long many = Cost(21_000);
        Assert.InRange((many - few) / 20_000, 0, 200);

        static long Cost(int fields)
        {
            string json = Good.Insert(1, string.Concat(Enumerable.Range(0, fields).Select(i => "\"fixtuer" + i + "\":1,")));
            JobJson.TryRead(json, out _, out _);
            long before = GC.GetAllocatedBytesForCurrentThread();
            JobJson.TryRead(json, out _, out IReadOnlyList<JsonFault> faults);
            Assert.Equal(100, faults.Count);
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }
    }

    [Fact]
    public void A_long_name_is_not_told_whole()
    {
        string name = string.Concat(Enumerable.Repeat("\ud83d\udec1", 500_000)) + "b";
        string json = Good.Replace("\"recessedBathtub\"", "\"" + name + "\"", StringComparison.Ordinal).Insert(1, "\"" + name + "\":1,");
        JobJson.TryRead(json, out _, out IReadOnlyList<JsonFault> faults);
        Assert.Contains(faults, fault => fault.Kind == JsonFaultKind.UnknownField);
        Assert.Contains(faults, fault => fault.Kind == JsonFaultKind.UnknownKind && fault.Sentence.Contains("recessedBathtub", StringComparison.Ordinal));
        System.Text.UTF8Encoding strict = new(false, true);
        foreach (JsonFault fault in faults)
        {
            Assert.InRange(strict.GetByteCount(fault.ToString()), 1, 12_500);
        }
    }
}

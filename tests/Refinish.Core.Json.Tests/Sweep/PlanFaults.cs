using System;
using System.Collections.Generic;
using System.Diagnostics;
using System.Globalization;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;

namespace Refinish.Json.Tests;

/// <summary>Plans a job, reads everything that a plan says, and lists what no legal job may lead to.</summary>
internal sealed class PlanFaults(bool readAgain)
{
    // A plan of these jobs allocates 1 to 3 MB and everything read from it 20; the limits hold for a hundred times the work.
    private const long PlanBytes = 200_000_000;
    private const long AllBytes = 800_000_000;
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(30);
    private static readonly string[] NotANumber = ["NaN", "Infinity"];

    private readonly List<string> found = [];

    /// <param name="job">The job.</param>
    /// <param name="readAgain">Whether the plan's document is read again too, which takes half of the time.</param>
    public static IReadOnlyList<string> Of(Job job, bool readAgain)
    {
        PlanFaults faults = new(readAgain);
        Stopwatch clock = Stopwatch.StartNew();
        long before = GC.GetAllocatedBytesForCurrentThread();
        faults.Try("Plan()", () => faults.Read(job.Plan(), GC.GetAllocatedBytesForCurrentThread() - before));
        long all = GC.GetAllocatedBytesForCurrentThread() - before;
        if (all > AllBytes || clock.Elapsed > Longest)
        {
            faults.found.Add("everything: " + Millions(all) + " MB in " + clock.ElapsedMilliseconds.ToString(CultureInfo.InvariantCulture) + " ms");
        }

        return faults.found;
    }

    private void Read(JobPlan plan, long bytes)
    {
        if (bytes > PlanBytes)
        {
            found.Add("Plan(): " + Millions(bytes) + " MB");
        }

        foreach (PlanObjection objection in plan.Objections)
        {
            string sentence = objection.ToString();
            if (objection.Kind == ObjectionKind.OutOfRange || sentence.Contains("outside what can be computed", StringComparison.Ordinal))
            {
                found.Add("objection " + objection.Id + ": " + sentence);
            }
        }

        Try("Quote", () => Text("Quote", plan.Quote?.ToText(DisplayUnits.Si)));
        Try("Doubts", () => Text("Doubts", string.Join('\n', plan.Doubts)));
        Try("Conditions", () => Text("Conditions", string.Join('\n', plan.Conditions)));
        Try("Cautions", () => Text("Cautions", string.Join('\n', plan.Cautions)));
        Try("Provenance", () => Text("Provenance", plan.Provenance.ToString()));
        Try("Handover", () => Text("Handover", plan.Handover?.ToText(DisplayUnits.Si)));
        Try("Workings", () => Text("Workings", plan.Workings().ToPlainText(DisplayUnits.Si)));
        Try("Money", () => Money(plan));
        Try("PlanJson", () =>
        {
            string json = PlanJson.Write(plan);
            Text("PlanJson", json);
            if (readAgain)
            {
                StoredPlan stored = PlanJson.Read(json);
                found.AddRange(stored.Differences.Select(difference => "PlanJson: read again " + difference));
                if (!stored.Plan.Job.Equals(plan.Job))
                {
                    found.Add("PlanJson: the job that is read is not the one that was written");
                }
            }
        });
    }

    // A loss, what is rounded off in cash, and the line of a discount may be less than nothing.
    private void Money(JobPlan plan)
    {
        if (plan.Price is PriceEstimate price)
        {
            (string, decimal?)[] sums =
            [
                ("cost", price.Cost), ("price at margin", price.PriceAtMargin), ("subtotal", price.Subtotal), ("discount", price.DiscountGiven), ("net", price.Net),
                ("tax", price.Tax), ("total", price.Total), ("payable", price.Payable), .. price.Taxes.Select(tax => (tax.Rate.Code, (decimal?)tax.Amount)),
                .. price.Purchases.Select(bought => (bought.Item, (decimal?)bought.Cost)), .. (plan.Quote?.Payments ?? []).Select(payment => ("payment", (decimal?)payment.Amount)),
                .. price.Lines.Where(line => line.Category != LineCategory.Discount).SelectMany(line => new[] { (line.Id, (decimal?)line.Cost), (line.Id, line.Price), (line.Id, line.Rate) }),
            ];
            found.AddRange(sums.Where(sum => sum.Item2 < 0).Select(sum => "negative " + sum));
        }
    }

    private void Text(string of, string? text)
    {
        foreach (string word in NotANumber)
        {
            if (text?.IndexOf(word, StringComparison.Ordinal) is int at and >= 0)
            {
                found.Add(of + ": … " + text[Math.Max(0, at - 60)..Math.Min(text.Length, at + 30)].ReplaceLineEndings(" "));
            }
        }
    }

    private void Try(string what, Action read)
    {
        try
        {
            read();
        }
#pragma warning disable CA1031 // Whatever is thrown is what is looked for.
        catch (Exception thrown)
#pragma warning restore CA1031
        {
            string? place = thrown.StackTrace?.Split('\n').FirstOrDefault(line => line.Contains("Refinish.", StringComparison.Ordinal) && !line.Contains("Guard.", StringComparison.Ordinal));
            found.Add(what + " throws " + thrown.GetType().Name + ": " + thrown.Message.Split('\n')[0] + place);
        }
    }

    private static string Millions(long bytes) => (bytes / 1_000_000).ToString(CultureInfo.InvariantCulture);
}

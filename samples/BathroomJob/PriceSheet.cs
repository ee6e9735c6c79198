using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Scheduling;

namespace Refinish.Samples.BathroomJob;

/// <summary>The lines that the customer sees, what is behind them, and how that compares with tearing everything out.</summary>
internal static class PriceSheet
{
    public static void Write(Paper paper, JobPlan plan)
    {
        paper.Heading("Price");
        if (plan.Costs is not { Price: { Total: decimal total } price } costs)
        {
            paper.Line("No price; see the job sheet.");
            return;
        }

        Currency currency = price.Book.Currency;
        if (!plan.IsPossible)
        {
            paper.Line("Provisional: " + plan.Objections.Count + " on the job sheet under STOP.");
        }

        List<string[]> rows = [.. price.Lines.Select(line => new[]
        {
            line.Code, line.Description, line.Fixture ?? line.Room ?? string.Empty, line.Quantity.ToString("0.###", CultureInfo.InvariantCulture),
                line.Unit.Symbol(), line.Rate.ToString("0.00##", CultureInfo.InvariantCulture), Money(line.Cost), Money(line.Price),
        })];
        rows.Add([string.Empty, "to pay, " + currency, string.Empty, string.Empty, string.Empty, string.Empty, string.Empty, Money(total)]);
        paper.Table(rows, "lllrlrrr");
        paper.Line();
        paper.Line("Net by fixture, each with its own repairs, options and consumables and a part of all else by area:");
        paper.Table([.. costs.ByFixture!.Parts.Select(part => new[] { part.Id, part.Cost.Name, Money(part.Amount) })], "llr");
        paper.Line();
        paper.Line("For the shop only: cost " + Money(price.Cost!.Value) + ", net " + Money(price.Net!.Value) + ", profit "
            + Money(price.Profit!.Value) + " " + currency
            + " = " + paper.Show(Measure.Percent, price.RealisedMargin!.Value.DecimalFractions) + " margin on price = "
            + paper.Show(Measure.Percent, price.RealisedMarkup!.Value.DecimalFractions) + " markup on cost; warranty reserve "
                + Money(costs.ReserveForAll)
            + " for " + paper.Show(Measure.Percent, costs.Reserve.FailedWithinTerm.DecimalFractions)
                + " expected failures of each fixture in "
            + plan.Job.Shop.Warranty.Years + " years.");
        // Each trial plans the whole job again, so that cups, kits, waiting and trips move too; a short search keeps that to a few seconds.
        Job brief = plan.Job with { Shop = plan.Job.Shop with { Effort = SearchEffort.Quick with { Nodes = 100, Orders = 1 } } };
        JobRange range = JobRange.Of(brief, new JobDoubts(), new SimulationOptions { Trials = 100 });
        if (range is { Total: { } totals, ChanceOfLoss: { } loss })
        {
            paper.Line("How sure, by the invented doubts of the library (" + range.Doubts + "): to pay " + totals + " " + currency
                + "; chance that the cost is above this net price "
                + paper.Show(Measure.Percent, loss.DecimalFractions) + ".");
        }

        if (plan.Comparison is { } comparison)
        {
            paper.Line(comparison.Sentence() + " Days out of use are counted at " + Money(comparison.CostPerDayOutOfUse) + " each.");
        }

        foreach (Caution caution in price.Cautions)
        {
            paper.Line(caution.ToString(), 0, "! ");
        }
    }

    private static string Money(decimal amount) => amount.ToString("F2", CultureInfo.InvariantCulture);
}

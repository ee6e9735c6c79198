using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Scheduling;

namespace Refinish.Samples.BathroomJob;

/// <summary>The customer's quote; then, for the shop alone, each line with cost, price and key, and how sure they are.</summary>
internal static class PriceSheet
{
    public static void Write(Paper paper, JobPlan plan)
    {
        paper.Heading("Quote for the customer");
        if (plan.Costs is not { Price: { IsComplete: true } price } costs)
        {
            paper.Line("No price; see the job sheet.");
            return;
        }

        if (plan.Quote is CustomerQuote quote)
        {
            foreach (string line in quote.ToText(paper.System).TrimEnd().Split('\n'))
            {
                paper.Said(line);
            }
        }
        else
        {
            paper.Line("None while anything stands in the way; see the job sheet under STOP.");
        }

        Currency currency = price.Book.Currency;
        paper.Heading("Cost and price, for the shop only");
        List<string[]> rows = [["", "", "", "rate", "cost", "price", "key"]];
        foreach (IGrouping<LineCategory, EstimateLine> kind in price.Lines.GroupBy(line => line.Category))
        {
            rows.Add([kind.Key.ToString("G"), "", "", "", Money(kind.Sum(line => line.Cost)), Money(kind.Sum(line => line.Price)), ""]);
            rows.AddRange(kind.Select(line => new[]
            {
                "  " + line.Description, line.Quantity.ToString("0.###", CultureInfo.InvariantCulture), line.Unit.Symbol(),
                currency.Rate(line.Rate), Money(line.Cost), Money(line.Price), line.Id,
            }));
        }

        rows.Add(["Together, " + currency, "", "", "", Money(price.Cost!.Value), Money(price.Total!.Value), ""]);
        paper.Table(rows, "lrlrrrl");
        paper.Line();
        paper.Line("Cost " + Money(price.Cost!.Value) + ", net " + Money(price.Net!.Value) + ", profit "
            + Money(price.Profit!.Value) + " " + currency
            + " = " + paper.Show(Measure.Percent, price.RealisedMargin!.Value.DecimalFractions) + " margin on price = "
            + paper.Show(Measure.Percent, price.RealisedMarkup!.Value.DecimalFractions) + " markup on cost; warranty reserve "
                + Money(costs.ReserveForAll)
            + " for " + paper.Show(Measure.Percent, costs.Reserve.FailedWithinTerm.DecimalFractions)
                + " expected failures of each fixture in "
            + plan.Job.Shop.Warranty.Years + " years.");
        // Each trial plans the whole job again, so that cups, kits, waiting and trips move too; a short search keeps that to a few seconds.
        Job brief = plan.Job with { Shop = plan.Job.Shop with { Effort = SearchEffort.Quick with { Nodes = 100, Orders = 1 } } };
        JobRange range = JobRange.Of(brief, new JobUncertainty(), new SimulationOptions { Trials = 100 });
        if (range is { Total: { } totals, ChanceOfLoss: { } loss })
        {
            paper.Line("How sure, by the invented doubts of the library (" + range.Uncertainty + "): to pay " + totals + " " + currency
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

        string Money(decimal amount) => currency.Number(amount);
    }
}

using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;

namespace Refinish.Samples.BathroomJob;

/// <summary>The lines that the customer sees, what is behind them, and how that compares with tearing everything out.</summary>
internal static class PriceSheet
{
    public static void Write(Paper paper, BathroomPlan plan)
    {
        paper.Heading("Price");
        if (plan.Price is not PriceEstimate price || price.Total is null)
        {
            paper.Line("No price; see the job sheet.");
            return;
        }

        string currency = plan.Job.Prices.Currency;
        List<string[]> rows = [.. price.Lines.Select(line => new[]
        {
            line.Code, line.Description, line.Quantity.ToString("0.##", CultureInfo.InvariantCulture), line.Unit, Money(line.Rate), Money(line.Amount),
        })];
        rows.Add([string.Empty, "to pay, " + currency, string.Empty, string.Empty, string.Empty, Money(price.Total.Value)]);
        paper.Table(rows, "llrlrr");
        paper.Line();
        paper.Line("For the shop only: cost " + Money(price.Cost!.Value) + ", net " + Money(price.Net!.Value) + ", profit " + Money(price.Profit!.Value) + " " + currency
            + " = " + paper.Show(Measure.Percent, price.RealisedMargin!.Value.DecimalFractions) + " margin on price = "
            + paper.Show(Measure.Percent, price.RealisedMarkup!.Value.DecimalFractions) + " markup on cost; warranty reserve " + Money(plan.ReserveForAll)
            + " for " + paper.Show(Measure.Percent, plan.Reserve!.FailedWithinTerm.DecimalFractions) + " expected failures of each fixture in " + plan.Job.Warranty.Years + " years.");
        paper.Line("Net price by fixture: " + plan.NetByFixture + ".");
        EstimateRange range = EstimateRange.Of(price, Scenario.Doubts(), new SimulationOptions { Correlation = UnitsNet.Ratio.FromPercent(50) });
        paper.Line("How sure: cost " + range.Cost + " " + currency + "; chance of a loss at this price " + paper.Show(Measure.Percent, range.ChanceOfLoss.DecimalFractions)
            + "; net price that covers the cost nine times in ten " + Money(range.PriceForChanceOfProfit(UnitsNet.Ratio.FromPercent(90))) + ". Hours read as " + range.HourVariance
            + ". What moves it most: " + string.Join("; ", range.Tornado().Take(3)) + ".");
        if (plan.Comparison is not null)
        {
            paper.Line(plan.Comparison.Sentence() + " Days out of use are counted at " + Money(plan.Comparison.CostPerDayOutOfUse) + " each.");
        }
    }

    private static string Money(decimal amount) => amount.ToString("F2", CultureInfo.InvariantCulture);
}

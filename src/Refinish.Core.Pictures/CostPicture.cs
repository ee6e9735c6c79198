using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using OxyPlot;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Pictures.Drawing;
using UnitsNet;

namespace Refinish.Pictures;

/// <summary>
/// How sure a cost is: the trials of an <see cref="EstimateRange"/> or a <see cref="JobRange"/> as a histogram, with what is not exceeded
/// in one, five and nine trials of ten, and the net price.
/// </summary>
/// <remarks>It shows cost and profit: it is a picture for the shop, not for the customer.</remarks>
/// <example><code>
/// PriceBook book = new() { Currency = Currency.Of("USD"), LabourRate = 30m, TravelPerTrip = 25m, DisposalPerJob = 10m, ConsumablesPerFixture = 35m, TargetMargin = new(Ratio.FromPercent(45)) };
/// EstimateRequest job = new() { Labour = new([new LabourTask { Standard = LabourStandards.SetUp, Units = 1 }]), Materials = [],
///     Fixtures = 1 };
/// string svg = new CostPicture(EstimateRange.Of(new PriceEstimate(book, job))).ToSvg();
/// </code></example>
public sealed class CostPicture : Picture
{
    private const string Heading = "What the job may cost";
    private readonly SimulationResult? cost;
    private readonly decimal? net;
    private readonly Ratio? chanceOfLoss;
    private readonly Currency currency;
    private readonly string spread;
    private readonly JobRange? job;

    /// <summary>Pictures a range.</summary>
    /// <param name="range">What came out of the trials.</param>
    /// <exception cref="ArgumentNullException"><paramref name="range"/> is missing.</exception>
    public CostPicture(EstimateRange range)
        : this(range, Heading)
    {
    }

    /// <summary>Pictures a range under a title of the caller's.</summary>
    /// <param name="range">What came out of the trials.</param>
    /// <param name="title">What the picture is of.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException"><paramref name="title"/> is empty.</exception>
    public CostPicture(EstimateRange range, string title)
        : base(title)
    {
        Given.NotNull(range, nameof(range));
        cost = range.Cost;
        net = range.Estimate.Net;
        chanceOfLoss = range.ChanceOfLoss;
        currency = range.Estimate.Book.Currency;
        spread = "Hours: " + range.HourVariance + ".";
    }

    /// <summary>Pictures the range of a whole job, with the net price of its plan as it stands.</summary>
    /// <param name="range">What came out of the trials; when none gave a price, the picture says so.</param>
    /// <exception cref="ArgumentNullException"><paramref name="range"/> is missing.</exception>
    public CostPicture(JobRange range)
        : base(Heading, Given.NotNull(range, nameof(range)).Plan.Job.Name)
    {
        job = range;
        cost = range.Cost;
        net = range.Plan.Price?.Net;
        chanceOfLoss = range.ChanceOfLoss;
        currency = range.Plan.Job.Shop.Prices.Currency;
        spread = "In doubt: " + range.Uncertainty + "."
            + (range.WithoutPrice > 0 ? " Without a price, and not counted: " + Figures.Fixed(range.WithoutPrice, 0)
                + (range.WithoutPrice == 1 ? " trial." : " trials.") : string.Empty);
    }

    private string NetPrice => net is decimal price
        ? "Net price " + currency.Text(price) + "; chance that the cost is above it: "
            + Chance(chanceOfLoss!.Value) + "."
        : "There is no net price to compare with.";

    /// <inheritdoc/>
    public override string Describe(DisplayUnits units) => (cost is null
        ? "No trial gave a price."
        : string.Format(
            CultureInfo.InvariantCulture,
            "Cost of the job in {0} over {1} trials: not above {2} in one trial of ten, {3} in five, {4} in nine; mean {5}. {6}",
            currency,
            cost.Options.Trials,
            Whole(cost.P10),
            Whole(cost.P50),
            Whole(cost.P90),
            Whole(cost.Mean),
            NetPrice)) + " " + spread + string.Concat(InTheWay(units).Select(line => " " + line));

    private IReadOnlyList<string> InTheWay(DisplayUnits units) => Objections.Of(job?.Plan, units, cost is not null);

    private protected override void Draw(Page page)
    {
        page.Warnings(InTheWay(page.Units));

        if (cost is null)
        {
            page.Paragraph("No trial gave a price.");
            page.Note(spread);
            return;
        }

        page.Paragraph(NetPrice + (net is decimal price ? " In eight trials of ten the job leaves " + Whole((double)price - cost.P90)
            + " to " + Whole((double)price - cost.P10) + "." : string.Empty));
        Histogram(page, cost, (double?)net);
    }

    private void Histogram(Page page, SimulationResult cost, double? price)
    {
        double low = cost.Quantile(Ratio.FromPercent(0.1));
        double high = cost.Quantile(Ratio.FromPercent(99.9));
        double width = high - low;
        if (width <= 0)
        {
            page.Paragraph("Nothing about the cost is uncertain: every trial came to " + Whole(cost.Mean) + ".");
            return;
        }

        bool shown = price >= low - (3 * width) && price <= high + (4 * width);
        double net = shown ? price!.Value : double.PositiveInfinity;
        double from = shown ? Math.Min(low, net) : low;
        double to = shown ? Math.Max(high, net) : high;
        double edge = (to - from) * 0.03;
        from -= edge;
        to += edge;
        double bin = Chart.Step(low, high, 32);
        List<(double From, double To, double Height)> bins = [];
        for (double k = Math.Floor(low / bin); k * bin < high; k++)
        {
            // A bar that the net price runs through is drawn in two parts, each with its own trials.
            double left = k * bin;
            double right = (k + 1) * bin;
            foreach ((double a, double b) in net > left && net < right ? (ValueTuple<double, double>[])[(left, net), (net, right)]
                : [(left, right)])
            {
                bins.Add((a, b, (Above(cost, a) - Above(cost, b)) * bin / (b - a)));
            }
        }

        double most = bins.Max(one => one.Height);
        (double At, string Words, string Short)[] marks =
        [
            (cost.P10, "P10 " + Whole(cost.P10), "P10"),
            (cost.P50, "P50 " + Whole(cost.P50), "P50"),
            (cost.P90, "P90 " + Whole(cost.P90), "P90"),
        ];
        double labels = 62;
        Chart chart = new(
            Chart.Scale(from, to, Chart.Round(from, to, page.IsNarrow ? 4 : 8).Select(at => (at, Figures.Significant(at, 6)))),
            Chart.Hidden(0, most * 1.04),
            new OxyThickness(8, labels, 8, 26));
        chart.Add((sheet, at) =>
        {
            foreach ((double left, double right, double height) in bins)
            {
                ScreenPoint a = at(Math.Max(left, from), height);
                ScreenPoint b = at(Math.Min(right, to), 0);
                bool loss = left >= (price ?? double.PositiveInfinity);
                sheet.Rectangle(a.X, a.Y, b.X - a.X, b.Y - a.Y, loss ? Ink.VermillionTint : Ink.BlueTint, OxyColors.Transparent);
                if (loss)
                {
                    sheet.Hatch(a.X, a.Y, b.X - a.X, b.Y - a.Y, Ink.Vermillion, 6);
                }

                sheet.Rectangle(a.X, a.Y, b.X - a.X, b.Y - a.Y, OxyColors.Transparent, loss ? Ink.Vermillion : Ink.Blue, 0.7);
            }

            double top = at(from, most * 1.04).Y;
            double bottom = at(from, 0).Y;

            // Labels one below the other, each beside its own line: near each other they would collide in one row.
            for (int i = 0; i < marks.Length; i++)
            {
                Mark(page, sheet, at(marks[i].At, 0).X, top - labels + 26 + (i * 16), bottom, marks[i].Words, Ink.Line, [4, 3]);
            }

            if (shown)
            {
                string words = "net price " + currency.Number((decimal)net);
                Mark(page, sheet, at(net, 0).X, top - labels + 10, bottom, words, Ink.Green, null);
            }
        });
        chart.Draw(page, page.IsNarrow ? 250 : 290);
        page.Note("Cost in " + currency + ", " + Figures.Fixed(cost.Options.Trials, 0) + " trials; bars of " + Figures.Significant(bin, 3)
            + ". P10, P50, P90: not exceeded in one, five and nine trials of ten. " + spread + " For the shop.");
        if (!shown && price is not null)
        {
            page.Note("The net price lies beyond the picture.");
        }
    }

    private static double Above(SimulationResult cost, double value) => cost.ChanceAbove(value).DecimalFractions;

    private static void Mark(Page page, Sheet sheet, double x, double y, double bottom, string words, OxyColor colour, double[]? dashes)
    {
        sheet.Line(x, y + 2, x, bottom, colour, dashes is null ? 2.4 : 1.4, dashes);
        double width = TextWidths.Of(words, Page.Small, dashes is null);
        bool left = x + 5 + width > page.Right;
        sheet.Rectangle(left ? x - 7 - width : x + 3, y - 7, width + 4, 15, Ink.Paper, OxyColors.Transparent);
        sheet.Text(left ? x - 5 : x + 5, y, words, Ink.Line, Page.Small, left ? HorizontalAlignment.Right : HorizontalAlignment.Left,
            bold: dashes is null);
    }

    private static string Whole(double amount) => amount.ToString("0", CultureInfo.InvariantCulture);

    private string Chance(Ratio chance)
    {
        double share = chance.DecimalFractions;
        return share == 0 ? "none of " + Figures.Fixed(cost!.Options.Trials, 0) + " trials" : share is > 0 and < 1e-3 ? "under 0.1 %"
            : Measure.Percent.Format(share, DisplayUnits.Si, 3);
    }
}

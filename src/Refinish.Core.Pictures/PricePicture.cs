using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using OxyPlot;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Pictures.Drawing;

namespace Refinish.Pictures;

/// <summary>How a price builds up, step by step: what the job costs the shop, what is earned, what the customer pays.</summary>
/// <remarks>
/// Cost lines of one kind are taken together; the margin is the price before discount less the cost, and the steps add up to the total to
/// the cent.
/// It shows cost and profit: it is a picture for the shop, not for the customer. When the price cannot be made it says what is missing.
/// </remarks>
/// <example><code>
/// PriceBook book = new() { Currency = Currency.Of("USD"), LabourRate = 30m, TravelPerTrip = 25m, DisposalPerJob = 10m, ConsumablesPerFixture = 35m, TargetMargin = new(Ratio.FromPercent(45)) };
/// EstimateRequest job = new() { Labour = new([new LabourTask(LabourStandards.SetUp, 1)]), Materials = [], Fixtures = 1 };
/// string svg = new PricePicture(new PriceEstimate(book, job)).ToSvg();
/// </code></example>
public sealed class PricePicture : Picture
{
    private const string Heading = "How the price builds up";
    private readonly PriceEstimate? estimate;
    private readonly JobPlan? plan;

    /// <summary>Pictures an estimate.</summary>
    /// <param name="estimate">The estimate; with gaps, the picture lists them.</param>
    /// <exception cref="ArgumentNullException"><paramref name="estimate"/> is missing.</exception>
    public PricePicture(PriceEstimate estimate)
        : this(estimate, Heading)
    {
    }

    /// <summary>Pictures an estimate under a title of the caller's.</summary>
    /// <param name="estimate">The estimate; with gaps, the picture lists them.</param>
    /// <param name="title">What the picture is of.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException"><paramref name="title"/> is empty.</exception>
    public PricePicture(PriceEstimate estimate, string title)
        : base(title) =>
        this.estimate = Given.NotNull(estimate, nameof(estimate));

    /// <summary>Pictures the price of a plan.</summary>
    /// <param name="plan">The plan; without a price, the picture says what stands in the way.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is missing.</exception>
    public PricePicture(JobPlan plan)
        : base(Heading, Given.NotNull(plan, nameof(plan)).Job.Name)
    {
        this.plan = plan;
        estimate = plan.Price;
    }

    /// <inheritdoc/>
    public override string Describe(DisplayUnits units)
    {
        if (estimate is not { IsComplete: true })
        {
            return "There is no price. " + string.Join(" ", InTheWay(units));
        }

        return "Costs and what is added to them, as bars that begin where the one before ends. "
            + string.Join("; ", Steps(estimate).Select(step => (step.IsSum ? "together " : string.Empty) + step.Name + " "
                + Text(step.Amount))) + ". In " + estimate.Book.Currency + "."
            + string.Concat(InTheWay(units).Select(line => " " + line));
    }

    private protected override void Draw(Page page)
    {
        if (estimate is not { IsComplete: true })
        {
            page.Paragraph("There is no price.");
            foreach (string line in InTheWay(page.Units))
            {
                page.Warning(line);
            }

            return;
        }

        page.Paragraph(string.Format(
            CultureInfo.InvariantCulture,
            "{0} {1} to the customer; cost {2}; {3} {4}{5}",
            Text(estimate.Total!.Value),
            estimate.Book.Currency,
            Text(estimate.Cost!.Value),
            estimate.Profit < 0 ? "a loss of" : "profit",
            Text(Math.Abs(estimate.Profit!.Value)),
            estimate.RealisedMargin is { } margin ? ", " + Measure.Percent.Format(margin.DecimalFractions, page.Units, 3)
                + " of the net price" : string.Empty));
        foreach (string line in InTheWay(page.Units))
        {
            page.Warning(line);
        }

        List<PriceStep> steps = [.. Steps(estimate)];
        decimal most = Math.Max(1, steps.Max(step => Math.Max(step.From, step.To)));
        decimal least = Math.Min(0, steps.Min(step => Math.Min(step.From, step.To)));
        double amounts = page.IsNarrow ? 8 : 82;
        double label = page.IsNarrow ? 8 : 180;
        double row = page.IsNarrow ? 42 : 28;
        Chart chart = new(
            Chart.Scale((double)least, (double)most, Chart.Round((double)least, (double)most, page.IsNarrow ? 3 : 6)
                .Select(at => (at, Figures.Significant(at, 6)))),
            Chart.Hidden(steps.Count, 0),
            new OxyThickness(label, 0, amounts, 26));
        chart.Add((sheet, at) => Bars(sheet, at, steps, least, most, page.IsNarrow));
        chart.Draw(page, (steps.Count * row) + 26);
        page.Note("Amounts in " + estimate.Book.Currency
            + ". For the shop: the prices of the lines carry overhead and profit.");
    }

    private void Bars(Sheet sheet, Func<double, double, ScreenPoint> at, List<PriceStep> steps, decimal least, decimal most,
        bool narrow)
    {
        for (int i = 0; i < steps.Count; i++)
        {
            PriceStep step = steps[i];
            ScreenPoint from = at((double)step.From, i);
            ScreenPoint to = at((double)step.To, i + 1);
            double left = Math.Min(from.X, to.X);
            double width = Math.Abs(to.X - from.X);
            double top = from.Y + (narrow ? 20 : 4);
            double height = to.Y - top - (narrow ? 3 : 4);
            (OxyColor fill, OxyColor line) = step.Kind switch
            {
                PriceStepKind.Sum => (Ink.Body, Ink.Line),
                PriceStepKind.Earned => (Ink.GreenTint, Ink.Green),
                PriceStepKind.Less => (Ink.VermillionTint, Ink.Vermillion),
                PriceStepKind.PassedOn => (Ink.Paper, Ink.Note),
                _ => (Ink.BlueTint, Ink.Blue),
            };
            sheet.Rectangle(left, top, width, height, fill, OxyColors.Transparent);
            if (step.Kind is PriceStepKind.Earned or PriceStepKind.Less)
            {
                sheet.Hatch(left, top, width, height, line, falling: step.Kind == PriceStepKind.Less);
            }

            sheet.Rectangle(left, top, width, height, OxyColors.Transparent, line, step.IsSum ? 2 : 1);
            string amount = (step.Amount < 0 || step.IsSum || i == 0 ? string.Empty : "+") + Text(step.Amount);
            if (narrow)
            {
                ScreenPoint end = at((double)most, 0);
                sheet.Text(at(0, 0).X, from.Y + 11, step.Name, Ink.Line, Page.Normal, bold: step.IsSum);
                sheet.Text(end.X, from.Y + 11, amount, Ink.Line, Page.Normal, HorizontalAlignment.Right, bold: step.IsSum);
                continue;
            }

            if (i + 1 < steps.Count)
            {
                sheet.Line(to.X, top + height, to.X, to.Y + 4, Ink.Note);
            }

            sheet.Text(at((double)least, 0).X - 8, (from.Y + to.Y) / 2, step.Name, Ink.Line, Page.Normal, HorizontalAlignment.Right,
                bold: step.IsSum);
            sheet.Text(left + width + 6, top + (height / 2), amount, Ink.Line, Page.Normal, bold: step.IsSum);
        }
    }

    private static IEnumerable<PriceStep> Steps(PriceEstimate estimate)
    {
        decimal at = 0;
        foreach (IGrouping<LineCategory, EstimateLine> group in estimate.Lines.GroupBy(line => line.Category)
            .OrderBy(group => group.Key))
        {
            decimal amount = group.Sum(line => line.Cost);
            if (amount != 0)
            {
                yield return new PriceStep(Name(group.Key), at, at += amount, amount > 0 ? PriceStepKind.Cost : PriceStepKind.Less);
            }
        }

        yield return new PriceStep("cost", 0, at, PriceStepKind.Sum);
        decimal earned = estimate.Subtotal!.Value - at;
        yield return new PriceStep(earned < 0 ? "below cost" : estimate.MinimumChargeApplied ? "up to minimum charge" : "margin", at,
            at += earned, earned < 0 ? PriceStepKind.Less : PriceStepKind.Earned);
        decimal discount = estimate.Net!.Value - at;
        if (discount != 0)
        {
            yield return new PriceStep("discount", at, at += discount, PriceStepKind.Less);
        }

        yield return new PriceStep("net price", 0, at, PriceStepKind.Sum);
        decimal tax = estimate.Tax!.Value;
        if (tax != 0)
        {
            yield return new PriceStep("tax", at, at += tax, PriceStepKind.PassedOn);
        }

        yield return new PriceStep("total", 0, at, PriceStepKind.Sum);
        decimal coins = estimate.Payable!.Value - at;
        if (coins != 0)
        {
            yield return new PriceStep("rounding", at, at += coins, coins > 0 ? PriceStepKind.PassedOn : PriceStepKind.Less);
            yield return new PriceStep("payable", 0, at, PriceStepKind.Sum);
        }
    }

    private static string Name(LineCategory category) => category switch
    {
        LineCategory.Labour => "labour",
        LineCategory.Material => "materials",
        LineCategory.Waste => "waste disposal",
        LineCategory.Option => "options",
        LineCategory.Warranty => "warranty reserve",
        _ => category.ToString("G").ToLowerInvariant(),
    };

    private IReadOnlyList<string> InTheWay(DisplayUnits units) =>
        estimate is { IsComplete: false } ? [.. estimate.Gaps.Select(gap => gap.ToString() + "."), .. Objections.Of(plan, units,
            hasResult: false)]
        : Objections.Of(plan, units, estimate is not null);

    private string Text(decimal amount) => estimate!.Book.Currency.Number(amount);

    private enum PriceStepKind
    {
        Cost,
        Earned,
        PassedOn,
        Less,
        Sum,
    }

    private sealed record PriceStep(string Name, decimal From, decimal To, PriceStepKind Kind)
    {
        public decimal Amount => To - From;

        public bool IsSum => Kind == PriceStepKind.Sum;
    }
}

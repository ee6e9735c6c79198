using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Pictures.Drawing;

namespace Refinish.Pictures;

/// <summary>How a price builds up, step by step: what the job costs the shop, what is earned, what the customer pays.</summary>
/// <remarks>
/// Cost lines of one kind are taken together; the margin is the price before discount less the cost, and the steps add up to the total to
/// the cent. It shows cost and profit: it is a picture for the shop, not for the customer. When the price cannot be made it says what is
/// missing.
/// </remarks>
/// <example><code>
/// PriceBook book = new() { Currency = Currency.Of("USD"), LabourRate = 30m, TravelPerTrip = 25m, DisposalPerJob = 10m, ConsumablesPerFixture = 35m, TargetMargin = new(Ratio.FromPercent(45)) };
/// EstimateRequest job = new() { Labour = new([new LabourTask { Standard = LabourStandards.SetUp, Units = 1 }]), Materials = [],
///     Fixtures = 1 };
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
            page.Warnings(InTheWay(page.Units));

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
        page.Warnings(InTheWay(page.Units));

        PriceBars.Draw(page, [.. Steps(estimate)], Text);
        page.Note("Amounts in " + estimate.Book.Currency
            + ". For the shop: the prices of the lines carry overhead and profit.");
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
}

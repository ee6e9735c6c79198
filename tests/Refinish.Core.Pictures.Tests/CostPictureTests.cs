using System;
using System.Globalization;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Samples.BathroomJob;
using UnitsNet;
using Xunit;

namespace Refinish.Pictures.Tests;

public class CostPictureTests
{
    private static readonly EstimateRange Range = EstimateRange.Of(Plans.One.Price!, Scenario.Doubts(),
        new SimulationOptions { Trials = 20_000 });

    private static (SvgFile File, Func<double, double> Money) Drawn(EstimateRange range)
    {
        SvgFile file = new(new CostPicture(range).ToSvg(new PictureStyle { Theme = PictureTheme.Light }));
        SvgText[] ticks = [.. file.Texts.Where(text => text.Anchor == "middle" && double.TryParse(text.Words, NumberStyles.Float,
            CultureInfo.InvariantCulture, out _))];
        return (file, SvgFile.Scale(ticks[0].X, Number(ticks[0]), ticks[^1].X, Number(ticks[^1])));
    }

    private static double Number(SvgText text) => double.Parse(text.Words, CultureInfo.InvariantCulture);

    [Fact]
    public void Quantiles_and_the_net_price_stand_where_their_numbers_say()
    {
        (SvgFile file, Func<double, double> money) = Drawn(Range);
        double[] dashed = [.. file.Paths(Paint.Line).Where(points => points.Length == 2 && Math.Abs(points[0].X - points[1].X) < 0.01)
            .Select(points => money(points[0].X))];
        foreach (double quantile in (double[])[Range.Cost.P10, Range.Cost.P50, Range.Cost.P90])
        {
            Assert.Contains(dashed, at => Math.Abs(at - quantile) < 2.5);
        }

        double net = money(file.Paths(Paint.Green).Single()[0].X);
        Assert.Equal((double)Plans.One.Price!.Net!.Value, net, 2.5);
        Assert.Contains("P50 " + Range.Cost.P50.ToString("0", CultureInfo.InvariantCulture), file.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void Bars_hold_the_shares_that_lie_between_the_quantiles()
    {
        (SvgFile file, Func<double, double> money) = Drawn(Range);
        (double X, double Y, double Width, double Height)[] bars = [.. file.Rectangles(Paint.BlueTint)];
        Assert.True(bars.Length > 12);
        double all = bars.Sum(bar => bar.Height);
        double below = bars.Sum(bar => bar.Height * Math.Max(0,
            Math.Min(1, (Range.Cost.P90 - money(bar.X)) / (money(bar.X + bar.Width) - money(bar.X)))));
        Assert.Equal(0.9, below / all, 0.01);
        double lower = bars.Sum(bar => bar.Height * Math.Max(0,
            Math.Min(1, (Range.Cost.P10 - money(bar.X)) / (money(bar.X + bar.Width) - money(bar.X)))));
        Assert.Equal(0.1, lower / all, 0.01);
    }

    [Fact]
    public void What_lies_above_the_net_price_is_hatched_as_a_loss()
    {
        // The discount brings the net price down to the middle of the cost.
        EstimateRequest request = Plans.One.Price!.Request with { Discount = Discount.Of(Ratio.FromPercent(38)) };
        EstimateRange range = EstimateRange.Of(new PriceEstimate(Plans.One.Price.Book, request), Scenario.Doubts(),
            new SimulationOptions { Trials = 20_000 });
        Assert.InRange(range.ChanceOfLoss.DecimalFractions, 0.2, 0.8);
        (SvgFile file, _) = Drawn(range);
        double lost = file.Rectangles(Paint.VermillionTint).Sum(bar => bar.Height * bar.Width);
        double kept = file.Rectangles(Paint.BlueTint).Sum(bar => bar.Height * bar.Width);
        Assert.Equal(range.ChanceOfLoss.DecimalFractions, lost / (lost + kept), 0.002);
        Assert.Contains("chance that the cost is above it: " + Measure.Percent.Format(range.ChanceOfLoss.DecimalFractions, DisplayUnits.Si,
            3), file.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void A_price_that_no_trial_reached_is_told_in_trials_rather_than_as_certain()
    {
        (SvgFile file, _) = Drawn(Range);
        Assert.Contains("none of 20000 trials", file.AllWords, StringComparison.Ordinal);
        Assert.DoesNotContain("it: 0 %", file.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cost_without_doubt_is_told_and_not_drawn()
    {
        LabourStandard exact = LabourStandards.SetUp with { Fixed = ThreePoint.Exactly(1), PerUnit = ThreePoint.Exactly(0),
            PerSquareMeter = ThreePoint.Exactly(0) };
        PriceBook book = new() { Currency = Currency.Of("USD"), LabourRate = 30m, TravelPerTrip = 25m, DisposalPerJob = 10m,
            ConsumablesPerFixture = 35m, TargetMargin = new(Ratio.FromPercent(45)) };
        EstimateRange range = EstimateRange.Of(new PriceEstimate(book, new() { Labour = new([new LabourTask { Standard = exact, Units = 1 }]), Materials = [],
            Fixtures = 1 }), EstimateUncertainty.HoursOnly, new SimulationOptions { Trials = 100 });
        SvgFile file = new(new CostPicture(range).ToSvg());
        Assert.Contains("Nothing about the cost is uncertain: every trial came to 100.", file.AllWords, StringComparison.Ordinal);
    }

    [Fact]
    public void A_range_of_the_whole_job_is_told_with_its_doubts_and_its_chance_of_loss()
    {
        JobRange range = JobRange.Of(Plans.One.Job, new JobUncertainty(), new SimulationOptions { Trials = 200 });
        SvgFile file = new(new CostPicture(range).ToSvg(new PictureStyle { Theme = PictureTheme.Light }));
        Assert.Contains("P50 " + range.Cost!.P50.ToString("0", CultureInfo.InvariantCulture), file.AllWords, StringComparison.Ordinal);
        Assert.Contains("Net price " + Plans.One.Price!.Net!.Value.ToString("0.00", CultureInfo.InvariantCulture), file.AllWords,
            StringComparison.Ordinal);
        Assert.Contains(range.Uncertainty.ToString(), file.AllWords, StringComparison.Ordinal);
        Assert.Contains(Plans.One.Job.Name, file.Title, StringComparison.Ordinal);
    }
}

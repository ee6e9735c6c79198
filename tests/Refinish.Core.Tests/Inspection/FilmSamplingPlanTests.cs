using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Inspection;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Inspection;

public class FilmSamplingPlanTests
{
    private static readonly FilmSpecification Range = new(Length.FromMils(4), Length.FromMils(6.5), Source.Supplied("job specification"));

    [Theory]
    [InlineData(0.5, 5)]
    [InlineData(10, 5)]
    [InlineData(10.01, 10)]
    [InlineData(20, 10)]
    [InlineData(25, 15)]
    [InlineData(30, 15)]
    [InlineData(60, 15)]
    [InlineData(100, 15)]
    [InlineData(101, 20)]
    [InlineData(200, 20)]
    [InlineData(250, 25)]
    [Evidence(Basis.Cited, "SSPC-PA 2, number of areas, second-hand from training material: each 10 m² below 30 m², three areas to 100 m², one more for each further 100 m²; five spots an area")]
    public void Spots_by_area(double area, int spots) =>
        Assert.Equal(spots, FilmAcceptanceRules.SpotsWithinAFifth.Plan!.CountFor(Area.FromSquareMeters(area)));

    [Fact]
    [Evidence(Basis.Cited, "PaintSquare, Getting it right: how to use SSPC-PA 2, 25 November 2014: 12 500 ft² take 15 areas, 75 spots and 225 readings")]
    public void The_training_examples_floor_takes_75_spots()
    {
        Assert.Equal(75, FilmAcceptanceRules.SpotsInSquareFeet.CountFor(Area.FromSquareFeet(12500)));
        Assert.Equal(new[] { 5, 10, 15, 15, 20 }, new[] { 100, 200, 300, 1000, 1001 }.Select(feet => FilmAcceptanceRules.SpotsInSquareFeet.CountFor(Area.FromSquareFeet(feet))));
    }

    [Property]
    [Evidence(Basis.Identity, "more area never takes fewer, and twice the area never more than twice as many")]
    public void More_area_never_takes_fewer(PositiveInt size)
    {
        foreach (FilmSamplingPlan plan in new[] { FilmAcceptanceRules.SpotsWithinAFifth.Plan!, FilmAcceptanceRules.NominalWithFifthBelow.Plan!, FilmAcceptanceRules.SpotsInSquareFeet })
        {
            double area = 0.3 + (size.Get % 700);
            int once = plan.CountFor(Area.FromSquareMeters(area));
            int twice = plan.CountFor(Area.FromSquareMeters(2 * area));
            Assert.InRange(twice, once, 2 * once);
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: five good spots stand for 10 m² and not for 12, where ten are asked for; a rule without a plan cannot say")]
    public void A_judgement_says_what_was_asked_and_what_was_measured()
    {
        FilmJudgement judged = new(FilmAcceptanceRules.SpotsWithinAFifth, Range, new[] { 4.8, 5.3, 4.2, 5.0, 6.0 }.Select(mil => Length.FromMils(mil)));
        Assert.Null(judged.Sampling);
        Assert.True(judged.IsAccepted);
        FilmJudgement small = new(judged.Rule, judged.Specification, judged.Statistics.Films, Area.FromSquareMeters(10));
        Assert.True(small.IsAccepted);
        Assert.Equal("accepted by spots within a fifth (80/120): 5 spots of the 5 asked for, mean 129 µm", small.ToString());
        FilmJudgement large = new(judged.Rule, judged.Specification, judged.Statistics.Films, Area.FromSquareMeters(12));
        Assert.False(large.IsAccepted);
        Assert.Equal(ComparisonOutcome.Beyond, large.Sampling!.Outcome);
        Numbers.Near(10, large.Sampling.Limit!.Value.Si, 0);
        Assert.Equal("not accepted by spots within a fifth (80/120): 5 spots of the 10 asked for, mean 129 µm", large.ToString());
        FilmJudgement without = new(FilmAcceptanceRules.NineInTen, Range, judged.Statistics.Films, Area.FromSquareMeters(12));
        Assert.Equal(ComparisonOutcome.CannotBeJudged, without.Sampling!.Outcome);
        Assert.EndsWith("5 readings, no plan says how many, mean 129 µm", without.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings; text; equality by value")]
    public void Refuses_what_cannot_be()
    {
        FilmSamplingPlan plan = FilmAcceptanceRules.SpotsWithinAFifth.Plan!;
        Numbers.Refuses("area", () => plan.CountFor(Area.Zero));
        Numbers.Refuses("steps", () => Plan((10, 5), (5, 10)));
        Numbers.Refuses("steps", () => Plan((10, 5), (20, 4)));
        Numbers.Refuses("steps", () => Plan((0, 5)));
        Assert.Throws<ArgumentException>(() => Plan());
        Numbers.Refuses("coatedArea", () => _ = new FilmJudgement(FilmAcceptanceRules.NineInTen, Range, [Length.FromMils(5)], Area.Zero));
        Assert.Equal("5 up to 10 m², 10 up to 20 m², 15 up to 100 m², then 5 for each 100 m²", plan.ToString());
        Assert.Equal(Plan((10, 5), (20, 10)), Plan((10, 5), (20, 10)));
        Assert.Equal(20, plan.Steps[1].Key.SquareMeters);
    }

    private static FilmSamplingPlan Plan(params (double Area, int Count)[] steps) => new(
        steps.Select(step => new KeyValuePair<Area, int>(Area.FromSquareMeters(step.Area), step.Count)), Area.FromSquareMeters(100), 5, Source.Invented("test"));
}

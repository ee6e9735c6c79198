using System.Linq;
using FsCheck.Xunit;
using Refinish.Inspection;
using Refinish.Tests.Support;
using UnitsNet;
using UnitsNet.Units;
using Xunit;

namespace Refinish.Tests.Inspection;

public class FilmAcceptanceTests
{
    private static readonly FilmSpecification Range = new(Length.FromMils(4), Length.FromMils(6.5), Source.Supplied("job specification"));

    [Fact]
    [Evidence(Basis.Independent, "by hand: spots 4.8 5.3 4.2 5.0 6.0 mil have mean 5.06 and standard deviation √(1.752/4) = 0.6618")]
    public void Five_spots_of_a_tub_are_accepted()
    {
        FilmJudgement result = Judge(4.8, 5.3, 4.2, 5.0, 6.0);
        Numbers.Close(5.06, result.Statistics.Mean.Mils);
        Numbers.Near(0.6618, result.Statistics.StandardDeviation!.Value.Mils, 5e-5);
        Assert.True(result.IsAccepted);
        Numbers.CanBeWritten(result.Workings());
    }

    [Fact]
    [Evidence(Basis.Cited, "SSPC-PA 2 training material: for 8 to 12 mil no spot below 6.4 or above 14.4 mil")]
    public void Spots_may_stray_by_a_fifth_of_the_limits()
    {
        FilmJudgement result = new(
            FilmAcceptanceRules.SpotsWithinAFifth,
            new FilmSpecification(Length.FromMils(8), Length.FromMils(12), Source.Supplied("job specification")),
            [Length.FromMils(10)]);
        Numbers.Close(6.4, result.Comparisons[2].Limit!.Value.In(LengthUnit.Mil));
        Numbers.Close(14.4, result.Comparisons[3].Limit!.Value.In(LengthUnit.Mil));
        Assert.Null(result.Statistics.StandardDeviation);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 3.0 mil is below 0.8 × 4 = 3.2 mil though the mean of 5.02 is within")]
    public void One_thin_spot_fails()
    {
        FilmJudgement result = Judge(3.0, 5.6, 5.5, 5.0, 6.0);
        Assert.False(result.IsAccepted);
        Assert.Equal(ComparisonOutcome.Within, result.Comparisons[0].Outcome);
        Assert.Equal(ComparisonOutcome.Beyond, result.Comparisons[2].Outcome);
    }

    [Property]
    [Evidence(Basis.Identity, "the mean lies between the extremes and does not depend on order; workings hold")]
    public void The_mean_lies_between(byte a, byte b, byte c)
    {
        double[] mils = [1 + (a / 20.0), 1 + (b / 20.0), 1 + (c / 20.0)];
        FilmJudgement result = Judge(mils);
        Assert.InRange(result.Statistics.Mean.Mils, mils.Min() - 1e-9, mils.Max() + 1e-9);
        Numbers.Close(result.Statistics.Mean.Mils, Judge([.. mils.Reverse()]).Statistics.Mean.Mils);
        Numbers.CanBeWritten(result.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges upside down, no spots and negative readings are refused")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("maximum", () => _ = new FilmSpecification(Length.FromMils(6), Length.FromMils(4), Source.Supplied("job specification")));
        Numbers.Refuses("films", () => Judge(-1));
        Assert.Throws<System.ArgumentException>(() => Judge());
    }

    private static FilmJudgement Judge(params double[] mils) => new(FilmAcceptanceRules.SpotsWithinAFifth, Range, mils.Select(mil => Length.FromMils(mil)));
}

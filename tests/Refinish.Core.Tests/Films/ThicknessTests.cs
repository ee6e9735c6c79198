using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Films;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Films;

public class ThicknessTests
{
    [Theory]
    [InlineData(8, 35, 0, 2.8, 0.05)]
    [InlineData(8, 35, 10, 2.545454545454545, 1e-12)]
    [Evidence(Basis.Cited, "trade conversion chart: 8 mil wet at 35 % volume solids dry to 2.8 mil; with 10 % thinner by its formula WFT × VS / (1 + R) (its printed figure is garbled)")]
    public void Wet_films_dry_down(double wetMils, double solids, double reducer, double dryMils, double tolerance)
    {
        DryFilm film = new(Length.FromMils(wetMils), Ratio.FromPercent(solids), Ratio.FromPercent(reducer));
        Numbers.Near(dryMils, film.Thickness.Mils, tolerance);
        Numbers.CanBeWritten(film.Workings());
    }

    [Property]
    [Evidence(Basis.Identity, "wet from dry and dry from wet undo each other")]
    public void Dry_and_wet_undo_each_other(byte a, byte b, byte c)
    {
        Length dry = Length.FromMicrometers(1 + a);
        Ratio solids = Ratio.FromPercent(10 + (b % 91));
        Ratio reducer = Ratio.FromPercent(c % 101);
        Length wet = new WetFilm(dry, solids, reducer).Thickness;
        Numbers.Close(dry.Meters, new DryFilm(wet, solids, reducer).Thickness.Meters);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 60 µm at 40 % is 150 µm wet; 150/68 = 2.2 and 150/40 = 3.75 leave 3 passes of 50 µm; exactly 3 × 50 µm at a limit of 50 µm stays 3")]
    public void Passes_between_the_wet_limits()
    {
        PassPlan plan = new(Length.FromMicrometers(60), Ratio.FromPercent(40), Length.FromMicrometers(40), Length.FromMicrometers(68));
        Assert.Equal(3, plan.Passes);
        Assert.Equal(3, plan.MostPasses);
        Numbers.Close(50, plan.WetPerPass!.Value.Micrometers);
        Numbers.Close(20, plan.DryPerPass!.Value.Micrometers);
        Assert.Equal("3 passes of 50 µm wet for 60 µm dry", plan.ToString());
        Numbers.CanBeWritten(plan.Workings());
        Assert.Equal(3, new PassPlan(Length.FromMicrometers(60), Ratio.FromPercent(40), Length.FromMicrometers(50), Length.FromMicrometers(50)).Passes);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 75 µm wet is more than one pass of 60 and less than two of 45; one pass gives 24 µm dry, two give 36 µm")]
    public void No_whole_number_of_passes_says_what_can_be_had()
    {
        PassPlan plan = new(Length.FromMicrometers(30), Ratio.FromPercent(40), Length.FromMicrometers(45), Length.FromMicrometers(60));
        Assert.False(plan.IsPossible);
        Assert.Null(plan.Passes);
        Numbers.Close(24, plan.ReachableBelow!.Value.Micrometers);
        Numbers.Close(36, plan.ReachableAbove!.Value.Micrometers);
        Assert.Equal("75 µm wet is too thick for 1 pass and too thin for 2 passes between 45 µm and 60 µm wet; reachable: 24 µm or 36 µm dry", plan.Objection);
        Numbers.CanBeWritten(plan.Workings());
        PassPlan thin = new(Length.FromMicrometers(10), Ratio.FromPercent(40), Length.FromMicrometers(45), Length.FromMicrometers(60));
        Assert.Null(thin.ReachableBelow);
        Numbers.Close(18, thin.ReachableAbove!.Value.Micrometers);
        Numbers.CanBeWritten(thin.Workings());
    }

    [Property]
    [Evidence(Basis.Identity, "a plan keeps both limits, adds up to the target, and one pass fewer would break the upper limit; workings hold")]
    public void Passes_keep_their_limits(byte a, byte b, byte c)
    {
        double least = 20 + (b % 60);
        double most = least + (c % 60);
        PassPlan plan = new(Length.FromMicrometers(5 + a), Ratio.FromPercent(45), Length.FromMicrometers(least), Length.FromMicrometers(most), Ratio.FromPercent(10));
        Numbers.CanBeWritten(plan.Workings());
        if (plan.Passes is int n)
        {
            double wet = plan.WetPerPass!.Value.Micrometers;
            Assert.InRange(wet, least - 1e-6, most + 1e-6);
            Numbers.Close(plan.WetFilm.Micrometers, n * wet);
            Assert.True(n == 1 || plan.WetFilm.Micrometers / (n - 1) > most - 1e-6);
        }
        else
        {
            Assert.True(plan.ReachableAbove > plan.DryFilm);
            Assert.True(plan.ReachableBelow is null || plan.ReachableBelow < plan.DryFilm);
        }
    }

    [Fact]
    [Evidence(Basis.Cited, "a gauge maker's instruction: the 3 mil tooth is wetted, the 4 mil tooth is not, the film lies between 3 and 4 mil")]
    public void A_notch_gauge_reads_between_its_teeth()
    {
        NotchGauge gauge = Comb();
        NotchReading reading = gauge.Read(Length.FromMils(3));
        Numbers.Close(3, reading.Wet.Lower.Mils);
        Numbers.Close(4, reading.Wet.Upper!.Value.Mils);
        FilmInterval dry = reading.Dry(Ratio.FromPercent(40), Ratio.FromPercent(10));
        Numbers.Close(3 * 0.4 / 1.1, dry.Lower.Mils);
        Numbers.Close(4 * 0.4 / 1.1, dry.Upper!.Value.Mils);
        Numbers.CanBeWritten(reading.Workings(Ratio.FromPercent(40), Ratio.FromPercent(10)));
        Assert.Equal(reading, gauge.Read(3));
        Assert.Equal("3 of 5 teeth wetted: 76.2 µm to 101.6 µm wet", reading.ToString());
        Numbers.Close(12.7, reading.Wet.HalfWidth!.Value.Micrometers);
    }

    [Fact]
    [Evidence(Basis.Contract, "no tooth wetted starts at zero, all wetted has no upper end; a limit between the teeth cannot be judged")]
    public void A_notch_gauge_does_not_know_more_than_its_teeth()
    {
        NotchGauge gauge = Comb();
        Assert.Equal(0, gauge.Read(0).Wet.Lower.Meters);
        Assert.Null(gauge.Read(5).Wet.Upper);
        Assert.Equal("127 µm or more", gauge.Read(5).Wet.ToString());
        Assert.Null(gauge.Read(5).Wet.HalfWidth);
        Numbers.CanBeWritten(gauge.Read(5).Workings(Ratio.FromPercent(40), Ratio.Zero));
        Source who = Source.Supplied("data sheet");
        Assert.Equal(Pair(ComparisonOutcome.Within, ComparisonOutcome.Within), Judged(3, 2.5, 4.5));
        Assert.Equal(Pair(ComparisonOutcome.CannotBeJudged, ComparisonOutcome.Within), Judged(3, 3.5, 4.5));
        Assert.Equal(Pair(ComparisonOutcome.Beyond, ComparisonOutcome.Within), Judged(2, 3.5, 4.5));
        Assert.Equal(Pair(ComparisonOutcome.Within, ComparisonOutcome.CannotBeJudged), Judged(5, 2.5, 5.5));
        Assert.Equal(Pair(ComparisonOutcome.Within, ComparisonOutcome.Beyond), Judged(5, 2.5, 4.5));

        (ComparisonOutcome, ComparisonOutcome) Judged(int wetted, double least, double most)
        {
            System.Collections.Generic.IReadOnlyList<LimitComparison> both = gauge.Read(wetted).Wet.Against(Length.FromMils(least), Length.FromMils(most), who);
            return (both[0].Outcome, both[1].Outcome);
        }

        static (ComparisonOutcome, ComparisonOutcome) Pair(ComparisonOutcome a, ComparisonOutcome b) => (a, b);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 10 µm of orange peel takes 5 µm, polishing 3 µm; 60 leaves 52, 50 leaves 42, 45 wants 53; 12 g of film of 1.2 g/mL off 0.5 m² is 20 µm")]
    public void Sanding_and_polishing_take_film()
    {
        FilmRemoval removal = new(
            Length.FromMicrometers(60),
            [RemovalStep.Flatten("wet sand flat", Length.FromMicrometers(10)), RemovalStep.TakeOff("polish", Length.FromMicrometers(3), Source.Supplied("trial panel"))],
            Length.FromMicrometers(45),
            Length.FromMicrometers(50));
        Numbers.Close(8, removal.Lost.Micrometers);
        Numbers.Close(52, removal.Remaining.Micrometers);
        Numbers.Close(42, removal.RemainingAtThinnest.Micrometers);
        Numbers.Close(53, removal.ToLay!.Value.Micrometers);
        Assert.Equal(ComparisonOutcome.Beyond, removal.Comparison!.Outcome);
        Assert.False(removal.CutsThrough);
        Assert.Equal("52 µm left of 60 µm", removal.ToString());
        Assert.Contains(removal.Cautions, caution => caution.Hazard == Hazard.Dust);
        Numbers.CanBeWritten(removal.Workings());

        RemovalStep weighed = RemovalStep.Weighed("sand", Mass.FromGrams(12), Density.FromGramsPerMilliliter(1.2), Area.FromSquareMeters(0.5));
        RemovalStep measured = RemovalStep.Measured("buff", Length.FromMicrometers(30), Length.FromMicrometers(28));
        Numbers.Close(20, weighed.Depth.Micrometers);
        FilmRemoval through = new(Length.FromMicrometers(20), [weighed, measured]);
        Assert.True(through.CutsThrough);
        Numbers.Near(-2, through.Remaining.Micrometers, 1e-9);
        Assert.Null(through.Comparison);
        Numbers.CanBeWritten(through.Workings());
        Assert.Equal("sand: 20 µm", weighed.ToString());
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings, equality")]
    public void Refuses_what_cannot_be()
    {
        Length film = Length.FromMicrometers(50);
        Ratio solids = Ratio.FromPercent(40);
        Numbers.Refuses("wetFilm", () => _ = new DryFilm(Length.Zero, solids));
        Numbers.Refuses("volumeSolids", () => _ = new DryFilm(film, Ratio.Zero));
        Numbers.Refuses("mostWet", () => _ = new PassPlan(film, solids, film, Length.FromMicrometers(49)));
        Numbers.Refuses("leastWet", () => _ = new PassPlan(film, solids, Length.Zero, film));
        Numbers.Refuses("teeth", () => _ = new NotchGauge([Length.FromMils(2), Length.FromMils(2)]));
        Assert.Throws<ArgumentException>(() => new NotchGauge([Length.FromMils(2)]));
        Numbers.Refuses("wettedTeeth", () => Comb().Read(6));
        Numbers.Refuses("highestWetted", () => Comb().Read(Length.FromMils(3.5)));
        Numbers.Refuses("thinnest", () => _ = new FilmRemoval(film, [], null, Length.FromMicrometers(51)));
        Numbers.Refuses("after", () => RemovalStep.Measured("sand", film, Length.FromMicrometers(51)));
        Assert.Equal(new DryFilm(film, solids), new DryFilm(film, Ratio.FromDecimalFractions(0.4)));
        Assert.Equal(RemovalStep.Flatten("sand", film), RemovalStep.Flatten("sand", Length.FromMicrometers(50)));
    }

    private static NotchGauge Comb() => new([.. Enumerable.Range(1, 5).Select(mil => Length.FromMils(mil))]);
}

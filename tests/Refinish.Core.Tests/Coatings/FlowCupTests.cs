using System;
using System.Collections.Generic;
using System.Linq;
using FsCheck.Xunit;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Coatings;

public class FlowCupTests
{
    public static IEnumerable<object[]> Oils => Table.Read("cup_standard_oils.csv").Rows
        .Select(row => new object[] { row["cup"], row.Number("seconds"), row.Number("viscosity"), row.Number("tolerance_pct") });

    private static KinematicViscosity Centistokes(double value) => KinematicViscosity.FromCentistokes(value);

    [Theory]
    [MemberData(nameof(Oils))]
    [Evidence(Basis.Cited, "table of flow cups by a maker of viscometers: standard oils, printed seconds; tolerance stands in the table's header")]
    public void Standard_oils(string cup, double seconds, double viscosity, double tolerance)
    {
        FlowCup named = FlowCups.All.Single(one => one.Name == cup);
        Numbers.Near(viscosity, named.ViscosityAt(TimeSpan.FromSeconds(seconds)).Centistokes, viscosity * tolerance / 100);
    }

    [Theory]
    [InlineData("Zahn 2", 35, 73.5)]
    [InlineData("Ford 4", 80, 290.7135)]
    [InlineData("DIN 53211, 4 mm", 97, 438.6302)]
    [InlineData("ISO 2431, 3 mm", 57, 21.7422)]
    [Evidence(Basis.Cited, "public flow-cup conversion program naming ASTM D4212, D1200, DIN 53211 and ISO 2431: printed examples")]
    public void Printed_examples(string cup, double seconds, double viscosity) =>
        Numbers.Near(viscosity, FlowCups.All.Single(one => one.Name == cup).ViscosityAt(TimeSpan.FromSeconds(seconds)).Centistokes, 5e-5);

    [Fact]
    [Evidence(Basis.Cited, "the same program prints 28.35 for Shell 2.5 at 55 s, which its own constants do not give (48.1): the example was made with the constants of Shell 2, misprinted 0.567; left as a known misprint")]
    public void A_known_misprint()
    {
        double ours = FlowCups.Shell2Half.ViscosityAt(TimeSpan.FromSeconds(55)).Centistokes;
        Numbers.Near(48.1, ours, 1e-9);
        Numbers.Near(28.35, 0.567 * (55 - 5), 1e-9);
    }

    [Property]
    [Evidence(Basis.Identity, "seconds to viscosity and back to the tick; longer is thicker; workings hold, for every cup")]
    public void Seconds_round_trip(byte where, byte further)
    {
        foreach (FlowCup cup in FlowCups.All)
        {
            double span = (cup.Longest - cup.Shortest).TotalSeconds;
            TimeSpan time = cup.Shortest + TimeSpan.FromSeconds(Math.Round(span * where / 255, 3));
            KinematicViscosity viscosity = cup.ViscosityAt(time);
            Assert.True(Math.Abs((cup.TimeFor(viscosity) - time).TotalSeconds) < 1e-6, cup + " at " + time);
            TimeSpan later = time + ((cup.Longest - time) * (further / 255.0));
            Assert.True(cup.ViscosityAt(later) >= viscosity);
            Assert.True(cup.Measures(viscosity));
            Numbers.CanBeWritten(cup.Workings(time));
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "outside a cup's seconds or viscosities nothing is calculated")]
    public void Refuses_outside_the_range()
    {
        Numbers.Refuses("time", () => FlowCups.Ford4.ViscosityAt(TimeSpan.FromSeconds(19.9)));
        Numbers.Refuses("time", () => FlowCups.Ford4.ViscosityAt(TimeSpan.FromSeconds(101)));
        Numbers.Refuses("viscosity", () => FlowCups.Zahn1.TimeFor(Centistokes(100)));
        Numbers.Refuses("viscosity", () => FlowCups.Iso4.TimeFor(Centistokes(1e9)));
        Numbers.Refuses("shortest", () => _ = new FlowCup("broken", 1, 50, 0, TimeSpan.FromSeconds(20), TimeSpan.FromSeconds(80), Source.Invented("for this test")));
        Assert.Equal("Ford 4, 20 to 100 s", FlowCups.Ford4.ToString());
        Assert.False(FlowCups.Zahn1.Measures(Centistokes(100)));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: through 100 at 15 °C and 50 at 25 °C, halfway in 1/T (19.913 °C) is the geometric mean 70.71")]
    public void Viscosity_at_another_temperature()
    {
        ViscosityCurve curve = new(Temperature.FromDegreesCelsius(15), Centistokes(100), Temperature.FromDegreesCelsius(25), Centistokes(50));
        double middle = 2 / ((1 / 288.15) + (1 / 298.15));
        Numbers.Close(70.710678118654755, curve.At(Temperature.FromKelvins(middle)).Centistokes, 1e-9);
        Numbers.CanBeWritten(curve.Workings(Temperature.FromDegreesCelsius(20)));
        Numbers.Close(100, curve.At(Temperature.FromDegreesCelsius(15)).Centistokes, 1e-12);
        Numbers.Refuses("temperature", () => curve.At(Temperature.FromDegreesCelsius(9)));
        Numbers.Refuses("temperature", () => curve.At(Temperature.FromDegreesCelsius(31)));
        Numbers.Refuses("warm", () => _ = new ViscosityCurve(Temperature.FromDegreesCelsius(15), Centistokes(50), Temperature.FromDegreesCelsius(25), Centistokes(100)));
        Numbers.Refuses("warmTemperature", () => _ = new ViscosityCurve(Temperature.FromDegreesCelsius(15), Centistokes(50), Temperature.FromDegreesCelsius(16), Centistokes(40)));
    }

    [Theory]
    [InlineData(24.5, 17.4)]
    [InlineData(25.7, 18.0)]
    [InlineData(29.5, 19.8)]
    [InlineData(31.9, 20.9)]
    [InlineData(36.5, 23.0)]
    [InlineData(39.6, 24.0)]
    [Evidence(Basis.Cited, "physicsforums.com 829188: Ford 4 seconds of a waterborne paint at 20 °C before and after 10 % of water; the mixing rule is a first guess and reads up to 8 % too long here, which is what its remarks say")]
    public void How_far_off_the_mixing_rule_is(double before, double after)
    {
        // The reduced readings lie partly below the cup's own 20 s, so its equation is written out here; ten per cent is taken as part of the whole.
        static double Ford(double seconds) => 3.85 * (seconds - 4.49);
        ViscosityReduction rule = new(Centistokes(Ford(before)), Centistokes(1.0), Centistokes(10));
        double predicted = (rule.ViscosityWith(Ratio.FromDecimalFractions(0.1 / 0.9)).Centistokes / 3.85) + 4.49;
        Assert.InRange(predicted / after, 1.00, 1.09);
    }

    [Property]
    [Evidence(Basis.Identity, "the reducer found gives the viscosity wanted; a trial gives its own reducer back; more reducer is thinner")]
    public void Reducer_round_trips(byte start, byte goal)
    {
        double coating = 80 + start;
        double target = 30 + (goal % 50);
        ViscosityReduction reduce = new(Centistokes(coating), Centistokes(0.9), Centistokes(target));
        Numbers.Close(target, reduce.ViscosityWith(reduce.Reducer).Centistokes, 1e-10);
        if (reduce.Reducer.DecimalFractions > 0.001)
        {
            Numbers.Close(0.9, ViscosityReduction.FromTrial(Centistokes(coating), reduce.Reducer, Centistokes(target)).Centistokes, 1e-8);
        }

        Assert.True(reduce.ViscosityWith(Ratio.FromPercent(20)) < reduce.ViscosityWith(Ratio.FromPercent(10)));
        Numbers.CanBeWritten(reduce.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: ln(117.5/67.4)/ln(67.4/0.9) = 12.9 %; compared with the 15 % of the generic topcoat")]
    public void Reducer_against_the_data_sheet()
    {
        ViscosityReduction reduce = new(FlowCups.Ford4.ViscosityAt(TimeSpan.FromSeconds(35)), Centistokes(0.9), FlowCups.Ford4.ViscosityAt(TimeSpan.FromSeconds(22)));
        Numbers.Near(Math.Log((35 - 4.49) / (22 - 4.49)) / Math.Log(3.85 * (22 - 4.49) / 0.9) * 100, reduce.Reducer.Percent, 1e-9);
        Assert.Equal(ComparisonOutcome.Within, reduce.Compare(GenericCatalogue.AcrylicUrethaneTopcoat).Outcome);
        Assert.Equal(ComparisonOutcome.Beyond, reduce.Compare(GenericCatalogue.AcrylicUrethaneTopcoat with { MaximumReducer = Ratio.FromPercent(10) }).Outcome);
        Numbers.Refuses("target", () => _ = new ViscosityReduction(Centistokes(50), Centistokes(1), Centistokes(60)));
        Numbers.Refuses("reducer", () => _ = new ViscosityReduction(Centistokes(50), Centistokes(40), Centistokes(30)));
    }
}

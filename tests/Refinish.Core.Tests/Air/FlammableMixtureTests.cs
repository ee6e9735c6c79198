using System;
using System.Linq;
using FsCheck;
using FsCheck.Xunit;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

public class FlammableMixtureTests
{
    [Fact]
    [Evidence(Basis.Cited, "D. A. Crowl, J. F. Louvar, Chemical Process Safety, 2nd ed. 2001, worked example of a gas mixture: hexane 0.24, methane 0.61, ethylene 0.15, limits 1.2 to 7.5, 5.3 to 15 and 3.1 to 32 %: 2.75 and 12.9 %; read second-hand in the documentation of an open library, which gives 0.027511721 and 0.129275518")]
    public void The_handbooks_example()
    {
        FlammableMixture air = new(
        [
            Vapour("hexane", 24, 1.2, 7.5),
            Vapour("methane", 61, 5.3, 15),
            Vapour("ethylene", 15, 3.1, 32),
        ]);
        Numbers.Near(2.75, air.LowerLimit!.Value.Percent, 0.005);
        Numbers.Near(12.9, air.UpperLimit!.Value.Percent, 0.05);
        Numbers.Near(0.02751172136637642, air.LowerLimit!.Value.DecimalFractions, 1e-15);
        Numbers.Near(0.12927551844869378, air.UpperLimit!.Value.DecimalFractions, 1e-15);
        Numbers.CanBeWritten(air.Workings());
    }

    [Fact]
    [Evidence(Basis.Cited, "H. F. Coward, G. W. Jones, Bureau of Mines Bulletin 503 (1952), natural gas of 80 % methane, 15 ethane, 4 propane, 1 butane with limits 5.3, 3.22, 2.37 and 1.86 %: 4.55 %; from memory")]
    public void The_natural_gas_of_the_bureau_of_mines()
    {
        FlammableMixture gas = new([Vapour("methane", 80, 5.3), Vapour("ethane", 15, 3.22), Vapour("propane", 4, 2.37), Vapour("butane", 1, 1.86)]);
        Numbers.Near(4.55, gas.LowerLimit!.Value.Percent, 0.005);
        Assert.Null(gas.UpperLimit);
        Numbers.CanBeWritten(gas.Workings());
    }

    [Property]
    [Evidence(Basis.Identity, "the limits of a mixture lie between those of its parts, do not change when all is thinned alike, and a mixture at its lower limit is 100 % of it")]
    public void Limits_of_a_mixture_lie_between_its_parts(PositiveInt first, PositiveInt second, PositiveInt low, PositiveInt high)
    {
        double one = 0.01 + (first.Get % 40);
        double two = 0.01 + (second.Get % 40);
        (double lowOne, double lowTwo) = (0.5 + (low.Get % 6), 0.5 + (high.Get % 6));
        FlammableMixture air = new([Vapour("one", one, lowOne, lowOne + 5), Vapour("two", two, lowTwo, lowTwo + 9)]);
        double limit = air.LowerLimit!.Value.Percent;
        Assert.InRange(limit, Math.Min(lowOne, lowTwo) - 1e-9, Math.Max(lowOne, lowTwo) + 1e-9);
        Assert.True(air.UpperLimit > air.LowerLimit);
        FlammableMixture thin = new([Vapour("one", one / 9, lowOne, lowOne + 5), Vapour("two", two / 9, lowTwo, lowTwo + 9)]);
        Numbers.Close(limit, thin.LowerLimit!.Value.Percent, 1e-9);
        double at = limit / (one + two);
        FlammableMixture just = new([Vapour("one", one * at, lowOne), Vapour("two", two * at, lowTwo)]);
        Numbers.Close(100, just.OfLowerLimit!.Value.Percent, 1e-9);
    }

    [Fact]
    [Evidence(Basis.Identity, "one vapour has its own limits; toluene at 0.275 % is a quarter of 1.1 %")]
    public void One_vapour_is_itself()
    {
        FlammableMixture air = new([Vapour("toluene", 0.275, 1.1, 7.1)]);
        Numbers.Close(1.1, air.LowerLimit!.Value.Percent);
        Numbers.Close(7.1, air.UpperLimit!.Value.Percent);
        Numbers.Close(25, air.OfLowerLimit!.Value.Percent);
        Numbers.Close(0.275, air.Total.Percent);
        Assert.Equal(ComparisonOutcome.Beyond, air.DesignLine.Outcome);
    }

    [Fact]
    [Evidence(Basis.Identity, "the room study and the mixture are one rule: a study's momentary concentrations give its fraction of the limit")]
    public void A_study_read_as_a_mixture_gives_its_own_fraction()
    {
        Solvent[] solvents = [Solvents.ButylAcetate, Solvents.Xylene];
        AirStudy study = Rooms.Study(Rooms.Bathroom, Rooms.Fan(150, 3), Rooms.Coat(0, 6, 164, 0.4, 15, [.. solvents.Select(one => Rooms.Share(one, 50))]));
        TimeSpan time = TimeSpan.FromMinutes(9);
        FlammableMixture air = new([.. solvents.Select(solvent => new FlammableVapour(
            solvent.Name,
            Ratio.FromDecimalFractions(study.ConcentrationAt(solvent, time).KilogramsPerCubicMeter * 24.45e-3 / solvent.MolarMass.KilogramsPerMole),
            solvent.Flammability))]);
        Numbers.Close(study.FlammableFractionAt(time)!.Value.DecimalFractions, air.OfLowerLimit!.Value.DecimalFractions, 1e-9);
    }

    [Fact]
    [Evidence(Basis.Contract, "not known is not a pass; cautions by how near the limit is, and that too rich is no protection always")]
    public void Says_what_it_does_not_know()
    {
        FlammableMixture unknown = new([Vapour("one", 0.1, null), Vapour("two", 0.1, 1)]);
        Assert.Null(unknown.LowerLimit);
        Assert.Null(unknown.OfLowerLimit);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, unknown.Comparison.Outcome);
        Assert.Equal(ComparisonOutcome.Beyond, new FlammableMixture([Vapour("one", 0.1, null), Vapour("two", 0.3, 1)]).Comparison.Outcome);
        Assert.Contains(Cautions.LimitUnknown, unknown.Cautions);
        Assert.Contains(Cautions.Flammable, new FlammableMixture([Vapour("two", 30, 1, 7)]).Cautions);
        Assert.Contains(Cautions.NearFlammable, new FlammableMixture([Vapour("two", 0.2, 1)]).Cautions);
        Assert.All([unknown, new FlammableMixture([Vapour("two", 30, 1, 7)])], air => Assert.Contains(Cautions.TooRichThinsOut, air.Cautions));
        Numbers.CanBeWritten(unknown.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("fraction", () => Vapour("one", 0, 1));
        Numbers.Refuses("lowerFlammableLimit", () => Vapour("one", 1, 0));
        Numbers.Refuses("upperFlammableLimit", () => Vapour("one", 1, 5, 5));
        Numbers.Refuses("vapours", () => _ = new FlammableMixture([Vapour("one", 60, 1), Vapour("two", 50, 1)]));
        Assert.Throws<ArgumentException>(() => new FlammableMixture([]));
    }

    private static FlammableVapour Vapour(string name, double percent, double? lower, double? upper = null) => new(
        name,
        Ratio.FromPercent(percent),
        lower is double low ? Flammability.Between(Ratio.FromPercent(low), upper is double high ? Ratio.FromPercent(high) : null) : Flammability.Unknown);
}

using System;
using FsCheck.Xunit;
using Refinish.Coatings;
using Refinish.Curing;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Curing;

public class TemperatureShiftTests
{
    private const double Gas = 8.31446261815324;

    private static readonly DateTimeOffset Start = new(2026, 3, 3, 8, 0, 0, TimeSpan.Zero);
    private static readonly Source Test = Source.Invented("a law for this test");

    private static readonly TemperatureShift Two = TemperatureShift.InPieces(Arrhenius(70), C(20), Arrhenius(45));

    [Fact]
    [Evidence(Basis.Cited, "R package rpmodel 1.2, ftemp_arrh, example: from 25 to 10 °C at 100 kJ/mol a rate falls by 88.19912 %; its gas constant is 8.3145, which is 1e-4 on the percentage")]
    public void An_example_of_arrhenius()
    {
        foreach (TemperatureShift law in new[]
        {
            Arrhenius(100),
            TemperatureShift.InPieces(Arrhenius(100), C(18), Arrhenius(100)),
            TemperatureShift.Own("own", t => Math.Exp(-100000 / Gas / t.Kelvins) * 1e12, Test),
        })
        {
            Numbers.Near(88.19912, 100 * (1 - law.RateFactor(C(10), C(25))), 0.00015);
        }
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 70 kJ/mol up to 20 °C and 45 kJ/mol from there on: k(30)/k(10) = e^(70 000/R (1/283.15 − 1/293.15)) e^(45 000/R (1/293.15 − 1/303.15))")]
    public void Two_energies_that_meet()
    {
        double below = Math.Exp(70000 / Gas * ((1 / 283.15) - (1 / 293.15)));
        double above = Math.Exp(45000 / Gas * ((1 / 293.15) - (1 / 303.15)));
        Numbers.Close(below * above, Two.RateFactor(C(30), C(10)));
        Numbers.Close(1 / (below * above), Two.RateFactor(C(10), C(30)));
        Numbers.Close(above, Two.RateFactor(C(30), C(20)));
        Numbers.Close(below, Two.RateFactor(C(20), C(10)));
        Numbers.Close(Two.RateFactor(C(20 - 1e-9), C(25)), Two.RateFactor(C(20), C(25)), 1e-9);
        Assert.Equal("Arrhenius, 70 kJ/mol below 20 °C, Arrhenius, 45 kJ/mol above", Two.ToString());
        Numbers.Close(293.15, Two.ChangesAt!.Value.Kelvins);
        Assert.Equal(70, Two.Below!.ActivationEnergy!.Value.KilojoulesPerMole);
        Assert.Equal(45, Two.Above!.ActivationEnergy!.Value.KilojoulesPerMole);
        Assert.Null(Two.ActivationEnergy);
        Assert.Null(Two.RatePerTenKelvin);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand with factors for ten kelvins, 2 up to 20 °C and 1.5 from there on, against 20 °C: 4 h of 10 °C count 2 h, 3 h of 30 °C 4.5 h")]
    public void Age_by_a_law_in_pieces()
    {
        TemperatureShift law = TemperatureShift.InPieces(TemperatureShift.Doubling(2), C(20), TemperatureShift.Doubling(1.5));
        TemperatureHistory history = new(Start, [At(4, 10), At(3, 30)]);
        EquivalentAge age = new(history, law, C(20));
        Numbers.Near(6.5, age.Between(Start, Start.AddHours(7)).TotalHours, 1e-6);
        Numbers.CanBeWritten(age.Workings(Start, Start.AddHours(7)));
        Numbers.CanBeWritten(age.WorkingsOfInstant(Start, TimeSpan.FromHours(4)));
        EquivalentAge warm = new(history, law, C(30));
        Numbers.Near(6.5 / 1.5, warm.Between(Start, Start.AddHours(7)).TotalHours, 1e-6);
        Numbers.CanBeWritten(warm.Workings(Start, Start.AddHours(7)));
    }

    [Fact]
    [Evidence(Basis.Independent, "the activation energy of concrete practice that grows with cold, 33.5 + 1.47 (20 − T) kJ/mol below 20 °C (Freiesleben Hansen and Pedersen, from memory), worked by hand at 5 and 10 °C against 20 °C: e^(−55 550/R (1/278.15 − 1/293.15)) = 0.2926 and e^(−48 200/R (1/283.15 − 1/293.15)) = 0.4974")]
    public void A_law_of_ones_own()
    {
        TemperatureShift law = TemperatureShift.Own("concrete practice", ConcreteRate, Test);
        Numbers.Near(0.2926, law.RateFactor(C(5), C(20)), 0.00005);
        Numbers.Near(0.4974, law.RateFactor(C(10), C(20)), 0.00005);
        Numbers.CanBeWritten(law.Workings(C(5), C(20)));
        EquivalentAge age = new(new TemperatureHistory(Start, [At(4, 10), At(4, 10), At(2, 20)]), law, C(20));
        Numbers.Near((8 * 0.4974) + 2, age.Between(Start, Start.AddHours(10)).TotalHours, 0.0005);
        Numbers.CanBeWritten(age.Workings(Start, Start.AddHours(10)));
        Assert.Equal("hours at 20 °C, concrete practice", age.ToString());
        Assert.Equal(law, TemperatureShift.Own("concrete practice", ConcreteRate, Test));
        Assert.NotEqual(law, TemperatureShift.Own("concrete practice", t => t.Kelvins, Test));
    }

    [Property]
    [Evidence(Basis.Identity, "equal pieces are the law itself; factors chain over any third temperature, in three pieces too; a history has the rates of its temperatures; workings hold")]
    public void Pieces_chain(byte a, byte b, byte c)
    {
        Temperature[] at = [C(-20 + (a % 81)), C(-20 + (b % 81)), C(-20 + (c % 81))];
        TemperatureShift equal = TemperatureShift.InPieces(Arrhenius(55), C(15), Arrhenius(55));
        Numbers.Close(Arrhenius(55).RateFactor(at[0], at[1]), equal.RateFactor(at[0], at[1]), 1e-11);
        TemperatureShift three = TemperatureShift.InPieces(Two, C(40), TemperatureShift.Own("own", t => t.Kelvins, Test));
        Numbers.Close(three.RateFactor(at[0], at[2]), three.RateFactor(at[0], at[1]) * three.RateFactor(at[1], at[2]), 1e-11);
        Numbers.CanBeWritten(three.Workings(at[0], at[1]));
        TemperatureHistory history = new(Start, [new(TimeSpan.FromHours(1), at[0]), new(TimeSpan.FromHours(1), at[1])]);
        EquivalentAge age = new(history, three, at[2]);
        double hours = three.RateFactor(at[0], at[2]) + three.RateFactor(at[1], at[2]);
        Numbers.Close(hours, age.Between(Start, Start.AddHours(2)).TotalHours, 1e-6);
    }

    [Fact]
    [Evidence(Basis.Contract, "a change outside the thermometer or a piece that changes where it does not hold is refused, as are rates that are none; a forecast takes any law")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("change", () => TemperatureShift.InPieces(Arrhenius(1), C(60), Arrhenius(1)));
        Numbers.Refuses("change", () => TemperatureShift.InPieces(Arrhenius(1), C(-20), Arrhenius(1)));
        Numbers.Refuses("below", () => TemperatureShift.InPieces(Two, C(15), Arrhenius(1)));
        Numbers.Refuses("above", () => TemperatureShift.InPieces(Arrhenius(1), C(25), Two));
        Numbers.Refuses("rate", () => TemperatureShift.Own("falls", t => t.DegreesCelsius, Test));
        Numbers.Refuses("rate", () => TemperatureShift.Own("none", _ => double.NaN, Test));
        TemperatureShift gap = TemperatureShift.Own("gap", t => Math.Abs(t.DegreesCelsius - 12) < 0.1 ? double.PositiveInfinity : 1, Test);
        Numbers.Refuses("rate", () => gap.RateFactor(C(12), C(20)));
        Assert.Throws<ArgumentException>(() => TemperatureShift.Own(" ", t => 1, Test));
        Assert.Throws<ArgumentNullException>(() => TemperatureShift.Own("none", null!, Test));
        Assert.Throws<ArgumentNullException>(() => TemperatureShift.InPieces(null!, C(20), Arrhenius(1)));
        Assert.Equal(Two, TemperatureShift.InPieces(Arrhenius(70), C(20), Arrhenius(45)));
        CureTimes times = GenericCatalogue.EpoxyPrimer.Cure;
        CureForecast forecast = new(times, C(15), Two);
        double factor = Two.RateFactor(C(15), times.ReferenceTemperature);
        Numbers.Close(times.WaterService.TotalHours / factor, forecast.WaterService!.Value.TotalHours, 1e-9);
    }

    private static double ConcreteRate(Temperature at)
    {
        double energy = at.DegreesCelsius >= 20 ? 33500 : 33500 + (1470 * (20 - at.DegreesCelsius));
        return Math.Exp(energy / Gas * ((1 / 293.15) - (1 / at.Kelvins)));
    }

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static TemperatureShift Arrhenius(double kilojoules) =>
        TemperatureShift.Arrhenius(MolarEnergy.FromKilojoulesPerMole(kilojoules));

    private static TemperatureSegment At(double hours, double celsius) => new(TimeSpan.FromHours(hours), C(celsius));
}

using System;
using Refinish.Curing;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class ColdPotLife : Problem
{
    public override string Floor => "Curing";

    public override string Title => "How long is the pot life in a cold room?";

    public override string Question =>
        "A data sheet gives 60 min at 20 °C. The room has 10 °C. What is the pot life by the rule of the trade that ten kelvins halve a time, and what by an activation energy of 50 kJ/mol, a figure invented for this problem?";

    public override Backing Backing => Backing.WorkedApart;

    public override string Origin =>
        "By hand: 60 · 2 = 120 min; exp(−50000/8.31446 · (1/283.15 − 1/293.15)) = 0.4846, 60/0.4846 = 123.8 min. The product's own limits stand above both: its data sheet may forbid use at that temperature, and then no pot life follows. 50 kJ/mol is invented, the factor of two a rule of the trade: neither is a property of your product.";

    protected override Solution Work(Given given)
    {
        // shown
        TimeSpan stated = TimeSpan.FromMinutes(60);
        Temperature reference = Temperature.FromDegreesCelsius(20);
        Temperature at = Temperature.FromDegreesCelsius(10);
        double ratePerTenKelvin = 2;
        MolarEnergy activationEnergy = MolarEnergy.FromKilojoulesPerMole(50);
        // given
        given.Take(ref stated, "pot life on the data sheet");
        given.Take(ref reference, "temperature on the data sheet");
        given.Take(ref at, "temperature of the room");
        given.Take(ref ratePerTenKelvin, "how many times faster ten kelvins warmer");
        given.Take(ref activationEnergy, "activation energy, invented");
        // shown
        TemperatureShift rule = TemperatureShift.Doubling(ratePerTenKelvin);
        TemperatureShift arrhenius = TemperatureShift.Arrhenius(activationEnergy);
        TimeSpan byRule = stated / rule.RateFactor(at, reference);
        TimeSpan byArrhenius = stated / arrhenius.RateFactor(at, reference);
        // end
        return new(new Workings("Rate at another temperature", [rule.Workings(at, reference), arrhenius.Workings(at, reference)]),
        [
            new("pot life by the rule", Measure.Minutes, byRule.TotalSeconds, "120"),
            new("rate by the activation energy", Measure.Number, arrhenius.RateFactor(at, reference), "0.4846"),
            new("pot life by the activation energy", Measure.Minutes, byArrhenius.TotalSeconds, "123.8"),
        ]);
    }
}

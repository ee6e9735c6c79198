using System;
using Refinish.Air;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class OneCoatInBathroom : Problem
{
    public override string Floor => "Air";

    public override string Title => "How much solvent is in the air while a tub is sprayed?";

    public override string Question =>
        "One coat gives off 164 g of butyl acetate in a bathroom of 9.06 m³: 40 % while it is sprayed for 6 min, the rest while the film dries with a time constant of 15 min. The fan moves 150 ft³/min, half of it counted for poor mixing. What is in the air when the gun stops?";

    public override Backing Backing => Backing.WorkedApart;

    public override string Origin =>
        "By hand in closed form: 5.1273 g/m³ after 6 min, 1.4580 g/m³ after 20 min; four to five figures. All data invented.";

    protected override Solution Work(Given given)
    {
        // shown
        Mass volatileMass = Mass.FromGrams(164);
        TimeSpan sprayTime = TimeSpan.FromMinutes(6);
        VolumeFlow movedFlow = VolumeFlow.FromCubicFeetPerMinute(150);
        double mixingFactor = 2;
        // given
        given.Take(ref volatileMass, "solvent in one coat");
        given.Take(ref sprayTime, "spraying of one coat");
        given.Take(ref movedFlow, "airflow that is really moved");
        given.Take(ref mixingFactor, "1 for perfect mixing, up to 10 for poor");
        // shown
        Room bathroom = new() { Length = Length.FromMeters(1.812), Width = Length.FromMeters(2), Height = Length.FromMeters(2.5) };
        Exhaust fan = new() { LabelFlow = movedFlow, DeliveredFraction = Ratio.FromPercent(100), MixingFactor = mixingFactor };
        SolventEmission coat = new()
        {
            Name = "one coat", Start = TimeSpan.Zero, SprayTime = sprayTime,
            VolatileMass = volatileMass, Solvents = [new(Solvents.ButylAcetate, Ratio.FromPercent(100))],
            FlashFraction = Ratio.FromPercent(40), FilmTimeConstant = TimeSpan.FromMinutes(15),
        };
        AirStudy air = new(bathroom, fan, [coat], TimeSpan.FromHours(8));
        MassConcentration atSix = air.ConcentrationAt(Solvents.ButylAcetate, TimeSpan.FromMinutes(6));
        MassConcentration atTwenty = air.ConcentrationAt(Solvents.ButylAcetate, TimeSpan.FromMinutes(20));
        Ratio? ofFlammableLimit = air.PeakFlammableFraction;
        // end
        return new(air.Workings(),
        [
            new("after 6 min", Measure.MassConcentration, atSix.KilogramsPerCubicMeter, "5127.3"),
            new("after 20 min", Measure.MassConcentration, atTwenty.KilogramsPerCubicMeter, "1458.0"),
            .. ofFlammableLimit is { } most ? [new Answer("most, of the lower flammable limit", Measure.Percent, most.DecimalFractions)] : (Answer[])[],
        ])
        {
            Cautions = air.Cautions,
        };
    }
}

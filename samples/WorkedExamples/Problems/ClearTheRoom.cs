using System;
using Refinish.Air;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class ClearTheRoom : Problem
{
    public override string Floor => "Air";

    public override string Title => "How long does a fan take to clear a room?";

    public override string Question =>
        "A fan changes the air of a room of 100 m³ ten times an hour, and the air is well mixed. How long until 99 % of a vapour is gone?";

    public override Backing Backing => Backing.Published;

    public override string Origin =>
        "CDC, MMWR 43(RR-13) 1994, Table S3-1: 28 min at ten air changes; whole minutes. One puff that is in the air at once: a film goes on giving off solvent while it dries, so its room takes longer. This is no re-entry time; see the product's hold time and measure.";

    protected override Solution Work(Given given)
    {
        // shown
        VolumeFlow movedFlow = VolumeFlow.FromCubicMetersPerHour(1000);
        double mixingFactor = 1;
        Ratio left = Ratio.FromPercent(1);
        // given
        given.Take(ref movedFlow, "airflow that is really moved");
        given.Take(ref mixingFactor, "1 for perfect mixing, up to 10 for poor");
        given.Take(ref left, "part of the vapour that is left");
        // shown
        Room room = new() { Length = Length.FromMeters(8), Width = Length.FromMeters(5), Height = Length.FromMeters(2.5) };
        Exhaust fan = new() { LabelFlow = movedFlow, DeliveredFraction = Ratio.FromPercent(100), MixingFactor = mixingFactor };
        SolventEmission puff = new()
        {
            Name = "a puff of one second", Start = TimeSpan.Zero, SprayTime = TimeSpan.FromSeconds(1),
            VolatileMass = Mass.FromGrams(100), Solvents = [new(Solvents.ButylAcetate, Ratio.FromPercent(100))],
            FlashFraction = Ratio.FromPercent(100), FilmTimeConstant = TimeSpan.FromMinutes(15),
        };
        AirStudy air = new(room, fan, [puff], TimeSpan.FromHours(8));
        TimeSpan? clear = air.TimeToClear(air.PeakFlammableFraction!.Value * left.DecimalFractions);
        // end
        return new(air.Workings(),
        [
            new("air changes", Measure.AirChanges, air.AirChangesPerHour / 3600),
            .. clear is { } time ? [new Answer("until that is left", Measure.Minutes, time.TotalSeconds, "28")] : (Answer[])[],
        ])
        {
            Cautions = air.Cautions,
        };
    }
}

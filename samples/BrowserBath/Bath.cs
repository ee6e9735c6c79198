using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Curing;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Samples.BrowserBath;

/// <summary>One tub in the air of one day: what gets coated, what goes into which cup, whether air and surface allow it, and when each coat goes on.</summary>
/// <remarks>Gun, cup, residue and hours are invented, and so is the generic system: replace them with yours and with the data sheets of what is in the van.</remarks>
public sealed class Bath
{
    private static readonly SprayGun Gun = new()
    {
        FluidRate = VolumeFlow.FromMillilitersPerMinute(160),
        TransferEfficiency = Ratio.FromPercent(60),
        TriggerFraction = Ratio.FromPercent(45),
    };

    private static readonly Ratio Residue = Ratio.FromPercent(8);
    private static readonly BatchRules Cup = new() { CupVolume = Volume.FromMilliliters(600) };
    private static readonly WorkingHours Hours = new(TimeSpan.FromHours(8), TimeSpan.FromHours(17));

    public Bath(RecessedBathtub tub, MoistAir air, Temperature surface, DateTimeOffset start)
    {
        Tub = tub;
        Coats = [.. System.Layers.SelectMany(layer => Enumerable.Range(1, layer.Coats).Select(number => new Coat(
            layer.Coats == 1 ? layer.Product.Name : layer.Product.Name + ", coat " + number,
            new CoatQuantity(tub.CoatedArea, layer, Gun, Residue),
            new SprayWindow(air, surface, layer.Product.SprayLimits),
            new CureForecast(layer.Product.CureNear(air.DryBulb), air.DryBulb),
            new CureForecast(layer.Product.CureNear(surface), surface),
            Cup)))];
        Timeline = Coats.All(coat => coat.Batches is { IsPossible: true } && coat.OnSurface.IsAvailable) ? new JobSchedule(start, Hours, Steps(), Lags()) : null;
    }

    public static CoatingSystem System => GenericCatalogue.EpoxyUrethaneSystem;

    public RecessedBathtub Tub { get; }

    public IReadOnlyList<Coat> Coats { get; }

    /// <summary>When each coat goes on; missing when a product gives no times at this temperature, or no cup fits its pot life.</summary>
    public JobSchedule? Timeline { get; }

    /// <summary>When water may run: each product's own wait, counted from its last coat.</summary>
    public DateTimeOffset? WaterFrom => Timeline is { IsPossible: true } timeline
        ? Coats.Max(coat => timeline.Steps.First(step => step.Step.Name == coat.Name).End + coat.OnSurface.WaterService)
        : null;

    /// <summary>What the air and the surface are held against, each comparison once.</summary>
    public IReadOnlyList<LimitComparison> Checks => [.. Coats.SelectMany(coat => coat.Window.Checks.Concat(coat.OnSurface.Checks)).Distinct()];

    public bool IsFit => Checks.All(check => check.Outcome == ComparisonOutcome.Within);

    public IReadOnlyList<Caution> Cautions =>
        [.. AirCautions.ForSpraying.Concat(AirCautions.ForIsocyanates).Concat(AirCautions.ForPreparation)
            .Concat(Coats.SelectMany(coat => coat.Window.Cautions.Concat(coat.OnSurface.Cautions))).Distinct()];

    private IEnumerable<ScheduleStep> Steps() => Coats.Select(coat => new ScheduleStep(coat.Name, coat.Duration));

    // The next coat starts when the window has opened after the last stroke, and ends before it closes after the first.
    private IEnumerable<StepLag> Lags() => Coats.Zip(Coats.Skip(1), (under, over) => new StepLag(
        under.Name,
        over.Name,
        under.OnSurface.RecoatOpens ?? TimeSpan.Zero,
        Least(under.OnSurface.RecoatCloses, under.InCup.RecoatCloses) - under.Quantity.SprayTime - over.Duration,
        "recoat window of " + under.Name));

    // A window closes by the warmer of surface and air.
    private static TimeSpan? Least(TimeSpan? one, TimeSpan? other) => one < other ? one : other ?? one;
}

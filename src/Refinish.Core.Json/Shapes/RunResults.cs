using System.Linq;
using Refinish.Climate;
using Refinish.Coverage;
using Refinish.Curing;
using Refinish.Films;
using Refinish.Jobs;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>
/// A run of coating beside its hour, where there is a schedule, and the volatile organic compounds of its product.
/// </summary>
internal sealed record RunResult(CoatRun Run, ScheduledRun? Scheduled, LimitComparison Voc);

/// <summary>What a plan says of each run of coating: demand loss by loss, the window to spray in, times, cups and mixing cards.</summary>
internal static class RunResults
{
    private static readonly FieldsShape<WetFilm> Film = new Fields<WetFilm>("wetFilm")
        .Show("dryFilm", Results.Film, it => it.DryFilm.Meters)
        .Show("thickness", Results.Film, it => it.Thickness.Meters)
        .Show("reducedSolids", Results.Percent, it => it.ReducedSolids.DecimalFractions)
        .Show("spreadingRate", Results.SpreadingRate, it => it.SpreadingRate.SquareMetersPerCubicMeter)
        .AsResults();

    private static readonly FieldsShape<CoatDemand> Demand = new Fields<CoatDemand>("coatDemand")
        .Show("surfaces", List(ProcedureResults.Surface), it => it.Surfaces)
        .Show("area", Results.Area, it => it.Area.SquareMeters)
        .Show("wetFilm", Film, it => it.WetFilm)
        .Show("film", Results.Liquid, it => it.Film.CubicMeters)
        .Show("deadVolume", Results.Liquid, it => it.DeadVolume.CubicMeters)
        .Show("overspray", Results.Liquid, it => it.Overspray.CubicMeters)
        .Show("edgeLoss", Results.Liquid, it => it.EdgeLoss.CubicMeters)
        .Show("sprayed", Results.Liquid, it => it.Sprayed.CubicMeters)
        .Show("holdUp", Results.Liquid, it => it.HoldUp.CubicMeters)
        .Show("residueLoss", Results.Liquid, it => it.ResidueLoss.CubicMeters)
        .Show("unusedLoss", Results.Liquid, it => it.UnusedLoss.CubicMeters)
        .Show("total", Results.Liquid, it => it.Total.CubicMeters)
        .Show("mixed", Results.Liquid, it => it.Mixed.CubicMeters)
        .Show("sprayTime", Results.Minutes, it => it.SprayTime.TotalSeconds)
        .Show("usedShare", Results.Percent, it => it.UsedShare.DecimalFractions)
        .Show("theoreticalSpreadingRate", Results.SpreadingRate, it => it.TheoreticalSpreadingRate.SquareMetersPerCubicMeter)
        .Show("practicalSpreadingRate", Results.SpreadingRate, it => it.PracticalSpreadingRate.SquareMetersPerCubicMeter)
        .AsResults();

    private static readonly FieldsShape<SprayWindow> Window = new Fields<SprayWindow>("sprayWindow")
        .Show("isOpen", YesNo, it => it.IsOpen)
        .Show("surface", Results.Temperature, it => it.Surface.Kelvins)
        .Show("checks", Results.Comparisons, it => it.Checks)
        .Show("spreadAboveDewPoint", Results.TemperatureDifference, it => it.SpreadAboveDewPoint.Kelvins)
        .Show("surfaceRelativeHumidity", Results.Percent, it => it.SurfaceRelativeHumidity.DecimalFractions)
        .Show("leastSurfaceTemperature", Results.Temperature.OrNull(), it => it.LeastSurfaceTemperature?.Kelvins)
        .Show("greatestRelativeHumidity", Results.Percent, it => it.GreatestRelativeHumidity.DecimalFractions)
        .Show("airTemperatureForHumidity", Results.Temperature.OrNull(), it => it.AirTemperatureForHumidity?.Kelvins)
        .Show("cautions", Results.CautionCodes, it => it.Cautions)
        .AsResults();

    private static readonly FieldsShape<CureForecast> Cure = new Fields<CureForecast>("cureForecast")
        .Show("site", Results.Temperature, it => it.Site.Kelvins)
        .Show("isAvailable", YesNo, it => it.IsAvailable)
        .Show("checks", Results.Comparisons, it => it.Checks)
        .Show("induction", Results.Hours.OrNull(), it => it.Induction?.TotalSeconds)
        .Show("potLife", Results.Hours.OrNull(), it => it.PotLife?.TotalSeconds)
        .Show("touchDry", Results.Hours.OrNull(), it => it.TouchDry?.TotalSeconds)
        .Show("recoatOpens", Results.Hours.OrNull(), it => it.RecoatOpens?.TotalSeconds)
        .Show("recoatCloses", Results.Hours.OrNull(), it => it.RecoatCloses?.TotalSeconds)
        .Show("waterService", Results.Hours.OrNull(), it => it.WaterService?.TotalSeconds)
        .Show("fullCure", Results.Hours.OrNull(), it => it.FullCure?.TotalSeconds)
        .Show("cautions", Results.CautionCodes, it => it.Cautions)
        .AsResults();

    private static readonly FieldsShape<CupBatch> Batch = new Fields<CupBatch>("cupBatch")
        .Show("cup", Results.Liquid, it => it.Cup.Capacity.CubicMeters)
        .Show("graduations", Count, it => it.Graduations)
        .Show("volume", Results.Liquid, it => it.Volume.CubicMeters)
        .AsResults();

    private static readonly FieldsShape<CupPlan> Cups = new Fields<CupPlan>("cupPlan")
        .Show("isPossible", YesNo, it => it.IsPossible)
        .Show("objections", Results.Sentences, it => it.Objections)
        .Show("relaxations", Results.Sentences, it => [.. it.Relaxations.Select(relaxation => relaxation.ToString())])
        .Show("need", Results.Liquid, it => it.Need.CubicMeters)
        .Show("timeToUse", Results.Minutes.OrNull(), it => it.TimeToUse?.TotalSeconds)
        .Show("batches", List(Batch), it => it.Batches)
        .Show("isLeast", YesNo, it => it.IsLeast)
        .Show("mixed", Results.Liquid, it => it.Mixed.CubicMeters)
        .Show("delivered", Results.Liquid, it => it.Delivered.CubicMeters)
        .Show("excess", Results.Liquid, it => it.Excess.CubicMeters)
        .Show("waste", Results.Liquid, it => it.Waste.CubicMeters)
        .Show("cautions", Results.CautionCodes, it => it.Cautions)
        .AsResults();

    private static readonly FieldsShape<PouredPart> Poured = new Fields<PouredPart>("pouredPart")
        .Show("component", Text, it => it.Component.Id)
        .Show("volume", Results.Liquid, it => it.Volume.CubicMeters)
        .Show("mass", Results.Mass, it => it.Mass.Kilograms)
        .Show("fillLine", Results.Liquid, it => it.FillLine.CubicMeters)
        .Show("scale", Results.Mass, it => it.Scale.Kilograms)
        .AsResults();

    private static readonly FieldsShape<PouredMix> Mix = new Fields<PouredMix>("pouredMix")
        .Show("total", Results.Liquid, it => it.Total.CubicMeters)
        .Show("parts", List(Poured), it => it.Parts)
        .AsResults();

    private static readonly FieldsShape<ScheduledRun> Scheduled = new Fields<ScheduledRun>("scheduledRun")
        .Show("start", Times.Instant, it => it.Start)
        .Show("sprayingFrom", Times.Instant, it => it.SprayingFrom)
        .Show("end", Times.Instant, it => it.End)
        .Show("before", Text.OrNull(), it => it.Before?.Run.Id)
        .Show("fromBefore", Results.Liquid, it => it.FromBefore.CubicMeters)
        .Show("cups", Cups, it => it.Cups)
        .Show("mixes", List(Mix), it => it.Mixes)
        .Show("window", Window, it => it.Window)
        .AsResults();

    public static FieldsShape<RunResult> Run { get; } = new Fields<RunResult>("coatRun")
        .Show("id", Text, it => it.Run.Id)
        .Show("product", Text, it => it.Run.Layer.Product.Id)
        .Show("demand", Demand, it => it.Run.Demand)
        .Show("window", Window, it => it.Run.Window)
        .Show("inCup", Cure, it => it.Run.InCup)
        .Show("onSurface", Cure, it => it.Run.OnSurface)
        .Show("atWarmest", Cure, it => it.Run.AtWarmest)
        .Show("cups", Cups, it => it.Run.Cups)
        .Show("mixes", List(Mix), it => it.Run.Cups.IsPossible ? it.Run.Mixes : [])
        .Show("duration", Results.Minutes, it => it.Run.Duration.TotalSeconds)
        .Show("sprayTime", Results.Minutes, it => it.Run.SprayTime.TotalSeconds)
        .Show("volatileMass", Results.Mass, it => it.Run.VolatileMass.Kilograms)
        .Show("waterMass", Results.Mass, it => it.Run.WaterMass.Kilograms)
        .Show("sprayedMass", Results.Mass, it => it.Run.SprayedMass.Kilograms)
        .Show("voc", Results.Comparison, it => it.Voc)
        .Show("scheduled", Scheduled.OrNull(), it => it.Scheduled)
        .AsResultsOf(typeof(CoatRun));
}

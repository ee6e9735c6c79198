using System.Linq;
using Refinish.Climate;
using Refinish.Coverage;
using Refinish.Curing;
using Refinish.Films;
using Refinish.Jobs;

namespace Refinish.Json.Shapes;

/// <summary>
/// A run of coating beside its hour, where there is a schedule, and the volatile organic compounds of its product.
/// </summary>
internal sealed record RunResult(CoatRun Run, ScheduledRun? Scheduled, LimitComparison Voc);

/// <summary>What a plan says of each run of coating: demand loss by loss, the window to spray in, times, cups and mixing cards.</summary>
internal static class RunResults
{
    private static readonly FieldsShape<WetFilm> Film = new Fields<WetFilm>("wetFilm")
        .Show("dryFilm", Results.Film, film => film.DryFilm.Meters)
        .Show("thickness", Results.Film, film => film.Thickness.Meters)
        .Show("reducedSolids", Results.Percent, film => film.ReducedSolids.DecimalFractions)
        .Show("spreadingRate", Results.SpreadingRate, film => film.SpreadingRate.SquareMetersPerCubicMeter)
        .AsResults();

    private static readonly FieldsShape<CoatDemand> Demand = new Fields<CoatDemand>("coatDemand")
        .Show("surfaces", CommonShapes.List(ProcedureResults.Surface), demand => demand.Surfaces)
        .Show("area", Results.Area, demand => demand.Area.SquareMeters)
        .Show("wetFilm", Film, demand => demand.WetFilm)
        .Show("film", Results.Liquid, demand => demand.Film.CubicMeters)
        .Show("deadVolume", Results.Liquid, demand => demand.DeadVolume.CubicMeters)
        .Show("overspray", Results.Liquid, demand => demand.Overspray.CubicMeters)
        .Show("edgeLoss", Results.Liquid, demand => demand.EdgeLoss.CubicMeters)
        .Show("sprayed", Results.Liquid, demand => demand.Sprayed.CubicMeters)
        .Show("holdUp", Results.Liquid, demand => demand.HoldUp.CubicMeters)
        .Show("residueLoss", Results.Liquid, demand => demand.ResidueLoss.CubicMeters)
        .Show("unusedLoss", Results.Liquid, demand => demand.UnusedLoss.CubicMeters)
        .Show("total", Results.Liquid, demand => demand.Total.CubicMeters)
        .Show("mixed", Results.Liquid, demand => demand.Mixed.CubicMeters)
        .Show("sprayTime", Results.Minutes, demand => demand.SprayTime.TotalSeconds)
        .Show("usedShare", Results.Percent, demand => demand.UsedShare.DecimalFractions)
        .Show("theoreticalSpreadingRate", Results.SpreadingRate, demand => demand.TheoreticalSpreadingRate.SquareMetersPerCubicMeter)
        .Show("practicalSpreadingRate", Results.SpreadingRate, demand => demand.PracticalSpreadingRate.SquareMetersPerCubicMeter)
        .AsResults();

    private static readonly FieldsShape<SprayWindow> Window = new Fields<SprayWindow>("sprayWindow")
        .Show("isOpen", Scalars.YesNo, window => window.IsOpen)
        .Show("surface", Results.Temperature, window => window.Surface.Kelvins)
        .Show("checks", Results.Comparisons, window => window.Checks)
        .Show("spreadAboveDewPoint", Results.TemperatureDifference, window => window.SpreadAboveDewPoint.Kelvins)
        .Show("surfaceRelativeHumidity", Results.Percent, window => window.SurfaceRelativeHumidity.DecimalFractions)
        .Show("leastSurfaceTemperature", Results.Temperature.OrNull(), window => window.LeastSurfaceTemperature?.Kelvins)
        .Show("greatestRelativeHumidity", Results.Percent, window => window.GreatestRelativeHumidity.DecimalFractions)
        .Show("airTemperatureForHumidity", Results.Temperature.OrNull(), window => window.AirTemperatureForHumidity?.Kelvins)
        .Show("cautions", Results.CautionCodes, window => window.Cautions)
        .AsResults();

    private static readonly FieldsShape<CureForecast> Cure = new Fields<CureForecast>("cureForecast")
        .Show("site", Results.Temperature, cure => cure.Site.Kelvins)
        .Show("isAvailable", Scalars.YesNo, cure => cure.IsAvailable)
        .Show("checks", Results.Comparisons, cure => cure.Checks)
        .Show("induction", Results.Hours.OrNull(), cure => cure.Induction?.TotalSeconds)
        .Show("potLife", Results.Hours.OrNull(), cure => cure.PotLife?.TotalSeconds)
        .Show("touchDry", Results.Hours.OrNull(), cure => cure.TouchDry?.TotalSeconds)
        .Show("recoatOpens", Results.Hours.OrNull(), cure => cure.RecoatOpens?.TotalSeconds)
        .Show("recoatCloses", Results.Hours.OrNull(), cure => cure.RecoatCloses?.TotalSeconds)
        .Show("waterService", Results.Hours.OrNull(), cure => cure.WaterService?.TotalSeconds)
        .Show("fullCure", Results.Hours.OrNull(), cure => cure.FullCure?.TotalSeconds)
        .Show("cautions", Results.CautionCodes, cure => cure.Cautions)
        .AsResults();

    private static readonly FieldsShape<CupBatch> Batch = new Fields<CupBatch>("cupBatch")
        .Show("cup", Results.Liquid, batch => batch.Cup.Capacity.CubicMeters)
        .Show("graduations", Scalars.Count, batch => batch.Graduations)
        .Show("volume", Results.Liquid, batch => batch.Volume.CubicMeters)
        .AsResults();

    private static readonly FieldsShape<CupPlan> Cups = new Fields<CupPlan>("cupPlan")
        .Show("isPossible", Scalars.YesNo, cups => cups.IsPossible)
        .Show("objections", Results.Sentences, cups => cups.Objections)
        .Show("relaxations", Results.Sentences, cups => [.. cups.Relaxations.Select(relaxation => relaxation.ToString())])
        .Show("need", Results.Liquid, cups => cups.Need.CubicMeters)
        .Show("timeToUse", Results.Minutes.OrNull(), cups => cups.TimeToUse?.TotalSeconds)
        .Show("batches", CommonShapes.List(Batch), cups => cups.Batches)
        .Show("isLeast", Scalars.YesNo, cups => cups.IsLeast)
        .Show("mixed", Results.Liquid, cups => cups.Mixed.CubicMeters)
        .Show("delivered", Results.Liquid, cups => cups.Delivered.CubicMeters)
        .Show("excess", Results.Liquid, cups => cups.Excess.CubicMeters)
        .Show("waste", Results.Liquid, cups => cups.Waste.CubicMeters)
        .Show("cautions", Results.CautionCodes, cups => cups.Cautions)
        .AsResults();

    private static readonly FieldsShape<PouredPart> Poured = new Fields<PouredPart>("pouredPart")
        .Show("component", Scalars.Text, part => part.Component.Id)
        .Show("volume", Results.Liquid, part => part.Volume.CubicMeters)
        .Show("mass", Results.Mass, part => part.Mass.Kilograms)
        .Show("fillLine", Results.Liquid, part => part.FillLine.CubicMeters)
        .Show("scale", Results.Mass, part => part.Scale.Kilograms)
        .AsResults();

    private static readonly FieldsShape<PouredMix> Mix = new Fields<PouredMix>("pouredMix")
        .Show("total", Results.Liquid, cup => cup.Total.CubicMeters)
        .Show("parts", CommonShapes.List(Poured), cup => cup.Parts)
        .AsResults();

    private static readonly FieldsShape<ScheduledRun> Scheduled = new Fields<ScheduledRun>("scheduledRun")
        .Show("start", Times.Instant, run => run.Start)
        .Show("sprayingFrom", Times.Instant, run => run.SprayingFrom)
        .Show("end", Times.Instant, run => run.End)
        .Show("before", Scalars.Text.OrNull(), run => run.Before?.Run.Id)
        .Show("fromBefore", Results.Liquid, run => run.FromBefore.CubicMeters)
        .Show("cups", Cups, run => run.Cups)
        .Show("mixes", CommonShapes.List(Mix), run => run.Mixes)
        .Show("window", Window, run => run.Window)
        .AsResults();

    public static FieldsShape<RunResult> Run { get; } = new Fields<RunResult>("coatRun")
        .Show("id", Scalars.Text, run => run.Run.Id)
        .Show("product", Scalars.Text, run => run.Run.Layer.Product.Id)
        .Show("demand", Demand, run => run.Run.Demand)
        .Show("window", Window, run => run.Run.Window)
        .Show("inCup", Cure, run => run.Run.InCup)
        .Show("onSurface", Cure, run => run.Run.OnSurface)
        .Show("atWarmest", Cure, run => run.Run.AtWarmest)
        .Show("cups", Cups, run => run.Run.Cups)
        .Show("mixes", CommonShapes.List(Mix), run => run.Run.Cups.IsPossible ? run.Run.Mixes : [])
        .Show("duration", Results.Minutes, run => run.Run.Duration.TotalSeconds)
        .Show("sprayTime", Results.Minutes, run => run.Run.SprayTime.TotalSeconds)
        .Show("volatileMass", Results.Mass, run => run.Run.VolatileMass.Kilograms)
        .Show("waterMass", Results.Mass, run => run.Run.WaterMass.Kilograms)
        .Show("sprayedMass", Results.Mass, run => run.Run.SprayedMass.Kilograms)
        .Show("voc", Results.Comparison, run => run.Voc)
        .Show("scheduled", Scheduled.OrNull(), run => run.Scheduled)
        .AsResultsOf(typeof(CoatRun));
}

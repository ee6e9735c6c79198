using System.Linq;
using Refinish.Climate;
using Refinish.Coverage;
using Refinish.Curing;
using Refinish.Films;
using Refinish.Jobs;

namespace Refinish.Json.Shapes;

/// <summary>What a plan says of each coat: quantities, the window to spray in, times, batches and the mixing card.</summary>
internal static class CoatResults
{
    private static readonly FieldsShape<WetFilm> Film = new Fields<WetFilm>("wetFilm")
        .Show("dryFilm", Results.Film, film => film.DryFilm.Meters)
        .Show("thickness", Results.Film, film => film.Thickness.Meters)
        .Show("reducedSolids", Results.Percent, film => film.ReducedSolids.DecimalFractions)
        .Show("spreadingRate", Results.SpreadingRate, film => film.SpreadingRate.SquareMetersPerCubicMeter)
        .AsResults();

    private static readonly FieldsShape<CoatQuantity> Quantity = new Fields<CoatQuantity>("coatQuantity")
        .Show("area", Results.Area, quantity => quantity.Area.SquareMeters)
        .Show("wetFilm", Film, quantity => quantity.WetFilm)
        .Show("filmVolume", Results.Liquid, quantity => quantity.FilmVolume.CubicMeters)
        .Show("sprayedVolume", Results.Liquid, quantity => quantity.SprayedVolume.CubicMeters)
        .Show("pouredVolume", Results.Liquid, quantity => quantity.PouredVolume.CubicMeters)
        .Show("mixedVolume", Results.Liquid, quantity => quantity.MixedVolume.CubicMeters)
        .Show("practicalSpreadingRate", Results.SpreadingRate, quantity => quantity.PracticalSpreadingRate.SquareMetersPerCubicMeter)
        .Show("sprayTime", Results.Minutes, quantity => quantity.SprayTime.TotalSeconds)
        .AsResults();

    private static readonly FieldsShape<SprayWindow> Window = new Fields<SprayWindow>("sprayWindow")
        .Show("isOpen", Scalars.YesNo, window => window.IsOpen)
        .Show("checks", Results.Comparisons, window => window.Checks)
        .Show("spreadAboveDewPoint", Results.TemperatureDifference, window => window.SpreadAboveDewPoint.Kelvins)
        .Show("surfaceRelativeHumidity", Results.Percent, window => window.SurfaceRelativeHumidity.DecimalFractions)
        .Show("leastSurfaceTemperature", Results.Temperature.OrNull(), window => window.LeastSurfaceTemperature?.Kelvins)
        .Show("greatestRelativeHumidity", Results.Percent, window => window.GreatestRelativeHumidity.DecimalFractions)
        .Show("airTemperatureForHumidity", Results.Temperature.OrNull(), window => window.AirTemperatureForHumidity?.Kelvins)
        .Show("cautions", Results.Cautions, window => window.Cautions)
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
        .Show("cautions", Results.Cautions, cure => cure.Cautions)
        .AsResults();

    private static readonly FieldsShape<BatchPlan> Batches = new Fields<BatchPlan>("batchPlan")
        .Show("isPossible", Scalars.YesNo, batches => batches.IsPossible)
        .Show("objections", Results.Sentences, batches => batches.Objections)
        .Show("need", Results.Liquid, batches => batches.Need.CubicMeters)
        .Show("timeToUse", Results.Minutes.OrNull(), batches => batches.TimeToUse?.TotalSeconds)
        .Show("largestBatch", Results.Liquid, batches => batches.LargestBatch.CubicMeters)
        .Show("batches", CommonShapes.List(Results.Liquid), batches => [.. batches.Batches.Select(batch => batch.CubicMeters)])
        .Show("mixed", Results.Liquid, batches => batches.Mixed.CubicMeters)
        .AsResults();

    private static readonly FieldsShape<PouredMix> Cup = new Fields<PouredMix>("pouredMix")
        .Show("total", Results.Liquid, cup => cup.Total.CubicMeters)
        .Show("baseVolume", Results.Liquid, cup => cup.BaseVolume.CubicMeters)
        .Show("hardenerVolume", Results.Liquid, cup => cup.HardenerVolume.CubicMeters)
        .Show("lineAfterHardener", Results.Liquid, cup => cup.LineAfterHardener.CubicMeters)
        .Show("reducerVolume", Results.Liquid, cup => cup.ReducerVolume.CubicMeters)
        .Show("baseMass", Results.Mass, cup => cup.BaseMass.Kilograms)
        .Show("hardenerMass", Results.Mass, cup => cup.HardenerMass.Kilograms)
        .Show("reducerMass", Results.Mass, cup => cup.ReducerMass.Kilograms)
        .Show("scaleAfterHardener", Results.Mass, cup => cup.ScaleAfterHardener.Kilograms)
        .Show("scaleAfterReducer", Results.Mass, cup => cup.ScaleAfterReducer.Kilograms)
        .Show("hardenerPer100Base", Results.Number, cup => cup.HardenerPer100Base)
        .AsResults();

    public static FieldsShape<CoatPlan> Coat { get; } = new Fields<CoatPlan>("coatPlan")
        .Show("name", Scalars.Text, coat => coat.Name)
        .Show("product", Scalars.Text, coat => coat.Layer.Product.Name)
        .Show("quantity", Quantity, coat => coat.Quantity)
        .Show("window", Window, coat => coat.Window)
        .Show("inCup", Cure, coat => coat.InCup)
        .Show("onSurface", Cure, coat => coat.OnSurface)
        .Show("atWarmest", Cure, coat => coat.AtWarmest)
        .Show("batches", Batches.OrNull(), coat => coat.Batches)
        .Show("cups", CommonShapes.List(Cup), coat => coat.Cups)
        .Show("duration", Results.Minutes, coat => coat.Duration.TotalSeconds)
        .Show("volatileMass", Results.Mass, coat => coat.VolatileMass.Kilograms)
        .AsResults();

    public static FieldsShape<PromoterQuantity> Promoter { get; } = new Fields<PromoterQuantity>("promoterQuantity")
        .Show("promoter", Scalars.Text, quantity => quantity.Promoter.Name)
        .Show("area", Results.Area, quantity => quantity.Area.SquareMeters)
        .Show("volume", Results.Liquid, quantity => quantity.Volume.CubicMeters)
        .AsResults();
}

using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Coatings;
using Refinish.Inspection;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>What the customer is told and what is kept: when water may run, how to care for the surface, what the warranty record needs.</summary>
/// <remarks>
/// Care limits are common practice of the trade without a source, the water temperature from memory; the coating's data sheet goes first.
/// Films for inspection are the sums of the data sheets' limits for one coat.
/// </remarks>
public sealed record Handover
{
    internal Handover(BathroomJob job, DateTimeOffset lastCoat, DateTimeOffset caulked, IReadOnlyList<CoatPlan> coats, Area area)
    {
        CoatingReady = lastCoat + coats.Max(coat => coat.OnSurface.WaterService ?? TimeSpan.Zero);
        CaulkReady = caulked + job.CaulkWait;
        FullCure = lastCoat + coats.Max(coat => coat.OnSurface.FullCure ?? TimeSpan.Zero);
        HandedOver = caulked;
        WarrantyUntil = caulked.AddYears(job.Warranty.Years);
        Film = new FilmSpecification(
            Length.FromMeters(job.System.Layers.Sum(layer => layer.Coats * layer.Product.MinimumDryFilm.Meters)),
            Length.FromMeters(job.System.Layers.Sum(layer => layer.Coats * layer.Product.MaximumDryFilm.Meters)),
            Source.Supplied("film limits of the data sheets, added up over the coats"));
        Spots = FilmAcceptance.SpotsFor(area);
        Record = new ValueList<string>(RecordOf(coats));
    }

    /// <summary>When the coating may take water.</summary>
    public DateTimeOffset CoatingReady { get; }

    /// <summary>When the new caulk may take water.</summary>
    public DateTimeOffset CaulkReady { get; }

    /// <summary>No water before this instant: the later of coating and caulk.</summary>
    public DateTimeOffset WaterFrom => CoatingReady > CaulkReady ? CoatingReady : CaulkReady;

    /// <summary>When the coating is fully cured.</summary>
    public DateTimeOffset FullCure { get; }

    /// <summary>End of the last visit.</summary>
    public DateTimeOffset HandedOver { get; }

    /// <summary>Last day of the warranty.</summary>
    public DateTimeOffset WarrantyUntil { get; }

    /// <summary>Dry film to be found on inspection, without what was there before.</summary>
    public FilmSpecification Film { get; }

    /// <summary>Spots to measure over all fixtures.</summary>
    public int Spots { get; }

    /// <summary>How to care for the surface.</summary>
    public IReadOnlyList<string> CareLimits { get; } = new ValueList<string>(
    [
        "No water on the surface before the hour above; nothing set down on it before full cure.",
        "Clean with a soft cloth and a mild liquid; no abrasive powder, pads or acid drain cleaner, and no bleach left standing.",
        "No suction mats or suction feet; let bath water cool below 60 °C (140 °F) before it stands.",
        "Mend dripping taps at once and report a chip or a lifting edge before water gets under it.",
    ]);

    /// <summary>What the warranty does not cover, unless the contract says otherwise.</summary>
    public IReadOnlyList<string> Exclusions { get; } = new ValueList<string>(
    [
        "Impact, cuts, heat, standing chemicals, suction mats and leaks behind or below the fixture.",
        "Movement of the fixture or of what carries it, and rust that comes from behind.",
    ]);

    /// <summary>What has to be written down for a later claim, entry by entry.</summary>
    public IReadOnlyList<string> Record { get; }

    /// <summary>How the instants follow, as hours after the last coat.</summary>
    /// <param name="lastCoat">End of the last coat.</param>
    /// <returns>The derivation.</returns>
    internal Workings Workings(DateTimeOffset lastCoat)
    {
        Source rule = Source.Derived("water waits for the slower of coating and caulk");
        Expression coating = Expression.Quantity("t_coating", (CoatingReady - lastCoat).TotalSeconds, Measure.Hours);
        Expression caulk = Expression.Quantity("t_caulk", (CaulkReady - lastCoat).TotalSeconds, Measure.Hours);
        return new Workings("Handover", [new WorkingStep("no water until, after the last coat", "t_water", Expression.Max(coating, caulk), (WaterFrom - lastCoat).TotalSeconds, Measure.Hours, rule)]);
    }

    /// <summary>The hold in one line.</summary>
    /// <returns>Text such as <c>no water before 2027-03-05 08:00</c>.</returns>
    public override string ToString() => "no water before " + WaterFrom.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static IEnumerable<string> RecordOf(IReadOnlyList<CoatPlan> coats)
    {
        yield return "fixture, material, defects with photographs before and after";
        foreach (CoatingProduct product in coats.Select(coat => coat.Layer.Product).Distinct())
        {
            yield return product.Name + ": batch numbers of base, hardener and reducer; ratio and weights mixed";
        }

        yield return "air temperature, relative humidity, surface temperature and dew point before each coat";
        yield return "start and end of each coat, wet film found, who sprayed";
        yield return "dry film found, spot by spot, and the gauge used";
        yield return "hour from which water was allowed, told to whom";
    }
}

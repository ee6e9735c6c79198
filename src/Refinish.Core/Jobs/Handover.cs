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
/// Care limits, cover and exclusions are common practice of the trade without a source and give way to the contract, the water temperature from memory; the coating's data sheet goes first.
/// The film for inspection runs from the film planned to the sum of the data sheets' most for one coat.
/// </remarks>
public sealed record Handover
{
    private readonly ValueList<(CoatPlan Coat, DateTimeOffset End)> coats;

    internal Handover(BathroomJob job, IEnumerable<(CoatPlan Coat, DateTimeOffset End)> coats, DateTimeOffset caulked, Area area)
    {
        this.coats = new(coats);
        CoatingReady = this.coats.Max(one => one.End + (one.Coat.OnSurface.WaterService ?? TimeSpan.Zero));
        CaulkReady = caulked + job.CaulkWait;
        DrainTrimReady = caulked + (job.DrainTrimWait ?? job.CaulkWait);
        HeldAt = job.Site.Surface;
        FullCure = this.coats.Max(one => one.End + (one.Coat.OnSurface.FullCure ?? TimeSpan.Zero));
        HandedOver = caulked;
        WarrantyUntil = caulked.AddYears(job.Warranty.Years);
        Film = new FilmSpecification(
            job.System.TotalDryFilm,
            Length.FromMeters(job.System.Layers.Sum(layer => layer.Coats * layer.Product.MaximumDryFilm.Meters)),
            Source.Supplied("the film planned as the least mean, and the data sheets' most, added up over the coats"));
        Spots = FilmAcceptance.SpotsFor(area);
        Record = new ValueList<string>(RecordOf(this.coats.Select(one => one.Coat.Layer.Product)));
    }

    /// <summary>When the coating may take water.</summary>
    public DateTimeOffset CoatingReady { get; }

    /// <summary>When the new caulk may take water.</summary>
    public DateTimeOffset CaulkReady { get; }

    /// <summary>When the drain trim, set again or new, may take water.</summary>
    public DateTimeOffset DrainTrimReady { get; }

    /// <summary>No water before this instant: the last of coating, caulk and drain trim.</summary>
    public DateTimeOffset WaterFrom => new[] { CoatingReady, CaulkReady, DrainTrimReady }.Max();

    /// <summary>Temperature of the surface for which the waits hold; colder, they are longer.</summary>
    public Temperature HeldAt { get; }

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
    public IReadOnlyList<string> CareLimits { get; } = new ValueList<string>(CareLimitsIn(null));

    /// <summary>What the warranty covers.</summary>
    public IReadOnlyList<string> Covers { get; } = new ValueList<string>(
    [
        "Peeling, blistering and loss of adhesion of the new coating in ordinary domestic use, cared for as above.",
        "Defects of material and work; they are mended by the same trade, where needed by coating again.",
    ]);

    /// <summary>What the warranty does not cover, unless the contract says otherwise.</summary>
    public IReadOnlyList<string> Exclusions { get; } = new ValueList<string>(
    [
        "Impact, cuts, heat, standing chemicals, suction mats and leaks behind or below the fixture.",
        "Movement of the fixture or of what carries it, and rust that comes from behind.",
    ]);

    /// <summary>What has to be written down for a later claim, entry by entry.</summary>
    public IReadOnlyList<string> Record { get; }

    /// <summary>What can hurt after the hand-over.</summary>
    public IReadOnlyList<Caution> Cautions { get; } = new ValueList<Caution>(
    [
        new(
            Hazard.SolventVapour,
            "The coating gives off vapour while it cures: air the room, and keep children, pregnant women, animals and people with asthma out for as long as its safety data sheet says, at least overnight. Smell does not tell when it is over.",
            "the coating's safety data sheet",
            Source.CommonPractice("solvent and unreacted hardener leave a film for days")),
        new(
            Hazard.Slip,
            "A new glossy surface is slippery when wet and soapy, also where it was textured.",
            "the maker's test report, with its method and criterion",
            Source.CommonPractice("gloss and soap")),
    ]);

    /// <summary>The hand-over as a sheet for the customer: waits at the site's temperature, care, cover, record.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>Lines that end in a line feed.</returns>
    public string ToText(DisplayUnits system) => HandoverText.Of(this, system);

    /// <summary>How the waits follow, as hours after the end of the last coat.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        DateTimeOffset last = coats[coats.Count - 1].End;
        Expression Ready(Func<CoatPlan, TimeSpan?> stage) => Expression.Max(coats
            .Select((one, i) => Hours("t_end," + Figures.Fixed(i + 1, 0), one.End - last) + Hours("t_stage," + Figures.Fixed(i + 1, 0), stage(one.Coat) ?? TimeSpan.Zero)));
        Source slowest = Source.Derived("each coat counts from its own end; the slowest decides");
        WorkingStep coating = new("coating ready for water", "t_coating", Ready(coat => coat.OnSurface.WaterService), (CoatingReady - last).TotalSeconds, Measure.Hours, slowest);
        WorkingStep caulk = new("caulk ready for water", "t_caulk", Hours("t_visit", HandedOver - last) + Hours("t_wait", CaulkReady - HandedOver), (CaulkReady - last).TotalSeconds, Measure.Hours, Source.FromMemory("new caulk stands a day before water; the sealant's data sheet decides"));
        WorkingStep trim = new("drain trim ready for water", "t_trim", Hours("t_visit", HandedOver - last) + Hours("t_wait", DrainTrimReady - HandedOver), (DrainTrimReady - last).TotalSeconds, Measure.Hours, Source.FromMemory("trim set in sealant waits as long as caulk; the sealant's data sheet decides"));
        Expression slower = Expression.Max(Expression.Max(coating.Result(), caulk.Result()), trim.Result());
        WorkingStep water = new("no water until", "t_water", slower, (WaterFrom - last).TotalSeconds, Measure.Hours, Source.Derived("water waits for the slowest of coating, caulk and drain trim"));
        WorkingStep cured = new("full cure", "t_full", Ready(coat => coat.OnSurface.FullCure), (FullCure - last).TotalSeconds, Measure.Hours, slowest);
        return new Workings("Handover, hours after the last coat", [coating, caulk, trim, water, cured]);
    }

    /// <summary>The hold in one line.</summary>
    /// <returns>Text such as <c>no water before 2027-03-05 08:00</c>.</returns>
    public override string ToString() => "no water before " + WaterFrom.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    internal static IEnumerable<string> CareLimitsIn(DisplayUnits? system)
    {
        string hot = system is DisplayUnits one ? Measure.Temperature.Format(333.15, one, 3) : "60 °C (140 °F)";
        yield return "No water on the surface before the hour above; nothing set down on it before full cure.";
        yield return "Clean with a soft cloth and a mild liquid; no abrasive powder, pads or acid drain cleaner, and no bleach left standing.";
        yield return "No suction mats or suction feet; no water hotter than " + hot + " on the surface; water that hot scalds skin in seconds, so let a bath cool far below it.";
        yield return "Mend dripping taps at once and report a chip or a lifting edge before water gets under it.";
    }

    private static Expression Hours(string symbol, TimeSpan time) => Expression.Quantity(symbol, time.TotalSeconds, Measure.Hours);

    private static IEnumerable<string> RecordOf(IEnumerable<CoatingProduct> products)
    {
        yield return "fixture, material, defects with photographs before and after";
        foreach (CoatingProduct product in products.Distinct())
        {
            yield return product.Name + ": batch numbers of base, hardener and reducer; ratio and weights mixed";
        }

        yield return "air temperature, relative humidity, surface temperature and dew point before each coat";
        yield return "start and end of each coat, wet film found, who sprayed";
        yield return "dry film found, spot by spot, and the gauge used";
        yield return "hour from which water was allowed, told to whom";
    }
}

using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Coatings;

namespace Refinish.Jobs;

/// <summary>
/// What the customer is told and what is kept: when each fixture may be used, how to care for it, what the warranty covers, what has to be
/// on record.
/// </summary>
/// <remarks>
/// Care limits, cover and exclusions are common practice of the trade without a source and give way to the contract, the water temperature
/// from memory; the coating's data sheet goes first. The film for inspection runs from the film planned to the sum of the data sheets' most
/// for one coat.
/// </remarks>
public sealed class Handover
{
    /// <summary>Makes the handover of all fixtures of a schedule.</summary>
    /// <param name="schedule">A schedule that was found.</param>
    /// <exception cref="ArgumentNullException"><paramref name="schedule"/> is missing.</exception>
    /// <exception cref="ArgumentException">The schedule was not found, or a fixture of it has no coat.</exception>
    public Handover(CrewSchedule schedule)
    {
        Guard.NotNull(schedule);
        Fixtures = new ValueList<FixtureHandover>(schedule.Work.Procedures.Select(procedure => new FixtureHandover(schedule, procedure)));
        Begun = schedule.Operations[0].Start;
        Record = new ValueList<string>(RecordOf(schedule.Runs.Select(run => run.Run.Layer.Product)));
    }

    /// <summary>The fixtures, each with its own waits.</summary>
    public IReadOnlyList<FixtureHandover> Fixtures { get; }

    /// <summary>No water on any fixture before this instant; <see langword="null"/> when it cannot be said for one of them.</summary>
    public DateTimeOffset? WaterFrom => LastOf(fixture => fixture.WaterFrom);

    /// <summary>Start of the first operation of the job.</summary>
    public DateTimeOffset Begun { get; }

    /// <summary>
    /// Days out of use, from <see cref="Begun"/> to <see cref="WaterFrom"/>, each begun day counted; <see langword="null"/> when it cannot
    /// be said.
    /// </summary>
    public int? DaysOutOfUse => WaterFrom is DateTimeOffset water ? (int)Math.Ceiling((water - Begun).TotalDays) : null;

    /// <summary>When all coatings are fully cured; <see langword="null"/> when it cannot be said for one of them.</summary>
    public DateTimeOffset? FullCure => LastOf(fixture => fixture.FullCure);

    /// <summary>End of the last visit.</summary>
    public DateTimeOffset HandedOver => Fixtures.Max(fixture => fixture.HandedOver);

    /// <summary>Last day of the warranty of the fixture that is handed over last.</summary>
    public DateTimeOffset WarrantyUntil => Fixtures.Max(fixture => fixture.WarrantyUntil);

    /// <summary>Spots to measure over all fixtures.</summary>
    public int Spots => Fixtures.Sum(fixture => fixture.Spots);

    /// <summary>How to care for the surface.</summary>
    public IReadOnlyList<string> CareLimits { get; } = new ValueList<string>(CareLimitsIn(null));

    /// <summary>What the warranty covers.</summary>
    public IReadOnlyList<string> Covers { get; } = new ValueList<string>(
    [
        "Peeling, blistering and loss of adhesion of the new coating in ordinary domestic use, cared for as the handover says.",
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

    /// <summary>What can hurt after the handover.</summary>
    public IReadOnlyList<Caution> Cautions => Fixtures.Any(fixture => fixture.Procedure.CoatsFloor)
        ? ValueList<Caution>.Owning(Refinish.Cautions.CuringVapour, Refinish.Cautions.NewCoatSlip)
        : ValueList<Caution>.Owning(Refinish.Cautions.CuringVapour);

    /// <summary>The handover as a sheet for the customer: waits fixture by fixture, care, cover, record.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>Lines that end in a line feed.</returns>
    public string ToText(DisplayUnits system) => HandoverText.Of(this, system);

    /// <summary>How the waits follow, fixture by fixture.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => new("Handover", [], Fixtures.Select(fixture => fixture.Workings()));

    /// <summary>The hold in one line.</summary>
    /// <returns>Text such as <c>no water before 2027-03-05 08:00</c>.</returns>
    public override string ToString() => "no water before " + TextSheet.Minute(WaterFrom);

    internal static IEnumerable<string> CareLimitsIn(DisplayUnits? system)
    {
        string hot = system is DisplayUnits one ? Measure.Temperature.Format(333.15, one, 3) : "60 °C (140 °F)";
        yield return "No water on the surface before the hour above; nothing set down on it before full cure.";
        yield return "Clean with a soft cloth and a mild liquid; no abrasive powder, pads or acid drain cleaner, and no bleach left standing.";
        yield return "No suction mats or suction feet; no water hotter than " + hot + " on the surface; water that hot scalds skin in seconds, so let a bath cool far below it.";
        yield return "Have dripping taps mended at once and report a chip or a lifting edge before water gets under it.";
    }

    private DateTimeOffset? LastOf(Func<FixtureHandover, DateTimeOffset?> time) =>
        Fixtures.Any(fixture => time(fixture) is null) ? null : Fixtures.Max(time);

    private static IEnumerable<string> RecordOf(IEnumerable<CoatingProduct> products)
    {
        yield return "fixture, material, defects with photographs before and after";
        foreach (CoatingProduct product in products.Distinct())
        {
            yield return product.Name + ": batch numbers of base, hardener and reducer; ratio by volume as the data sheet gives it, weights mixed as the scale showed them, and when";
        }

        yield return "before each coat, with the hour: air temperature, relative humidity, dew point, temperature of the coldest surface";
        yield return "of each coat: first and last stroke by the clock, wet film read on the comb, who sprayed; of each promoter: beginning and end of wiping";
        yield return "dry film of all coats together, spot by spot as the mean of three readings, and the gauge used";
        yield return "day and hour from which water was allowed, day and hour of full cure, told to whom";
    }
}

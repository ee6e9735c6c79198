using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Coatings;
using Refinish.Curing;
using Refinish.Inspection;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>When one fixture may be used and how its film is inspected.</summary>
public sealed class FixtureHandover
{
    private static readonly Source PlannedFilm =
        Source.Supplied("the film planned as the least mean, and the data sheets' most, added up over the coats");
    private static readonly Source Slowest = Source.Derived("each coat counts from its own end; the slowest decides");
    private static readonly Source NewCaulk = Source.FromMemory("new caulk stands before water; the sealant's data sheet decides");
    private static readonly Source SetTrim = Source.FromMemory("trim set in sealant stands before water; the sealant's data sheet decides");
    private static readonly Source Waits = Source.Derived("water waits for the slowest of coating, caulk and drain trim");

    private readonly ValueList<ScheduledRun> runs;
    private readonly ValueList<DateTimeOffset?> hard;
    private readonly ValueList<DateTimeOffset?> cured;

    /// <summary>Reckons the waits of one fixture.</summary>
    /// <param name="schedule">A schedule that was found.</param>
    /// <param name="procedure">A procedure of it.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException">The schedule has no coat on the fixture.</exception>
    public FixtureHandover(CrewSchedule schedule, Procedure procedure)
    {
        Guard.NotNull(schedule);
        Procedure = Guard.NotNull(procedure);
        string id = procedure.Fixture.Id;
        runs = new ValueList<ScheduledRun>(schedule.Runs.Where(run => run.Operation.Operation.Fixtures.Contains(id)));
        if (runs.Count == 0)
        {
            throw new ArgumentException("procedure of '" + id + "' has no coat in the schedule.", nameof(procedure));
        }

        RoomCourse course = schedule.Work.Courses[procedure.Fixture.Room];
        hard = new ValueList<DateTimeOffset?>(runs.Select(run =>
            Reached(run, HardensFrom(schedule, run), course, times => times.WaterService, forecast => forecast.WaterService)));
        cured = new ValueList<DateTimeOffset?>(runs.Select(run =>
            Reached(run, HardensFrom(schedule, run), course, times => times.FullCure, forecast => forecast.FullCure)));
        Shop shop = schedule.Work.Shop;
        ScheduledOperation[] own = [.. schedule.Operations.Where(operation => operation.Operation.Fixtures.Contains(id))];
        Begun = own.Min(operation => operation.Start);
        HandedOver = own.Max(operation => operation.End);
        Caulked = EndOf(schedule, id, Estimating.WorkKind.Caulk) ?? HandedOver;
        TrimFitted = EndOf(schedule, id, Estimating.WorkKind.FitTrim) ?? Caulked;
        CaulkReady = CarefulTime.Up(Caulked + shop.CaulkWait);
        DrainTrimReady = CarefulTime.Up(TrimFitted + shop.DrainTrimWait);
        WarrantyUntil = HandedOver.AddYears(shop.Warranty.Years);
        HeldAt = course.IsHeld ? runs.Min(run => run.Run.OnSurface.Site.Kelvins) : null;
        Film = new FilmSpecification(
            procedure.System.TotalDryFilm,
            Length.FromMeters(procedure.System.Layers.Sum(layer => layer.Coats * layer.Product.MaximumDryFilm.Meters)),
            PlannedFilm);
        Spots = FilmAcceptanceRules.SpotsWithinAFifth.Plan!.CountFor(procedure.CoatedArea);
        SlipCriteria = procedure.Fixture.Options.Any(option => option.Kind == FixtureOptionKind.SlipResistantFloor)
            ? shop.Limits.Slip
            : ValueList<SlipClass>.Empty;
    }

    /// <summary>The procedure of the fixture.</summary>
    public Procedure Procedure { get; }

    /// <summary>
    /// When the coating may take water, rounded up to a whole minute; <see langword="null"/> when the temperature record ends before.
    /// </summary>
    public DateTimeOffset? CoatingReady => Latest(hard);

    /// <summary>When the new caulk may take water, rounded up to a whole minute.</summary>
    public DateTimeOffset CaulkReady { get; }

    /// <summary>When the drain trim, set again or new, may take water, rounded up to a whole minute.</summary>
    public DateTimeOffset DrainTrimReady { get; }

    /// <summary>
    /// No water before this instant: the last of coating, caulk and drain trim; <see langword="null"/> when it cannot be said.
    /// </summary>
    public DateTimeOffset? WaterFrom => CoatingReady is DateTimeOffset coating ? new[] { coating, CaulkReady, DrainTrimReady }.Max() : null;

    /// <summary>
    /// When the coating is fully cured, rounded up to a whole minute; <see langword="null"/> when the temperature record ends before.
    /// </summary>
    public DateTimeOffset? FullCure => Latest(cured);

    /// <summary>
    /// Temperature of the surface for which the waits hold, where the room is held; <see langword="null"/> where they follow its climate.
    /// </summary>
    public Temperature? Surface => HeldAt is double kelvins ? Temperature.FromKelvins(kelvins) : null;

    /// <summary>Start of the first operation on the fixture: from then on it is out of use.</summary>
    public DateTimeOffset Begun { get; }

    /// <summary>
    /// Days out of use, from <see cref="Begun"/> to <see cref="WaterFrom"/>, each begun day counted; <see langword="null"/> when it cannot
    /// be said.
    /// </summary>
    public int? DaysOutOfUse => WaterFrom is DateTimeOffset water ? (int)Math.Ceiling((water - Begun).TotalDays) : null;

    /// <summary>End of the last operation on the fixture.</summary>
    public DateTimeOffset HandedOver { get; }

    /// <summary>Last day of the warranty.</summary>
    public DateTimeOffset WarrantyUntil { get; }

    /// <summary>Dry film to be found on inspection, without what was there before.</summary>
    public FilmSpecification Film { get; }

    /// <summary>Spots to measure.</summary>
    public int Spots { get; }

    /// <summary>
    /// What the finished floor is measured against where it gets grains, by the shop's set of limits: hand each to a
    /// <see cref="SlipComparison"/> with the readings; empty without such a floor or where the set has no criterion.
    /// </summary>
    public IReadOnlyList<SlipClass> SlipCriteria { get; }

    /// <summary>How the waits follow, as hours after the end of the last coat.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Trace t = new();
        DateTimeOffset last = runs[runs.Count - 1].End;
        bool isKnown = CoatingReady is not null;
        Num coating = isKnown ? t.Step("coating ready for water", "t_coating", Measure.Hours, Slowest, Stage(hard, last, t)) : 0;
        Num caulk = t.Step("caulk ready for water", "t_caulk", Measure.Hours, NewCaulk, Wait(Caulked - last, CaulkReady - Caulked, t));
        Num trim = t.Step("drain trim ready for water", "t_trim", Measure.Hours, SetTrim,
            Wait(TrimFitted - last, DrainTrimReady - TrimFitted, t));
        if (isKnown)
        {
            t.Step("no water until", "t_water", Measure.Hours, Waits, Num.Max(Num.Max(coating, caulk), trim));
        }

        if (FullCure is not null)
        {
            t.Step("full cure", "t_full", Measure.Hours, Slowest, Stage(cured, last, t));
        }

        return t.Workings("Handover of " + Procedure.Fixture.Name + ", hours after its last coat");
    }

    /// <summary>The hold in one line.</summary>
    /// <returns>Text such as <c>bathtub: no water before 2027-03-05 08:00</c>.</returns>
    public override string ToString() => Procedure.Fixture.Name + ": no water before " + (WaterFrom?.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) ?? "an hour that cannot be said");

    internal IReadOnlyList<ScheduledRun> Runs => runs;

    private DateTimeOffset Caulked { get; }

    private DateTimeOffset TrimFitted { get; }

    private double? HeldAt { get; }

    // The last stroke, or the end of the operation by which the coat cures.
    private static DateTimeOffset HardensFrom(CrewSchedule schedule, ScheduledRun run) =>
        schedule.TryFind(CureWait.CureOf(run.Run))?.End ?? run.End;

    private static DateTimeOffset? Reached(
        ScheduledRun run, DateTimeOffset from, RoomCourse course, Func<CureTimes, TimeSpan> time, Func<CureForecast, TimeSpan?> held)
    {
        if (course.IsHeld)
        {
            return CarefulTime.Up(from + (held(run.Run.OnSurface) ?? TimeSpan.Zero));
        }

        CureTimes times = run.Run.Layer.Product.Cure;
        return course.Covers(from) && CureWait.ClockOf(times, course.Surface!).InstantOf(from, time(times)) is DateTimeOffset instant
            ? CarefulTime.Up(instant)
            : null;
    }

    private static DateTimeOffset? Latest(ValueList<DateTimeOffset?> instants) => instants.Any(instant => instant is null) ? null : instants.Max();

    private static DateTimeOffset? EndOf(CrewSchedule schedule, string fixture, Estimating.WorkKind kind)
    {
        DateTimeOffset? end = null;
        foreach (ScheduledOperation operation in schedule.Operations)
        {
            if (operation.Operation.Kind == kind && operation.Operation.Fixtures.Contains(fixture))
            {
                end = operation.End;
            }
        }

        return end;
    }

    private static Num Wait(TimeSpan done, TimeSpan wait, Trace t) => Hours("t_done", done, t) + Hours("t_wait", wait, t);

    private Num Stage(ValueList<DateTimeOffset?> reached, DateTimeOffset last, Trace t) => Num.Max([.. runs.Select((run, i) =>
        Hours("t_end," + Figures.Fixed(i + 1, 0), run.End - last, t)
        + Hours("t_stage," + Figures.Fixed(i + 1, 0), reached[i]!.Value - run.End, t))]);

    private static Num Hours(string symbol, TimeSpan time, Trace t) => t.Given(symbol, time.TotalSeconds, Measure.Hours);
}

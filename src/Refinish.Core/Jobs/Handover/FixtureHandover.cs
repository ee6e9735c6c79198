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
    private readonly DateTimeOffset?[] hard;
    private readonly DateTimeOffset?[] cured;
    private readonly DateTimeOffset caulked;
    private readonly DateTimeOffset trimFitted;
    private readonly double? heldAt;

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
        hard = [.. runs.Select(run => Reached(schedule, run, course, times => times.WaterService, forecast => forecast.WaterService))];
        cured = [.. runs.Select(run => Reached(schedule, run, course, times => times.FullCure, forecast => forecast.FullCure))];
        Shop shop = schedule.Work.Shop;
        ScheduledOperation[] own = [.. schedule.Operations.Where(operation => operation.Operation.Fixtures.Contains(id))];
        Begun = own.Min(operation => operation.Start);
        HandedOver = own.Max(operation => operation.End);
        caulked = own.LastOrDefault(operation => operation.Operation.Kind == Estimating.WorkKind.Caulk)?.End ?? HandedOver;
        trimFitted = own.LastOrDefault(operation => operation.Operation.Kind == Estimating.WorkKind.FitTrim)?.End ?? caulked;
        CaulkReady = CarefulTime.Up(caulked + shop.CaulkWait);
        DrainTrimReady = CarefulTime.Up(trimFitted + shop.DrainTrimWait);
        Moment? coating = Coating();
        CoatingReady = coating?.At;
        WaterFrom = Water(coating)?.At;
        FullCure = Cured()?.At;
        WarrantyUntil = HandedOver.AddYears(shop.Warranty.Years);
        heldAt = course.IsHeld ? runs.Min(run => run.Run.OnSurface.Site.Kelvins) : null;
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
    public DateTimeOffset? CoatingReady { get; }

    /// <summary>When the new caulk may take water, rounded up to a whole minute.</summary>
    public DateTimeOffset CaulkReady { get; }

    /// <summary>When the drain trim, set again or new, may take water, rounded up to a whole minute.</summary>
    public DateTimeOffset DrainTrimReady { get; }

    /// <summary>
    /// No water before this instant: the last of coating, caulk and drain trim; <see langword="null"/> when it cannot be said.
    /// </summary>
    public DateTimeOffset? WaterFrom { get; }

    /// <summary>
    /// When the coating is fully cured, rounded up to a whole minute; <see langword="null"/> when the temperature record ends before.
    /// </summary>
    public DateTimeOffset? FullCure { get; }

    /// <summary>
    /// Temperature of the surface for which the waits hold, where the room is held; <see langword="null"/> where they follow its climate.
    /// </summary>
    public Temperature? Surface => heldAt is double kelvins ? Temperature.FromKelvins(kelvins) : null;

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
        Water(Coating(t), t);
        Cured(t);
        return t.Workings("Handover of " + Procedure.Fixture.Name + ", hours after its last coat");
    }

    /// <summary>The hold in one line.</summary>
    /// <returns>Text such as <c>bathtub: no water before 2027-03-05 08:00</c>.</returns>
    public override string ToString() => Procedure.Fixture.Name + ": no water before " + TextSheet.Minute(WaterFrom);

    internal IReadOnlyList<ScheduledRun> Runs => runs;

    private Moment? Water(Moment? coating, Trace? t = null)
    {
        Moment caulk = Noted(t, "caulk ready for water", "t_caulk", NewCaulk, Since("t_done", caulked, "t_wait", CaulkReady, t));
        Moment trim = Noted(
            t, "drain trim ready for water", "t_trim", SetTrim, Since("t_done", trimFitted, "t_wait", DrainTrimReady, t));
        return coating is Moment ready
            ? Noted(t, "no water until", "t_water", Waits, Moment.Later(Moment.Later(ready, caulk), trim)) : null;
    }

    private Moment? Coating(Trace? t = null) => Last(t, "coating ready for water", "t_coating", hard);

    private Moment? Cured(Trace? t = null) => Last(t, "full cure", "t_full", cured);

    // Unknown as soon as one coat's is.
    private Moment? Last(Trace? t, string name, string symbol, DateTimeOffset?[] reached)
    {
        if (Array.Exists(reached, instant => instant is null))
        {
            return null;
        }

        Moment[] coats = [.. runs.Select((run, i) =>
            Since(Numbered("t_end", i), run.End, Numbered("t_stage", i), reached[i]!.Value, t))];
        string Numbered(string of, int i) => t is null ? of : of + "," + Figures.Fixed(i + 1, 0);
        return Noted(t, name, symbol, Slowest, new Moment(coats.Max(coat => coat.At), Num.Max([.. coats.Select(coat => coat.Hours)])));
    }

    private Moment Since(string end, DateTimeOffset done, string wait, DateTimeOffset until, Trace? t) => new(
        until, t.Given(end, (done - runs[runs.Count - 1].End).TotalSeconds, Measure.Hours)
            + t.Given(wait, (until - done).TotalSeconds, Measure.Hours));

    private static Moment Noted(Trace? t, string name, string symbol, Source source, Moment moment) =>
        moment with { Hours = t.Step(name, symbol, Measure.Hours, source, moment.Hours) };

    // The last stroke, or the end of the operation by which the coat cures.
    private static DateTimeOffset HardensFrom(CrewSchedule schedule, ScheduledRun run) =>
        schedule.TryFind(CureWait.CureOf(run.Run))?.End ?? run.End;

    private static DateTimeOffset? Reached(
        CrewSchedule schedule, ScheduledRun run, RoomCourse course, Func<CureTimes, TimeSpan> time, Func<CureForecast, TimeSpan?> held)
    {
        DateTimeOffset from = HardensFrom(schedule, run);
        if (course.IsHeld)
        {
            return CarefulTime.Up(from + (held(run.Run.OnSurface) ?? TimeSpan.Zero));
        }

        CoatingProduct product = run.Run.Layer.Product;
        return course.Covers(from)
            && CureWait.ClockOf(product, time, course.Surface!).InstantOf(from, time(CureLaw.Times(product))) is DateTimeOffset instant
            ? CarefulTime.Up(instant)
            : null;
    }

    // The clock time of a result, and the hours to it from the last coat, by which it is derived.
    private readonly record struct Moment(DateTimeOffset At, Num Hours)
    {
        public static Moment Later(Moment one, Moment other) =>
            new(other.At > one.At ? other.At : one.At, Num.Max(one.Hours, other.Hours));
    }
}

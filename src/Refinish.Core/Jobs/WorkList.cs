using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Scheduling;

namespace Refinish.Jobs;

/// <summary>
/// All operations of premises in the order of the trade: the procedures of its fixtures, with what is done together in one room taken
/// together, the runs of coating, the waits between operations, and the changes of the caller.
/// </summary>
/// <example><code>
/// FixtureJob top = new()
/// {
///     Id = "counter", Room = "kitchen",
///     Fixture = new FlatPanel(new FlatPanelMeasurements
///     {
///         Length = Length.FromMeters(2), Width = Length.FromMeters(0.6), ExposedEdge = Length.Zero, EdgeHeight = Length.Zero,
///         BacksplashLength = Length.Zero, BacksplashHeight = Length.Zero, BacksplashThickness = Length.Zero, CutOuts = [],
///     }),
///     Survey = new Survey { Material = FixtureMaterial.Laminate, Defects = [], YearBuilt = 1995 },
/// };
/// Premises flat = new()
/// {
///     Id = "flat",
///     Rooms =
///     [
///         new SiteRoom
///         {
///             Id = "kitchen", Room = new Room { Length = Length.FromMeters(4), Width = Length.FromMeters(3), Height = Length.FromMeters(2.5) },
///             Exhaust = new Exhaust { LabelFlow = VolumeFlow.FromCubicMetersPerHour(1700) },
///             Climate = RoomClimate.Held(new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(45)), Temperature.FromDegreesCelsius(21)),
///         },
///     ],
/// };
/// WorkList work = new([new Procedure(top, Shop.Generic)], flat, Shop.Generic, new DateTimeOffset(2027, 3, 1, 8, 0, 0, TimeSpan.Zero));
/// string coat = work.Runs[0].Id;   // "kitchen/coat/1/epoxy-primer"
/// </code></example>
public sealed class WorkList
{
    /// <summary>Makes the list by the rules alone.</summary>
    /// <param name="procedures">The procedures of the fixtures that are planned, at least one.</param>
    /// <param name="premises">The premises with the rooms that they name.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="start">The start of the work, from which temperatures are laid out.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException">No procedure is given, or one names a room that the premises do not have.</exception>
    public WorkList(IReadOnlyList<Procedure> procedures, Premises premises, Shop shop, DateTimeOffset start)
        : this(procedures, premises, shop, start, ValueList<OperationChange>.Empty)
    {
    }

    /// <summary>Makes the list by the rules and changes it as the caller wants.</summary>
    /// <param name="procedures">The procedures of the fixtures that are planned, at least one.</param>
    /// <param name="premises">The premises with the rooms that they name.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="start">The start of the work, from which temperatures are laid out.</param>
    /// <param name="changes">Changes in order.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException">No procedure is given, or one names a room that the premises do not have.</exception>
    public WorkList(IReadOnlyList<Procedure> procedures, Premises premises, Shop shop, DateTimeOffset start, IReadOnlyList<OperationChange> changes)
        : this(procedures, premises, shop, start, changes, ScheduleNeeds.None, new Dictionary<string, RoomResult>())
    {
    }

    private WorkList(IReadOnlyList<Procedure> procedures, Premises premises, Shop shop, DateTimeOffset start,
        IReadOnlyList<OperationChange> changes, ScheduleNeeds needs,
        IReadOnlyDictionary<string, RoomResult> rooms)
    {
        Needs = needs;
        Rooms = rooms;
        Procedures = Guard.List(procedures, 1);
        Premises = Guard.NotNull(premises);
        Shop = Guard.NotNull(shop);
        Start = start;
        Changes = Guard.List(changes);
        foreach (Procedure procedure in Procedures)
        {
            if (!premises.Rooms.Any(room => room.Id == procedure.Fixture.Room))
            {
                throw new ArgumentException("procedures holds '" + procedure.Fixture.Id + "' in the room '" + procedure.Fixture.Room + "', which the premises do not have.", nameof(procedures));
            }
        }

        WorkBuilder builder = new(this);
        builder.Build();
        List<Operation> operations = builder.Operations;
        List<PlanObjection> objections = builder.Objections;
        if (Changes.Count > 0)
        {
            OperationChanges changed = new(builder);
            changed.Apply(Changes);
            Struck = changed.Struck;
            objections.AddRange(changed.Objections);
            foreach (SiteRoom room in Premises.Rooms.Where(room => builder.Courses.ContainsKey(room.Id)))
            {
                RoomWatch.Over(builder, room, builder.Courses[room.Id], Changes.Where(change => change.Kind is OperationChangeKind.Add or OperationChangeKind.Replace)
                    .Select(change => change.Id ?? change.Operation!.Id));
            }

            objections.AddRange(OrderRules.Broken(operations, builder.Runs, Procedures));
        }

        HashSet<string> own = new(
            Changes.Select(change => change.Kind == OperationChangeKind.Replace ? change.Id : change.Operation?.Id)
                .Concat(Procedures.SelectMany(procedure => procedure.Fixture.Options).Select(option => option.Operation?.Id))
                .OfType<string>(),
            StringComparer.Ordinal);
        objections.AddRange(operations.Where(operation => own.Contains(operation.Id))
            .Select(operation => OwnHours.Objection(operation, shop)).OfType<PlanObjection>());
        objections.AddRange(operations.Select(operation => Contradiction(operation, premises.Difficulty)).OfType<PlanObjection>());
        Operations = new ValueList<Operation>(operations);
        Lags = new ValueList<StepLag>(WorkChain.Lags(builder, Procedures));
        objections.AddRange(Lags.Where(lag => lag.Maximum is not null).Select(Interrupted).OfType<PlanObjection>());
        Runs = new ValueList<CoatRun>(builder.Runs);
        Courses = builder.Courses;

        // An option's work in another room stands in the part of neither alone.
        bool isApart = Procedures.All(procedure =>
            procedure.Fixture.Options.All(option => option.Operation?.Room is not string room || room == procedure.Fixture.Room));
        Rooms = isApart ? builder.Rooms : [];
        objections.AddRange(RunObjections.Of(this));
        Objections = new ValueList<PlanObjection>(objections);
    }

    /// <summary>The procedures that it is made from.</summary>
    public IReadOnlyList<Procedure> Procedures { get; }

    /// <summary>The premises.</summary>
    public Premises Premises { get; }

    /// <summary>The shop.</summary>
    public Shop Shop { get; }

    /// <summary>The start of the work.</summary>
    public DateTimeOffset Start { get; }

    /// <summary>The changes of the caller.</summary>
    public IReadOnlyList<OperationChange> Changes { get; }

    /// <summary>The operations, room by room in the order of the trade.</summary>
    public IReadOnlyList<Operation> Operations { get; }

    /// <summary>Times to keep between operations, by their identifiers.</summary>
    public IReadOnlyList<StepLag> Lags { get; }

    /// <summary>The runs of coating, in the order of the operations of the same identifiers.</summary>
    public IReadOnlyList<CoatRun> Runs { get; }

    /// <summary>
    /// What stands in the way of the list: open times and windows that cannot be kept, changes that break an order rule, people and
    /// standards that are missing.
    /// </summary>
    public IReadOnlyList<PlanObjection> Objections { get; }

    /// <summary>The number of operations.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Figures.Fixed(Operations.Count, 0) + " operations, " + Figures.Fixed(Runs.Count, 0) + " runs of coating";

    internal IReadOnlyDictionary<string, RoomCourse> Courses { get; }

    /// <summary>How long a person travels for one visit; no time without a standard.</summary>
    internal TimeSpan TripTime => LabourStandards.For(WorkKind.Travel, Shop.Labour) is LabourStandard standard
        ? Durations.FromHours(new LabourTask { Standard = standard, Units = 1 }.Hours.Mean * (standard.IsOnSite ? Premises.Difficulty : 1))
        : TimeSpan.Zero;

    /// <summary>Operations of the rules that the caller took out.</summary>
    internal IReadOnlyList<Operation> Struck { get; } = [];

    /// <summary>What a schedule of the list without it showed to be needed.</summary>
    internal ScheduleNeeds Needs { get; }

    /// <summary>
    /// What each room gave to the list; empty where rooms cannot be told apart. While a list is made, that of the list before.
    /// </summary>
    internal IReadOnlyDictionary<string, RoomResult> Rooms { get; }

    internal WorkList With(ScheduleNeeds needs, bool reusing = true) =>
        new(Procedures, Premises, Shop, Start, Changes, needs, reusing ? Rooms : new Dictionary<string, RoomResult>());

    // From an end that may be put off to another day no time can be counted within which the next has to follow.
    private PlanObjection? Interrupted(StepLag lag)
    {
        Operation before = Operations.First(operation => operation.Id == lag.Before);
        return !before.IsInterruptible || before.People == 0
            ? null
            : new PlanObjection(
                ObjectionKind.Schedule, before.Id, "interrupted/" + lag.After,
                "'" + before.Name + "' may be interrupted, and '" + Operations.First(operation => operation.Id == lag.After).Name
                + "' has to follow within " + CarefulTime.AtMost(lag.Maximum!.Value) + " of its end (" + lag.Reason
                + "). Set IsInterruptible to false, so that it is done in one go.");
    }

    // Clock and labour are two inputs for one thing; a clock that runs longer is a wait that is paid.
    private static PlanObjection? Contradiction(Operation operation, double difficulty)
    {
        if (operation.DurationAt(difficulty) is TimeSpan whole && whole > StepLag.Longest)
        {
            return WorkBuilder.TooLong(
                whole, operation.Id, "long", "'" + operation.Name + "'", "Look at the labour standard of the work, or divide the job");
        }

        if (operation.Labour.Count == 0)
        {
            return null;
        }

        if (operation.People == 0)
        {
            return new PlanObjection(
                ObjectionKind.Input, operation.Id, "labour",
                "'" + operation.Name + "' has labour and takes nobody: Labour would be paid to no one. Give it people, or take the labour out.");
        }

        double hours = operation.HoursAt(difficulty);
        return operation.Time is not TimeSpan time || CarefulTime.Up(time).TotalHours >= hours - (1.0 / 60)
            ? null
            : new PlanObjection(
                ObjectionKind.Input, operation.Id, "time",
                "'" + operation.Name + "' takes " + Measure.Hours.Format(time.TotalSeconds, DisplayUnits.Si, 3) + " by Time and "
                + Measure.Hours.Format(hours * 3600, DisplayUnits.Si, 3) + " by its Labour on these premises. Leave Time out, or give it at least as long.");
    }
}

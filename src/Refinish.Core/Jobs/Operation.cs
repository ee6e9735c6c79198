using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// One operation on site, from a notice to the neighbours to the last inspection: what is done, where, by how many, how long, what it takes
/// and what it does to the room. Schedule, air, money and job sheets are all made from the list of operations and from nothing else.
/// </summary>
/// <example><code>
/// Operation lamp = new()
/// {
///     Id = "bath-1/lamp", Kind = WorkKind.Other, Room = "bath-1", Instruction = "cure the clear coat under the lamp",
///     Time = TimeSpan.FromMinutes(30), Cautions = [],
/// };
/// </code></example>
public sealed record Operation
{
    private static readonly Source CallersOwn = Source.Supplied("an operation of the caller's own");

    private static readonly Bounds Times = Bounds.NotNegative(Measure.Hours, 60 * 24 * 3600);

    private readonly string? name;
    private readonly double? soundLevel;

    /// <summary>
    /// Identifier, unique within the job. Those that the rules make are formed from identifiers: room, kind of work, product, number of the
    /// coat.
    /// </summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Id { get; init => field = Guard.Named(value); }

    /// <summary>The kind of work, which finds its labour standard and its place in the order.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named kind.</exception>
    public required WorkKind Kind { get; init => field = Guard.Defined(value); }

    /// <summary>What the crew reads.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Instruction { get; init => field = Guard.Named(value); }

    /// <summary>Short label for timelines; the instruction unless given.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public string Name { get => name ?? Instruction; init => name = Guard.Named(value); }

    /// <summary>Identifier of the room; <see langword="null"/> for work outside the rooms.</summary>
    public string? Room { get; init; }

    /// <summary>Identifiers of the fixtures it is done on; empty for work on the whole room or premises.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<string> Fixtures { get; init => field = Guard.List(value); }
    = ValueList<string>.Empty;

    /// <summary>What differs from fixture to fixture; empty when the instruction says it all.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<FixtureInstruction> ByFixture { get; init => field = Guard.List(value); }
    = ValueList<FixtureInstruction>.Empty;

    /// <summary>
    /// How many of the crew it takes, 0 to 20; 1 unless given. With none it is a wait, which runs through nights and days off.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int People { get; init => field = Guard.Count(value, 0, 20); }
    = 1;

    /// <summary>
    /// Clock time, 0 to 60 days; <see langword="null"/> for the hours of its labour, up to whole minutes. It goes before the labour: a
    /// longer time, as of a coat that waits for mixing, is paid as labour of its standards; one shorter than they say is objected to.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan? Time
    {
        get;
        init
        {
            if (value is TimeSpan time)
            {
                Guard.Within(time, Times, nameof(Time));
            }

            field = value;
        }
    }

    /// <summary>
    /// Labour by the shop's standards, for each of its people; empty unless given. An operation of the caller's own with neither labour nor
    /// clock time takes that of the shop's standard for its kind of work, over the coated area of its fixtures and once for each. Work with
    /// a clock time and no standard is paid for that time. Labour of an operation with no people is objected to.
    /// </summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<LabourTask> Labour { get; init => field = Guard.List(value); }
    = ValueList<LabourTask>.Empty;

    /// <summary>
    /// Identifier of the operation beside which it runs from start to end, as standing by does; <see langword="null"/> for one of its own.
    /// </summary>
    public string? Beside { get; init; }

    /// <summary>Whether it may stop at the end of a shift and go on in the next.</summary>
    public bool IsInterruptible { get; init; }

    /// <summary>
    /// Whether it sprays: nobody but the sprayer is in the room until it is clear. The same goes for stripping, promoters, grains and
    /// whatever gives off enough to bring the closed room to the design line of flammability, a tenth by default.
    /// </summary>
    public bool Sprays { get; init; }

    /// <summary>
    /// How long after it the room takes to clear of what it gave off, 0 to 60 days; meanwhile nobody goes in without supplied air.
    /// Operations that the rules make have it from a study of the room.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan Clearing
    {
        get;
        init
        {
            Guard.Within(value, Times);
            field = value;
        }
    }

    /// <summary>Whether it raises dust, as sanding does.</summary>
    public bool RaisesDust { get; init; }

    /// <summary>How long afterwards its film has to be kept from dust in the same room, 0 to 60 days.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan DustFree
    {
        get;
        init
        {
            Guard.Within(value, Times);
            field = value;
        }
    }

    /// <summary>Whether it is loud, so that it keeps to the hours outside the quiet hours of the premises.</summary>
    public bool IsLoud { get; init; }

    /// <summary>
    /// A-weighted level at the ear of whoever does it, 60 to 140 dB; <see langword="null"/>, unless given, for that of the shop's list for
    /// its kind of work. Without either, work that is loud or sprays cannot be judged, and other work counts as quiet.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Level? SoundLevel
    {
        get => soundLevel is double level ? Level.FromDecibels(level) : null;
        init => soundLevel = value is Level level ? Guard.Within(level, NoiseSpan.Levels, nameof(SoundLevel)) : null;
    }

    /// <summary>Tools it occupies, one of each; none unless given. The spray gun is <c>spray-gun</c>.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<string> Tools { get; init => field = Guard.List(value); }
    = ValueList<string>.Empty;

    /// <summary>
    /// Materials it uses up, by identifier of the item: by volume, mass, area, length or piece; coats state theirs in their run. None
    /// unless given.
    /// </summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<MaterialNeed> Materials { get; init => field = Guard.List(value); }
    = ValueList<MaterialNeed>.Empty;

    /// <summary>What evaporates in its room while it is done and after; coats state theirs in their run. Nothing unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<Evaporation> Vapours { get; init => field = Guard.List(value); }
    = ValueList<Evaporation>.Empty;

    /// <summary>What can hurt in it.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<Caution> Cautions { get; init => field = Guard.List(value); }
    = ValueList<Caution>.Empty;

    /// <summary>What it rests on; supplied by the caller unless given.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public Source Source { get; init => field = Guard.NotNull(value); }
    = CallersOwn;

    /// <summary>The label.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Id + ": " + Name;

    /// <summary>Whole minutes, rounded up: nobody keeps seconds on site.</summary>
    internal TimeSpan DurationAt(double difficulty)
    {
        if (Time is TimeSpan time)
        {
            return CarefulTime.Up(time);
        }

        return CarefulTime.Up(Durations.FromHours(HoursAt(difficulty)));
    }

    /// <summary>Hours of one person by the labour standards.</summary>
    internal double HoursAt(double difficulty)
    {
        double hours = 0;
        foreach (LabourTask task in Labour)
        {
            hours += task.Hours.Mean * (task.Standard.IsOnSite ? difficulty : 1);
        }

        return hours;
    }
}

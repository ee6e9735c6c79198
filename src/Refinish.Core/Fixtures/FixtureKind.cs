using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Fixtures;

/// <summary>
/// A kind of fixture that this library knows, with all that it knows of it in one place: what it is called, what it is made of, what its
/// readings usually are, from which readings it can be quoted roughly.
/// </summary>
/// <remarks>
/// <see cref="All"/> is the registration: JSON, pictures, doubts, rough kinds and the pages of the documentation follow from it or are held
/// to it. A fixture of a caller's own type has no kind.
/// </remarks>
/// <example><code>
/// FixtureKind kind = FixtureKind.Of(RoughFixture.ShowerPan(Length.FromInches(36), Length.FromInches(48)))!;
/// string id = kind.Id;        // "showerPan"
/// string name = kind.Name;    // "shower pan"
/// UsualReading length = kind.Readings.Single(reading =&gt; reading.Name == "FloorLength");
/// double inches = length.Least.Inches;   // 24
/// </code></example>
public abstract class FixtureKind
{
    private protected FixtureKind()
    {
    }

    /// <summary>Every kind: those with a type of their own, those put together from parts, and the fixture of zones.</summary>
    public static IReadOnlyList<FixtureKind> All => Registered.All;

    /// <summary>Identifier, as documents write it; that of a <see cref="ComposedKind"/> is its own.</summary>
    public required string Id { get; init; }

    /// <summary>What it is, in a few words, such as <c>recessed bathtub</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Materials that such fixtures are made of; another one is doubted. Empty for what may be made of anything.</summary>
    public required IReadOnlyList<FixtureMaterial> Materials { get; init; }

    /// <summary>The kinds that are made of two or three readings; empty for what is always measured.</summary>
    public required IReadOnlyList<RoughKind> RoughKinds { get; init; }

    /// <summary>The type of such fixtures.</summary>
    public abstract Type FixtureType { get; }

    /// <summary>What its readings usually are, by form; empty for a kind without lengths of its own.</summary>
    public abstract IReadOnlyList<UsualReading> Readings { get; }

    /// <summary>Whether walls stand on it round three sides.</summary>
    internal WallBase Walls { get; init; }

    /// <summary>Whether what looks down on it is reached from the side, so that nobody works overhead.</summary>
    internal bool IsReachedFromTheSide { get; init; }

    /// <summary>The kind of a fixture; of a rough one, that of the fixture behind it.</summary>
    /// <param name="fixture">The fixture.</param>
    /// <returns>The kind; <see langword="null"/> for one of a caller's own type.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="fixture"/> is missing.</exception>
    public static FixtureKind? Of(IFixture fixture)
    {
        IFixture measured = Measured(Guard.NotNull(fixture));
        return All.FirstOrDefault(kind => kind.Holds(measured));
    }

    /// <summary>
    /// What the readings of a fixture usually are, in the form in which it was measured: the table behind <see cref="TapeDoubts"/>.
    /// </summary>
    /// <param name="fixture">The fixture.</param>
    /// <returns>The bands; empty for a fixture of a caller's own type, of which this library knows no readings.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="fixture"/> is missing.</exception>
    public static IReadOnlyList<UsualReading> ReadingsOf(IFixture fixture) =>
        new ValueList<UsualReading>(Of(fixture)?.UsualFor(Measured(fixture)) ?? []);

    /// <summary>The name.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name;

    /// <summary>
    /// The fixture that was measured: itself, unless it stands for another one. The one place where a wrapper is unwrapped.
    /// </summary>
    internal static IFixture Measured(IFixture fixture) => RoughFixture.Behind(fixture);

    /// <summary>Whether a measured fixture is of this kind; the members below ask for one that is.</summary>
    internal abstract bool Holds(IFixture fixture);

    internal abstract IEnumerable<UsualReading> UsualFor(IFixture fixture);

    internal abstract IEnumerable<TypedReading> Read(IFixture fixture);

    internal abstract IEnumerable<Proportion> Proportions(IFixture fixture);

    /// <summary>Its place on the floor; <see langword="null"/> for what stands on none.</summary>
    internal abstract Footprint? Footprint(IFixture fixture);

    /// <summary>What is taken off it before work.</summary>
    internal abstract string Clearing(IFixture fixture);

    /// <summary>What is put back after it.</summary>
    internal abstract string PuttingBack(IFixture fixture);

    /// <summary>The cut-outs of a top; empty for what is no top.</summary>
    internal abstract IReadOnlyList<RectangularOpening> CutOuts(IFixture fixture);

    /// <summary>The depth of a counter before its upstand, where it is deepest; <see langword="null"/> for what is none.</summary>
    internal abstract double? CounterDepth(IFixture fixture);

    /// <summary>The longest length that was read; 0 when none was.</summary>
    internal double Longest(IFixture fixture) => Read(fixture).Select(reading => reading.Metres).DefaultIfEmpty().Max();

    // Apart, because the entries are of classes that derive from this one, whose own statics come first.
    private static class Registered
    {
        public static readonly IReadOnlyList<FixtureKind> All = new ValueList<FixtureKind>(
        [
            TubRows.Recessed, TubRows.Freestanding, TubRows.Oval, TubRows.Corner, SinkRows.Pedestal, SinkRows.Counter, PanRows.Pan,
            TopRows.Counter, TopRows.Panel, WallRows.Surround, .. ComposedKind.Kinds.Select(UsualOfComposed.Kind), UsualOfComposed.Zones,
        ]);
    }
}

using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// What is known of a kind of fixture, in one place: its readings with their bands, how they go together, its place on the floor, its usual
/// materials.
/// </summary>
internal abstract class KnownKind
{
    /// <summary>One entry for each kind.</summary>
    /// <remarks>
    /// Made when it is first asked for: the entries are of classes that derive from this one, whose own statics come first.
    /// </remarks>
    public static IReadOnlyList<KnownKind> All => field ??= new ValueList<KnownKind>(
    [
        TubRows.Recessed, TubRows.Freestanding, TubRows.Oval, TubRows.Corner,
        SinkRows.Pedestal, SinkRows.Counter, PanRows.Pan, TopRows.Panel, TopRows.Counter, WallRows.Surround,
        .. ComposedKind.Kinds.Select(UsualOfComposed.Kind),
    ]);

    /// <summary>The kind in words, such as <c>recessed bathtub</c>; those of its last form unless given.</summary>
    public string Words { get; init; } = string.Empty;

    /// <summary>Materials that such fixtures are made of.</summary>
    public required IReadOnlyList<FixtureMaterial> Materials { get; init; }

    public abstract IReadOnlyList<UsualReading> Usual { get; }

    /// <summary>
    /// The fixture that was measured: itself, unless it stands for another one. The one place where a wrapper is unwrapped.
    /// </summary>
    public static IFixture Measured(IFixture fixture) => RoughFixture.Behind(fixture);

    /// <summary>The kind of a fixture; <see langword="null"/> for one of a caller's own type.</summary>
    public static KnownKind? Of(IFixture fixture) => All.FirstOrDefault(kind => kind.Holds(fixture));

    /// <summary>Whether a fixture is of this kind.</summary>
    public abstract bool Holds(IFixture fixture);

    public abstract IEnumerable<UsualReading> UsualFor(IFixture fixture);

    public abstract IEnumerable<TypedReading> Read(IFixture fixture);

    public abstract IEnumerable<Proportion> Proportions(IFixture fixture);

    /// <summary>Its place on the floor; <see langword="null"/> for what stands on none.</summary>
    public abstract Footprint? Footprint(IFixture fixture);

    /// <summary>The longest length that was read; 0 when none was.</summary>
    public double Longest(IFixture fixture) => Read(fixture).Select(reading => reading.Metres).DefaultIfEmpty().Max();
}

/// <summary>What is known of one kind of fixture and its record of measurements.</summary>
internal sealed class KnownKind<TFixture, TTape> : KnownKind
    where TFixture : class, IFixture
    where TTape : class
{
    private readonly (UsualReading Usual, ReadingRow<TTape> Row)[][] rows;

    public KnownKind(params Form<TTape>[] forms)
        : this(typeof(TFixture).Name, forms)
    {
    }

    public KnownKind(string name, params Form<TTape>[] forms)
    {
        Forms = forms;
        Words = forms[forms.Length - 1].Words;
        rows = [.. forms.Select(form => form.Rows.Select(row => (row.Usual(name, form.Words), row)).ToArray())];
        Usual = new ValueList<UsualReading>(rows.SelectMany(form => form.Select(row => row.Usual)));
    }

    /// <summary>Which fixtures of the type; all unless set.</summary>
    public Func<TFixture, bool> Only { get; init; } = _ => true;

    public override IReadOnlyList<UsualReading> Usual { get; }

    public required Func<TFixture, TTape> Tape { get; init; }

    public required Func<TTape, TFixture> Make { get; init; }

    public Func<TTape, IEnumerable<Proportion>> GoTogether { get; init; } = _ => [];

    public Func<TTape, Footprint?> OnTheFloor { get; init; } = _ => null;

    private Form<TTape>[] Forms { get; }

    public override bool Holds(IFixture fixture) => fixture.GetType() == typeof(TFixture) && Only((TFixture)fixture);

    public override IEnumerable<UsualReading> UsualFor(IFixture fixture) => RowsFor(Tape((TFixture)fixture)).Select(row => row.Usual);

    public override IEnumerable<TypedReading> Read(IFixture fixture)
    {
        TTape tape = Tape((TFixture)fixture);
        return RowsFor(tape).SelectMany(row => row.Row.Read(tape, row.Usual, Make));
    }

    public override IEnumerable<Proportion> Proportions(IFixture fixture) => GoTogether(Tape((TFixture)fixture));

    public override Footprint? Footprint(IFixture fixture) => OnTheFloor(Tape((TFixture)fixture));

    /// <summary>Some of the single readings, all with the same ±.</summary>
    public IEnumerable<TapeReading<TTape>> Taped(Length plusMinus, ReadingSpread spread, params string[] names) =>
        names.Select(name => Forms[0].Rows.First(row => row.Name == name).Taped(plusMinus, spread));

    private (UsualReading Usual, ReadingRow<TTape> Row)[] RowsFor(TTape tape) => rows[Array.FindIndex(Forms, form => form.Applies(tape))];
}

/// <summary>One of the things that a kind of fixture can stand for, with its rows. The last form of a kind applies to all.</summary>
internal sealed record Form<T>(string Words, params ReadingRow<T>[] Rows)
    where T : class
{
    /// <summary>Which measurements it is for; all unless set.</summary>
    public Func<T, bool> Applies { get; init; } = _ => true;
}

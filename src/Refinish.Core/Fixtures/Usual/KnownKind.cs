using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>What is known of one kind of fixture and its record of measurements. What is required here is asked of every kind.</summary>
internal sealed class KnownKind<TFixture, TTape> : FixtureKind, IMeasured<TTape>
    where TFixture : class, IFixture
    where TTape : class
{
    private readonly Form<TTape>[] forms;
    private readonly (UsualReading Usual, ReadingRow<TTape> Row)[][] rows;

    /// <summary>A kind that is measured by a record with a table of inputs.</summary>
    public KnownKind(RecordInputs<TTape> inputs, params Form<TTape>[] forms) : this(inputs, typeof(TFixture).Name, forms)
    {
    }

    public KnownKind(RecordInputs<TTape>? inputs, string fixture, params Form<TTape>[] forms)
    {
        this.forms = forms;
        rows =
        [
            .. forms.Select(form =>
                form.Rows.Select(row => row.From(inputs)).Select(row => (row.Usual(fixture, form.Words), row)).ToArray()),
        ];
        Readings = new ValueList<UsualReading>(rows.SelectMany(form => form.Select(row => row.Usual)));
    }

    public override Type FixtureType => typeof(TFixture);

    public override IReadOnlyList<UsualReading> Readings { get; }

    /// <summary>Which fixtures of the type; all unless set.</summary>
    public Func<TFixture, bool> Only { get; init; } = _ => true;

    public required Func<TFixture, TTape> Tape { get; init; }

    public required Func<TTape, TFixture> Make { get; init; }

    public required Func<TTape, Footprint?> OnTheFloor { get; init; }

    public required Func<TTape, string> TakenOff { get; init; }

    /// <summary>What is put back; what most fixtures get unless set.</summary>
    public Func<TTape, string> PutBack { get; init; } = _ => ClearingWords.CaulkAndRefit;

    /// <summary>Names of the readings whose ± counts for the area, in the order in which it is told; all rows unless set.</summary>
    public Func<TTape, IReadOnlyList<string>>? Taped { get; init; }

    public Func<TTape, IEnumerable<Proportion>> GoTogether { get; init; } = _ => [];

    public Func<TTape, IReadOnlyList<RectangularOpening>> Holes { get; init; } = _ => [];

    public Func<TTape, double?> Deepest { get; init; } = _ => null;

    public bool Measures(TTape tape) => tape is not TFixture fixture || Only(fixture);

    public IEnumerable<TapeReading<TTape>> Taken(TTape tape, Length plusMinus, ReadingSpread spread)
    {
        ReadingRow<TTape>[] own = [.. RowsFor(tape).Select(row => row.Row)];
        IEnumerable<string> names = Taped?.Invoke(tape) ?? own.Select(row => row.Name).Distinct();
        return names.SelectMany(name => own.Where(row => row.Name == name)).SelectMany(row => row.Taken(tape, plusMinus, spread));
    }

    internal override bool Holds(IFixture fixture) => fixture.GetType() == typeof(TFixture) && Only((TFixture)fixture);

    internal override IEnumerable<UsualReading> UsualFor(IFixture fixture) => RowsFor(TapeOf(fixture)).Select(row => row.Usual);

    internal override IEnumerable<TypedReading> Read(IFixture fixture)
    {
        TTape tape = TapeOf(fixture);
        return RowsFor(tape).SelectMany(row => row.Row.Read(tape, row.Usual, Make));
    }

    internal override IEnumerable<Proportion> Proportions(IFixture fixture) => GoTogether(TapeOf(fixture));

    internal override Footprint? Footprint(IFixture fixture) => OnTheFloor(TapeOf(fixture));

    internal override string Clearing(IFixture fixture) => TakenOff(TapeOf(fixture));

    internal override string PuttingBack(IFixture fixture) => PutBack(TapeOf(fixture));

    internal override IReadOnlyList<RectangularOpening> CutOuts(IFixture fixture) => Holes(TapeOf(fixture));

    internal override double? CounterDepth(IFixture fixture) => Deepest(TapeOf(fixture));

    private TTape TapeOf(IFixture fixture) => Tape((TFixture)fixture);

    private (UsualReading Usual, ReadingRow<TTape> Row)[] RowsFor(TTape tape) => rows[Array.FindIndex(forms, form => form.Applies(tape))];
}

/// <summary>One of the things that a kind of fixture can stand for, with its rows. The last form of a kind applies to all.</summary>
internal sealed record Form<T>(string Words, Func<T, bool> Applies, params ReadingRow<T>[] Rows) where T : class;

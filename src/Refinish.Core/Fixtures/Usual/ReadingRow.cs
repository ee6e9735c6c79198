using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>A row of the table: a reading, its band in inches, and how it is found among the measurements and put back.</summary>
internal sealed class ReadingRow<T>
    where T : class
{
    private readonly string name;
    private readonly string? words;
    private readonly double least;
    private readonly double greatest;
    private readonly Source source;
    private readonly Func<T, IEnumerable<int>>? entries;
    private readonly Func<T, int, Length>? value;
    private readonly Func<T, int, Length, T>? with;

    /// <summary>A reading of the record's table, which has its words and knows how it is found and put back.</summary>
    public ReadingRow(string name, double least, double greatest, Source source)
    {
        this.name = name;
        this.least = least;
        this.greatest = greatest;
        this.source = source;
    }

    /// <summary>A single reading.</summary>
    public ReadingRow(string name, string words, double least, double greatest, Source source, Func<T, Length> value, Func<T, Length,
        T> with)
        : this(name, words, least, greatest, source, null, (tape, _) => value(tape), (tape, _, length) => with(tape, length))
    {
    }

    /// <summary>A reading of the entries of a list; {0} in its words is the number of the entry, from 1.</summary>
    public ReadingRow(
        string name, string words, double least, double greatest, Source source,
        Func<T, IEnumerable<int>>? entries, Func<T, int, Length> value, Func<T, int, Length, T> with)
        : this(name, least, greatest, source)
    {
        this.words = words;
        this.entries = entries;
        this.value = value;
        this.with = with;
    }

    public string Name => name;

    /// <summary>How lengths that follow from the reading move along, where they do, as a tub's floor from mouth and runs.</summary>
    public Func<T, Length, T>? Along { get; init; }

    /// <summary>How another reading is put in its place, where more has to change with it.</summary>
    public Func<T, Length, T>? Change { get; init; }

    /// <summary>The row with words and places from the record's table, where it has none of its own.</summary>
    public ReadingRow<T> From(RecordInputs<T>? inputs) => words is not null
        ? this
        : new(
            name, inputs![name].Meaning, least, greatest, source, tape => inputs.ValuesOf(tape).Length(name),
            Change ?? ((tape, length) => inputs.With(tape, inputs.ValuesOf(tape).With(name, length))))
        {
            Along = Along, };

    public UsualReading Usual(string fixture, string form) =>
        new(fixture, form, name, words!.Replace(" {0}", string.Empty), least * 0.0254, greatest * 0.0254, source);

    /// <summary>The readings that were taken: one of 0 was not.</summary>
    public IEnumerable<TypedReading> Read(T tape, UsualReading usual, Func<T, IFixture> make)
    {
        foreach (int i in entries?.Invoke(tape) ?? [0])
        {
            double metres = value!(tape, i).Meters;
            if (metres != 0)
            {
                yield return new TypedReading(
                    entries is null ? name : Path(i),
                    words!.Replace("{0}", (i + 1).ToString(CultureInfo.InvariantCulture)),
                    usual,
                    Math.Abs(metres),
                    length => _ = make(with!(tape, i, Length.FromMeters(Math.Sign(metres) * length))));
            }
        }
    }

    /// <summary>The readings that were taken, with their ±.</summary>
    public IEnumerable<TapeReading<T>> Taken(T tape, Length plusMinus, ReadingSpread spread) => (entries?.Invoke(tape) ?? [0])
        .Where(i => value!(tape, i).Meters != 0)
        .Select(i => new TapeReading<T>(
            entries is null ? name : Path(i), plusMinus, spread, read => value!(read, i),
            (read, length) => Along is null ? with!(read, i, length) : Along(read, length)));

    /// <summary>A list with another entry in one place.</summary>
    public static IReadOnlyList<TEntry> Put<TEntry>(IReadOnlyList<TEntry> list, int place, TEntry entry) =>
        [.. list.Select((old, i) => i == place ? entry : old)];

    private string Path(int i)
    {
        int point = name.IndexOf('.');
        return name.Substring(0, point) + "[" + i.ToString(CultureInfo.InvariantCulture) + "]" + name.Substring(point);
    }
}

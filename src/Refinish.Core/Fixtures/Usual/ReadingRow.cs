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
    private readonly string words;
    private readonly double least;
    private readonly double greatest;
    private readonly Source source;
    private readonly Func<T, IEnumerable<int>>? entries;
    private readonly Func<T, int, Length> value;
    private readonly Func<T, int, Length, T> with;

    /// <summary>A single reading.</summary>
    public ReadingRow(string name, string words, double least, double greatest, Source source, Func<T, Length> value,
        Func<T, Length, T> with)
        : this(name, words, least, greatest, source, null, (tape, _) => value(tape), (tape, _, length) => with(tape, length))
    {
    }

    /// <summary>A reading of the entries of a list; {0} in its words is the number of the entry, from 1.</summary>
    public ReadingRow(
        string name, string words, double least, double greatest, Source source,
        Func<T, IEnumerable<int>>? entries, Func<T, int, Length> value, Func<T, int, Length, T> with)
    {
        this.name = name;
        this.words = words;
        this.least = least;
        this.greatest = greatest;
        this.source = source;
        this.entries = entries;
        this.value = value;
        this.with = with;
    }

    public string Name => name;

    public UsualReading Usual(string fixture, string form) =>
        new(fixture, form, name, words.Replace(" {0}", string.Empty), least * 0.0254, greatest * 0.0254, source);

    /// <summary>The readings that were taken: one of 0 was not.</summary>
    public IEnumerable<TypedReading> Read(T tape, UsualReading usual, Func<T, IFixture> make)
    {
        foreach (int i in entries?.Invoke(tape) ?? [0])
        {
            double metres = value(tape, i).Meters;
            if (metres != 0)
            {
                yield return new TypedReading(
                    entries is null ? name : Path(i),
                    words.Replace("{0}", (i + 1).ToString(CultureInfo.InvariantCulture)),
                    usual,
                    Math.Abs(metres),
                    length => _ = make(with(tape, i, Length.FromMeters(Math.Sign(metres) * length))));
            }
        }
    }

    /// <summary>A single reading with its ±.</summary>
    public TapeReading<T> Taped(Length plusMinus, ReadingSpread spread) =>
        new(name, plusMinus, spread, tape => value(tape, 0), (tape, length) => with(tape, 0, length));

    /// <summary>A list with another entry in one place.</summary>
    public static IReadOnlyList<TEntry> Put<TEntry>(IReadOnlyList<TEntry> list, int place, TEntry entry) =>
        [.. list.Select((old, i) => i == place ? entry : old)];

    private string Path(int i)
    {
        int point = name.IndexOf('.');
        return name.Substring(0, point) + "[" + i.ToString(CultureInfo.InvariantCulture) + "]" + name.Substring(point);
    }
}

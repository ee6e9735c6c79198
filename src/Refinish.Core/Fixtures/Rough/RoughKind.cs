using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Fixtures;

/// <summary>
/// A kind of fixture that can be quoted from two or three readings: which readings it has, which have to be taken, and what stands in for
/// the others.
/// </summary>
/// <remarks>
/// The proportions come from no document; each names its source. What is no reading is part of the kind: a freestanding tub that is coated
/// inside only and one that is coated all round are two kinds, and so are sinks by how they are mounted.
/// </remarks>
/// <example><code>
/// RoughKind tub = RoughKind.Of("recessedBathtub");
/// string needed = string.Join(", ", tub.Needed);   // "OverallLength, OverallWidth"
/// </code></example>
public sealed class RoughKind
{
    private readonly Func<KnownReadings, IFixture> make;

    internal RoughKind(
        string id, string name, Type fixture, IReadOnlyList<RoughReading> readings, string[] closing, Func<KnownReadings, IFixture> make)
    {
        Id = id;
        Name = name;
        FixtureType = fixture;
        All = readings;
        Closing = closing;
        this.make = make;
        Places = readings.Select((reading, place) => (reading.Name, Place: place))
            .ToDictionary(pair => pair.Name, pair => pair.Place, StringComparer.Ordinal);
    }

    /// <summary>The kinds of this library.</summary>
    public static IReadOnlyList<RoughKind> Kinds => field ??= new ValueList<RoughKind>(FixtureKind.All.SelectMany(kind => kind.RoughKinds));

    /// <summary>Identifier, as documents write it.</summary>
    public string Id { get; }

    /// <summary>What it is, in a few words.</summary>
    public string Name { get; }

    /// <summary>The fixture that is made of the readings.</summary>
    public Type FixtureType { get; }

    /// <summary>Names of all readings, in the order in which they follow from each other.</summary>
    public IReadOnlyList<string> Readings => new ValueList<string>(All.Select(reading => reading.Name));

    /// <summary>Names of the readings that have to be taken.</summary>
    public IReadOnlyList<string> Needed =>
        new ValueList<string>(All.Where(reading => reading.Assumption is null).Select(reading => reading.Name));

    /// <summary>What stands in for the readings that are not taken.</summary>
    public IReadOnlyList<ReadingAssumption> Assumptions =>
        new ValueList<ReadingAssumption>(All.Select(reading => reading.Assumption).OfType<ReadingAssumption>());

    internal IReadOnlyList<RoughReading> All { get; }

    internal IReadOnlyDictionary<string, int> Places { get; }

    /// <summary>A whole and the parts that make it up, where one of them follows from the others; empty where there is none.</summary>
    internal IReadOnlyList<string> Closing { get; }

    /// <summary>The kind with an identifier.</summary>
    /// <param name="id">The identifier.</param>
    /// <returns>The kind.</returns>
    /// <exception cref="ArgumentException">It is not known; the message lists those that are.</exception>
    public static RoughKind Of(string id) => Kinds.FirstOrDefault(kind => kind.Id == id)
        ?? throw new ArgumentException("id is \"" + id + "\"; known: " + string.Join(", ", Kinds.Select(kind => kind.Id)) + ".",
            nameof(id));

    /// <summary>The name.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name;

    internal IFixture Make(double[] values) => make(new KnownReadings(Places, values, []));

    /// <summary>The place of a reading among the others.</summary>
    internal int PlaceOf(string reading, string parameter) => Places.TryGetValue(Guard.Named(reading, parameter), out int place)
        ? place
        : throw new ArgumentException(parameter + " is \"" + reading + "\", which a " + Name + " does not have; its readings: "
            + string.Join(", ", Readings) + ".", parameter);
}

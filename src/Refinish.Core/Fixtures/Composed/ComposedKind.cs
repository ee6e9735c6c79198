using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Fixtures;

/// <summary>
/// A kind of <see cref="ComposedFixture"/>: which readings the tape gives, of which parts it is put together, what is coated and what is
/// not, and why.
/// </summary>
/// <remarks>
/// The parts are flat faces, bowls, shells between two ellipses and frustums; where parts meet, what one covers of the other comes off
/// once. The kinds are this library's; a fixture of another make-up is entered by its zones.
/// </remarks>
/// <example><code>
/// ComposedKind toilet = ComposedKind.Toilet;
/// string needed = string.Join(", ", toilet.Readings.Where(reading =&gt; reading.IsRequired).Take(2).Select(reading =&gt; reading.Name));
/// // "RimLength, RimWidth"
/// string why = toilet.NotCoated[0].Name;   // "inside of the bowl with the jets under its rim"
/// </code></example>
public sealed partial class ComposedKind
{
    internal ComposedKind(string id, string name, IReadOnlyList<InputField> readings, Action<Composition> compose)
    {
        Id = id;
        Name = name;
        Readings = new InputTable(readings);
        Compose = compose;
    }

    /// <summary>Identifier, as documents write it.</summary>
    public string Id { get; }

    /// <summary>What it is, in a few words.</summary>
    public string Name { get; }

    /// <summary>What the tape gives, in the order in which it is asked for.</summary>
    public InputTable Readings { get; }

    /// <summary>What is coated, and what holds for measuring it.</summary>
    public required string Coated { get; init; }

    /// <summary>What is left as it is, with the reason; empty when everything that shows is coated.</summary>
    public IReadOnlyList<UncoatedSurface> NotCoated { get; internal init; } = ValueList<UncoatedSurface>.Empty;

    /// <summary>Materials that such fixtures are made of; another one is doubted.</summary>
    public required IReadOnlyList<FixtureMaterial> Materials { get; init; }

    /// <summary>What is taken off or freed before work.</summary>
    public required string Clearing { get; init; }

    /// <summary>What is put back after it.</summary>
    public required string PuttingBack { get; init; }

    /// <summary>What has to be minded on such a fixture beyond what the work itself brings.</summary>
    public IReadOnlyList<Caution> Cautions { get; internal init; } = ValueList<Caution>.Empty;

    internal Action<Composition> Compose { get; }

    /// <summary>The readings that say how large it is.</summary>
    internal (string First, string Second) Size { get; init; }

    /// <summary>The reading of how many pieces alike there are.</summary>
    internal string? Pieces { get; init; }

    /// <summary>Whether its size is its place on the floor.</summary>
    internal bool StandsOnTheFloor { get; init; }

    /// <summary>The kind with an identifier.</summary>
    /// <param name="id">The identifier.</param>
    /// <returns>The kind.</returns>
    /// <exception cref="ArgumentException">It is not known; the message lists those that are.</exception>
    public static ComposedKind Of(string id) => Kinds.FirstOrDefault(kind => kind.Id == id)
        ?? throw new ArgumentException("id is \"" + id + "\"; known: " + string.Join(", ", Kinds.Select(kind => kind.Id)) + ".",
            nameof(id));

    /// <summary>The name.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name;

    internal InputField Reading(string name) => Readings[name];

    /// <summary>The place of a reading among the others.</summary>
    internal int PlaceOf(string reading, string parameter) => Readings.Find(reading) is >= 0 and int place
        ? place
        : throw new ArgumentException(parameter + " names \"" + reading + "\", which a " + Name + " does not have; its readings: "
            + Readings + ".", parameter);
}

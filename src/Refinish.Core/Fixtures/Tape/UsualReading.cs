using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>What a reading of a kind of fixture usually is.</summary>
/// <remarks>
/// A band is wide enough for what is met in houses, and narrow enough that most slips leave it. Beyond it a reading is in doubt, not wrong.
/// </remarks>
public sealed record UsualReading
{
    private readonly double least;
    private readonly double greatest;

    internal UsualReading(string fixture, string form, string name, string words, double leastMetres, double greatestMetres, Source source)
    {
        Fixture = fixture;
        Form = form;
        Name = name;
        Words = words;
        least = leastMetres;
        greatest = greatestMetres;
        Source = source;
    }

    /// <summary>
    /// The kind of fixture, by the name of its type, such as <c>RecessedBathtub</c>, or of its <see cref="ComposedKind"/> by the
    /// identifier.
    /// </summary>
    public string Fixture { get; }

    /// <summary>Which form of it, where one kind stands for several things, such as <c>counter along a wall</c>.</summary>
    public string Form { get; }

    /// <summary>
    /// The reading, by its name among the measurements; that of a list's entry with a point, such as <c>Walls.Length</c>.
    /// </summary>
    public string Name { get; }

    /// <summary>The reading in words.</summary>
    public string Words { get; }

    /// <summary>The least that is usual.</summary>
    public Length Least => Length.FromMeters(least);

    /// <summary>The greatest that is usual.</summary>
    public Length Greatest => Length.FromMeters(greatest);

    /// <summary>Where the band comes from.</summary>
    public Source Source { get; }

    internal double LeastMetres => least;

    internal double GreatestMetres => greatest;

    // A limit of 24 in and a reading of 24 in may differ in the last digit of their metres.
    internal bool Holds(double metres) => metres >= least * (1 - 1e-9) && metres <= greatest * (1 + 1e-9);

    /// <summary>The reading and its band in one line, in metric units.</summary>
    /// <returns>Text such as <c>RecessedBathtub Depth: 254 mm to 609.6 mm</c>.</returns>
    public override string ToString() => $"{Fixture} {Name}: {Measure.Length.Format(least)} to {Measure.Length.Format(greatest)}";
}

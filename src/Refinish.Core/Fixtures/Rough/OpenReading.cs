using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>One reading of a rough fixture that is still open: between what it is assumed to lie, and what that does to the area.</summary>
/// <example><code>
/// RoughFixture tub = RoughFixture.RecessedBathtub(Length.FromInches(60), Length.FromInches(30));
/// string next = tub.AreaRange.Next!.Name;   // "Depth"
/// </code></example>
public sealed record OpenReading
{
    private readonly double areaAtLeast;
    private readonly double areaAtGreatest;
    private readonly double narrowing;

    internal OpenReading(
        string name,
        bool isTaken,
        (double Least, double Likely, double Greatest) band,
        Measure measure,
        (double AtLeast, double AtGreatest, double Narrowing) area,
        Source source)
    {
        Name = name;
        IsTaken = isTaken;
        (Least, Likely, Greatest) = band;
        Measure = measure;
        (areaAtLeast, areaAtGreatest, narrowing) = area;
        Source = source;
    }

    /// <summary>Name of the reading.</summary>
    public string Name { get; }

    /// <summary>Whether it was taken or said, and only its ± is left.</summary>
    public bool IsTaken { get; }

    /// <summary>Least value with the other readings at their most likely, in the SI base unit of <see cref="Measure"/>.</summary>
    public double Least { get; }

    /// <summary>Most likely value, in the same unit.</summary>
    public double Likely { get; }

    /// <summary>Greatest value, in the same unit.</summary>
    public double Greatest { get; }

    /// <summary>What kind of amount the reading is.</summary>
    public Measure Measure { get; }

    /// <summary>Coated area with this reading alone at its least.</summary>
    public Area AreaAtLeast => Area.FromSquareMeters(areaAtLeast);

    /// <summary>Coated area with this reading alone at its greatest.</summary>
    public Area AreaAtGreatest => Area.FromSquareMeters(areaAtGreatest);

    /// <summary>
    /// By how much the range from least to greatest area narrows when this reading is taken without error and comes out as the most likely
    /// value.
    /// </summary>
    public Area Narrowing => Area.FromSquareMeters(narrowing);

    /// <summary>Where the band comes from.</summary>
    public Source Source { get; }

    internal double NarrowingSquareMeters => narrowing;

    /// <summary>Name, band and what taking it is worth, in metric units.</summary>
    /// <returns>Text such as <c>Depth 280 mm to 460 mm: 0.36 m² narrower</c>.</returns>
    public override string ToString() => Sentence(DisplayUnits.Si);

    /// <summary>Name, band and what taking it is worth.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>Text such as <c>Depth 280 mm to 460 mm: 0.36 m² narrower</c>.</returns>
    public string Sentence(DisplayUnits system) =>
        $"{Name} {Measure.Format(Least, system, 3)} to {Measure.Format(Greatest, system, 3)}:"
        + $" {Measure.Area.Format(narrowing, system, 2)} narrower";
}

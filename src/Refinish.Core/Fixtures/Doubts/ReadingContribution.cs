using System.Globalization;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>What one tape reading does to area and capacity: its standard uncertainty, the slopes, and the parts it adds.</summary>
/// <example><code>
/// FlatPanel panel = new(tape);                               // the counter of FlatPanelMeasurements
/// FixtureUncertainty spread = FixtureUncertainty.Of(tape, static t => new FlatPanel(t), [new("Width", Length.FromInches(0.25), ReadingSpread.TwoSigma, static t => t.Width, static (t, x) => t with { Width = x })]);
/// double squareInches = spread.Contributions[0].Area.SquareInches;   // 12.0
/// </code></example>
public sealed record ReadingContribution
{
    private readonly double uncertainty;
    private readonly double areaSlope;
    private readonly double capacitySlope;

    internal ReadingContribution(string name, double uncertainty, double areaSlope, double capacitySlope)
    {
        Name = name;
        this.uncertainty = uncertainty;
        this.areaSlope = areaSlope;
        this.capacitySlope = capacitySlope;
    }

    /// <summary>The measurement's name.</summary>
    public string Name { get; }

    /// <summary>The standard uncertainty of the reading.</summary>
    public Length StandardUncertainty => Length.FromMeters(uncertainty);

    /// <summary>How much the coated area grows per length of the reading, in square metres per metre.</summary>
    public Length AreaPerLength => Length.FromMeters(areaSlope);

    /// <summary>How much the capacity grows per length of the reading, in cubic metres per metre; 0 for what holds no water.</summary>
    public Area CapacityPerLength => Area.FromSquareMeters(capacitySlope);

    /// <summary>The part this reading adds to the area's standard uncertainty, with the sign of the slope.</summary>
    public Area Area => Area.FromSquareMeters(areaSlope * uncertainty);

    /// <summary>The part this reading adds to the capacity's standard uncertainty, with the sign of the slope.</summary>
    public Volume Capacity => Volume.FromCubicMeters(capacitySlope * uncertainty);

    /// <summary>The name and the part of the area in one line, in metric units.</summary>
    /// <returns>Text such as <c>Depth: 0.0055 m²</c>.</returns>
    public override string ToString() =>
        string.Format(CultureInfo.InvariantCulture, "{0}: {1}", Name, Measure.Area.Format(areaSlope * uncertainty));
}

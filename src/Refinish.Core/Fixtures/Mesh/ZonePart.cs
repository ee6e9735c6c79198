using System;
using System.Globalization;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// A part of a fixture that has no type of its own: what it is called, which zone it belongs to, how large and how steep it is.
/// </summary>
/// <remarks>Coated = plain area × developed factor − openings, as for every <see cref="SurfacePatch"/>.</remarks>
/// <example><code>
/// ZonePart soffit = new("soffit above the shower", FixtureZoneKind.Outside, Area.FromSquareMeters(0.9), Angle.FromDegrees(180))
/// {
///     OpeningArea = Area.FromSquareMeters(0.02),
/// };
/// double coated = soffit.CoatedArea.SquareMeters;   // 0.88
/// </code></example>
public sealed record ZonePart
{
    private static readonly Source Measured = Source.Supplied("measured on the fixture");

    private readonly double area;
    private readonly double slope;
    private readonly double openings;

    /// <summary>Makes one measured surface of a fixture.</summary>
    /// <param name="name">What it is called, unique within its fixture.</param>
    /// <param name="kind">The zone it belongs to; several parts may belong to one.</param>
    /// <param name="area">Its plain area, more than 0 and at most 1000 m².</param>
    /// <param name="slopeFromHorizontal">
    /// 0° looks up, 90° is upright, 180° looks down; the mean weighted by area where it varies. A floor does not look down.
    /// </param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public ZonePart(string name, FixtureZoneKind kind, Area area, Angle slopeFromHorizontal)
    {
        Name = Guard.Named(name);
        Kind = Guard.Defined(kind);
        this.area = Guard.Within(area, Bounds.Positive(Measure.Area, 1000));
        slope = Guard.Within(slopeFromHorizontal, Bounds.Between(0, Math.PI, Measure.Angle));
        Guard.Rule(kind != FixtureZoneKind.Floor || slope <= Math.PI / 2, nameof(slopeFromHorizontal), slope, Measure.Angle,
            "at most 90° for Floor, on which a person stands; turn a mesh over that faces away");
        Guard.Rule(kind != FixtureZoneKind.Ceiling || slope > Math.PI / 2, nameof(slopeFromHorizontal), slope, Measure.Angle,
            "more than 90° for Ceiling, which looks down: 180° where it is level");
    }

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>The zone it belongs to.</summary>
    public FixtureZoneKind Kind { get; }

    /// <summary>Its plain area.</summary>
    public Area Area => Area.FromSquareMeters(area);

    /// <summary>0° looks up, 90° is upright, 180° looks down.</summary>
    public Angle SlopeFromHorizontal => Angle.FromRadians(slope);

    /// <summary>Developed over plain area, 1 to 3: what texture, joints or a profile add; 1, which is smooth, unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double DevelopedFactor { get; init => field = Guard.Within(value, Bounds.Between(1, 3, Measure.Number)); }
    = 1;

    /// <summary>Openings that are taken off, 0 or more; none unless given. A fixture refuses a part of which they leave nothing.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Area OpeningArea
    {
        get => Area.FromSquareMeters(openings);
        init => openings = Guard.Within(value, Bounds.NotNegative(Measure.Area));
    }

    /// <summary>Where the area comes from; the caller's own measurement unless given.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public Source Source { get; init => field = Guard.NotNull(value); }
    = Measured;

    /// <summary>What gets coated: plain area × developed factor − openings.</summary>
    public Area CoatedArea => Area.FromSquareMeters(Coated);

    internal double Coated => (area * DevelopedFactor) - openings;

    internal double SquareMetres => area;

    internal double Radians => slope;

    /// <summary>The name, what gets coated, the zone and the slope in one line, in metric units.</summary>
    /// <returns>Text such as <c>soffit above the shower: 0.88 m² of Outside at 180°</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture, "{0}: {1} of {2} at {3}", Name, Measure.Area.Format(Coated), Kind,
            Measure.Angle.Format(slope, figures: 4));

    /// <summary>The part as a patch of which the formula is its own area.</summary>
    internal SurfacePatch Patch(int number) => new(
        t => t is null ? area : t.Step(
            Name, "A_" + Figures.Fixed(number, 0), Measure.Area, Source, t.Given("a_" + Figures.Fixed(number, 0), area, Measure.Area)),
        Kind, (t, _) => t.Lying(slope), factor: DevelopedFactor, openings: openings);
}

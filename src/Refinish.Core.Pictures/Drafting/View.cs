using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;
using Refinish.Fixtures;

namespace Refinish.Pictures.Drafting;

/// <summary>
/// One view of a fixture in metres, x to the right and y down from its upper left corner: outlines, measured lengths, points with a
/// number, zones with a letter.
/// </summary>
internal sealed class View(string name, double width, double height)
{
    private readonly List<Outline> outlines = [];
    private readonly List<Dimension> dimensions = [];
    private readonly List<(DataPoint At, string Words, double Direction)> points = [];
    private readonly List<(DataPoint At, FixtureZoneKind Zone)> zones = [];

    public string Name { get; } = name;

    public double Width { get; } = width;

    public double Height { get; } = height;

    public IReadOnlyList<Outline> Outlines => outlines;

    public IReadOnlyList<(DataPoint At, string Words, double Direction)> Points => points;

    public IReadOnlyList<(DataPoint At, FixtureZoneKind Zone)> Zones => zones;

    /// <summary>The fixture's own material.</summary>
    public View Body(DataPoint[] outline) => Add(outline, Stroke.Body);

    /// <summary>Where there is none: the mouth of a tub, a cut-out.</summary>
    public View Hollow(DataPoint[] outline) => Add(outline, Stroke.Hollow);

    /// <summary>An edge that is seen.</summary>
    public View Edge(DataPoint[] line, bool closed = false) => Add(line, closed ? Stroke.ClosedEdge : Stroke.Edge);

    /// <summary>An edge that is behind or below, or the room round about.</summary>
    public View Hidden(DataPoint[] line) => Add(line, Stroke.Hidden);

    /// <summary>Joints and the like, which are many.</summary>
    public View Fine(DataPoint[] line) => Add(line, Stroke.Fine);

    /// <summary>A wall of the room.</summary>
    public View Wall(DataPoint[] line) => Add(line, Stroke.Wall);

    /// <summary>A measured length; none is drawn for a length of zero, which says that the part is not there.</summary>
    public View Measured(Side side, double from, double to, double reach, string words, UnitsNet.Length length)
    {
        if (length.Meters > 0)
        {
            dimensions.Add(new Dimension(side, from, to, reach, words, length.Meters));
        }

        return this;
    }

    /// <summary>
    /// A point with a number whose words stand in the key; the direction, in degrees from the right and positive downwards, is where
    /// the number goes if there is room.
    /// </summary>
    public View Point(double x, double y, string words, double direction)
    {
        points.Add((new DataPoint(x, y), words, direction));
        return this;
    }

    public View Zone(FixtureZoneKind zone, double x, double y)
    {
        zones.Add((new DataPoint(x, y), zone));
        return this;
    }

    public IReadOnlyList<Dimension> All => dimensions;

    public IEnumerable<Dimension> On(Side side) => dimensions.Where(dimension => dimension.Side == side);

    private View Add(DataPoint[] line, Stroke stroke)
    {
        if (line.Length >= 2)
        {
            outlines.Add(new Outline(line, stroke));
        }

        return this;
    }
}

using System;
using System.Collections.Generic;
using System.Globalization;
using static Refinish.Fixtures.TapeRules;

namespace Refinish.Fixtures;

/// <summary>What a tape measure gives for a straight counter or a plain panel.</summary>
/// <remarks>
/// Length and width are level, from the bare wall, what an upstand covers included, to the outermost line of the edge. Where the tape meets
/// the face of the upstand, add its thickness. The ranges are generous limits that catch a length typed in the wrong unit (invented);
/// whether the lengths fit each other is checked by <see cref="FlatPanel"/>.
/// </remarks>
/// <example><code>
/// FlatPanelMeasurements tape = new()
/// {
///     Length = Length.FromInches(96), Width = Length.FromInches(25.5),
///     ExposedEdge = Length.FromInches(96), EdgeHeight = Length.FromInches(1.5),
///     BacksplashLength = Length.FromInches(96), BacksplashHeight = Length.FromInches(4), BacksplashThickness = Length.FromInches(0.75),
///     CutOuts = [new(Length.FromInches(32), Length.FromInches(21))],
/// };
/// </code></example>
public sealed record FlatPanelMeasurements
{
    private readonly double length;
    private readonly double width;
    private readonly double exposedEdge;
    private readonly double edgeHeight;
    private readonly double backsplashLength;
    private readonly double backsplashHeight;
    private readonly double backsplashThickness;

    /// <summary>Length of the top, 0.1 to 10 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required UnitsNet.Length Length
    {
        get => UnitsNet.Length.FromMeters(length);
        init => length = Guard.Within(value, Bounds.Between(0.1, 10, Measure.Length), nameof(Length));
    }

    /// <summary>Width (depth) of the top, 0.1 to 3 m; from the wall, the strip below an upstand included.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required UnitsNet.Length Width
    {
        get => UnitsNet.Length.FromMeters(width);
        init => width = Guard.Within(value, Bounds.Between(0.1, 3, Measure.Length), nameof(Width));
    }

    /// <summary>Length of edge that shows and is coated, 0 up to the whole perimeter.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required UnitsNet.Length ExposedEdge
    {
        get => UnitsNet.Length.FromMeters(exposedEdge);
        init => exposedEdge = Guard.Within(value, Bounds.NotNegative(Measure.Length, 26), nameof(ExposedEdge));
    }

    /// <summary>Developed height of that edge, measured round its profile, 0 to 0.5 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required UnitsNet.Length EdgeHeight
    {
        get => UnitsNet.Length.FromMeters(edgeHeight);
        init => edgeHeight = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.5), nameof(EdgeHeight));
    }

    /// <summary>Length of the upstand along the walls, 0 up to the whole perimeter; 0 when there is none.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required UnitsNet.Length BacksplashLength
    {
        get => UnitsNet.Length.FromMeters(backsplashLength);
        init => backsplashLength = Guard.Within(value, Bounds.NotNegative(Measure.Length, 26), nameof(BacksplashLength));
    }

    /// <summary>Height of the upstand above the top, 0 to 1.5 m.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required UnitsNet.Length BacksplashHeight
    {
        get => UnitsNet.Length.FromMeters(backsplashHeight);
        init => backsplashHeight = Guard.Within(value, Bounds.NotNegative(Measure.Length, 1.5), nameof(BacksplashHeight));
    }

    /// <summary>
    /// How far the upstand stands out from the wall, 0 to 0.1 m: that much of the top is below it and not coated, its own top edge is. 0
    /// where it covers nothing, such as tile or a sheet on the wall.
    /// </summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public required UnitsNet.Length BacksplashThickness
    {
        get => UnitsNet.Length.FromMeters(backsplashThickness);
        init => backsplashThickness = Guard.Within(value, Bounds.NotNegative(Measure.Length, 0.1), nameof(BacksplashThickness));
    }

    /// <summary>Cut-outs in the top, such as for a sink; may be empty.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public required IReadOnlyList<RectangularOpening> CutOuts
    {
        get;
        init => field = Guard.List(value, nameof(CutOuts));
    }

    /// <summary>The size in one line, in metric units.</summary>
    /// <returns>Text such as <c>2438.4 mm × 647.7 mm</c>.</returns>
    public override string ToString() =>
        string.Format(CultureInfo.InvariantCulture, "{0} × {1}", Measure.Length.Format(length), Measure.Length.Format(width));

    /// <summary>Rules between two lengths; each refusal names the one that cannot be.</summary>
    internal void CheckConsistency()
    {
        double perimeter = 2 * (length + width);
        AtMost(exposedEdge, perimeter, nameof(ExposedEdge), "the whole perimeter");
        AtMost(backsplashLength, perimeter, nameof(BacksplashLength), "the whole perimeter");
        double covered = backsplashLength > 0 ? backsplashThickness : 0;
        AtMost(covered, width / 2, nameof(BacksplashThickness), "half of the width");
        for (int i = 0; i < CutOuts.Count; i++)
        {
            if (!CutOuts[i].FitsInto(length, width - covered))
            {
                Guard.Rule(false, nameof(CutOuts), CutOuts[i].Length.Meters, Measure.Length,
                    "a cut-out (" + CutOuts[i] + ") that fits the top of " + this);
            }
        }

        AtMost(RectangularOpening.AreaOf(CutOuts).Value, (length * width) - (backsplashLength * backsplashThickness), nameof(CutOuts),
            "the area of the top before the upstand", Measure.Area);
    }
}

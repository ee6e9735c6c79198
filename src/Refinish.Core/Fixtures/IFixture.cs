using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// A fixture to be refinished, as the rest of a job sees it: the zones that get coated, the edges that get taped, the water it holds.
/// </summary>
/// <example><code>
/// IFixture panel = new FlatPanel(new FlatPanelMeasurements
/// {
///     Length = Length.FromInches(96), Width = Length.FromInches(25.5),
///     ExposedEdge = Length.FromInches(96), EdgeHeight = Length.FromInches(1.5),
///     BacksplashLength = Length.FromInches(96), BacksplashHeight = Length.FromInches(4), BacksplashThickness = Length.FromInches(0.75),
///     CutOuts = [],
/// });
/// double squareFeet = panel.CoatedArea.SquareFeet;   // 20.67
/// </code></example>
public interface IFixture
{
    /// <summary>What it is, in a few words.</summary>
    string Description { get; }

    /// <summary>The zones that get coated, each kind at most once, none of them empty; openings are taken off.</summary>
    IReadOnlyList<FixtureZone> Zones { get; }

    /// <summary>The area that gets coated: the sum over <see cref="Zones"/>.</summary>
    Area CoatedArea { get; }

    /// <summary>The length of edge to be taped: towards walls and floor, and round openings.</summary>
    Length MaskedEdge { get; }

    /// <summary>The water it holds up to the rim; <see langword="null"/> for what holds none.</summary>
    Volume? WaterCapacity { get; }

    /// <summary>The pieces of surface with one formula each; what they coat adds up to <see cref="CoatedArea"/>.</summary>
    IReadOnlyList<SurfacePatch> Patches { get; }

    /// <summary>
    /// The surface as triangles that face the coated side: the plain shape of every patch, openings left closed and texture left flat.
    /// </summary>
    /// <param name="chordTolerance">How far a triangle may lie off the surface, 1 µm to 50 mm.</param>
    /// <returns>
    /// A mesh whose area tends to the sum of the patches' plain areas with the first power of the tolerance, that is the square of the
    /// mesh width.
    /// </returns>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="chordTolerance"/> is outside its range.</exception>
    TriangleMesh Tessellate(Length chordTolerance);

    /// <summary>How every area, slope, edge and capacity follows from the tape measurements.</summary>
    /// <returns>The derivation.</returns>
    Workings Workings();
}

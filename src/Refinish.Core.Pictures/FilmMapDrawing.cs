using System;
using System.IO;
using Refinish.Films;
using Refinish.Pictures.Drawing;

namespace Refinish.Pictures;

/// <summary>
/// A film map drawn where it lies: flat, each zone unrolled, as SVG, or in space as a mesh file. <see cref="FilmPicture"/> counts.
/// </summary>
/// <example><code>
/// using MemoryStream file = new();
/// new FilmMapDrawing(map, "tub, two coats").WriteSvg(file, DisplayUnits.Si);     // the map of StrokePlan
/// </code></example>
public sealed class FilmMapDrawing
{
    private readonly FilmMap map;

    /// <summary>Draws a film map.</summary>
    /// <param name="map">The map.</param>
    /// <param name="title">What stands above the flat drawing.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException"><paramref name="title"/> is empty.</exception>
    public FilmMapDrawing(FilmMap map, string title)
    {
        this.map = Given.NotNull(map, nameof(map));
        Title = Given.Named(title, nameof(title));
    }

    /// <summary>What stands above the flat drawing.</summary>
    public string Title { get; }

    /// <summary>Writes the film as an SVG drawing, each zone unrolled to true lengths along its middle.</summary>
    /// <param name="stream">Where to; it is left open.</param>
    /// <param name="units">The reader's units.</param>
    /// <exception cref="ArgumentNullException"><paramref name="stream"/> is missing.</exception>
    public void WriteSvg(Stream stream, DisplayUnits units) => FilmMapSvg.Write(map, Given.NotNull(stream, nameof(stream)), Title, units);

    /// <summary>
    /// Writes the mesh with its film as a binary PLY file: micrometres and a colour on every vertex, micrometres on every face.
    /// </summary>
    /// <param name="stream">Where to; it is left open.</param>
    /// <exception cref="ArgumentNullException"><paramref name="stream"/> is missing.</exception>
    public void WritePly(Stream stream) => FilmMapPly.Write(map, Given.NotNull(stream, nameof(stream)));

    /// <summary>The title.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Title;
}

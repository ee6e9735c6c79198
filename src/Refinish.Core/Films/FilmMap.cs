using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// The wet film that a plan of strokes leaves on every triangle of a mesh: how thick, how even, where too thin, where it may run, and
/// where the rest went.
/// </summary>
/// <remarks>
/// The film of a triangle is the one at its centroid. A triangle that faces away from the gun gets nothing, nor does one from which the
/// nozzle, in the middle of the time in which the fan is over it, cannot be seen. See docs/spray-build.md for what the model leaves
/// out.
/// </remarks>
/// <example><code>
/// double thin = map.Whole.UnderMinimum.Percent;     // the map of StrokePlan
/// double landed = map.Balance.Landed.Milliliters;
/// </code></example>
public sealed class FilmMap
{
    internal FilmMap(StrokePlan plan, TriangleMesh mesh, SprayFilmLimits limits, double[] films, double[] areas)
    {
        Films = films;
        Plan = plan;
        Mesh = mesh;
        Limits = limits;
        Whole = FilmMapZone.Of(null, films, areas, limits, static _ => true)!;
        Zones = new ValueList<FilmMapZone>(mesh.Triangles
            .Select(triangle => triangle.Zone).Distinct().OrderBy(kind => kind is null ? int.MaxValue : (int)kind)
            .Select(kind => FilmMapZone.Of(kind, films, areas, limits, i => mesh.Triangles[i].Zone == kind)).OfType<FilmMapZone>());
        double landed = films.Zip(areas, static (film, area) => film * area).Sum();
        Balance = new SprayBalance(plan.Gun.FluidRate.CubicMetersPerSecond, plan.Gun.TransferEfficiency.DecimalFractions, plan.TriggerSeconds, landed);
    }

    /// <summary>The strokes.</summary>
    public StrokePlan Plan { get; }

    /// <summary>The triangles, fine enough for the film: those of the mesh that was given, with long edges halved.</summary>
    public TriangleMesh Mesh { get; }

    /// <summary>What the film was compared with.</summary>
    public SprayFilmLimits Limits { get; }

    /// <summary>The figures over everything.</summary>
    public FilmMapZone Whole { get; }

    /// <summary>The figures by zone.</summary>
    public IReadOnlyList<FilmMapZone> Zones { get; }

    /// <summary>Where the coating went.</summary>
    public SprayBalance Balance { get; }

    /// <summary>What can hurt while this is done.</summary>
    public IReadOnlyList<Caution> Cautions { get; } = Refinish.Cautions.ForMist;

    /// <summary>The film in metres, one value a triangle.</summary>
    internal double[] Films { get; }

    /// <summary>The wet film on one triangle.</summary>
    /// <param name="triangle">Its place in <see cref="Mesh"/>.</param>
    /// <returns>The film at its centroid.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such place.</exception>
    public Length WetFilm(int triangle) => Length.FromMeters(Films[Guard.Count(triangle, 0, Films.Length - 1)]);

    /// <summary>The figures over everything and the balance in one line, in metric units.</summary>
    /// <returns>Text such as <c>All: 71.4 µm wet on the mean, …; 300 mL sprayed: …</c>.</returns>
    public override string ToString() => string.Format(CultureInfo.InvariantCulture, "{0}; {1}", Whole, Balance);
}

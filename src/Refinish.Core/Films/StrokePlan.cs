using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Threading;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Films;

/// <summary>Strokes of one gun in their order, and the film they leave on a fixture.</summary>
/// <example><code>
/// SprayGun gun = new() { FluidRate = VolumeFlow.FromMillilitersPerMinute(180), TransferEfficiency = Ratio.FromPercent(65) };
/// FanPattern fan = FanPattern.Beta(Length.FromCentimeters(25.4), Length.FromCentimeters(6), Length.FromCentimeters(20), 2);
/// StrokeSettings hand = new()
/// {
///     Distance = Length.FromCentimeters(20), Speed = Speed.FromCentimetersPerSecond(45.72),
///     Overlap = Ratio.FromPercent(50), TriggerLead = Length.FromCentimeters(5),
/// };
/// TriangleMesh board = new(
///     [new(0, 0, 0), new(1.2, 0, 0), new(1.2, 0.6, 0), new(0, 0.6, 0)],
///     [new(0, 1, 2, FixtureZoneKind.Top), new(0, 2, 3, FixtureZoneKind.Top)]);
/// SprayFilmLimits limits = new(Length.FromMicrometers(20), Length.FromMicrometers(125));
/// StrokePlan plan = StrokePlan.OverPanel(gun, fan, hand, Length.FromMeters(1.2), Length.FromMeters(0.6));
/// FilmMap map = plan.SprayOnto(board, Length.FromMillimeters(20), limits);
/// double mean = map.Whole.Mean.Micrometers;
/// </code></example>
public sealed record StrokePlan
{
    /// <summary>Makes a plan.</summary>
    /// <param name="gun">How much leaves the gun and how much of it lands.</param>
    /// <param name="pattern">The fan.</param>
    /// <param name="strokes">The strokes in order, at least one.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException">There is no stroke.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A stroke is shorter than a millimetre, or travels so nearly along its aim that the gun would move into its own fan.
    /// </exception>
    public StrokePlan(SprayGun gun, FanPattern pattern, IEnumerable<SprayStroke> strokes)
    {
        Gun = Guard.NotNull(gun);
        Pattern = Guard.NotNull(pattern);
        ValueList<SprayStroke> list = Guard.List(strokes, 1);
        Strokes = list;
        foreach (SprayStroke stroke in list)
        {
            Guard.Rule(stroke.LengthSi >= 1e-3, nameof(strokes), stroke.LengthSi, Measure.Length, "strokes of at least 1 mm");
            MeshPoint travel = MeshPoint.Difference(stroke.End, stroke.Start);
            double cosine = Math.Min(1, Math.Abs(MeshPoint.Dot(travel, stroke.Aim)) / (travel.Norm * stroke.Aim.Norm));
            Guard.Rule(cosine <= 0.5, nameof(strokes), Math.Acos(cosine), Measure.Angle, "at least 60° between travel and aim");
            Guard.Rule(new SprayFan(stroke, pattern, 1).Bend > 0, nameof(strokes), Math.Acos(cosine), Measure.Angle, "an angle between travel and aim at which the gun does not move into its own fan");
            TriggerSeconds += stroke.LengthSi / stroke.Speed.MetersPerSecond;
        }
    }

    /// <summary>How much leaves the gun and how much of it lands.</summary>
    public SprayGun Gun { get; }

    /// <summary>The fan.</summary>
    public FanPattern Pattern { get; }

    /// <summary>The strokes in order.</summary>
    public IReadOnlyList<SprayStroke> Strokes { get; }

    /// <summary>How long the trigger is pulled in all.</summary>
    public TimeSpan TriggerTime => Durations.FromSeconds(TriggerSeconds);

    /// <summary>Coating through the gun: fluid rate × trigger time.</summary>
    public Volume SprayedVolume => Volume.FromCubicMeters(Gun.FluidRate.CubicMetersPerSecond * TriggerSeconds);

    internal double TriggerSeconds { get; }

    /// <summary>Parallel strokes over a level panel whose corner is the origin and which faces up: length along x, width along y.</summary>
    /// <param name="gun">How much leaves the gun and how much of it lands.</param>
    /// <param name="pattern">The fan.</param>
    /// <param name="settings">How the gun is led.</param>
    /// <param name="length">Length of the panel, 0.05 to 10 m; strokes run along it.</param>
    /// <param name="width">Width of the panel, 0.05 to 10 m.</param>
    /// <returns>Strokes from edge to edge, the first and the last on or beyond an edge.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static StrokePlan OverPanel(SprayGun gun, FanPattern pattern, StrokeSettings settings, Length length, Length width) =>
        Panel(gun, pattern, settings, length, width, false);

    /// <summary>The same in two coats, the second one across the first; the film is twice that of one coat.</summary>
    /// <param name="gun">How much leaves the gun and how much of it lands.</param>
    /// <param name="pattern">The fan.</param>
    /// <param name="settings">How the gun is led.</param>
    /// <param name="length">Length of the panel, 0.05 to 10 m.</param>
    /// <param name="width">Width of the panel, 0.05 to 10 m.</param>
    /// <returns>Strokes along x, then strokes along y.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static StrokePlan CrossedOverPanel(SprayGun gun, FanPattern pattern, StrokeSettings settings, Length length, Length width) =>
        Panel(gun, pattern, settings, length, width, true);

    /// <summary>The film on every triangle.</summary>
    /// <param name="mesh">The surface; triangles face the side that is coated.</param>
    /// <param name="longestEdge">Edges longer than this are halved first, 1 to 100 mm; a tenth of the fan's width is fine enough.</param>
    /// <param name="limits">What the film is compared with.</param>
    /// <returns>The film map; the same on any number of processors.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="longestEdge"/> is outside its range, or the mesh has no area.
    /// </exception>
    public FilmMap SprayOnto(TriangleMesh mesh, Length longestEdge, SprayFilmLimits limits) =>
        SprayOnto(mesh, longestEdge, limits, null, CancellationToken.None);

    /// <summary>The film on every triangle.</summary>
    /// <param name="mesh">The surface; triangles face the side that is coated.</param>
    /// <param name="longestEdge">Edges longer than this are halved first, 1 to 100 mm; a tenth of the fan's width is fine enough.</param>
    /// <param name="limits">What the film is compared with.</param>
    /// <param name="progress">Told the part that is done, rising from 0 to 1, from whichever thread got there.</param>
    /// <param name="cancellation">Stops the work between strokes.</param>
    /// <returns>The film map; the same on any number of processors.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="longestEdge"/> is outside its range, or the mesh has no area.
    /// </exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public FilmMap SprayOnto(
        TriangleMesh mesh, Length longestEdge, SprayFilmLimits limits, IProgress<double>? progress, CancellationToken cancellation)
    {
        Guard.NotNull(mesh);
        Guard.NotNull(limits);
        double edge = Guard.Within(longestEdge, Bounds.Between(1e-3, 0.1, Measure.Length));
        Guard.Within(mesh.Area, Bounds.Positive(Measure.Area), nameof(mesh));
        TriangleMesh fine = SprayMeshRefinement.To(mesh, edge);
        return Map(fine, new SprayFaces(fine), limits, progress, cancellation);
    }

    /// <summary>The number of strokes, the trigger time and the volume in one line, in metric units.</summary>
    /// <returns>Text such as <c>12 strokes, 0.8 min of trigger, 144 mL</c>.</returns>
    public override string ToString() =>
        Strokes.Count.ToString(CultureInfo.InvariantCulture) + " strokes, " + Measure.Minutes.Format(TriggerSeconds, DisplayUnits.Si, 3)
        + " of trigger, " + Measure.Liquid.Format(SprayedVolume.CubicMeters, DisplayUnits.Si, 3);

    internal FilmMap Map(TriangleMesh mesh, SprayFaces faces, SprayFilmLimits limits, IProgress<double>? progress, CancellationToken cancellation)
    {
        double[] ordered = SprayBuild.Films(faces, Fans(), SprayBuild.VectorIsSupported, -1, progress, cancellation);
        double[] films = new double[faces.Count];
        double[] areas = new double[faces.Count];
        for (int i = 0; i < films.Length; i++)
        {
            films[faces.Order[i]] = ordered[i];
            areas[faces.Order[i]] = faces.Area[i];
        }

        return new FilmMap(this, mesh, limits, films, areas);
    }

    internal SprayFan[] Fans()
    {
        double landing = Gun.FluidRate.CubicMetersPerSecond * Gun.TransferEfficiency.DecimalFractions;
        return [.. Strokes.Select(stroke => new SprayFan(stroke, Pattern, landing))];
    }

    private static StrokePlan Panel(SprayGun gun, FanPattern pattern, StrokeSettings settings, Length length, Length width, bool crossed)
    {
        Guard.NotNull(pattern);
        Guard.NotNull(settings);
        Bounds size = Bounds.Between(0.05, 10, Measure.Length);
        double x = Guard.Within(length, size);
        double y = Guard.Within(width, size);
        double spacing = FanPatternKernel.Width(pattern.Width.Meters, settings.Distance.Meters, pattern.ReferenceDistance.Meters).Value
            * (1 - settings.Overlap.DecimalFractions);
        List<SprayStroke> strokes = [];
        Add(x, y, static (along, across, z) => new(along, across, z));
        if (crossed)
        {
            Add(y, x, static (along, across, z) => new(across, along, z));
        }

        return new StrokePlan(gun, pattern, strokes);

        void Add(double along, double across, Func<double, double, double, MeshPoint> place)
        {
            int count = (int)Math.Ceiling((across / spacing) - 1e-9) + 1;
            for (int k = 0; k < count; k++)
            {
                double at = (across / 2) + ((k - ((count - 1) / 2.0)) * spacing);
                MeshPoint one = place(-settings.TriggerLead.Meters, at, settings.Distance.Meters);
                MeshPoint other = place(along + settings.TriggerLead.Meters, at, settings.Distance.Meters);
                bool back = k % 2 == 1;
                strokes.Add(new() { Start = back ? other : one, End = back ? one : other, Aim = new(0, 0, -1), Speed = settings.Speed });
            }
        }
    }
}

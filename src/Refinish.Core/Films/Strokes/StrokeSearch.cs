using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Films;

/// <summary>Looks for strokes over a fixture that reach a least wet film everywhere with the least coating.</summary>
/// <remarks>
/// The surface is parted into sides of one zone that face one of eight directions, up or down; a level rim is parted into its four
/// sides. Each side gets parallel rows, gun square to it; the nozzle stops short of walls. For each overlap, with rows on the edge or a
/// fifth of the fan inside it, once and crossed, the speeds of the sides follow from a linear programme: least coating, no triangle
/// under the minimum, no speed outside the range. The wet limit does not enter: how much of the area is over it stands in the map, and
/// the cure is more coats, each thinner. Source: derived; the ways tried are invented defaults.
/// </remarks>
/// <example><code>
/// StrokeSearch search = new()                       // the gun of StrokePlan
/// {
///     Gun = gun, Pattern = fan, Hand = hand,
///     SlowestSpeed = Speed.FromCentimetersPerSecond(15), FastestSpeed = Speed.FromCentimetersPerSecond(90),
///     LongestEdge = Length.FromMillimeters(40),
/// };
/// StrokeProposal proposal = search.Propose(board, limits);
/// </code></example>
public sealed record StrokeSearch
{
    /// <summary>How much leaves the gun and how much of it lands.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required SprayGun Gun { get; init => field = Guard.NotNull(value); }

    /// <summary>The fan.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required FanPattern Pattern { get; init => field = Guard.NotNull(value); }

    /// <summary>Distance and trigger lead; its overlap and speed are where the search begins.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required StrokeSettings Hand { get; init => field = Guard.NotNull(value); }

    /// <summary>Slowest speed of the gun, 1 to 300 cm/s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Speed SlowestSpeed { get; init => field = Guard.Checked(value, StrokeSettings.Speeds); }

    /// <summary>Fastest speed of the gun, 1 to 300 cm/s and not below the slowest.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Speed FastestSpeed { get; init => field = Guard.Checked(value, StrokeSettings.Speeds); }

    /// <summary>Edges of the mesh longer than this are halved, 1 to 100 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length LongestEdge { get; init => field = Guard.Checked(value, Bounds.Between(1e-3, 0.1, Measure.Length)); }

    /// <summary>Part of the area that may stay under the minimum where it would cost most, 0 to 20 %; 0 unless it is set.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio ToleratedUnder { get; init => field = Guard.Checked(value, Bounds.Between(0, 0.2, Measure.Percent)); }

    /// <summary>The overlaps to try besides the hand's own; 33.3 %, 50 % and 66.7 % unless they are set.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public IReadOnlyList<Ratio> Overlaps { get; init => field = Guard.List(value); }

    = new ValueList<Ratio>([Ratio.FromDecimalFractions(1.0 / 3), Ratio.FromDecimalFractions(0.5), Ratio.FromDecimalFractions(2.0 / 3)]);

    /// <summary>Finds strokes.</summary>
    /// <param name="mesh">The surface; triangles face the side that is coated.</param>
    /// <param name="limits">The film to reach, and the wet limit it is compared with.</param>
    /// <returns>The way with the least area short of the minimum, and among those the least coating.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The mesh has no area, an overlap is outside 0 to 90 %, or the fastest speed is below the slowest.
    /// </exception>
    public StrokeProposal Propose(TriangleMesh mesh, SprayFilmLimits limits) => Propose(mesh, limits, null, CancellationToken.None);

    /// <summary>Finds strokes.</summary>
    /// <param name="mesh">The surface; triangles face the side that is coated.</param>
    /// <param name="limits">The film to reach, and the wet limit it is compared with.</param>
    /// <param name="progress">Told the part of the ways that is tried.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>The way with the least area short of the minimum, and among those the least coating.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The mesh has no area, an overlap is outside 0 to 90 %, or the fastest speed is below the slowest.
    /// </exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public StrokeProposal Propose(TriangleMesh mesh, SprayFilmLimits limits, IProgress<double>? progress, CancellationToken cancellation)
    {
        Guard.NotNull(mesh);
        Guard.NotNull(limits);
        Guard.Within(mesh.Area, Bounds.Positive(Measure.Area), nameof(mesh));
        Guard.Rule(FastestSpeed.MetersPerSecond >= SlowestSpeed.MetersPerSecond, nameof(FastestSpeed), FastestSpeed.MetersPerSecond,
            Measure.Speed, "at least the slowest speed, ", SlowestSpeed.MetersPerSecond);
        SortedSet<double> overlaps = [Hand.Overlap.DecimalFractions];
        foreach (Ratio overlap in Overlaps)
        {
            overlaps.Add(Guard.Within(overlap, Bounds.Between(0, 0.9, Measure.Percent), nameof(Overlaps)));
        }

        TriangleMesh fine = SprayMeshRefinement.To(mesh, LongestEdge.Meters);
        SprayFaces faces = new(fine);
        List<StrokeFace> sides = StrokeFace.Of(faces, fine);
        StrokeTrial? best = null;
        List<string> tried = [];
        int done = 0;
        foreach (double overlap in overlaps)
        {
            foreach (double inset in new[] { 0, 0.2 })
            {
                foreach (bool crossed in new[] { false, true })
                {
                    cancellation.ThrowIfCancellationRequested();
                    StrokeTrial trial = new(this, faces, sides, limits, overlap, inset, crossed, cancellation);
                    tried.Add(trial.ToString());
                    best = trial.IsBetterThan(best) ? trial : best;
                    progress?.Report(++done / (4.0 * overlaps.Count));
                }
            }
        }

        if (best is not StrokeTrial chosen)
        {
            return new StrokeProposal(
                null, null, Hand.Overlap.DecimalFractions, false, ValueList<StrokeSide>.Empty,
                    new ValueList<StrokeShortfall>(Nowhere(fine)), new ValueList<string>(tried));
        }

        StrokePlan plan = new(Gun, Pattern, chosen.Strokes());
        FilmMap map = plan.Map(fine, faces, limits, null, cancellation);
        return new StrokeProposal(
            plan, map, chosen.Overlap, chosen.Crossed, new ValueList<StrokeSide>(chosen.Sides()),
            new ValueList<StrokeShortfall>(chosen.Shortfalls(map, faces)), new ValueList<string>(tried));
    }

    /// <summary>What is looked for in one line, in metric units.</summary>
    /// <returns>Text such as <c>180 mL/min, 65 % lands, …; beta 2, …; 15 cm/s to 90 cm/s</c>.</returns>
    public override string ToString() =>
        Gun + "; " + Pattern + "; " + Measure.Speed.Format(SlowestSpeed.MetersPerSecond) + " to "
            + Measure.Speed.Format(FastestSpeed.MetersPerSecond);

    private static IEnumerable<StrokeShortfall> Nowhere(TriangleMesh mesh) =>
        mesh.Zones().Select(zone => new StrokeShortfall(zone.Kind, zone.Area.SquareMeters, mesh.Box!.Lowest, StrokeTrial.Unreached));
}

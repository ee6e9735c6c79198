using System;
using System.Globalization;
using System.Linq;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>A piece of a fixture's surface with one formula: its plain area, what texture or joints add, what openings take off.</summary>
/// <remarks>
/// Coated = plain area × developed factor − openings; the patches of a fixture add up to its coated area.
/// A mesh of the fixture follows the plain shapes, so that its area tends to the sum of <see cref="Area"/>:
/// where a drain, a cut-out or a window lies is not measured, and grooves finer than the tape reads are not drawn.
/// </remarks>
/// <example><code>
/// RecessedBathtub tub = new(tape);                           // the tub of RecessedBathtubMeasurements
/// string line = tub.Patches[1].ToString();                   // "both side walls: 0.64839 m² of Wall at 81.416°"
/// double coated = tub.Patches.Sum(patch => patch.CoatedArea.SquareFeet);   // 27.69
/// </code></example>
public sealed record SurfacePatch
{
    private readonly Func<Trace?, Num> plain;
    private readonly Func<Trace?, Num, Num>? tilt;
    private readonly double area;
    private readonly double relativeError;
    private readonly double openings;
    private object? slope;

    /// <summary>Makes a patch of its formulas.</summary>
    /// <param name="plain">The plain area; with a derivation its last step, which names the patch.</param>
    /// <param name="zone">The part of the fixture it belongs to.</param>
    /// <param name="slope">The slope, which may use the plain area; level where there is none. See <see cref="Upright"/>.</param>
    /// <param name="relativeError">How far quadrature may be off.</param>
    /// <param name="factor">Developed over plain area.</param>
    /// <param name="openings">The openings that are taken off.</param>
    internal SurfacePatch(
        Func<Trace?, Num> plain, FixtureZoneKind zone, Func<Trace?, Num, Num>? slope = null, double relativeError = 0, double factor = 1,
        double openings = 0)
    {
        this.plain = plain;
        area = plain(null).Value;
        Zone = zone;
        tilt = slope;
        this.relativeError = relativeError;
        this.openings = openings;
        DevelopedFactor = factor;
    }

    /// <summary>The slope of what is upright.</summary>
    internal static Func<Trace?, Num, Num> Upright { get; } = static (t, _) => t.Pi() / 2;

    /// <summary>What it is, in words.</summary>
    public string Name => Step.Name;

    /// <summary>The part of the fixture it belongs to.</summary>
    public FixtureZoneKind Zone { get; }

    /// <summary>The plain area; negative only for a correction, such as a cove that cuts a sharp line short.</summary>
    public Area Area => Area.FromSquareMeters(area);

    /// <summary>How far the plain area can be off by quadrature: 0 for a closed form, where only rounding remains.</summary>
    public Area ErrorBound => Area.FromSquareMeters(Math.Abs(area) * relativeError);

    /// <summary>0° level, 90° upright, 180° an underside; the mean weighted by area where it varies.</summary>
    public Angle SlopeFromHorizontal => Angle.FromRadians(Radians);

    /// <summary>Developed over plain area: texture, joints, profile; 1 for a smooth surface.</summary>
    public double DevelopedFactor { get; }

    /// <summary>The openings that are taken off.</summary>
    public Area OpeningArea => Area.FromSquareMeters(openings);

    /// <summary>What gets coated: plain area × developed factor − openings.</summary>
    public Area CoatedArea => Area.FromSquareMeters(Coated);

    /// <summary>The formula of the plain area with its numbers and its source.</summary>
    public WorkingStep Step => field ??= LastOf(Trace.Of("patch", plain));

    // Found when it is first asked for: it may take a double integral. As an object it is written at once on every machine.
    internal double Radians => (double)(slope ??= area == 0 ? 0.0 : Slope(null, area).Value);

    internal double Coated => Left(null, area).Value;

    /// <summary>Whether two patches have the same name, zone, areas and slope.</summary>
    /// <param name="other">The patch to compare with.</param>
    /// <returns><see langword="true"/> when they are alike.</returns>
    public bool Equals(SurfacePatch? other) =>
        other is not null && Zone == other.Zone && area.Equals(other.area) && openings.Equals(other.openings)
        && relativeError.Equals(other.relativeError) && DevelopedFactor.Equals(other.DevelopedFactor) && Radians.Equals(other.Radians)
        && Name == other.Name;

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked(((int)Zone * 31) + area.GetHashCode());

    /// <summary>The name, what gets coated, the zone and the slope in one line, in metric units.</summary>
    /// <returns>Text such as <c>both side walls: 0.64839 m² of Wall at 81.418°</c>.</returns>
    public override string ToString() => $"{Name}: {Measure.Area.Format(Coated)} of {Zone} at {Measure.Angle.Format(Radians)}";

    /// <summary>The plain area, a step of the derivation.</summary>
    internal Num Plain(Trace? t) => t is null ? area : plain(t);

    /// <summary>The slope with its formula, in which the plain area is a symbol.</summary>
    internal Num Slope(Trace? t, Num plain) => tilt?.Invoke(t, plain) ?? 0;

    /// <summary>What gets coated, a step of its own where that is not the plain area.</summary>
    internal Num Written(Trace t, Num plain) => DevelopedFactor == 1 && openings == 0
        ? plain
        : t.Step(Name + ", coated", "C_" + t.Count.ToString(CultureInfo.InvariantCulture), Measure.Area, PatchLedger.Plane, Left(t, plain));

    private Num Left(Trace? t, Num plain)
    {
        Num whole = DevelopedFactor == 1 ? plain : plain * t.Given("k", DevelopedFactor, Measure.Number);
        return openings == 0 ? whole : whole - t.Given("A_open", openings, Measure.Area);
    }

    private static WorkingStep LastOf(Workings workings) => workings.Steps[workings.Steps.Count - 1];
}

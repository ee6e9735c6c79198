using System;
using System.Globalization;
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
    private readonly double area;
    private readonly double relativeError;
    private readonly double slope;
    private readonly double openings;

    internal SurfacePatch(WorkingStep step, FixtureZoneKind zone, double slope, Expression? slopeFormula = null, double relativeError = 0, double factor = 1, double openings = 0)
    {
        Step = step;
        area = step.Value;
        Zone = zone;
        this.slope = slope;
        this.relativeError = relativeError;
        this.openings = openings;
        DevelopedFactor = factor;
        SlopeFormula = slopeFormula ?? (slope == 0 ? Expression.Number(0) : slope == Math.PI / 2 ? Expression.Pi() / 2 : Expression.Quantity("φ", slope, Measure.Angle));
    }

    /// <summary>What it is, in words.</summary>
    public string Name => Step.Name;

    /// <summary>The part of the fixture it belongs to.</summary>
    public FixtureZoneKind Zone { get; }

    /// <summary>The plain area; negative only for a correction, such as a cove that cuts a sharp line short.</summary>
    public Area Area => Area.FromSquareMeters(area);

    /// <summary>How far the plain area can be off by quadrature: 0 for a closed form, where only rounding remains.</summary>
    public Area ErrorBound => Area.FromSquareMeters(Math.Abs(area) * relativeError);

    /// <summary>0° level, 90° upright, 180° an underside; the mean weighted by area where it varies.</summary>
    public Angle SlopeFromHorizontal => Angle.FromRadians(slope);

    /// <summary>Developed over plain area: texture, joints, profile; 1 for a smooth surface.</summary>
    public double DevelopedFactor { get; }

    /// <summary>The openings that are taken off.</summary>
    public Area OpeningArea => Area.FromSquareMeters(openings);

    /// <summary>What gets coated: plain area × developed factor − openings.</summary>
    public Area CoatedArea => Area.FromSquareMeters(Coated);

    /// <summary>The formula of the plain area with its numbers and its source.</summary>
    public WorkingStep Step { get; }

    internal double Coated => (area * DevelopedFactor) - openings;

    internal Expression SlopeFormula { get; }

    internal bool IsPlain => DevelopedFactor == 1 && openings == 0;

    /// <summary>Whether two patches have the same name, zone, areas and slope.</summary>
    /// <param name="other">The patch to compare with.</param>
    /// <returns><see langword="true"/> when they are alike.</returns>
    public bool Equals(SurfacePatch? other) =>
        other is not null && Name == other.Name && Zone == other.Zone && area.Equals(other.area) && slope.Equals(other.slope)
        && relativeError.Equals(other.relativeError) && openings.Equals(other.openings) && DevelopedFactor.Equals(other.DevelopedFactor);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked((StringComparer.Ordinal.GetHashCode(Name) * 31) + area.GetHashCode());

    /// <summary>The name, what gets coated, the zone and the slope in one line, in metric units.</summary>
    /// <returns>Text such as <c>both side walls: 0.64839 m² of Wall at 81.418°</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0}: {1} of {2} at {3}",
        Name,
        Measure.Area.Format(Coated),
        Zone,
        Measure.Angle.Format(slope));

    /// <summary>A patch whose formula already stands in a derivation.</summary>
    internal static SurfacePatch Of(Workings workings, string symbol, FixtureZoneKind zone, double slope, double relativeError = 0, double factor = 1, double openings = 0)
    {
        foreach (WorkingStep step in workings.AllSteps())
        {
            if (step.Symbol == symbol)
            {
                return new(step, zone, slope, null, relativeError, factor, openings);
            }
        }

        throw new InvalidOperationException("The derivation has no step " + symbol + ".");
    }
}

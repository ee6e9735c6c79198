using System;
using UnitsNet;

namespace Refinish.Films;

/// <summary>The fan of a spray gun: how wide and high it is at a distance, and how the coating is spread over it.</summary>
/// <remarks>
/// The pattern is one over solid angle: at twice the distance it is twice as wide and high and lands a quarter as much on an area. On a
/// plane square to the fan at the reference distance, with x across and y along the height, in units of the half axes: uniform q = 1 /
/// (w h); elliptical q = 4 / (π w h); beta q = (b − 1/2) · 4 / (π w h) · (1 − ξ² − η²)^(b − 3/2); Gaussian with σ = w/4 and h/4, left
/// off where it has fallen to exp(−12.5), with the 4 parts in a million lost by that put back. A stroke square to the fan's width then
/// leaves the profiles named at <see cref="FanPatternShape"/>, whatever its height. Source: profiles of these families are common in
/// the literature on robot painting (from memory, unverified); the spread over solid angle is derived from them.
/// </remarks>
/// <example><code>
/// FanPattern fan = FanPattern.Beta(Length.FromCentimeters(25), Length.FromCentimeters(6), Length.FromCentimeters(20), 2);
/// double wider = fan.WidthAt(Length.FromCentimeters(24)).Centimeters;   // 30
/// double side = fan.RelativeBuild(Length.FromCentimeters(6.25), Length.FromCentimeters(20)).Percent;   // 75, half-way out
/// </code></example>
public sealed record FanPattern
{
    private FanPattern(FanPatternShape shape, Length width, Length height, Length referenceDistance, double exponent)
    {
        Shape = shape;
        Width = Guard.Checked(width, Bounds.Between(0.01, 1, Measure.Length));
        Height = Guard.Checked(height, Bounds.Between(0.002, 1, Measure.Length));
        ReferenceDistance = Guard.Checked(referenceDistance, Bounds.Between(0.05, 1, Measure.Length));
        Exponent = Guard.Within(exponent, Bounds.Between(1, 8, Measure.Number));
    }

    /// <summary>The family.</summary>
    public FanPatternShape Shape { get; }

    /// <summary>Width across the travel at the reference distance: edge to edge, or four standard deviations of a Gaussian.</summary>
    public Length Width { get; }

    /// <summary>Height along the travel at the reference distance, measured like the width.</summary>
    public Length Height { get; }

    /// <summary>Distance from nozzle to surface at which width and height were measured.</summary>
    public Length ReferenceDistance { get; }

    /// <summary>
    /// The b of the profile (1 − 4x²/w²)^(b − 1): 1 for uniform, 1.5 for elliptical; 1 also for a Gaussian, which has none.
    /// </summary>
    public double Exponent { get; }

    /// <summary>An even fan with a rectangular outline.</summary>
    /// <param name="width">Width at the reference distance, 10 mm to 1 m.</param>
    /// <param name="height">Height at the reference distance, 2 mm to 1 m.</param>
    /// <param name="referenceDistance">Distance from nozzle to surface, 50 mm to 1 m.</param>
    /// <returns>The pattern.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static FanPattern Uniform(Length width, Length height, Length referenceDistance) =>
        new(FanPatternShape.Uniform, width, height, referenceDistance, 1);

    /// <summary>An even fan with an elliptical outline.</summary>
    /// <param name="width">Width at the reference distance, 10 mm to 1 m.</param>
    /// <param name="height">Height at the reference distance, 2 mm to 1 m.</param>
    /// <param name="referenceDistance">Distance from nozzle to surface, 50 mm to 1 m.</param>
    /// <returns>The pattern.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static FanPattern Elliptical(Length width, Length height, Length referenceDistance) =>
        new(FanPatternShape.Elliptical, width, height, referenceDistance, 1.5);

    /// <summary>A fan of the beta family with an elliptical outline; 2 leaves a parabola, more is more peaked.</summary>
    /// <param name="width">Width at the reference distance, 10 mm to 1 m.</param>
    /// <param name="height">Height at the reference distance, 2 mm to 1 m.</param>
    /// <param name="referenceDistance">Distance from nozzle to surface, 50 mm to 1 m.</param>
    /// <param name="exponent">The b of the profile, 1.5 to 8.</param>
    /// <returns>The pattern.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length or the exponent is outside its range.</exception>
    public static FanPattern Beta(Length width, Length height, Length referenceDistance, double exponent) =>
        new(FanPatternShape.Beta, width, height, referenceDistance, Guard.Within(exponent, Bounds.Between(1.5, 8, Measure.Number)));

    /// <summary>A Gaussian fan: width and height are four standard deviations and hold 95.4 % of the coating each.</summary>
    /// <param name="width">Width at the reference distance, 10 mm to 1 m.</param>
    /// <param name="height">Height at the reference distance, 2 mm to 1 m.</param>
    /// <param name="referenceDistance">Distance from nozzle to surface, 50 mm to 1 m.</param>
    /// <returns>The pattern.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    public static FanPattern Gaussian(Length width, Length height, Length referenceDistance) =>
        new(FanPatternShape.Gaussian, width, height, referenceDistance, 1);

    /// <summary>The width at another distance: in proportion.</summary>
    /// <param name="distance">Distance from nozzle to surface, 50 mm to 1 m.</param>
    /// <returns>Width · distance / reference distance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length WidthAt(Length distance) => Length.FromMeters(WidthSiAt(distance));

    /// <summary>What one stroke leaves beside its middle, as a part of what it leaves in the middle.</summary>
    /// <param name="offset">Distance from the middle of the stroke, along the surface and across the travel; up to 2 m either way.</param>
    /// <param name="distance">Distance from nozzle to surface, 50 mm to 1 m.</param>
    /// <returns>100 % in the middle, 0 outside the fan.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio RelativeBuild(Length offset, Length distance)
    {
        double x = Guard.Within(offset, Bounds.Between(-2, 2, Measure.Length));
        return Ratio.FromDecimalFractions(FanPatternKernel.Relative(Shape, Exponent, WidthSiAt(distance), x));
    }

    /// <summary>The family and the size in one line, in metric units.</summary>
    /// <returns>Text such as <c>beta 2, 250 mm × 60 mm at 200 mm</c>.</returns>
    public override string ToString()
    {
        string family = Shape switch
        {
            FanPatternShape.Uniform => "uniform",
            FanPatternShape.Elliptical => "elliptical",
            FanPatternShape.Beta => "beta " + Figures.Significant(Exponent),
            _ => "Gaussian",
        };
        return family + ", " + Measure.Length.Format(Width.Meters) + " × " + Measure.Length.Format(Height.Meters) + " at "
            + Measure.Length.Format(ReferenceDistance.Meters);
    }

    private double WidthSiAt(Length distance)
    {
        double away = Guard.Within(distance, Bounds.Between(0.05, 1, Measure.Length));
        return FanPatternKernel.Width(Width.Meters, away, ReferenceDistance.Meters).Value;
    }
}

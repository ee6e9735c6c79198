using UnitsNet;

namespace Refinish.Substrates;

/// <summary>
/// A skim of filler over a rectangular patch that runs out to nothing around it: V = t (A + P f / 2 + π f² / 3),
/// with A area and P perimeter of the patch, t thickness and f width of the feathered edge.
/// </summary>
/// <remarks>Steiner's formula for the area around a convex patch, integrated over a linear taper; exact for any convex patch.</remarks>
/// <example><code>
/// FeatheredSkim skim = new(Length.FromMillimeters(300), Length.FromMillimeters(200), Length.FromMillimeters(0.6), Length.FromMillimeters(40));
/// Volume filler = skim.Volume;   // 49.005 mL
/// </code></example>
public sealed record FeatheredSkim
{
    private readonly double length;
    private readonly double width;
    private readonly double thickness;
    private readonly double feather;

    /// <summary>Calculates the skim.</summary>
    /// <param name="length">Length of the patch, more than 0 and at most 5 m.</param>
    /// <param name="width">Width of the patch, more than 0 and at most 5 m.</param>
    /// <param name="thickness">Thickness over the patch, more than 0 and at most 20 mm.</param>
    /// <param name="feather">Width over which it runs out, 0 to 1 m.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">A size is outside its range.</exception>
    public FeatheredSkim(Length length, Length width, Length thickness, Length feather)
    {
        this.length = Guard.Within(length, Bounds.Positive(Measure.Length, 5), nameof(length));
        this.width = Guard.Within(width, Bounds.Positive(Measure.Length, 5), nameof(width));
        this.thickness = Guard.Within(thickness, Bounds.Positive(Measure.Length, 0.02), nameof(thickness));
        this.feather = Guard.Within(feather, Bounds.NotNegative(Measure.Length, 1), nameof(feather));
    }

    /// <summary>Length of the patch.</summary>
    public Length Length => Length.FromMeters(length);

    /// <summary>Width of the patch.</summary>
    public Length Width => Length.FromMeters(width);

    /// <summary>Thickness over the patch.</summary>
    public Length Thickness => Length.FromMeters(thickness);

    /// <summary>Width over which it runs out.</summary>
    public Length Feather => Length.FromMeters(feather);

    /// <summary>Volume of the cured skim; shrinkage, sanding and waste come on top.</summary>
    public Volume Volume => Volume.FromCubicMeters(SubstratesKernel.FeatheredSkim(length, width, thickness, feather));

    /// <summary>How the volume follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression l = Expression.Quantity("l", length, Measure.Length);
        Expression w = Expression.Quantity("w", width, Measure.Length);
        Expression t = Expression.Quantity("t", thickness, Measure.Length);
        Expression f = Expression.Quantity("f", feather, Measure.Length);
        Expression volume = t * ((l * w) + (2 * (l + w) * f / 2) + (Expression.Pi() * Expression.Square(f) / 3));
        return new Workings(
            "Feathered skim",
            [new("skim with a feathered edge", "V", volume, Volume.CubicMeters, Measure.Liquid, Source.Derived("Steiner's formula, linear taper"))]);
    }

    /// <summary>The volume in one line, in metric units.</summary>
    /// <returns>Text such as <c>49.005 mL of cured skim</c>.</returns>
    public override string ToString() => Measure.Liquid.Format(Volume.CubicMeters) + " of cured skim";
}

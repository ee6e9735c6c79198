using UnitsNet;

namespace Refinish.Substrates;

/// <summary>A round chip, taken as a spherical cap: V = π h (3 a² + h²) / 6 with mouth radius a and depth h.</summary>
/// <remarks>Solid geometry; h = a is a half sphere, so a depth beyond the radius is refused as a likely mix-up of the two sizes.</remarks>
/// <example><code>
/// Volume hollow = new Chip(Length.FromMillimeters(20), Length.FromMillimeters(2)).CavityVolume;   // 318.35 mm³
/// </code></example>
public sealed record Chip : Defect
{
    private readonly double diameter;
    private readonly double depth;

    /// <summary>Records a chip.</summary>
    /// <param name="diameter">Across the mouth; more than 0 and at most 100 mm: anything larger is a <see cref="WornPatch"/>.</param>
    /// <param name="depth">Deepest point; more than 0 and at most half of <paramref name="diameter"/>.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">A size is outside its range.</exception>
    public Chip(Length diameter, Length depth)
        : base(DefectKind.Chip, "chip")
    {
        this.diameter = Guard.Within(diameter, Bounds.Positive(Measure.Length, 0.1), nameof(diameter));
        this.depth = Guard.Within(depth, Bounds.Positive(Measure.Length), nameof(depth));
        Guard.Rule(this.depth <= this.diameter / 2, nameof(depth), this.depth, Measure.Length, "at most half of diameter, ", this.diameter / 2);
    }

    /// <summary>Across the mouth.</summary>
    public Length Diameter => Length.FromMeters(diameter);

    /// <summary>Deepest point.</summary>
    public Length Depth => Length.FromMeters(depth);

    /// <summary>Volume of the hollow.</summary>
    public Volume CavityVolume => Volume.FromCubicMeters(SubstratesKernel.SphericalCap(diameter, depth));

    /// <inheritdoc/>
    public override string Describe(DisplayUnits system) => "chip " + Mm(diameter, system) + " across, " + Mm(depth, system) + " deep";

    internal override Cavity? CavityUnder(FillerPolicy policy)
    {
        Expression a = Expression.Quantity("d", diameter, Measure.Length) / 2;
        Expression h = Expression.Quantity("h", depth, Measure.Length);
        Expression formula = Expression.Pi() * h * ((3 * Expression.Square(a)) + Expression.Square(h)) / 6;
        return new Cavity(SubstratesKernel.SphericalCap(diameter, depth), depth, formula, Source.Derived("spherical cap"));
    }
}

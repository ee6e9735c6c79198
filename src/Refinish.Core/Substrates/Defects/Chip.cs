using System;
using UnitsNet;

namespace Refinish.Substrates;

/// <summary>
/// A chip, round or oval, taken as the cap of a sphere that is stretched to its outline: V = π h (3 a b + h²) / 6 with the half axes a, b
/// of the mouth and depth h. Round, a = b, it is the spherical cap.
/// </summary>
/// <remarks>
/// Solid geometry: stretching one way and pressing the other by the same factor leaves the volume as it was. h² = a b is half an ellipsoid,
/// ⅔ π a b h, which at the same mouth and a shallow depth would hold up to a third more. A depth beyond the smaller half axis is refused as
/// a likely mix-up of the sizes.
/// </remarks>
/// <example><code>
/// Volume round = new Chip(Length.FromMillimeters(20), Length.FromMillimeters(2)).CavityVolume;   // 318.35 mm³
/// Volume oval = new Chip(Length.FromMillimeters(30), Length.FromMillimeters(12), Length.FromMillimeters(2)).CavityVolume;   // 286.93 mm³
/// </code></example>
public sealed record Chip : Defect
{
    private static readonly Source Round = Source.Derived("spherical cap");
    private static readonly Source Stretched = Source.Derived("cap of a stretched sphere");

    private readonly double length;
    private readonly double width;
    private readonly double depth;

    /// <summary>Records a round chip.</summary>
    /// <param name="diameter">Across the mouth; more than 0 and at most 100 mm: anything larger is a <see cref="WornPatch"/>.</param>
    /// <param name="depth">Deepest point; at least 1 µm and at most half of <paramref name="diameter"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    public Chip(Length diameter, Length depth) : base(DefectKind.Chip, "chip")
    {
        length = width = Guard.Within(diameter, Bounds.Positive(Measure.Length, 0.1));
        this.depth = Guard.Within(depth, Depths());
        Guard.Rule(this.depth <= width / 2, nameof(depth), this.depth, Measure.Length, "at most half of diameter, ", width / 2);
    }

    /// <summary>Records an oval chip.</summary>
    /// <param name="length">
    /// Longer extent of the mouth; more than 0 and at most 100 mm: anything larger is a <see cref="WornPatch"/>.
    /// </param>
    /// <param name="width">Shorter extent; more than 0 and at most <paramref name="length"/>.</param>
    /// <param name="depth">Deepest point; at least 1 µm and at most half of <paramref name="width"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    public Chip(Length length, Length width, Length depth) : base(DefectKind.Chip, "chip")
    {
        this.length = Guard.Within(length, Bounds.Positive(Measure.Length, 0.1));
        this.width = Guard.Within(width, Bounds.Positive(Measure.Length));
        this.depth = Guard.Within(depth, Depths());
        Guard.Rule(this.width <= this.length, nameof(width), this.width, Measure.Length, "at most length, ", this.length);
        Guard.Rule(this.depth <= this.width / 2, nameof(depth), this.depth, Measure.Length, "at most half of width, ", this.width / 2);
    }

    /// <summary>Longer extent of the mouth; of a round chip its diameter.</summary>
    public Length Length => Length.FromMeters(length);

    /// <summary>Shorter extent of the mouth; of a round chip its diameter.</summary>
    public Length Width => Length.FromMeters(width);

    /// <summary>Whether the mouth is as wide as it is long.</summary>
    public bool IsRound => length == width;

    /// <summary>Deepest point.</summary>
    public Length Depth => Length.FromMeters(depth);

    /// <summary>Volume of the hollow.</summary>
    public Volume CavityVolume => Volume.FromCubicMeters(Cap(null).Value);

    /// <inheritdoc/>
    public override string Describe(DisplayUnits system) => IsRound
        ? "chip " + Mm(length, system) + " across, " + Mm(depth, system) + " deep"
        : "chip " + Mm(length, system) + " by " + Mm(width, system) + ", " + Mm(depth, system) + " deep";

    internal override double Size => length;

    internal override double FlatArea => Math.PI / 4 * length * width;

    internal override double? MeasuredDepth => depth;

    internal override Cavity? CavityUnder(FillerPolicy policy, Trace? t = null) =>
        new Cavity(Cap(t), depth, IsRound ? Round : Stretched);

    private Num Cap(Trace? t) => SubstratesKernel.EllipsoidalCap(
        IsRound
            ? Num.Square(t.Given("d", length, Measure.Length) / 2)
            : t.Given("l", length, Measure.Length) / 2 * (t.Given("w", width, Measure.Length) / 2),
        t.Given("h", depth, Measure.Length));
}

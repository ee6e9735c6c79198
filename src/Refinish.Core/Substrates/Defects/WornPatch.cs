using UnitsNet;

namespace Refinish.Substrates;

/// <summary>A worn place with an elliptical outline: V = κ (π l w / 4) h, a paraboloid (κ = 1/2) unless another profile is given.</summary>
/// <example><code>
/// WornPatch patch = new(Length.FromMillimeters(150), Length.FromMillimeters(100), Length.FromMillimeters(0.4));
/// Volume hollow = patch.CavityVolume;   // 2356.2 mm³
/// </code></example>
public sealed record WornPatch : Defect
{
    private static readonly Source Shape = Source.Derived("bowl with an elliptical mouth");

    private readonly double length;
    private readonly double width;
    private readonly double depth;

    /// <summary>Records a worn patch that falls like a shallow lens, a paraboloid.</summary>
    /// <param name="length">Longer extent, more than 0 and at most 2 m.</param>
    /// <param name="width">Shorter extent, more than 0 and at most <paramref name="length"/>.</param>
    /// <param name="depth">Deepest point; at least 1 µm and at most half of <paramref name="width"/>.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">A size is outside its range.</exception>
    public WornPatch(Length length, Length width, Length depth) : this(length, width, depth, BowlProfile.Paraboloid)
    {
    }

    /// <summary>Records a worn patch.</summary>
    /// <param name="length">Longer extent, more than 0 and at most 2 m.</param>
    /// <param name="width">Shorter extent, more than 0 and at most <paramref name="length"/>.</param>
    /// <param name="depth">Deepest point; at least 1 µm and at most half of <paramref name="width"/>.</param>
    /// <param name="profile">How it falls to the deepest point.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">
    /// A size is outside its range or <paramref name="profile"/> is not a named value.
    /// </exception>
    public WornPatch(Length length, Length width, Length depth, BowlProfile profile)
        : base(DefectKind.WornPatch, "worn patch")
    {
        this.length = Guard.Within(length, Bounds.Positive(Measure.Length, 2));
        this.width = Guard.Within(width, Bounds.Positive(Measure.Length));
        this.depth = Guard.Within(depth, Depths());
        Profile = Guard.Defined(profile);
        Guard.Rule(this.width <= this.length, nameof(width), this.width, Measure.Length, "at most length, ", this.length);
        Guard.Rule(this.depth <= this.width / 2, nameof(depth), this.depth, Measure.Length, "at most half of width, ", this.width / 2);
    }

    /// <summary>Longer extent.</summary>
    public Length Length => Length.FromMeters(length);

    /// <summary>Shorter extent.</summary>
    public Length Width => Length.FromMeters(width);

    /// <summary>Deepest point.</summary>
    public Length Depth => Length.FromMeters(depth);

    /// <summary>How it falls to the deepest point.</summary>
    public BowlProfile Profile { get; }

    /// <summary>Volume of the hollow.</summary>
    public Volume CavityVolume => Volume.FromCubicMeters(Bowl(null).Value);

    /// <inheritdoc/>
    public override string Describe(DisplayUnits system) =>
        "worn patch " + Mm(length, system) + " by " + Mm(width, system) + ", " + Mm(depth, system) + " deep";

    internal override double Size => length;

    internal override double FlatArea => System.Math.PI / 4 * length * width;

    internal override double? MeasuredDepth => depth;

    internal override Cavity? CavityUnder(FillerPolicy policy, Trace? t = null) =>
        new Cavity(Bowl(t), depth, Shape);

    private Num Bowl(Trace? t) => SubstratesKernel.Bowl(
        t.Given("κ", SubstratesKernel.Factor(Profile), Measure.Number), t.Given("l", length, Measure.Length),
        t.Given("w", width, Measure.Length), t.Given("h", depth, Measure.Length));
}

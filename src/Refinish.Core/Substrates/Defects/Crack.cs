using UnitsNet;

namespace Refinish.Substrates;

/// <summary>A crack with the size of the groove it is opened to: V = κ w h l, a vee (κ = 1/2) unless another profile is given.</summary>
/// <example><code>
/// Crack crack = new(Length.FromMillimeters(300), Length.FromMillimeters(1.5), Length.FromMillimeters(2), movesUnderLoad: false);
/// Volume hollow = crack.CavityVolume;   // 450 mm³
/// </code></example>
public sealed record Crack : Defect
{
    private static readonly Source Shape = Source.Derived("groove of constant cross-section");

    private readonly double length;
    private readonly double width;
    private readonly double depth;

    /// <summary>Records a crack that is opened to a vee.</summary>
    /// <param name="length">Along the crack, more than 0 and at most 5 m.</param>
    /// <param name="width">Across the opened groove, more than 0 and at most 50 mm.</param>
    /// <param name="depth">Depth of the opened groove, at least 1 µm and at most 50 mm.</param>
    /// <param name="movesUnderLoad">Whether its edges move when somebody steps beside it.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">A size is outside its range.</exception>
    public Crack(Length length, Length width, Length depth, bool movesUnderLoad)
        : this(length, width, depth, movesUnderLoad, GrooveProfile.Vee)
    {
    }

    /// <summary>Records a crack.</summary>
    /// <param name="length">Along the crack, more than 0 and at most 5 m.</param>
    /// <param name="width">Across the opened groove, more than 0 and at most 50 mm.</param>
    /// <param name="depth">Depth of the opened groove, at least 1 µm and at most 50 mm.</param>
    /// <param name="movesUnderLoad">Whether its edges move when somebody steps beside it.</param>
    /// <param name="profile">Cross-section of the opened groove.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">
    /// A size is outside its range or <paramref name="profile"/> is not a named value.
    /// </exception>
    public Crack(Length length, Length width, Length depth, bool movesUnderLoad, GrooveProfile profile)
        : base(DefectKind.Crack, "crack")
    {
        this.length = Guard.Within(length, Bounds.Positive(Measure.Length, 5));
        this.width = Guard.Within(width, Bounds.Positive(Measure.Length, 0.05));
        this.depth = Guard.Within(depth, Depths(0.05));
        Guard.Rule(this.width <= this.length, nameof(width), this.width, Measure.Length, "at most length, ", this.length);
        MovesUnderLoad = movesUnderLoad;
        Profile = Guard.Defined(profile);
    }

    /// <summary>Along the crack.</summary>
    public Length Length => Length.FromMeters(length);

    /// <summary>Across the opened groove.</summary>
    public Length Width => Length.FromMeters(width);

    /// <summary>Depth of the opened groove.</summary>
    public Length Depth => Length.FromMeters(depth);

    /// <summary>Whether its edges move when somebody steps beside it.</summary>
    public bool MovesUnderLoad { get; }

    /// <summary>Cross-section of the opened groove.</summary>
    public GrooveProfile Profile { get; }

    /// <summary>Volume of the groove.</summary>
    public Volume CavityVolume => Volume.FromCubicMeters(Groove(null).Value);

    /// <inheritdoc/>
    public override string Describe(DisplayUnits system) =>
        "crack " + Mm(length, system) + " long, groove " + Mm(width, system) + " wide and " + Mm(depth, system) + " deep, "
        + (MovesUnderLoad ? "moves under load" : "does not move under load");

    internal override double Size => length;

    internal override double? MeasuredDepth => depth;

    internal override Cavity? CavityUnder(FillerPolicy policy, Trace? t = null) =>
        new Cavity(Groove(t), depth, Shape);

    private Num Groove(Trace? t) => SubstratesKernel.Groove(
        t.Given("κ", SubstratesKernel.Factor(Profile), Measure.Number), t.Given("l", length, Measure.Length),
        t.Given("w", width, Measure.Length), t.Given("h", depth, Measure.Length));

    internal override double Units => length;

    // Fabric of 100 mm is laid over it (invented).
    internal override double MendedArea(double fixtureArea) => length * 0.1;
}

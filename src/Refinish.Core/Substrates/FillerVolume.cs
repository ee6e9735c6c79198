using UnitsNet;

namespace Refinish.Substrates;

/// <summary>
/// Mixed filler for one defect: V_mix = V (1 + o) / (1 − s) / (1 − c), with V the hollow, o the overfill that is sanded off,
/// s the volume shrinkage on curing and c the share left on board and knife.
/// </summary>
/// <remarks>
/// Lifts: n = roundup(h / lift). Sink of the last lift of a fill that is held at its sides: Δh = s h / n, since every lift tops up
/// the one before. A defect that is not mended with filler takes none, and <see cref="IsFilled"/> says so.
/// Derived; no published source.
/// </remarks>
/// <example><code>
/// Chip chip = new(Length.FromMillimeters(20), Length.FromMillimeters(2));
/// FillerVolume filler = new(chip, FillerPolicy.Generic);
/// double cubicMillimetres = filler.Mixed.CubicMillimeters;   // 503.4 = 318.35 × 1.25 / 0.93 / 0.85
/// </code></example>
public sealed record FillerVolume
{
    private static readonly Source Conserved = Source.Derived("conservation of cured volume; allowances are the filler policy's");
    private static readonly Source Shows = Source.Invented("a sink of more than a quarter of the dry film shows");
    private static readonly Source OfLifts = Source.Supplied("greatest lift of the filler; a billionth taken off for rounding");
    private static readonly Source InDepth = Source.Derived("a fill held at its sides shrinks in depth only");
    private static readonly Source OtherRemedy = Source.CommonPractice("another remedy is due");

    private readonly double cavity;
    private readonly double depth;
    private readonly double overfill;
    private readonly double shrinkage;
    private readonly double waste;
    private readonly double lift;

    /// <summary>Calculates the filler.</summary>
    /// <param name="defect">What is filled.</param>
    /// <param name="policy">With what and how generously.</param>
    /// <exception cref="System.ArgumentNullException">An argument is missing.</exception>
    public FillerVolume(Defect defect, FillerPolicy policy)
    {
        Defect = Guard.NotNull(defect);
        Policy = Guard.NotNull(policy);
        Cavity? hollow = defect.CavityUnder(policy);
        IsFilled = hollow is not null;
        cavity = hollow?.Volume.Value ?? 0;
        depth = hollow?.Depth ?? 0;
        overfill = policy.Overfill.DecimalFractions;
        shrinkage = policy.Product.Shrinkage.DecimalFractions;
        waste = policy.Waste.DecimalFractions;
        lift = policy.Product.MaximumLift.Meters;
    }

    /// <summary>What is filled.</summary>
    public Defect Defect { get; }

    /// <summary>With what and how generously.</summary>
    public FillerPolicy Policy { get; }

    /// <summary>Whether filler is the remedy at all; a hole right through, a flexing floor or a peeling coat needs another.</summary>
    public bool IsFilled { get; }

    /// <summary>The hollow.</summary>
    public Volume Cavity => Volume.FromCubicMeters(cavity);

    /// <summary>Deepest point of the hollow.</summary>
    public Length Depth => Length.FromMeters(depth);

    /// <summary>Fresh filler laid into the hollow.</summary>
    public Volume Applied => Volume.FromCubicMeters(LaidIn().Value);

    /// <summary>Filler to mix.</summary>
    public Volume Mixed => Volume.FromCubicMeters(ToMix().Value);

    /// <summary>Cured filler that is sanded off again.</summary>
    public Volume SandedOff => Volume.FromCubicMeters(Sanded().Value);

    /// <summary>In how many lifts it is laid; 0 when there is nothing to fill.</summary>
    public int Lifts => (int)LiftsOf().Value;

    /// <summary>How far the last lift sinks below flush on curing when it was laid flush.</summary>
    public Length Sink => Length.FromMeters(Lifts == 0 ? 0 : LastSink().Value);

    /// <summary>The sink held against the share of the dry film that the policy allows to show.</summary>
    public LimitComparison SinkAgainstFilm => new(
        "sink of the last lift",
        Sink.Meters,
        SinkAllowed().Value,
        LimitSense.AtMost,
        Measure.Film,
        Shows,
        "fill a second time after the first has cured");

    /// <summary>How the volumes follow.</summary>
    /// <returns>The derivation; a single step when nothing is filled.</returns>
    public Workings Workings() => IsFilled
        ? Trace.Of(Title, Hollow, LaidIn, ToMix, Sanded, LiftsOf, LastSink, SinkAllowed)
        : Trace.Of(Title, t => t.Step("hollow, not mended with filler", "V", Measure.Liquid, OtherRemedy, cavity));

    /// <summary>The volume to mix, in metric units.</summary>
    /// <returns>Text such as <c>0.5034 mL for chip 20 mm across, 2 mm deep</c>.</returns>
    public override string ToString() => Measure.Liquid.Format(Mixed.CubicMeters) + " for " + Defect.Describe(DisplayUnits.Si);

    private string Title => "Filler: " + Defect.Describe(DisplayUnits.Si);

    private Num Hollow(Trace? t) => t is not null && Defect.CavityUnder(Policy, t) is Cavity hollow
        ? t.Step("hollow", "V", Measure.Liquid, hollow.Source, hollow.Volume) : cavity;

    private Num LaidIn(Trace? t = null) => t.Step("fresh filler laid in", "V_a", Measure.Liquid, Conserved,
        SubstratesKernel.Applied(Hollow(t), t.Given("o", overfill, Measure.Percent), Shrinkage(t)));

    private Num ToMix(Trace? t = null) =>
        t.Step("filler to mix", "V_m", Measure.Liquid, Conserved, LaidIn(t) / (1 - t.Given("c", waste, Measure.Percent)));

    private Num Sanded(Trace? t = null) =>
        t.Step("sanded off after cure", "V_s", Measure.Liquid, Conserved, Hollow(t) * t.Given("o", overfill, Measure.Percent));

    private Num LiftsOf(Trace? t = null) =>
        t.Step("lifts", "n", Measure.Number, OfLifts, SubstratesKernel.Lifts(DepthOf(t), t.Given("h_lift", lift, Measure.Length)));

    private Num LastSink(Trace? t = null) =>
        t.Step("sink of the last lift", "Δh", Measure.Film, InDepth, Shrinkage(t) * DepthOf(t) / LiftsOf(t));

    private Num SinkAllowed(Trace? t = null) => t.Step("sink that may show", "Δh_max", Measure.Film, Shows,
        t.Given("q", Policy.SinkPerDryFilm.DecimalFractions, Measure.Percent) * t.Given("DFT", Policy.TotalDryFilm.Meters, Measure.Film));

    private Num DepthOf(Trace? t) => t.Given("h", depth, Measure.Length);

    private Num Shrinkage(Trace? t) => t.Given("s", shrinkage, Measure.Percent);
}

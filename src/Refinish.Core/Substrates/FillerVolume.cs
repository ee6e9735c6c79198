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
        Defect = Guard.NotNull(defect, nameof(defect));
        Policy = Guard.NotNull(policy, nameof(policy));
        Cavity? hollow = defect.CavityUnder(policy);
        IsFilled = hollow is not null;
        cavity = hollow?.Volume ?? 0;
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
    public Volume Applied => Volume.FromCubicMeters(SubstratesKernel.Applied(cavity, overfill, shrinkage));

    /// <summary>Filler to mix.</summary>
    public Volume Mixed => Volume.FromCubicMeters(SubstratesKernel.Applied(cavity, overfill, shrinkage) / (1 - waste));

    /// <summary>Cured filler that is sanded off again.</summary>
    public Volume SandedOff => Volume.FromCubicMeters(cavity * overfill);

    /// <summary>In how many lifts it is laid; 0 when there is nothing to fill.</summary>
    public int Lifts => (int)SubstratesKernel.Lifts(depth, lift);

    /// <summary>How far the last lift sinks below flush on curing when it was laid flush.</summary>
    public Length Sink => Length.FromMeters(Lifts == 0 ? 0 : shrinkage * depth / Lifts);

    /// <summary>The sink held against the share of the dry film that the policy allows to show.</summary>
    public LimitComparison SinkAgainstFilm => new(
        "sink of the last lift",
        Sink.Meters,
        Policy.SinkPerDryFilm.DecimalFractions * Policy.TotalDryFilm.Meters,
        LimitSense.AtMost,
        Measure.Film,
        Source.Invented("a sink of more than a quarter of the dry film shows"),
        "fill a second time after the first has cured");

    /// <summary>How the volumes follow.</summary>
    /// <returns>The derivation; a single step when nothing is filled.</returns>
    public Workings Workings()
    {
        string title = "Filler: " + Defect.Describe(DisplayUnits.Si);
        Source invented = Source.Derived("conservation of cured volume; allowances are the filler policy's");
        if (Defect.CavityUnder(Policy) is not Cavity hollow)
        {
            return new Workings(title, [new("hollow, not mended with filler", "V", Expression.Number(0), cavity, Measure.Liquid, Source.CommonPractice("another remedy is due"))]);
        }

        Expression o = Expression.Quantity("o", overfill, Measure.Percent);
        Expression s = Expression.Quantity("s", shrinkage, Measure.Percent);
        Expression c = Expression.Quantity("c", waste, Measure.Percent);
        Expression h = Expression.Quantity("h", depth, Measure.Length);
        Expression l = Expression.Quantity("h_lift", lift, Measure.Length);
        WorkingStep v = new("hollow", "V", hollow.Formula, cavity, Measure.Liquid, hollow.Source);
        WorkingStep applied = new("fresh filler laid in", "V_a", v.Result() * (1 + o) / (1 - s), Applied.CubicMeters, Measure.Liquid, invented);
        WorkingStep mixed = new("filler to mix", "V_m", applied.Result() / (1 - c), Mixed.CubicMeters, Measure.Liquid, invented);
        WorkingStep sanded = new("sanded off after cure", "V_s", v.Result() * o, SandedOff.CubicMeters, Measure.Liquid, invented);
        WorkingStep lifts = new("lifts", "n", Expression.Ceiling((h / l) - 1e-9), Lifts, Measure.Number, Source.Supplied("greatest lift of the filler; a billionth taken off for rounding"));
        WorkingStep sink = new("sink of the last lift", "Δh", s * h / lifts.Result(), Sink.Meters, Measure.Film, Source.Derived("a fill held at its sides shrinks in depth only"));
        Expression film = Expression.Quantity("DFT", Policy.TotalDryFilm.Meters, Measure.Film);
        Expression share = Expression.Quantity("q", Policy.SinkPerDryFilm.DecimalFractions, Measure.Percent);
        WorkingStep limit = new("sink that may show", "Δh_max", share * film, SinkAgainstFilm.Limit ?? 0, Measure.Film, SinkAgainstFilm.Source);
        return new Workings(title, [v, applied, mixed, sanded, lifts, sink, limit]);
    }

    /// <summary>The volume to mix, in metric units.</summary>
    /// <returns>Text such as <c>0.5034 mL for chip 20 mm across, 2 mm deep</c>.</returns>
    public override string ToString() => Measure.Liquid.Format(Mixed.CubicMeters) + " for " + Defect.Describe(DisplayUnits.Si);
}

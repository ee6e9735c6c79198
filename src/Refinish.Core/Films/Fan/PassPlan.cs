using System;
using System.Globalization;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// How many passes build a dry film when each wet pass has to lie between a least film (below it the coat does not close or level) and
/// a most film (above it the coat runs).
/// </summary>
/// <remarks>
/// n passes of the same wet film W / n, W = DFT (1 + R) / VS, with W / most ≤ n ≤ W / least. No whole n may exist: then the result
/// says which dry films on either side can be had. Each pass is taken to have flashed off before the next: solvent left in the film below
/// lets the next one sag sooner than its own limit says.
/// </remarks>
/// <example><code>
/// PassPlan plan = new(Length.FromMicrometers(60), Ratio.FromPercent(40), Length.FromMicrometers(40), Length.FromMicrometers(68));
/// int? passes = plan.Passes;                 // 3: 150 µm wet in three passes of 50 µm
/// </code></example>
public sealed record PassPlan
{
    private static readonly Source Definition = Source.Derived("equal passes between the wet limits that add up to the wet film of the target");

    /// <summary>Plans the passes of a coating without reducer.</summary>
    /// <param name="dryFilm">Dry film to be built in all; more than 0 and at most 5 mm.</param>
    /// <param name="volumeSolids">Volume solids of the mixed, unreduced coating; more than 0 and at most 100 %.</param>
    /// <param name="leastWet">Least wet film of a pass; from 1 µm to 5 mm.</param>
    /// <param name="mostWet">Most wet film of a pass; not below the least, at most 5 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public PassPlan(Length dryFilm, Ratio volumeSolids, Length leastWet, Length mostWet)
        : this(dryFilm, volumeSolids, leastWet, mostWet, Ratio.Zero)
    {
    }

    /// <summary>Plans the passes.</summary>
    /// <param name="dryFilm">Dry film to be built in all; more than 0 and at most 5 mm.</param>
    /// <param name="volumeSolids">Volume solids of the mixed, unreduced coating; more than 0 and at most 100 %.</param>
    /// <param name="leastWet">Least wet film of a pass; from 1 µm to 5 mm.</param>
    /// <param name="mostWet">Most wet film of a pass; not below the least, at most 5 mm.</param>
    /// <param name="reducer">Reducer per volume of mixed coating; 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public PassPlan(Length dryFilm, Ratio volumeSolids, Length leastWet, Length mostWet, Ratio reducer)
    {
        DryFilm = Guard.Checked(dryFilm, Bounds.Positive(Measure.Film, 5e-3));
        VolumeSolids = Guard.Checked(volumeSolids, Bounds.Between(0.01, 1, Measure.Percent));
        LeastWet = Guard.Checked(leastWet, Bounds.Between(1e-6, 5e-3, Measure.Film));
        MostWet = Guard.Checked(mostWet, Bounds.Between(1e-6, 5e-3, Measure.Film));
        Guard.Rule(MostWet.Meters >= LeastWet.Meters, nameof(mostWet), MostWet.Meters, Measure.Film, "at least the least film, ",
            LeastWet.Meters);
        Reducer = Guard.Checked(reducer, Bounds.NotNegative(Measure.Percent, 1));
    }

    /// <summary>Dry film to be built in all.</summary>
    public Length DryFilm { get; }

    /// <summary>Volume solids of the mixed, unreduced coating.</summary>
    public Ratio VolumeSolids { get; }

    /// <summary>Reducer per volume of mixed coating.</summary>
    public Ratio Reducer { get; }

    /// <summary>Least wet film of a pass.</summary>
    public Length LeastWet { get; }

    /// <summary>Most wet film of a pass.</summary>
    public Length MostWet { get; }

    /// <summary>Wet film to be laid in all.</summary>
    public Length WetFilm => Length.FromMeters(Wet().Value);

    /// <summary>Fewest passes that keep each one within the most film.</summary>
    public int FewestPasses => (int)Fewest().Value;

    /// <summary>Most passes that keep each one at the least film; 0 when the target is less than one pass of it.</summary>
    public int MostPasses => (int)Most().Value;

    /// <summary>Whether some number of passes keeps both limits.</summary>
    public bool IsPossible => FewestPasses <= MostPasses;

    /// <summary>The fewest passes that keep both limits; <see langword="null"/> when none does.</summary>
    public int? Passes => IsPossible ? FewestPasses : null;

    /// <summary>Wet film of each of them; <see langword="null"/> when the plan is not possible.</summary>
    public Length? WetPerPass => IsPossible ? Length.FromMeters(WetOfPass().Value) : null;

    /// <summary>Dry film of each of them; <see langword="null"/> when the plan is not possible.</summary>
    public Length? DryPerPass => IsPossible ? Length.FromMeters(DryOfPass().Value) : null;

    /// <summary>
    /// When the plan is not possible, the thickest dry film below the target that is; <see langword="null"/> when there is none or none
    /// is needed.
    /// </summary>
    public Length? ReachableBelow => IsPossible || FewestPasses < 2 ? null : Length.FromMeters(Below().Value);

    /// <summary>
    /// When the plan is not possible, the thinnest dry film above the target that is; <see langword="null"/> when none is needed.
    /// </summary>
    public Length? ReachableAbove => IsPossible ? null : Length.FromMeters(Above().Value);

    /// <summary>Why no number of passes keeps both limits; <see langword="null"/> when one does.</summary>
    public string? Objection => IsPossible
        ? null
        : Measure.Film.Format(Wet().Value) + " wet is too thick for " + Count(FewestPasses - 1) + " and too thin for " + Count(FewestPasses)
            + " between " + Measure.Film.Format(LeastWet.Meters) + " and " + Measure.Film.Format(MostWet.Meters) + " wet; reachable: "
            + (ReachableBelow is Length below ? Measure.Film.Format(below.Meters) + " or " : string.Empty)
            + Measure.Film.Format(Above().Value) + " dry";

    /// <summary>How the passes follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of(
        "Passes to the film",
        [Wet, Fewest, Most, .. Trace.When(IsPossible, WetOfPass, DryOfPass),
            .. Trace.When(!IsPossible && FewestPasses >= 2, Below), .. Trace.When(!IsPossible, Above)]);

    /// <summary>The plan in one line, in metric units.</summary>
    /// <returns>Text such as <c>3 passes of 50 µm wet for 60 µm dry</c>.</returns>
    public override string ToString() => Passes is int n
        ? Count(n) + " of " + Measure.Film.Format(WetOfPass().Value) + " wet for " + Measure.Film.Format(DryFilm.Meters) + " dry"
        : Objection!;

    private static string Count(int passes) => passes.ToString(CultureInfo.InvariantCulture) + (passes == 1 ? " pass" : " passes");

    private Num Wet(Trace? t = null) =>
        t.Step("wet film in all", "WFT", Measure.Film, Definition, FilmKernel.WetFilm(Target(t), Solids(t), Reduced(t)));

    private Num Fewest(Trace? t = null) =>
        t.Step("fewest passes", "n_min", Measure.Number, Definition, FilmKernel.PassesUpwards(Wet(t), High(t)));

    private Num Most(Trace? t = null) =>
        t.Step("most passes", "n_max", Measure.Number, Definition, FilmKernel.PassesDownwards(Wet(t), Low(t)));

    private Num WetOfPass(Trace? t = null) => t.Step("wet film of a pass", "WFT_1", Measure.Film, Definition, Wet(t) / Fewest(t));

    private Num DryOfPass(Trace? t = null) => t.Step("dry film of a pass", "DFT_1", Measure.Film, Definition, Target(t) / Fewest(t));

    private Num Below(Trace? t = null) =>
        t.Step("reachable below", "DFT_−", Measure.Film, Definition, FilmKernel.DryFilm((Fewest(t) - 1) * High(t), Solids(t), Reduced(t)));

    private Num Above(Trace? t = null) =>
        t.Step("reachable above", "DFT_+", Measure.Film, Definition, FilmKernel.DryFilm(Fewest(t) * Low(t), Solids(t), Reduced(t)));

    private Num Target(Trace? t) => t.Given("DFT", DryFilm.Meters, Measure.Film);

    private Num Solids(Trace? t) => t.Given("VS", VolumeSolids.DecimalFractions, Measure.Percent);

    private Num Reduced(Trace? t) => t.Given("R", Reducer.DecimalFractions, Measure.Percent);

    private Num Low(Trace? t) => t.Given("WFT_min", LeastWet.Meters, Measure.Film);

    private Num High(Trace? t) => t.Given("WFT_max", MostWet.Meters, Measure.Film);
}

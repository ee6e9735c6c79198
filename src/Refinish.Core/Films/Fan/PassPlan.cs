using System;
using System.Collections.Generic;
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

    private readonly double target;
    private readonly double volumeSolids;
    private readonly double reducer;
    private readonly double least;
    private readonly double most;

    /// <summary>Plans the passes.</summary>
    /// <param name="dryFilm">Dry film to be built in all; more than 0 and at most 5 mm.</param>
    /// <param name="volumeSolids">Volume solids of the mixed, unreduced coating; more than 0 and at most 100 %.</param>
    /// <param name="leastWet">Least wet film of a pass; from 1 µm to 5 mm.</param>
    /// <param name="mostWet">Most wet film of a pass; not below the least, at most 5 mm.</param>
    /// <param name="reducer">Reducer per volume of mixed coating; 0 to 100 %, none when omitted.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public PassPlan(Length dryFilm, Ratio volumeSolids, Length leastWet, Length mostWet, Ratio reducer = default)
    {
        target = Guard.Within(dryFilm, Bounds.Positive(Measure.Film, 5e-3), nameof(dryFilm));
        this.volumeSolids = Guard.Within(volumeSolids, Bounds.Between(0.01, 1, Measure.Percent), nameof(volumeSolids));
        least = Guard.Within(leastWet, Bounds.Between(1e-6, 5e-3, Measure.Film), nameof(leastWet));
        most = Guard.Within(mostWet, Bounds.Between(1e-6, 5e-3, Measure.Film), nameof(mostWet));
        Guard.Rule(most >= least, nameof(mostWet), most, Measure.Film, "at least the least film, ", least);
        this.reducer = Guard.Within(reducer, Bounds.NotNegative(Measure.Percent, 1), nameof(reducer));
    }

    /// <summary>Dry film to be built in all.</summary>
    public Length DryFilm => Length.FromMeters(target);

    /// <summary>Volume solids of the mixed, unreduced coating.</summary>
    public Ratio VolumeSolids => Ratio.FromDecimalFractions(volumeSolids);

    /// <summary>Reducer per volume of mixed coating.</summary>
    public Ratio Reducer => Ratio.FromDecimalFractions(reducer);

    /// <summary>Least wet film of a pass.</summary>
    public Length LeastWet => Length.FromMeters(least);

    /// <summary>Most wet film of a pass.</summary>
    public Length MostWet => Length.FromMeters(most);

    /// <summary>Wet film to be laid in all.</summary>
    public Length WetFilm => Length.FromMeters(Wet);

    /// <summary>Fewest passes that keep each one within the most film.</summary>
    public int FewestPasses => FilmKernel.PassesUpwards(Wet, most);

    /// <summary>Most passes that keep each one at the least film; 0 when the target is less than one pass of it.</summary>
    public int MostPasses => FilmKernel.PassesDownwards(Wet, least);

    /// <summary>Whether some number of passes keeps both limits.</summary>
    public bool IsPossible => FewestPasses <= MostPasses;

    /// <summary>The fewest passes that keep both limits; <see langword="null"/> when none does.</summary>
    public int? Passes => IsPossible ? FewestPasses : null;

    /// <summary>Wet film of each of them; <see langword="null"/> when the plan is not possible.</summary>
    public Length? WetPerPass => Passes is int n ? Length.FromMeters(Wet / n) : null;

    /// <summary>Dry film of each of them; <see langword="null"/> when the plan is not possible.</summary>
    public Length? DryPerPass => Passes is int n ? Length.FromMeters(target / n) : null;

    /// <summary>When the plan is not possible, the thickest dry film below the target that is; <see langword="null"/> when there is none or none is needed.</summary>
    public Length? ReachableBelow => IsPossible || FewestPasses < 2 ? null : Length.FromMeters(Dry((FewestPasses - 1) * most));

    /// <summary>When the plan is not possible, the thinnest dry film above the target that is; <see langword="null"/> when none is needed.</summary>
    public Length? ReachableAbove => IsPossible ? null : Length.FromMeters(Dry(FewestPasses * least));

    /// <summary>Why no number of passes keeps both limits; <see langword="null"/> when one does.</summary>
    public string? Objection => IsPossible
        ? null
        : string.Format(
            CultureInfo.InvariantCulture,
            "{0} wet is too thick for {1} and too thin for {2} between {3} and {4} wet; reachable: {5}{6} dry",
            Measure.Film.Format(Wet),
            Count(FewestPasses - 1),
            Count(FewestPasses),
            Measure.Film.Format(least),
            Measure.Film.Format(most),
            ReachableBelow is Length below ? Measure.Film.Format(below.Meters) + " or " : string.Empty,
            Measure.Film.Format(ReachableAbove!.Value.Meters));

    private double Wet => FilmKernel.WetFilm(target, volumeSolids, reducer).Value;

    /// <summary>How the passes follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression dft = Expression.Quantity("DFT", target, Measure.Film);
        Expression vs = Expression.Quantity("VS", volumeSolids, Measure.Percent);
        Expression r = Expression.Quantity("R", reducer, Measure.Percent);
        Expression low = Expression.Quantity("WFT_min", least, Measure.Film);
        Expression high = Expression.Quantity("WFT_max", most, Measure.Film);
        WorkingStep wet = new("wet film in all", "WFT", dft * (1 + r) / vs, Wet, Measure.Film, Definition);
        WorkingStep fewest = new("fewest passes", "n_min", Expression.Ceiling((wet.Result() / high) - FilmKernel.Slack), FewestPasses, Measure.Number, Definition);
        WorkingStep mostPasses = new("most passes", "n_max", Expression.Floor((wet.Result() / low) + FilmKernel.Slack), MostPasses, Measure.Number, Definition);
        List<WorkingStep> steps = [wet, fewest, mostPasses];
        if (WetPerPass is Length perPass)
        {
            steps.Add(new("wet film of a pass", "WFT_1", wet.Result() / fewest.Result(), perPass.Meters, Measure.Film, Definition));
            steps.Add(new("dry film of a pass", "DFT_1", dft / fewest.Result(), DryPerPass!.Value.Meters, Measure.Film, Definition));
        }
        else
        {
            if (ReachableBelow is Length below)
            {
                steps.Add(new("reachable below", "DFT_−", (fewest.Result() - 1) * high * vs / (1 + r), below.Meters, Measure.Film, Definition));
            }

            steps.Add(new("reachable above", "DFT_+", fewest.Result() * low * vs / (1 + r), ReachableAbove!.Value.Meters, Measure.Film, Definition));
        }

        return new Workings("Passes to the film", steps);
    }

    /// <summary>The plan in one line, in metric units.</summary>
    /// <returns>Text such as <c>3 passes of 50 µm wet for 60 µm dry</c>.</returns>
    public override string ToString() => Passes is int n
        ? Count(n) + " of " + Measure.Film.Format(Wet / n) + " wet for " + Measure.Film.Format(target) + " dry"
        : Objection!;

    private static string Count(int passes) => passes.ToString(CultureInfo.InvariantCulture) + (passes == 1 ? " pass" : " passes");

    private double Dry(double wet) => FilmKernel.DryFilm(wet, volumeSolids, reducer).Value;
}

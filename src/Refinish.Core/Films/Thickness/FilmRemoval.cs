using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// What sanding and polishing leave of a film, at its mean and at its thinnest place, and how much has to be sprayed so that enough is
/// left.
/// </summary>
/// <remarks>
/// What is taken is counted off the mean film. The thinnest place loses as much when the tool follows the surface, and more over an
/// edge, where no number holds: mask edges or rub them by hand. What has to be laid is the least film wanted plus all that is taken.
/// </remarks>
/// <example><code>
/// FilmRemoval removal = new(
///     Length.FromMicrometers(60),
///     [RemovalStep.Flatten("wet sand flat", Length.FromMicrometers(10)), RemovalStep.TakeOff("polish", Length.FromMicrometers(3), Source.Supplied("trial panel"))],
///     leastWanted: Length.FromMicrometers(45),
///     thinnest: Length.FromMicrometers(50));
/// Length left = removal.Remaining;                    // 52 µm
/// bool enough = removal.Comparison!.Outcome == ComparisonOutcome.Within;      // false: 42 µm at the thinnest place
/// </code></example>
public sealed record FilmRemoval
{
    private static readonly Source Balance = Source.Derived("film before less what each step takes");
    private static readonly Source Wanted = Source.Supplied("least dry film wanted after sanding and polishing");

    private readonly ValueList<RemovalStep> steps;

    /// <summary>Adds up the steps; nothing is judged.</summary>
    /// <param name="film">Mean dry film before, more than 0 and at most 5 mm.</param>
    /// <param name="steps">The steps in order.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilmRemoval(Length film, IEnumerable<RemovalStep> steps)
        : this(film, steps, null, null)
    {
    }

    /// <summary>Adds up the steps.</summary>
    /// <param name="film">Mean dry film before, more than 0 and at most 5 mm.</param>
    /// <param name="steps">The steps in order.</param>
    /// <param name="leastWanted">Least dry film that has to be left, 0 to 5 mm; without it nothing is judged.</param>
    /// <param name="thinnest">Thinnest film before, 0 to the mean film; the mean when <see langword="null"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilmRemoval(Length film, IEnumerable<RemovalStep> steps, Length? leastWanted, Length? thinnest)
    {
        Film = Guard.Checked(film, Bounds.Positive(Measure.Film, 5e-3));
        this.steps = Guard.List(steps);
        LeastWanted = leastWanted is Length wanted
            ? Guard.Checked(wanted, Bounds.NotNegative(Measure.Film, 5e-3), nameof(leastWanted)) : null;
        Thinnest = thinnest is Length least
            ? Guard.Checked(least, Bounds.NotNegative(Measure.Film, Film.Meters), nameof(thinnest)) : null;
    }

    /// <summary>Mean dry film before.</summary>
    public Length Film { get; }

    /// <summary>The steps in order.</summary>
    public IReadOnlyList<RemovalStep> Steps => steps;

    /// <summary>Least dry film that has to be left; <see langword="null"/> when not given.</summary>
    public Length? LeastWanted { get; }

    /// <summary>Thinnest film before; <see langword="null"/> when not given.</summary>
    public Length? Thinnest { get; }

    /// <summary>Mean film taken in all.</summary>
    public Length Lost => Length.FromMeters(Taken().Value);

    /// <summary>Mean film left; negative when the steps cut through, by as much as they would go below.</summary>
    public Length Remaining => Length.FromMeters(Left().Value);

    /// <summary>
    /// Film left at the thinnest place, or at the mean when the thinnest is not known; negative when the steps cut through there.
    /// </summary>
    public Length RemainingAtThinnest => Length.FromMeters(Thin().Value);

    /// <summary>Whether the steps reach through the film at its thinnest place.</summary>
    public bool CutsThrough => Thin().Value <= 0;

    /// <summary>Dry film to lay so that the least is left; <see langword="null"/> when no least was given.</summary>
    public Length? ToLay => LeastWanted is null ? null : Length.FromMeters(Lay().Value);

    /// <summary>What is left at the thinnest place against the least wanted; <see langword="null"/> when no least was given.</summary>
    public LimitComparison? Comparison => LeastWanted?.Meters is double l
        ? new(
            "film left at the thinnest place", Thin().Value, l, LimitSense.AtLeast, Measure.Film, Wanted,
            "lay at least " + Measure.Film.Format(Lay().Value) + " there, or sand less")
        : null;

    /// <summary>What can hurt.</summary>
    public IReadOnlyList<Caution> Cautions { get; } = new ValueList<Caution>([Refinish.Cautions.UncuredDust]);

    /// <summary>How the films follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() =>
        Trace.Of("Film lost to sanding and polishing", [Taken, Left, Thin, .. Trace.When(LeastWanted is not null, Lay)]);

    /// <summary>What is left in one line, in metric units.</summary>
    /// <returns>Text such as <c>52 µm left of 60 µm</c>.</returns>
    public override string ToString() => Measure.Film.Format(Remaining.Meters) + " left of " + Measure.Film.Format(Film.Meters);

    private Num Taken(Trace? t = null)
    {
        Num sum = 0;
        for (int i = 0; i < steps.Count; i++)
        {
            RemovalStep step = steps[i];
            sum += t is null ? step.Taken() : t.Step(step.Name, "d_" + Figures.Fixed(i + 1, 0), Measure.Film, step.Source, step.Taken(t));
        }

        return t.Step("film taken", "d", Measure.Film, Balance, sum);
    }

    private Num Left(Trace? t = null) =>
        t.Step("film left", "DFT_left", Measure.Film, Balance, t.Given("DFT", Film.Meters, Measure.Film) - Taken(t));

    private Num Thin(Trace? t = null) =>
        t.Step("film left at the thinnest place", "DFT_thin", Measure.Film, Balance,
            t.Given("DFT_min", Thinnest?.Meters ?? Film.Meters, Measure.Film) - Taken(t));

    private Num Lay(Trace? t = null) =>
        t.Step("film to lay", "DFT_lay", Measure.Film, Balance, t.Given("DFT_want", LeastWanted!.Value.Meters, Measure.Film) + Taken(t));
}

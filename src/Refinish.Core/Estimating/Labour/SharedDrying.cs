using System;

namespace Refinish.Estimating;

/// <summary>
/// Several like fixtures sprayed in turn: while one dries, the next is sprayed, so that waiting between coats is shared.
/// </summary>
/// <remarks>
/// One after the other, n fixtures of k coats take n (k w + (k − 1) d) with w for a coat and d for drying. In turn a round takes the
/// longer of n w and w + d, and the last round n w: (k − 1) max(n w, w + d) + n w. The recoat window has to hold for what the round
/// takes; that is the schedule's to judge. Drying must go on while the neighbour is sprayed; overspray must not land on a wet film.
/// </remarks>
/// <example><code>
/// SharedDrying pair = new(fixtures: 2, coats: 3, TimeSpan.FromMinutes(20), TimeSpan.FromMinutes(30));
/// TimeSpan saved = pair.Saved;   // 2 h less 20 min = 1 h 20 min
/// </code></example>
public sealed record SharedDrying
{
    private static readonly Source InTurns = Source.Derived("one person, like fixtures, coats in turn");

    private readonly double coat;
    private readonly double drying;

    /// <summary>Reckons the times.</summary>
    /// <param name="fixtures">Like fixtures, 1 to 100.</param>
    /// <param name="coats">Coats on each, 1 to 20.</param>
    /// <param name="perCoat">Time to mix and spray one coat on one fixture, more than 0 and at most 24 h.</param>
    /// <param name="betweenCoats">Time that a coat dries before the next, 0 to 7 days.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public SharedDrying(int fixtures, int coats, TimeSpan perCoat, TimeSpan betweenCoats)
    {
        Fixtures = Guard.Count(fixtures, 1, 100);
        Coats = Guard.Count(coats, 1, 20);
        coat = Guard.Within(perCoat, Bounds.Positive(Measure.Hours, 86400));
        drying = Guard.Within(betweenCoats, Bounds.NotNegative(Measure.Hours, 7 * 86400));
    }

    /// <summary>Like fixtures.</summary>
    public int Fixtures { get; }

    /// <summary>Coats on each.</summary>
    public int Coats { get; }

    /// <summary>Clock time when each fixture is finished before the next is begun.</summary>
    public TimeSpan OneAfterTheOther => Durations.FromSeconds(Apart().Value);

    /// <summary>Clock time when coats go round in turn.</summary>
    public TimeSpan InTurn => Durations.FromSeconds(Turn().Value);

    /// <summary>Clock time saved.</summary>
    public TimeSpan Saved => Durations.FromSeconds(Gain().Value);

    /// <summary>Waiting that is left when coats go round in turn.</summary>
    public TimeSpan Waiting => Durations.FromSeconds(Left().Value);

    /// <summary>How the times follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Shared drying", Apart, Turn, Gain, Left);

    /// <summary>Times with and without taking turns.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Measure.Hours.Format(Turn().Value, figures: 3) + " in turn, "
            + Measure.Hours.Format(Apart().Value, figures: 3) + " one after the other";

    private Num Apart(Trace? t = null) =>
        t.Step("one after the other", "t_1", Measure.Hours, InTurns, N(t) * ((K(t) * W(t)) + ((K(t) - 1) * D(t))));

    private Num Turn(Trace? t = null) =>
        t.Step("in turn", "t_2", Measure.Hours, InTurns, ((K(t) - 1) * Num.Max(N(t) * W(t), W(t) + D(t))) + (N(t) * W(t)));

    private Num Gain(Trace? t = null) => t.Step("saved", "Δt", Measure.Hours, InTurns, Apart(t) - Turn(t));

    private Num Left(Trace? t = null) => t.Step("waiting that is left", "t_w", Measure.Hours, InTurns, Turn(t) - (N(t) * K(t) * W(t)));

    private Num N(Trace? t) => t.Given("n", Fixtures, Measure.Number);

    private Num K(Trace? t) => t.Given("k", Coats, Measure.Number);

    private Num W(Trace? t) => t.Given("w", coat, Measure.Minutes);

    private Num D(Trace? t) => t.Given("d", drying, Measure.Minutes);
}

using System;

namespace Refinish.Estimating;

/// <summary>
/// Several like fixtures sprayed in turn: while one dries, the next is sprayed, so that waiting between coats is shared.
/// </summary>
/// <remarks>
/// One after the other, n fixtures of k coats take n (k w + (k − 1) d) with w for a coat and d for drying. In turn a round takes the longer of n w
/// and w + d, and the last round n w: (k − 1) max(n w, w + d) + n w. The recoat window has to hold for what the round takes; that is the
/// schedule's to judge. Drying must go on while the neighbour is sprayed; overspray must not land on a wet film.
/// </remarks>
/// <example><code>
/// SharedDrying pair = new(fixtures: 2, coats: 3, TimeSpan.FromMinutes(20), TimeSpan.FromMinutes(30));
/// TimeSpan saved = pair.Saved;   // 2 h less 20 min = 1 h 20 min
/// </code></example>
public sealed record SharedDrying
{
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
        Fixtures = Guard.Count(fixtures, 1, 100, nameof(fixtures));
        Coats = Guard.Count(coats, 1, 20, nameof(coats));
        coat = Guard.Within(perCoat, Bounds.Positive(Measure.Hours, 86400), nameof(perCoat));
        drying = Guard.Within(betweenCoats, Bounds.NotNegative(Measure.Hours, 7 * 86400), nameof(betweenCoats));
    }

    /// <summary>Like fixtures.</summary>
    public int Fixtures { get; }

    /// <summary>Coats on each.</summary>
    public int Coats { get; }

    /// <summary>Time to mix and spray one coat on one fixture.</summary>
    public TimeSpan PerCoat => Durations.FromSeconds(coat);

    /// <summary>Time that a coat dries before the next.</summary>
    public TimeSpan BetweenCoats => Durations.FromSeconds(drying);

    /// <summary>Clock time when each fixture is finished before the next is begun.</summary>
    public TimeSpan OneAfterTheOther => Durations.FromSeconds(Apart);

    /// <summary>Clock time when coats go round in turn.</summary>
    public TimeSpan InTurn => Durations.FromSeconds(Turn);

    /// <summary>Clock time saved.</summary>
    public TimeSpan Saved => Durations.FromSeconds(Apart - Turn);

    /// <summary>Waiting that is left when coats go round in turn.</summary>
    public TimeSpan Waiting => Durations.FromSeconds(Turn - (Fixtures * Coats * coat));

    private double Round => Math.Max(Fixtures * coat, coat + drying);

    private double Apart => Fixtures * ((Coats * coat) + ((Coats - 1) * drying));

    private double Turn => ((Coats - 1) * Round) + (Fixtures * coat);

    /// <summary>How the times follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression n = Expression.Quantity("n", Fixtures, Measure.Number);
        Expression k = Expression.Quantity("k", Coats, Measure.Number);
        Expression w = Expression.Quantity("w", coat, Measure.Minutes);
        Expression d = Expression.Quantity("d", drying, Measure.Minutes);
        Source source = Source.Derived("one person, like fixtures, coats in turn");
        WorkingStep apart = new("one after the other", "t_1", n * ((k * w) + ((k - 1) * d)), Apart, Measure.Hours, source);
        WorkingStep turn = new("in turn", "t_2", ((k - 1) * Expression.Max(n * w, w + d)) + (n * w), Turn, Measure.Hours, source);
        return new Workings(
            "Shared drying",
            [
                apart,
                turn,
                new("saved", "Δt", apart.Result() - turn.Result(), Apart - Turn, Measure.Hours, source),
                new("waiting that is left", "t_w", turn.Result() - (n * k * w), Turn - (Fixtures * Coats * coat), Measure.Hours, source),
            ]);
    }

    /// <summary>Times with and without taking turns.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Measure.Hours.Format(Turn, figures: 3) + " in turn, " + Measure.Hours.Format(Apart, figures: 3) + " one after the other";
}

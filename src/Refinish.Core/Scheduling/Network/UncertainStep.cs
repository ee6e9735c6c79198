using System;

namespace Refinish.Scheduling;

/// <summary>One step of a <see cref="PathForecast"/>: how long it takes at the least, most likely and at the most.</summary>
/// <example><code>
/// UncertainStep strip = new("strip", TimeSpan.FromHours(2), TimeSpan.FromHours(4), TimeSpan.FromHours(9));
/// TimeSpan mean = strip.Mean;   // 4.5 h
/// </code></example>
public sealed record UncertainStep
{
    private static readonly Bounds Times = Bounds.NotNegative(Measure.Hours, 60 * 24 * 3600);

    /// <summary>Makes a step.</summary>
    /// <param name="id">What identifies it; lags refer to it.</param>
    /// <param name="least">Least time, 0 to 60 days.</param>
    /// <param name="likely">Most likely time, more than 0, from <paramref name="least"/> to 60 days.</param>
    /// <param name="most">Most time, from <paramref name="likely"/> to 60 days.</param>
    /// <exception cref="ArgumentException"><paramref name="id"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A time is outside its range or out of order.</exception>
    public UncertainStep(string id, TimeSpan least, TimeSpan likely, TimeSpan most)
    {
        Id = Guard.Named(id);
        Guard.Within(least, Times);
        Guard.Within(likely, Bounds.Positive(Measure.Hours, Times.Maximum));
        Guard.Within(most, Times);
        Guard.Rule(likely >= least, nameof(likely), likely.TotalSeconds, Measure.Hours, "at least the least time, ", least.TotalSeconds);
        Guard.Rule(most >= likely, nameof(most), most.TotalSeconds, Measure.Hours, "at least the likely time, ", likely.TotalSeconds);
        Least = least;
        Likely = likely;
        Most = most;
    }

    /// <summary>What identifies it.</summary>
    public string Id { get; }

    /// <summary>Least time, a.</summary>
    public TimeSpan Least { get; }

    /// <summary>Most likely time, m.</summary>
    public TimeSpan Likely { get; }

    /// <summary>Most time, b.</summary>
    public TimeSpan Most { get; }

    /// <summary>Mean time: (a + 4m + b)/6.</summary>
    public TimeSpan Mean => Durations.FromSeconds(MeanOf(0, null).Value);

    /// <summary>Standard deviation, by the rule of thumb (b − a)/6.</summary>
    public TimeSpan Deviation => Durations.FromSeconds(DeviationSeconds);

    internal double DeviationSeconds => DeviationOf(0, null).Value;

    /// <summary>The step and its three times.</summary>
    /// <returns>Text such as <c>strip, 2 h – 4 h – 9 h</c>.</returns>
    public override string ToString() =>
        Id + ", " + TimeConstraint.Hours(Least) + " – " + TimeConstraint.Hours(Likely) + " – " + TimeConstraint.Hours(Most);

    /// <summary>The mean, as that of one of the steps of a path.</summary>
    internal Num MeanOf(int place, Trace? t)
    {
        Num mean = PertMoments.Mean(Given("a_", Least, place, t), Given("m_", Likely, place, t), Given("b_", Most, place, t));
        return t is null ? mean : t.Step("mean time of " + Id, "µ_" + Figures.Fixed(place + 1, 0), Measure.Hours, PertMoments.Source, mean);
    }

    /// <summary>The deviation, as that of one of the steps of a path.</summary>
    internal Num DeviationOf(int place, Trace? t)
    {
        Num spread = PertMoments.ClassicDeviation(Given("a_", Least, place, t), Given("b_", Most, place, t));
        return t is null
            ? spread : t.Step("standard deviation of " + Id, "σ_" + Figures.Fixed(place + 1, 0), Measure.Hours, PertMoments.Source, spread);
    }

    private static Num Given(string letter, TimeSpan time, int place, Trace? t) =>
        t.Given(letter, place + 1, time.TotalSeconds, Measure.Hours);
}

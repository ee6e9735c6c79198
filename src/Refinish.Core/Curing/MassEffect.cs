using System;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>
/// How pot life falls with the size of the batch, as a power of the mass: t = t_ref (m / m_ref)^(−b). The crude cousin of
/// <see cref="BatchExotherm"/>.
/// </summary>
/// <remarks>
/// About b = 0.2 for fillers in a cup and next to nothing for thin mixes (from memory, unverified; data sheets usually mean 100 g). It
/// holds for cups of one shape; a mass in a wide tray lives like a small one. From a fifth of the lightest to five times the heaviest
/// known batch (invented); beyond that there is no time.
/// </remarks>
/// <example><code>
/// MassEffect filler = new(Mass.FromGrams(100), 0.2);
/// TimeSpan? half = filler.PotLife(TimeSpan.FromMinutes(8), Mass.FromGrams(500));        // 5.8 minutes
/// </code></example>
public sealed record MassEffect
{
    private const double Reach = 5;

    private static readonly Source Power = Source.FromMemory("power law of the mass, exponent about 0.2 for fillers");
    private static readonly Bounds Masses = Bounds.Positive(Measure.Weight, 100);

    /// <summary>Takes the exponent.</summary>
    /// <param name="reference">The batch for which pot life is told, more than 0 and at most 100 kg.</param>
    /// <param name="exponent">b, 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public MassEffect(Mass reference, double exponent)
        : this(Guard.Within(reference, Masses), Guard.Within(exponent, Bounds.NotNegative(Measure.Number, 1)), double.NaN)
    {
    }

    private MassEffect(double reference, double exponent, double other)
    {
        Reference = Mass.FromKilograms(reference);
        Exponent = exponent;
        Lightest = Mass.FromKilograms((double.IsNaN(other) ? reference : Math.Min(reference, other)) / Reach);
        Heaviest = Mass.FromKilograms((double.IsNaN(other) ? reference : Math.Max(reference, other)) * Reach);
    }

    /// <summary>The batch for which pot life is told.</summary>
    public Mass Reference { get; }

    /// <summary>b.</summary>
    public double Exponent { get; }

    /// <summary>The lightest batch for which a time is given.</summary>
    public Mass Lightest { get; }

    /// <summary>The heaviest batch for which a time is given.</summary>
    public Mass Heaviest { get; }

    /// <summary>The exponent from two batches of one product: b = −ln(t_2/t_1) / ln(m_2/m_1).</summary>
    /// <param name="reference">One batch, which becomes the reference.</param>
    /// <param name="referencePotLife">Its pot life.</param>
    /// <param name="other">Another batch, at least a tenth lighter or heavier.</param>
    /// <param name="otherPotLife">Its pot life.</param>
    /// <returns>The law.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is outside its range, the masses are too alike, or the exponent does not come out between 0 and 1.
    /// </exception>
    public static MassEffect FromTwoBatches(Mass reference, TimeSpan referencePotLife, Mass other, TimeSpan otherPotLife)
    {
        double m1 = Guard.Within(reference, Masses);
        double m2 = Guard.Within(other, Masses);
        Bounds times = Bounds.Positive(Measure.Hours, 60 * 24 * 3600);
        double t1 = Guard.Within(referencePotLife, times);
        double t2 = Guard.Within(otherPotLife, times);
        Guard.Rule(Math.Abs(Math.Log(m2 / m1)) >= Math.Log(1.1), nameof(other), m2, Measure.Weight, "a mass at least a tenth lighter or heavier than ", m1);
        double exponent = -Math.Log(t2 / t1) / Math.Log(m2 / m1);
        Guard.Rule(exponent is >= 0 and <= 1, nameof(otherPotLife), t2, Measure.Hours, "a pot life that gives an exponent of 0 to 1");
        return new MassEffect(m1, exponent, m2);
    }

    /// <summary>Pot life of a batch.</summary>
    /// <param name="referencePotLife">Pot life of the reference batch at the same temperature, more than 0 and at most 60 days.</param>
    /// <param name="batch">Its mass.</param>
    /// <returns>The pot life; <see langword="null"/> outside <see cref="Lightest"/> to <see cref="Heaviest"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public TimeSpan? PotLife(TimeSpan referencePotLife, Mass batch)
    {
        (double t, double m) = Checked(referencePotLife, batch);
        return Covers(m) ? Durations.FromSeconds(Seconds(t, m).Value) : null;
    }

    /// <summary>How the pot life of a batch follows; empty outside the range.</summary>
    /// <param name="referencePotLife">Pot life of the reference batch.</param>
    /// <param name="batch">Its mass.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public Workings Workings(TimeSpan referencePotLife, Mass batch)
    {
        (double t, double m) = Checked(referencePotLife, batch);
        return Covers(m) ? Trace.Of("Pot life against mass", trace => Seconds(t, m, trace)) : Trace.Of("Pot life against mass");
    }

    /// <summary>The law in one line.</summary>
    /// <returns>Text such as <c>pot life × (m / 0.1 kg)^-0.2</c>.</returns>
    public override string ToString() =>
        "pot life × (m / " + Measure.Weight.Format(Reference.Kilograms) + ")^-" + Figures.Significant(Exponent);

    private static (double Seconds, double Kilograms) Checked(TimeSpan referencePotLife, Mass batch) => (
        Guard.Within(referencePotLife, Bounds.Positive(Measure.Hours, 60 * 24 * 3600)),
        Guard.Within(batch, Masses));

    private bool Covers(double m) => m >= Lightest.Kilograms * (1 - 1e-12) && m <= Heaviest.Kilograms * (1 + 1e-12);

    private Num Seconds(double time, double m, Trace? t = null) => t.Step(
        "pot life of the batch", "t", Measure.Minutes, Power,
        t.Given("t_ref", time, Measure.Minutes) * Num.Power(
            t.Given("m", m, Measure.Weight) / t.Given("m_ref", Reference.Kilograms, Measure.Weight),
                -t.Given("b", Exponent, Measure.Number)));
}

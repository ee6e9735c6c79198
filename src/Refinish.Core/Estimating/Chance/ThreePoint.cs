using System;

namespace Refinish.Estimating;

/// <summary>
/// A least, a most likely and a greatest value, as people can state them. Means and variances of the usual readings of such a triple.
/// </summary>
/// <remarks>
/// The classic PERT variance ((b − a)/6)² is a rule of thumb: it is not the variance of the beta distribution whose mean is
/// (a + 4m + b)/6. That one is (µ − a)(b − µ)/7, larger unless the triple is very lopsided. Both are given, under their own names.
/// Triangular: mean (a + m + b)/3, variance (a² + m² + b² − am − ab − mb)/18.
/// </remarks>
/// <example><code>
/// ThreePoint hours = new(2, 4, 9);
/// double mean = hours.Mean;                           // 4.5
/// double classic = hours.ClassicVariance;             // 1.361
/// double beta = hours.BetaPertVariance;               // 1.607
/// </code></example>
public readonly record struct ThreePoint
{
    internal static readonly Source Triangle = Source.Derived("moments of the triangular distribution");

    private static readonly Source Beta =
        Source.Derived("variance of the beta distribution with shapes 1 + 4(m − a)/(b − a) and 1 + 4(b − m)/(b − a)");

    /// <summary>Makes a triple.</summary>
    /// <param name="minimum">Least value, −10¹⁵ to 10¹⁵.</param>
    /// <param name="mode">Most likely value, from <paramref name="minimum"/> upwards.</param>
    /// <param name="maximum">Greatest value, from <paramref name="mode"/> upwards.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range or out of order.</exception>
    public ThreePoint(double minimum, double mode, double maximum)
    {
        Minimum = Guard.Within(minimum, Distribution.Any);
        Mode = Guard.Within(mode, Distribution.Any);
        Maximum = Guard.Within(maximum, Distribution.Any);
        Guard.Rule(mode >= minimum, nameof(mode), mode, Measure.Number, "at least minimum, ", minimum);
        Guard.Rule(maximum >= mode, nameof(maximum), maximum, Measure.Number, "at least mode, ", mode);
    }

    /// <summary>Least value, a.</summary>
    public double Minimum { get; }

    /// <summary>Most likely value, m.</summary>
    public double Mode { get; }

    /// <summary>Greatest value, b.</summary>
    public double Maximum { get; }

    /// <summary>PERT mean: (a + 4m + b)/6.</summary>
    public double Mean => Centre().Value;

    /// <summary>The classic PERT variance, a rule of thumb: ((b − a)/6)².</summary>
    public double ClassicVariance => ClassicSquare().Value;

    /// <summary>The variance of the beta distribution that has the PERT mean: (µ − a)(b − µ)/7.</summary>
    public double BetaPertVariance => BetaSquare().Value;

    /// <summary>Mean of the triangular distribution: (a + m + b)/3.</summary>
    public double TriangularMean => TriangularCentre().Value;

    /// <summary>Variance of the triangular distribution.</summary>
    public double TriangularVariance => TriangularSquare().Value;

    /// <summary>A value that is known for certain.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The triple with all three equal.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Out of range.</exception>
    public static ThreePoint Exactly(double value) => new(value, value, value);

    /// <summary>The distribution that a reading of the triple gives.</summary>
    /// <param name="reading">Which shape, and for a lognormal or normal one which variance.</param>
    /// <returns>The distribution; an <see cref="ExactValue"/> when all three values are equal.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="reading"/> is not a named value, or a lognormal reading is asked of a triple whose mean is not more than 0.
    /// </exception>
    public Distribution As(ThreePointReading reading)
    {
        Guard.Defined(reading);
        return Maximum == Minimum
            ? new ExactValue(Mode)
            : reading switch
            {
                ThreePointReading.Pert => new PertDistribution(Minimum, Mode, Maximum),
                ThreePointReading.Triangular => new TriangularDistribution(Minimum, Mode, Maximum),
                ThreePointReading.LognormalBetaPert => LognormalDistribution.FromMeanAndDeviation(Mean, Math.Sqrt(BetaPertVariance)),
                ThreePointReading.LognormalClassicPert => LognormalDistribution.FromMeanAndDeviation(Mean, Math.Sqrt(ClassicVariance)),
                _ => new NormalDistribution(Mean, Math.Sqrt(ClassicVariance)),
            };
    }

    /// <summary>How means and variances follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Trace t = new();
        t.Step("PERT mean", "µ", Measure.Number, PertMoments.Source, Centre(t));
        t.Step("classic PERT variance", "σ²_P", Measure.Number, PertMoments.Source, ClassicSquare(t));
        t.Step("beta-PERT variance", "σ²_B", Measure.Number, Beta, BetaSquare(t));
        t.Step("triangular mean", "µ_T", Measure.Number, Triangle, TriangularCentre(t));
        t.Step("triangular variance", "σ²_T", Measure.Number, Triangle, TriangularSquare(t));
        return t.Workings("Three-point estimate");
    }

    /// <summary>The three values.</summary>
    /// <returns>Text such as <c>2 – 4 – 9</c>.</returns>
    public override string ToString() =>
        Figures.Significant(Minimum) + " – " + Figures.Significant(Mode) + " – " + Figures.Significant(Maximum);

    internal ThreePoint Times(double factor) => new(Minimum * factor, Mode * factor, Maximum * factor);

    internal Num Centre(Trace? t = null) => PertMoments.Mean(A(t), M(t), B(t));

    internal Num ClassicSquare(Trace? t = null) => Num.Square(PertMoments.ClassicDeviation(A(t), B(t)));

    internal Num BetaSquare(Trace? t = null) => PertMoments.BetaVariance(A(t), M(t), B(t));

    internal Num TriangularCentre(Trace? t = null) => (A(t) + M(t) + B(t)) / 3;

    // By the two legs, so that nearly equal squares are not subtracted from each other.
    internal Num TriangularSquare(Trace? t = null) =>
        (Num.Square(M(t) - A(t)) + ((M(t) - A(t)) * (B(t) - M(t))) + Num.Square(B(t) - M(t))) / 18;

    internal Num A(Trace? t) => t.Given("a", Minimum, Measure.Number);

    internal Num M(Trace? t) => t.Given("m", Mode, Measure.Number);

    internal Num B(Trace? t) => t.Given("b", Maximum, Measure.Number);
}

using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>
/// A Weibull lifetime from the straight line through a shop's failures on Weibull paper, jobs still good counted by adjusted ranks: the
/// graphical method, done by least squares, beside the maximum likelihood of <see cref="WeibullFit"/>.
/// </summary>
/// <remarks>
/// <para>Each failure gets an order j = j' + (n + 1 − j')/(1 + r), j' that of the failure before and r the jobs on record that had got to
/// its age (L. G. Johnson's adjusted ranks), and of it the median rank F. The line is y = b (ln t − ln η), y = ln(−ln(1 − F)). Failures of
/// one age stand at that age with ranks of their own; a job still good at an age stands after those that failed at it.</para>
/// <para>The line weighs early failures more than the likelihood does and shows by its bend when the life is no Weibull life; with few
/// failures its shape is less often too high. It gives no intervals, and it knows of when a job was lost sight of only the order: where
/// many are still good, hold it against <see cref="WeibullFit"/>. Formulas from memory of any reliability handbook; held to published ranks
/// by tests.</para>
/// </remarks>
/// <example><code>
/// LifeRecord[] books = [new(5.1, true), new(9.5, false), new(15, true), new(22, false), new(40, true)];
/// MedianRankFit fit = new(books);
/// double order = fit.Points[1].Order;                    // 2.25
/// double failed = fit.Points[1].MedianRank.Percent;      // 36.0
/// WeibullLife? life = fit.Life;
/// </code></example>
public sealed record MedianRankFit
{
    private const int MostFailures = 1000;

    private static readonly Source Johnson = Source.FromMemory("L. G. Johnson, adjusted ranks of censored records");
    private static readonly Source Median = Source.FromMemory("median ranks of reliability handbooks");
    private static readonly Source LeastSquares = Source.Derived("straight line by least squares");

    private readonly int all;

    /// <summary>Fits a lifetime by exact ranks and the line of age on rank.</summary>
    /// <param name="records">The records, at least one, with at most 1000 failures.</param>
    /// <exception cref="ArgumentException">The list is empty or holds an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException">More than 1000 failures.</exception>
    public MedianRankFit(IReadOnlyList<LifeRecord> records) : this(records, MedianRanks.Exact, RankLine.AgeOnRank)
    {
    }

    /// <summary>Fits a lifetime.</summary>
    /// <param name="records">The records, at least one, with at most 1000 failures.</param>
    /// <param name="ranks">How the median ranks are taken.</param>
    /// <param name="line">Which way the line is laid.</param>
    /// <exception cref="ArgumentException">The list is empty or holds an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// More than 1000 failures, or <paramref name="ranks"/> or <paramref name="line"/> is not a named value.
    /// </exception>
    public MedianRankFit(IReadOnlyList<LifeRecord> records, MedianRanks ranks, RankLine line)
    {
        Records = Guard.List(records, 1);
        Ranks = Guard.Defined(ranks);
        Line = Guard.Defined(line);
        double failures = Records.Where(record => record.Failed).Sum(record => (double)record.Count);
        Guard.Rule(failures <= MostFailures, nameof(records), failures, Measure.Number, "at most 1000 failures; for more see WeibullFit");
        all = Records.Sum(record => record.Count);
        Points = new ValueList<RankedFailure>(MedianRankKernel.Order(Records, ranks));
        WhyNone = Reason();
        if (WhyNone is null)
        {
            Life = new WeibullLife(Shape().Value, Scale().Value);
            Correlation = Together().Value;
        }
    }

    /// <summary>Failures and survivors, in the order given.</summary>
    public IReadOnlyList<LifeRecord> Records { get; }

    /// <summary>How the median ranks are taken.</summary>
    public MedianRanks Ranks { get; }

    /// <summary>Which way the line is laid.</summary>
    public RankLine Line { get; }

    /// <summary>The failures by age, each with its order and its median rank.</summary>
    public IReadOnlyList<RankedFailure> Points { get; }

    /// <summary>The lifetime of the line; <see langword="null"/> when the records do not give one, see <see cref="WhyNone"/>.</summary>
    public WeibullLife? Life { get; }

    /// <summary>Why there is no lifetime; <see langword="null"/> when there is one.</summary>
    public string? WhyNone { get; }

    /// <summary>
    /// Correlation of the points, 1 when they lie on a line; <see langword="null"/> without a lifetime. It is always high, since both
    /// coordinates rise: two fits of the same records can be held against each other by it, not a fit against chance.
    /// </summary>
    public double? Correlation { get; }

    /// <summary>How orders, ranks, line and lifetime follow.</summary>
    /// <returns>The derivation; without the line when there is none.</returns>
    public Workings Workings()
    {
        Trace t = new();
        Num before = t.Number(0);
        for (int i = 0; i < Points.Count; i++)
        {
            string index = Figures.Significant(i + 1);
            Num n = t.Given("n", all, Measure.Number);
            before = t.Step("order of failure " + index, "j_" + index, Measure.Number, Johnson,
                MedianRankKernel.Next(before, t.Given("r_" + index, Points[i].Remaining, Measure.Number), n));
            t.Step("median rank of failure " + index, "F_" + index, Measure.Percent, Median,
                Ranks == MedianRanks.Bernard ? MedianRankKernel.Bernard(before, n) : Exact(Points[i], t));
        }

        if (Life is null)
        {
            return t.Workings("No lifetime: " + WhyNone);
        }

        MeanX(t);
        MeanY(t);
        Products(t);
        SquaresX(t);
        SquaresY(t);
        Shape(t);
        Scale(t);
        Together(t);
        return t.Workings("Weibull line by median ranks");
    }

    /// <summary>The lifetime and on how many failures it rests, or why there is none.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Life is null
        ? "no lifetime: " + WhyNone
        : Life + ", from the line through " + Figures.Fixed(Points.Count, 0) + " failures";

    /// <summary>Whether records, ranks and line are the same; everything else follows from them.</summary>
    /// <param name="other">The fit to compare with.</param>
    /// <returns><see langword="true"/> when they are alike.</returns>
    public bool Equals(MedianRankFit? other) =>
        other is not null && Ranks == other.Ranks && Line == other.Line && Records.Equals(other.Records);

    /// <inheritdoc/>
    public override int GetHashCode() => Records.GetHashCode();

    private string? Reason() => Points.Count < 2
        ? "fewer than two failures are on record"
        : Points[0].AgeYears == Points[Points.Count - 1].AgeYears
        ? "every failure is at one age, so that no line has a slope"
        : !(Shape().Value >= 0.3 && Shape().Value <= 20)
        ? "the shape of the line is outside 0.3 to 20; check the ages"
        : Scale().Value > 1e6 ? "the scale of the line is more than 10⁶ years; check the ages" : null;

    private Num Exact(RankedFailure point, Trace t) => Num.Solution(
        point.Rank, "p", p => Num.Function("I", "I", x => MedianRankKernel.Beta(point.Order, all, x), p), t.Number(0.5));

    private Num MeanX(Trace? t = null) =>
        t.Step("mean of ln t", "x̄", Measure.Number, LeastSquares, Num.Sum(Points.Select((_, i) => X(i, t))) / Points.Count);

    private Num MeanY(Trace? t = null) =>
        t.Step("mean of ln(−ln(1 − F))", "ȳ", Measure.Number, LeastSquares, Num.Sum(Points.Select((_, i) => Y(i, t))) / Points.Count);

    private Num Products(Trace? t = null) =>
        t.Step("sum of products", "S_xy", Measure.Number, LeastSquares, Sum(X, MeanX(t), Y, MeanY(t), t));

    private Num SquaresX(Trace? t = null) =>
        t.Step("sum of squares of ln t", "S_xx", Measure.Number, LeastSquares, Sum(X, MeanX(t), X, MeanX(t), t));

    private Num SquaresY(Trace? t = null) =>
        t.Step("sum of squares of ln(−ln(1 − F))", "S_yy", Measure.Number, LeastSquares, Sum(Y, MeanY(t), Y, MeanY(t), t));

    private Num Shape(Trace? t = null) => t.Step("shape", "b", Measure.Number, LeastSquares,
        Line == RankLine.AgeOnRank ? SquaresY(t) / Products(t) : Products(t) / SquaresX(t));

    private Num Scale(Trace? t = null) => t.Step("scale", "η", Measure.Years, LeastSquares, Num.Exp(MeanX(t) - (MeanY(t) / Shape(t))));

    private Num Together(Trace? t = null) =>
        t.Step("correlation", "ρ", Measure.Number, LeastSquares, Products(t) / Num.Sqrt(SquaresX(t) * SquaresY(t)));

    // x = ln t and y = ln(−ln(1 − F)).
    private Num X(int i, Trace? t) => Num.Ln(t.Given("t_", i + 1, Points[i].AgeYears, Measure.Years));

    private Num Y(int i, Trace? t) => Num.Ln(-Num.Ln(1 - t.Given("F_", i + 1, Points[i].Rank, Measure.Percent)));

    private Num Sum(Func<int, Trace?, Num> first, Num firstMean, Func<int, Trace?, Num> second, Num secondMean, Trace? t) =>
        Num.Sum(Points.Select((_, i) => (first(i, t) - firstMean) * (second(i, t) - secondMean)));
}

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

    // Means and centred sums of x = ln t and y = ln(−ln(1 − F)).
    private readonly double meanX;
    private readonly double meanY;
    private readonly double xx;
    private readonly double yy;
    private readonly double xy;

    /// <summary>Fits a lifetime.</summary>
    /// <param name="records">The records, at least one, with at most 1000 failures.</param>
    /// <param name="ranks">How the median ranks are taken.</param>
    /// <param name="line">Which way the line is laid.</param>
    /// <exception cref="ArgumentException">The list is empty or holds an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// More than 1000 failures, or <paramref name="ranks"/> or <paramref name="line"/> is not a named value.
    /// </exception>
    public MedianRankFit(IReadOnlyList<LifeRecord> records, MedianRanks ranks = MedianRanks.Exact, RankLine line = RankLine.AgeOnRank)
    {
        Records = Guard.List(records, nameof(records), 1);
        Ranks = Guard.Defined(ranks, nameof(ranks));
        Line = Guard.Defined(line, nameof(line));
        double failures = Records.Where(record => record.Failed).Sum(record => (double)record.Count);
        Guard.Rule(
            failures <= MostFailures, nameof(records), failures, Measure.Number, "at most 1000 failures; for more see WeibullFit");
        all = Records.Sum(record => record.Count);
        Points = new ValueList<RankedFailure>(MedianRankKernel.Order(Records, ranks));
        if (Points.Count > 0)
        {
            meanX = Points.Average(X);
            meanY = Points.Average(Y);
            xx = Points.Sum(point => (X(point) - meanX) * (X(point) - meanX));
            yy = Points.Sum(point => (Y(point) - meanY) * (Y(point) - meanY));
            xy = Points.Sum(point => (X(point) - meanX) * (Y(point) - meanY));
        }

        WhyNone = Reason();
        Life = WhyNone is null ? new WeibullLife(Shape, Scale) : null;
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
    public double? Correlation => Life is null ? null : xy / Math.Sqrt(xx * yy);

    private double Shape => Line == RankLine.AgeOnRank ? yy / xy : xy / xx;

    private double Scale => Math.Exp(meanX - (meanY / Shape));

    /// <summary>How orders, ranks, line and lifetime follow.</summary>
    /// <returns>The derivation; without the line when there is none.</returns>
    public Workings Workings()
    {
        List<WorkingStep> steps = [];
        List<Expression> xs = [];
        List<Expression> ys = [];
        Expression n = Expression.Quantity("n", all, Measure.Number);
        Expression before = 0;
        foreach (RankedFailure point in Points)
        {
            string index = Figures.Significant(xs.Count + 1);
            Expression r = Expression.Quantity("r_" + index, point.Remaining, Measure.Number);
            WorkingStep order = new(
                "order of failure " + index, "j_" + index, before + ((n + 1 - before) / (1 + r)), point.Order, Measure.Number, Johnson);
            WorkingStep rank = new(
                "median rank of failure " + index, "F_" + index, RankOf(point, order.Result(), n), point.Rank, Measure.Percent, Median);
            steps.Add(order);
            steps.Add(rank);
            before = order.Result();
            xs.Add(Expression.Ln(Expression.Quantity("t_" + index, point.AgeYears, Measure.Years)));
            ys.Add(Expression.Ln(-Expression.Ln(1 - rank.Result())));
        }

        if (Life is not null)
        {
            AddLine(steps, xs, ys);
        }

        return new Workings(Life is null ? "No lifetime: " + WhyNone : "Weibull line by median ranks", steps);
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

    private static double X(RankedFailure point) => Math.Log(point.AgeYears);

    private static double Y(RankedFailure point) => Math.Log(-Math.Log(1 - point.Rank));

    private string? Reason()
    {
        if (Points.Count < 2)
        {
            return "fewer than two failures are on record";
        }

        if (Points[0].AgeYears == Points[Points.Count - 1].AgeYears)
        {
            return "every failure is at one age, so that no line has a slope";
        }

        if (!(Shape >= 0.3 && Shape <= 20))
        {
            return "the shape of the line is outside 0.3 to 20; check the ages";
        }

        return Scale > 1e6 ? "the scale of the line is more than 10⁶ years; check the ages" : null;
    }

    private Expression RankOf(RankedFailure point, Expression order, Expression n) => Ranks == MedianRanks.Bernard
        ? (order - 0.3) / (n + 0.4)
        : Expression.Solution(
            "p",
            0,
            1,
            p => Expression.Function("I", "I", x => MedianRankKernel.Beta(point.Order, all, x), p),
            0.5);

    private void AddLine(List<WorkingStep> steps, List<Expression> xs, List<Expression> ys)
    {
        Expression count = Expression.Number(xs.Count);
        WorkingStep x = new("mean of ln t", "x̄", Expression.Sum(xs) / count, meanX, Measure.Number, LeastSquares);
        WorkingStep y = new("mean of ln(−ln(1 − F))", "ȳ", Expression.Sum(ys) / count, meanY, Measure.Number, LeastSquares);
        WorkingStep sxy = new("sum of products", "S_xy", Sum(xs, x, ys, y), xy, Measure.Number, LeastSquares);
        WorkingStep sxx = new("sum of squares of ln t", "S_xx", Sum(xs, x, xs, x), xx, Measure.Number, LeastSquares);
        WorkingStep syy = new("sum of squares of ln(−ln(1 − F))", "S_yy", Sum(ys, y, ys, y), yy, Measure.Number, LeastSquares);
        Expression slope = Line == RankLine.AgeOnRank ? syy.Result() / sxy.Result() : sxy.Result() / sxx.Result();
        WorkingStep shape = new("shape", "b", slope, Life!.Shape, Measure.Number, LeastSquares);
        Expression scale = Expression.Exp(x.Result() - (y.Result() / shape.Result()));
        Expression correlation = sxy.Result() / Expression.Sqrt(sxx.Result() * syy.Result());
        steps.AddRange(
        [
            x, y, sxy, sxx, syy, shape,
            new("scale", "η", scale, Life.ScaleYears, Measure.Years, LeastSquares),
            new("correlation", "ρ", correlation, Correlation!.Value, Measure.Number, LeastSquares),
        ]);
    }

    private static Expression Sum(List<Expression> first, WorkingStep firstMean, List<Expression> second, WorkingStep secondMean) =>
        Expression.Sum(first.Select((one, i) => (one - firstMean.Result()) * (second[i] - secondMean.Result())));
}

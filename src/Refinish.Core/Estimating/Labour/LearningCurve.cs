using System;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>How much faster the same work goes when it is repeated, such as the tubs of a hotel floor: times in terms of the first one.</summary>
/// <remarks>
/// With slope s and b = ln s / ln 2: by Wright's cumulative average the average of n is n^b and the total n^(1 + b); by Crawford's unit model the
/// n-th takes n^b and the total is Σ k^b. A slope of 80 % is quoted of aircraft; there is no published figure for this trade, so take your own.
/// It is for repeats by the same people without a long break.
/// </remarks>
/// <example><code>
/// LearningCurve floor = new(LearningModel.CumulativeAverage, Ratio.FromPercent(90));
/// double tubs = floor.Total(20);   // 12.68: twenty tubs take as long as 12.68 first ones
/// </code></example>
public sealed record LearningCurve
{
    internal const int MostRepeats = 10_000;

    private readonly double slope;

    /// <summary>Makes a curve.</summary>
    /// <param name="model">What falls by the slope.</param>
    /// <param name="slope">What is left of it at each doubling, 50 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public LearningCurve(LearningModel model, Ratio slope)
    {
        Model = Guard.Defined(model, nameof(model));
        this.slope = Guard.Within(slope, Bounds.Between(0.5, 1, Measure.Percent), nameof(slope));
    }

    /// <summary>What falls by the slope.</summary>
    public LearningModel Model { get; }

    /// <summary>What is left at each doubling.</summary>
    public Ratio Slope => Ratio.FromDecimalFractions(slope);

    private double B => Math.Log(slope) / Math.Log(2);

    /// <summary>Time of one unit in terms of the first.</summary>
    /// <param name="number">Which one, 1 to 10 000.</param>
    /// <returns>1 for the first.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="number"/> is outside its range.</exception>
    public double Unit(int number)
    {
        Guard.Count(number, 1, MostRepeats, nameof(number));
        return Model == LearningModel.Unit ? Math.Pow(number, B) : Math.Pow(number, 1 + B) - (number == 1 ? 0 : Math.Pow(number - 1, 1 + B));
    }

    /// <summary>Time of the first units together in terms of the first one.</summary>
    /// <param name="count">How many, 1 to 10 000.</param>
    /// <returns>1 for one, less than <paramref name="count"/> for more.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is outside its range.</exception>
    public double Total(int count)
    {
        Guard.Count(count, 1, MostRepeats, nameof(count));
        if (Model == LearningModel.CumulativeAverage)
        {
            return Math.Pow(count, 1 + B);
        }

        double sum = 0;
        for (int k = 1; k <= count; k++)
        {
            sum += Math.Pow(k, B);
        }

        return sum;
    }

    /// <summary>Average time of the first units in terms of the first one.</summary>
    /// <param name="count">How many, 1 to 10 000.</param>
    /// <returns>Total / count.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is outside its range.</exception>
    public double Average(int count) => Total(count) / count;

    /// <summary>How the last, the total and the average of a number of units follow.</summary>
    /// <param name="count">How many, 1 to 10 000.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is outside its range.</exception>
    public Workings Workings(int count)
    {
        Guard.Count(count, 1, MostRepeats, nameof(count));
        Source source = Source.FromMemory(Model == LearningModel.Unit ? "unit model of the learning curve (Crawford)" : "cumulative-average model of the learning curve (Wright, 1936)");
        Expression n = Expression.Quantity("n", count, Measure.Number);
        WorkingStep exponent = new("exponent", "b", Expression.Ln(Expression.Quantity("s", slope, Measure.Percent)) / Expression.Ln(2), B, Measure.Number, source);
        Expression b = exponent.Result();
        Expression total = Model == LearningModel.Unit ? Powers(1, count, b) : Expression.Power(n, 1 + b);
        Expression last = Model == LearningModel.Unit
            ? Expression.Power(n, b)
            : count == 1 ? 1 : Expression.Power(n, 1 + b) - Expression.Power(n - 1, 1 + b);
        WorkingStep sum = new("all units, in terms of the first", "T_n", total, Total(count), Measure.Number, source);
        return new Workings(
            ToString(),
            [
                exponent,
                new("last unit, in terms of the first", "t_n", last, Unit(count), Measure.Number, source),
                sum,
                new("average unit, in terms of the first", "t_a", sum.Result() / n, Average(count), Measure.Number, Source.Derived("total over number")),
            ]);
    }

    /// <summary>Model and slope.</summary>
    /// <returns>Text such as <c>CumulativeAverage learning, 90 %</c>.</returns>
    public override string ToString() => Model.ToString("G") + " learning, " + Measure.Percent.Format(slope);

    // Halved again and again, so that ten thousand terms do not nest ten thousand deep.
    private static Expression Powers(int from, int to, Expression b)
    {
        if (from == to)
        {
            return Expression.Power(from, b);
        }

        int middle = (from + to) / 2;
        return Powers(from, middle, b) + Powers(middle + 1, to, b);
    }
}

using System;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>
/// How much faster the same work goes when it is repeated, such as the tubs of a hotel floor: times in terms of the first one.
/// </summary>
/// <remarks>
/// With slope s and b = ln s / ln 2: by Wright's cumulative average the average of n is n^b and the total n^(1 + b); by Crawford's unit
/// model the n-th takes n^b and the total is Σ k^b. A slope of 80 % is quoted of aircraft; there is no published figure for this trade,
/// so take your own. It is for repeats by the same people without a long break.
/// </remarks>
/// <example><code>
/// LearningCurve floor = new(LearningModel.CumulativeAverage, Ratio.FromPercent(90));
/// double tubs = floor.Total(20);   // 12.68: twenty tubs take as long as 12.68 first ones
/// </code></example>
public sealed record LearningCurve
{
    internal const int MostRepeats = 10_000;

    private static readonly Source Crawford = Source.FromMemory("unit model of the learning curve (Crawford)");
    private static readonly Source Wright = Source.FromMemory("cumulative-average model of the learning curve (Wright, 1936)");
    private static readonly Source Mean = Source.Derived("total over number");

    private readonly double slope;

    /// <summary>Makes a curve.</summary>
    /// <param name="model">What falls by the slope.</param>
    /// <param name="slope">What is left of it at each doubling, 50 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public LearningCurve(LearningModel model, Ratio slope)
    {
        Model = Guard.Defined(model);
        this.slope = Guard.Within(slope, Bounds.Between(0.5, 1, Measure.Percent));
    }

    /// <summary>What falls by the slope.</summary>
    public LearningModel Model { get; }

    /// <summary>What is left at each doubling.</summary>
    public Ratio Slope => Ratio.FromDecimalFractions(slope);

    /// <summary>Time of one unit in terms of the first.</summary>
    /// <param name="number">Which one, 1 to 10 000.</param>
    /// <returns>1 for the first.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="number"/> is outside its range.</exception>
    public double Unit(int number) => Last(Guard.Count(number, 1, MostRepeats)).Value;

    /// <summary>Time of the first units together in terms of the first one.</summary>
    /// <param name="count">How many, 1 to 10 000.</param>
    /// <returns>1 for one, less than <paramref name="count"/> for more.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is outside its range.</exception>
    public double Total(int count) => All(Guard.Count(count, 1, MostRepeats)).Value;

    /// <summary>Average time of the first units in terms of the first one.</summary>
    /// <param name="count">How many, 1 to 10 000.</param>
    /// <returns>Total / count.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is outside its range.</exception>
    public double Average(int count) => Average(Guard.Count(count, 1, MostRepeats), null).Value;

    /// <summary>How the last, the total and the average of a number of units follow.</summary>
    /// <param name="count">How many, 1 to 10 000.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is outside its range.</exception>
    public Workings Workings(int count)
    {
        Guard.Count(count, 1, MostRepeats);
        return Trace.Of(ToString(), B, t => Last(count, t), t => All(count, t), t => Average(count, t));
    }

    /// <summary>Model and slope.</summary>
    /// <returns>Text such as <c>CumulativeAverage learning, 90 %</c>.</returns>
    public override string ToString() => Model.ToString("G") + " learning, " + Measure.Percent.Format(slope);

    private Source Method => Model == LearningModel.Unit ? Crawford : Wright;

    private Num B(Trace? t) =>
        t.Step("exponent", "b", Measure.Number, Method, Num.Ln(t.Given("s", slope, Measure.Percent)) / Num.Ln(t.Number(2)));

    private Num Last(int count, Trace? t = null)
    {
        Num n = t.Given("n", count, Measure.Number);
        return t.Step("last unit, in terms of the first", "t_n", Measure.Number, Method,
            Model == LearningModel.Unit ? Num.Power(n, B(t))
            : count == 1 ? 1
            : Num.Power(n, 1 + B(t)) - Num.Power(n - 1, 1 + B(t)));
    }

    private Num All(int count, Trace? t = null) => t.Step("all units, in terms of the first", "T_n", Measure.Number, Method,
        Model == LearningModel.Unit ? Powers(1, count, B(t)) : Num.Power(t.Given("n", count, Measure.Number), 1 + B(t)));

    private Num Average(int count, Trace? t) => t.Step("average unit, in terms of the first", "t_a", Measure.Number, Mean,
        All(count, t) / t.Given("n", count, Measure.Number));

    // Halved again and again, so that ten thousand terms do not nest ten thousand deep.
    private static Num Powers(int from, int to, Num b)
    {
        int middle = (from + to) / 2;
        return from == to ? Num.Power(from, b) : Powers(from, middle, b) + Powers(middle + 1, to, b);
    }
}

using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>
/// How the humidity of the air lengthens or shortens a step that depends on it, as moisture-cured and water-borne coatings do: a table
/// of factors with its source, or the plain statement that it is not known.
/// </summary>
/// <remarks>
/// No general law was found, and the library ships no table: a maker's own is needed. Unknown is not "no effect": then there is no
/// factor and no time, and <see cref="Check"/> says that it cannot be judged. Between two rows the factor is straight in the relative
/// humidity; outside the table there is none.
/// </remarks>
/// <example><code>
/// HumidityEffect effect = new(
///     [new HumidityPoint(Ratio.FromPercent(30), 1.6), new HumidityPoint(Ratio.FromPercent(50), 1), new HumidityPoint(Ratio.FromPercent(80), 0.7)],
///     Source.Supplied("product data sheet"));
/// TimeSpan? touch = effect.TimeAt(TimeSpan.FromHours(2), Ratio.FromPercent(40));                                     // 2.6 h
/// TimeSpan? none = HumidityEffect.Unknown.TimeAt(TimeSpan.FromHours(2), Ratio.FromPercent(40));                      // null
/// </code></example>
public sealed record HumidityEffect
{
    private static readonly Source NotFound = Source.CommonPractice("moisture-sensitive coatings cure by the humidity of the air; ask the maker by how much");

    private readonly ValueList<HumidityPoint> points;

    /// <summary>Takes the table.</summary>
    /// <param name="points">At least two, in rising order of humidity.</param>
    /// <param name="source">Where it comes from.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException">Fewer than two rows, or an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The humidities do not rise.</exception>
    public HumidityEffect(IEnumerable<HumidityPoint> points, Source source)
    {
        this.points = Guard.List(points, 2);
        Source = Guard.NotNull(source);
        for (int i = 1; i < this.points.Count; i++)
        {
            Guard.Rule(
                this.points[i].Fraction > this.points[i - 1].Fraction, nameof(points), this.points[i].Fraction, Measure.Percent,
                "more than the row before, ", this.points[i - 1].Fraction);
        }
    }

    private HumidityEffect()
    {
        points = ValueList<HumidityPoint>.Empty;
        Source = NotFound;
    }

    /// <summary>A step that depends on humidity in a way that nobody has told.</summary>
    public static HumidityEffect Unknown { get; } = new();

    /// <summary>The table; empty when not known.</summary>
    public IReadOnlyList<HumidityPoint> Points => points;

    /// <summary>Whether there is a table.</summary>
    public bool IsKnown => points.Count > 0;

    /// <summary>Where it comes from.</summary>
    public Source Source { get; }

    /// <summary>How many times as long the step takes.</summary>
    /// <param name="humidity">Relative humidity, 0 to 100 %.</param>
    /// <returns>The factor; <see langword="null"/> when it is not known or the humidity is outside the table.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 100 %.</exception>
    public double? FactorAt(Ratio humidity)
    {
        double h = Checked(humidity);
        return Row(h) is int i ? Factor(i, h).Value : null;
    }

    /// <summary>How long the step takes.</summary>
    /// <param name="time">The data sheet's time, shifted to the temperature of the site; 0 to 60 days.</param>
    /// <param name="humidity">Relative humidity, 0 to 100 %.</param>
    /// <returns>The time; <see langword="null"/> when the factor is not known.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public TimeSpan? TimeAt(TimeSpan time, Ratio humidity)
    {
        double seconds = Guard.Within(time, Bounds.NotNegative(Measure.Hours, 60 * 24 * 3600));
        return FactorAt(humidity) is double factor ? Durations.FromSeconds(seconds * factor) : null;
    }

    /// <summary>The humidity against the ends of the table; without a table it cannot be judged.</summary>
    /// <param name="humidity">Relative humidity, 0 to 100 %.</param>
    /// <returns>The end of the table that is nearer to being passed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 100 %.</exception>
    public LimitComparison Check(Ratio humidity)
    {
        double h = Checked(humidity);
        const string remedy = "Ask the maker how long it takes in this humidity, or bring the air into the range of the table.";
        if (!IsKnown)
        {
            return new LimitComparison("humidity of a moisture-sensitive step", h, null, LimitSense.AtMost, Measure.Percent, Source, remedy);
        }

        double low = points[0].Fraction;
        double high = points[points.Count - 1].Fraction;
        bool below = h - low < high - h;
        return new LimitComparison(
            below ? "driest air of the table" : "most humid air of the table", h, below ? low : high, below ? LimitSense.AtLeast : LimitSense.AtMost, Measure.Percent, Source,
            h < low || h > high ? remedy : null);
    }

    /// <summary>How the factor follows; no step when it is not known.</summary>
    /// <param name="humidity">Relative humidity, 0 to 100 %.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 100 %.</exception>
    public Workings Workings(Ratio humidity)
    {
        double h = Checked(humidity);
        return Row(h) is int i ? Trace.Of("Humidity of the air", t => Factor(i, h, t)) : Trace.Of("Humidity of the air");
    }

    /// <summary>The table in one line, or that it is not known.</summary>
    /// <returns>Text such as <c>× 1.6 at 30 %, × 1 at 50 %</c>.</returns>
    public override string ToString() => IsKnown ? string.Join(", ", points.Select(point => point.ToString())) : "effect of humidity not known";

    private static double Checked(Ratio humidity) => Guard.Within(humidity, Bounds.NotNegative(Measure.Percent, 1));

    // The row below which the humidity lies in the table.
    private int? Row(double h)
    {
        for (int i = 0; i + 1 < points.Count; i++)
        {
            if (h >= points[i].Fraction && h <= points[i + 1].Fraction)
            {
                return i;
            }
        }

        return null;
    }

    private Num Factor(int i, double h, Trace? t = null)
    {
        Num first = t.Given("f_1", points[i].TimeFactor, Measure.Number);
        Num dry = t.Given("RH_1", points[i].Fraction, Measure.Percent);
        return t.Step(
            "factor on the time", "f", Measure.Number, Source,
            first + ((t.Given("f_2", points[i + 1].TimeFactor, Measure.Number) - first) * (t.Given("RH", h, Measure.Percent) - dry)
                / (t.Given("RH_2", points[i + 1].Fraction, Measure.Percent) - dry)));
    }
}

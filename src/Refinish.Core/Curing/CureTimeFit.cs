using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Numerics;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>
/// The law that goes through the times of one stage at several temperatures, by least squares in ln t: against 1/T for Arrhenius,
/// against T for a fixed factor for ten kelvins. Two temperatures are met exactly; more leave residuals.
/// </summary>
/// <remarks>
/// Times are positive and err by a share of themselves, so the logarithm is the right space. Beyond the table by more than the margin
/// there is no time: the law is no knowledge of the product there.
/// </remarks>
/// <example><code>
/// CureTimeFit water = new(
///     [
///         new TabulatedTime(Temperature.FromDegreesCelsius(15), TimeSpan.FromHours(36)),
///         new TabulatedTime(Temperature.FromDegreesCelsius(25), TimeSpan.FromHours(16)),
///     ],
///     TemperatureLaw.Arrhenius);
/// TimeSpan? at20 = water.TimeAt(Temperature.FromDegreesCelsius(20));      // 23.83 h
/// TimeSpan? at35 = water.TimeAt(Temperature.FromDegreesCelsius(35));      // null: 5 K beyond the margin
/// </code></example>
public sealed record CureTimeFit
{
    internal static readonly TemperatureDelta UsualMargin = TemperatureDelta.FromKelvins(5);

    private const double LargestFactor = 3;

    private static readonly Source LeastSquares = Source.Derived("least squares of a straight line through ln t");
    private static readonly Source MarginSource = Source.Invented("5 K beyond a table unless told otherwise; no rule was found");

    private readonly ValueList<TabulatedTime> times;
    private readonly double meanX;
    private readonly double meanLog;
    private readonly double slope;

    /// <summary>Lays the law through the times.</summary>
    /// <param name="times">At least two, at temperatures at least 1 K apart.</param>
    /// <param name="law">Which law.</param>
    /// <exception cref="ArgumentException">Fewer than two times, or an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The temperatures are too close together, or the times do not shorten by a factor of 1 to 3 with ten kelvins more.
    /// </exception>
    public CureTimeFit(IEnumerable<TabulatedTime> times, TemperatureLaw law)
        : this(times, law, UsualMargin)
    {
    }

    /// <summary>Lays the law through the times.</summary>
    /// <param name="times">At least two, at temperatures at least 1 K apart.</param>
    /// <param name="law">Which law.</param>
    /// <param name="margin">How far beyond the table a time may be given, 0 to 15 K.</param>
    /// <exception cref="ArgumentException">Fewer than two times, or an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The temperatures are too close together, or the times do not shorten by a factor of 1 to 3 with ten kelvins more.
    /// </exception>
    public CureTimeFit(IEnumerable<TabulatedTime> times, TemperatureLaw law, TemperatureDelta margin)
    {
        this.times = Guard.List(times, 2);
        Law = Guard.Defined(law);
        Margin = Guard.Checked(margin, Bounds.NotNegative(Measure.TemperatureDifference, 15));
        Guard.Rule(High - Low >= 1 - 1e-9, nameof(times), High - Low, Measure.TemperatureDifference, "temperatures that span at least ", 1);
        LineFit line = Line(this.times, law);
        (meanX, meanLog, slope) = (line.MeanX, line.MeanY, line.Slope);
        double middle = (Low + High) / 2;
        double factor = Math.Exp(slope * (X(law, middle - 5) - X(law, middle + 5)).Value);
        Guard.Rule(
            factor >= 1 - 1e-12 && factor <= LargestFactor, nameof(times), factor, Measure.Number,
            "times that shorten by a factor of 1 to 3 with ten kelvins more");
    }

    /// <summary>The times.</summary>
    public IReadOnlyList<TabulatedTime> Times => times;

    /// <summary>The law.</summary>
    public TemperatureLaw Law { get; }

    /// <summary>How far beyond the table a time is given.</summary>
    public TemperatureDelta Margin { get; }

    /// <summary>The law as it shifts a time from one temperature to another.</summary>
    public TemperatureShift Shift => ShiftOf(Law, slope);

    /// <summary>The activation energy; <see langword="null"/> for a fixed factor.</summary>
    public MolarEnergy? ActivationEnergy => Shift.ActivationEnergy;

    /// <summary>The factor for ten kelvins; <see langword="null"/> for Arrhenius.</summary>
    public double? RatePerTenKelvin => Shift.RatePerTenKelvin;

    /// <summary>
    /// How much longer each tabulated time is than the law's, as a share of the law's; in the order of <see cref="Times"/>.
    /// </summary>
    public IReadOnlyList<Ratio> Residuals => new ValueList<Ratio>(times.Select((_, i) => Ratio.FromDecimalFractions(Residual(i).Value)));

    /// <summary>The largest of <see cref="Residuals"/>, without sign.</summary>
    public Ratio LargestResidual => Ratio.FromDecimalFractions(Largest().Value);

    internal double Low => times.Min(time => time.Kelvins);

    internal double High => times.Max(time => time.Kelvins);

    /// <summary>The law's time at a temperature.</summary>
    /// <param name="temperature">−20 to 60 °C.</param>
    /// <returns>The time; <see langword="null"/> beyond the table by more than the margin.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside −20 to 60 °C.</exception>
    public TimeSpan? TimeAt(Temperature temperature)
    {
        double t = Guard.Within(temperature, TemperatureShift.Thermometer);
        return Covers(t) ? Durations.FromSeconds(Seconds(t).Value) : null;
    }

    /// <summary>Whether a temperature is beyond the table, so that a time there is drawn out.</summary>
    /// <param name="temperature">−20 to 60 °C.</param>
    /// <returns><see langword="true"/> below the lowest and above the highest tabulated temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside −20 to 60 °C.</exception>
    public bool IsBeyondTable(Temperature temperature)
    {
        double t = Guard.Within(temperature, TemperatureShift.Thermometer);
        return t < Low || t > High;
    }

    /// <summary>A temperature against the table with its margin.</summary>
    /// <param name="temperature">−20 to 60 °C.</param>
    /// <returns>The lower and the upper end.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside −20 to 60 °C.</exception>
    public IReadOnlyList<LimitComparison> Checks(Temperature temperature)
    {
        double t = Guard.Within(temperature, TemperatureShift.Thermometer);
        const string remedy = "Ask the maker for a time at this temperature.";
        return new ValueList<LimitComparison>(
        [
            new("coldest of the table, less the margin", t, Low - Margin.Kelvins, LimitSense.AtLeast, Measure.Temperature, MarginSource,
                t >= Low - Margin.Kelvins ? null : remedy),
            new("warmest of the table, with the margin", t, High + Margin.Kelvins, LimitSense.AtMost, Measure.Temperature, MarginSource,
                t <= High + Margin.Kelvins ? null : remedy),
        ]);
    }

    /// <summary>How the law, the residuals and, where it can be given, the time follow.</summary>
    /// <param name="temperature">−20 to 60 °C.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside −20 to 60 °C.</exception>
    public Workings Workings(Temperature temperature)
    {
        double at = Guard.Within(temperature, TemperatureShift.Thermometer);
        return Trace.Of(
            "Time against temperature", MeanX, MeanLog, Slope, t => Parameter(Law, Slope(t), t), Largest,
            t => Covers(at) ? Seconds(at, t) : default);
    }

    /// <summary>The law, its largest residual and the range of the table.</summary>
    /// <returns>Text such as <c>Arrhenius, 57.926 kJ/mol, within 0 % from 15 °C to 25 °C, margin 5 K</c>.</returns>
    public override string ToString() =>
        Shift + ", within " + Measure.Percent.Format(Math.Round(Largest().Value, 6), DisplayUnits.Si, 2)
        + " from " + Measure.Temperature.Format(Low)
        + " to " + Measure.Temperature.Format(High) + ", margin " + Measure.TemperatureDifference.Format(Margin.Kelvins);

    internal static TemperatureShift ShiftOf(TemperatureLaw law, double slope) => law == TemperatureLaw.Arrhenius
        ? TemperatureShift.Arrhenius(MolarEnergy.FromJoulesPerMole(Math.Max(0, Parameter(law, slope).Value)))
        : TemperatureShift.Doubling(Math.Max(1, Parameter(law, slope).Value));

    internal static LineFit Line(IReadOnlyList<TabulatedTime> times, TemperatureLaw law) =>
        LineFit.Through([.. times.Select(time => X(law, time.Kelvins).Value)], [.. times.Select(time => Math.Log(time.Time.TotalSeconds))]);

    internal bool Covers(double t) => t >= Low - Margin.Kelvins && t <= High + Margin.Kelvins;

    internal Num Seconds(double kelvins, Trace? t = null) => t.Step(
        "time at the temperature", "t", Measure.Hours, LeastSquares,
        Num.Exp(Log(X(Law, t.Given("T", kelvins, Measure.AbsoluteTemperature)), t)));

    private static Num X(TemperatureLaw law, Num t) => law == TemperatureLaw.Arrhenius ? 1 / t : t;

    private static Num Parameter(TemperatureLaw law, Num slope, Trace? t = null) => law == TemperatureLaw.Arrhenius
        ? t.Step(
            "activation energy", "E_a", Measure.MolarEnergy, LeastSquares,
            slope * t.Given("R", CuringKernel.GasConstant, Measure.MolarEntropy))
        : t.Step("factor for ten kelvins", "Q", Measure.Number, LeastSquares, Num.Exp(-(10 * slope)));

    private static string Indexed(string symbol, int i) => symbol + "_" + Figures.Significant(i + 1);

    // ln t of the line.
    private Num Log(Num x, Trace? t) => MeanLog(t) + (Slope(t) * (x - MeanX(t)));

    // Without a derivation the line is the one that the constructor laid.
    private Num MeanX(Trace? t) => t is null ? meanX : t.Step(
        "mean abscissa, " + (Law == TemperatureLaw.Arrhenius ? "1/K" : "K"), "x̄", Measure.Number, LeastSquares,
        Num.Sum(times.Count, (Fit: this, t), static (of, i) => of.Fit.XOf(i, of.t)) / times.Count);

    private Num MeanLog(Trace? t) => t is null ? meanLog : t.Step(
        "mean logarithm of the times in seconds", "ȳ", Measure.Number, LeastSquares,
        Num.Sum(times.Count, (Fit: this, t), static (of, i) => of.Fit.LogOf(i, of.t)) / times.Count);

    private Num Slope(Trace? t) => t is null ? slope : t.Step(
        "slope", "b", Measure.Number, LeastSquares,
        Num.Sum(times.Count, (Fit: this, t), static (of, i) => of.Fit.Off(i, of.t) * (of.Fit.LogOf(i, of.t) - of.Fit.MeanLog(of.t)))
            / Num.Sum(times.Count, (Fit: this, t), static (of, i) => Num.Square(of.Fit.Off(i, of.t))));

    private Num XOf(int i, Trace? t) =>
        X(Law, t is null ? times[i].Kelvins : t.Given(Indexed("T", i), times[i].Kelvins, Measure.AbsoluteTemperature));

    private Num Off(int i, Trace? t) => XOf(i, t) - MeanX(t);

    private Num LogOf(int i, Trace? t)
    {
        double seconds = times[i].Time.TotalSeconds;
        return Num.Ln(t is null ? seconds : t.Given(Indexed("t", i), seconds, Measure.Number));
    }

    private Num Residual(int i, Trace? t = null)
    {
        Num off = Num.Exp(LogOf(i, t) - Log(XOf(i, t), t)) - 1;
        return t is null ? off : t.Step("residual " + Figures.Significant(i + 1), Indexed("r", i), Measure.Percent, LeastSquares, off);
    }

    private Num Largest(Trace? t = null)
    {
        Num largest = 0;
        for (int i = 0; i < times.Count; i++)
        {
            Num off = Residual(i, t);
            largest = Num.Max(largest, Num.Max(off, -off));
        }

        return t.Step("largest residual", "r_max", Measure.Percent, LeastSquares, largest);
    }
}

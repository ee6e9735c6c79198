using System;
using Refinish.Numerics;

namespace Refinish.Climate;

/// <summary>
/// Humid-air arithmetic in SI, with or without a derivation: T thermodynamic temperature (K), p total pressure, pw partial pressure of
/// water vapour, pws its saturation value (Pa), W humidity ratio (kg water per kg dry air).
/// Numbers: ASHRAE Handbook Fundamentals (2017), chapter 1, equations as named.
/// </summary>
internal static class ClimateKernel
{
    /// <summary>Ice below, liquid water above. At this temperature the two formulas differ by 4e-6 Pa.</summary>
    public const double TriplePoint = 273.16;

    public const double CelsiusZero = 273.15;

    /// <summary>The coldest temperature of eq. 5, −100 °C.</summary>
    public const double Coldest = 173.15;

    /// <summary>The hottest temperature of eq. 6, 200 °C.</summary>
    public const double Hottest = 473.15;

    // The step of Newton's method after which the next would be below 1e-13 K.
    private const double NewtonStep = 1e-7;

    // Colder and hotter than any dew point whose vapour pressure the callers let pass; only so that a step cannot run away.
    private const double BelowAll = 100;
    private const double AboveAll = 640;

    /// <summary>Ratio of the molar masses of water and dry air, eq. 20.</summary>
    public const double MassRatio = 0.621945;

    /// <summary>1 / <see cref="MassRatio"/> as the handbook prints it, eq. 26.</summary>
    public const double InverseMassRatio = 1.607858;

    /// <summary>Gas constant of dry air, J/(kg K), eq. 1.</summary>
    public const double DryAirGasConstant = 287.042;

    /// <summary>Definition of relative humidity.</summary>
    public static readonly Source Ideal = Ashrae("eqs. 12 and 22, definition of relative humidity");

    private static readonly Source OverIce = Ashrae("eq. 5, saturation over ice");
    private static readonly Source OverWater = Ashrae("eq. 6, saturation over liquid water");
    private static readonly Source WetBulbFormula = Ashrae("eq. 33, wet bulb");
    private static readonly Source IceBulbFormula = Ashrae("eq. 35, bulb covered with ice");

    /// <summary>eq. 5: saturation over ice, −100 to 0.01 °C.</summary>
    public static Num LogSaturationOverIce(Num t) =>
        6.3925247 - (5674.5359 / t) - (9.677843e-3 * t) + (6.2215701e-7 * Num.Square(t)) + (2.0747825e-9 * Num.Power(t, 3))
        - (9.484024e-13 * Num.Power(t, 4)) + (4.1635019 * Num.Ln(t));

    /// <summary>eq. 6: saturation over liquid water, 0.01 to 200 °C.</summary>
    public static Num LogSaturationOverWater(Num t) =>
        1.3914993 - (5800.2206 / t) - (4.8640239e-2 * t) + (4.1764768e-5 * Num.Square(t)) - (1.4452093e-8 * Num.Power(t, 3))
        + (6.5459673 * Num.Ln(t));

    /// <summary>pws(T) for ice or for water.</summary>
    public static Num SaturationAt(Num t, bool ice) => Num.Exp(LogSaturation(t, ice));

    /// <summary>pws(T).</summary>
    public static double SaturationPressure(double t) => SaturationAt(t, IsOverIce(t)).Value;

    /// <summary>pws at a known temperature, as a step.</summary>
    public static Num SaturationStep(Trace? trace, string name, string symbol, string temperatureSymbol, double t) => trace.Step(
        name, symbol, Measure.Pressure, SaturationSource(t),
        SaturationAt(trace.Given(temperatureSymbol, t, Measure.AbsoluteTemperature), IsOverIce(t)));

    public static Source Ashrae(string section) => Source.Published("ASHRAE Handbook Fundamentals (2017), chapter 1", section);

    public static Source SaturationSource(double t) => IsOverIce(t) ? OverIce : OverWater;

    public static Source WetBulbSource(double wetBulb) => IsOverIce(wetBulb) ? IceBulbFormula : WetBulbFormula;

    public static bool IsOverIce(double t) => t <= TriplePoint;

    /// <summary>
    /// The temperature at which pw saturates: Newton's method on ln pws, from Magnus' closed form. ln pws is smooth, rising and concave,
    /// so four or five steps reach the last digits anywhere between <see cref="Coldest"/> and <see cref="Hottest"/>.
    /// </summary>
    public static double DewPoint(double vapourPressure)
    {
        double log = Math.Log(vapourPressure);
        bool ice = log <= LogAtTriplePointOverIce;
        if (!ice && log <= LogAtTriplePointOverWater)
        {
            // In the gap of 4e-6 Pa between the two formulas.
            return TriplePoint;
        }

        // Magnus: ln(pw / 611.2 Pa) = 17.62 t / (243.12 + t). Only a start; the result does not depend on it.
        double x = log - 6.4154;
        double start = CelsiusZero + (243.12 * x / (17.62 - x));
        return ice
            ? Newton.Rising(new Saturation(log, true), BelowAll, TriplePoint, start, NewtonStep, 0)
            : Newton.Rising(new Saturation(log, false), TriplePoint, AboveAll, start, NewtonStep, 0);
    }

    /// <summary>The temperature at which a vapour pressure saturates, which <see cref="DewPoint"/> found, as a step.</summary>
    public static Num DewPointStep(Trace trace, string name, string symbol, Num vapourPressure, double solution)
    {
        // The solution itself tells the branch; in the gap between the two formulas the triple point stands for both.
        bool ice = IsOverIce(solution) && vapourPressure.Value <= SaturationPressure(TriplePoint);
        return trace.Step(
            name, symbol, Measure.Temperature, ice ? OverIce : OverWater,
            Num.Solution(solution, symbol, t => SaturationAt(t, ice), vapourPressure));
    }

    /// <summary>Saturation pressure at <see cref="Coldest"/>, about 1.4 mPa.</summary>
    public static readonly double LeastPressure = SaturationPressure(Coldest);

    /// <summary>eq. 20: W = 0.621945 pw / (p − pw).</summary>
    public static Num HumidityRatio(Num vapourPressure, Num pressure) => MassRatio * vapourPressure / (pressure - vapourPressure);

    /// <summary>eq. 26: v = 287.042 T (1 + 1.607858 W) / p, per kg of dry air.</summary>
    public static Num SpecificVolume(Num t, Num humidityRatio, Num pressure) =>
        DryAirGasConstant * t * (1 + (InverseMassRatio * humidityRatio)) / pressure;

    /// <summary>eq. 30: h = 1006 t + W (2 501 000 + 1860 t), t in °C, per kg of dry air, zero for dry air at 0 °C.</summary>
    public static Num Enthalpy(Num t, Num humidityRatio, Trace? trace = null)
    {
        Num celsius = Celsius(t, trace);
        return (1006 * celsius) + (humidityRatio * (2501000 + (1860 * celsius)));
    }

    /// <summary>W from the enthalpy, eq. 30 turned round.</summary>
    public static Num HumidityRatioOfEnthalpy(Num t, Num enthalpy, Trace? trace = null)
    {
        Num celsius = Celsius(t, trace);
        return (enthalpy - (1006 * celsius)) / (2501000 + (1860 * celsius));
    }

    /// <summary>W from the specific volume, eq. 26 turned round.</summary>
    public static Num HumidityRatioOfVolume(Num t, Num volume, Num pressure) =>
        ((volume * pressure / (DryAirGasConstant * t)) - 1) / InverseMassRatio;

    /// <summary>pw from W, eq. 20 turned round.</summary>
    public static Num VapourPressure(Num humidityRatio, Num pressure) => pressure * humidityRatio / (MassRatio + humidityRatio);

    /// <summary>
    /// W of air at T whose bulb settles at T*: eq. 33 for a wet bulb, (2501 − 2.326 t*) Ws* − 1.006 (t − t*) over 2501 + 1.86 t − 4.186 t*;
    /// eq. 35 for one covered with ice, (2830 − 0.24 t*) Ws* − 1.006 (t − t*) over 2830 + 1.86 t − 2.1 t*. Negative when no air is so dry.
    /// </summary>
    public static Num HumidityRatioOfWetBulb(Num t, Num wetBulb, Num pressure, bool ice, Trace? trace = null)
    {
        Num celsius = Celsius(t, trace);
        Num wet = Celsius(wetBulb, trace);
        Num saturated = HumidityRatio(SaturationAt(wetBulb, ice), pressure);
        return ice
            ? (((2830 - (0.24 * wet)) * saturated) - (1.006 * (t - wetBulb))) / (2830 + (1.86 * celsius) - (2.1 * wet))
            : (((2501 - (2.326 * wet)) * saturated) - (1.006 * (t - wetBulb))) / (2501 + (1.86 * celsius) - (4.186 * wet));
    }

    /// <summary>The temperature at which a bulb settles, which a search found, as a step.</summary>
    public static Num WetBulbStep(Trace trace, string name, string symbol, double t, Num humidityRatio, double pressure, double solution)
    {
        Num dryBulb = trace.Given("T", t, Measure.AbsoluteTemperature);
        Num p = trace.Given("p", pressure, Measure.Pressure);
        return trace.Step(
            name, symbol, Measure.Temperature, WetBulbSource(solution),
            Num.Solution(solution, symbol, wet => HumidityRatioOfWetBulb(dryBulb, wet, p, IsOverIce(solution), trace), humidityRatio));
    }

    /// <summary>The temperature of a wet bulb, above the triple point; NaN when the air is so dry that there is none.</summary>
    public static double WetBulbOverWater(double t, double humidityRatio, double pressure) =>
        t > TriplePoint && humidityRatio > HumidityRatioOfWetBulb(t, TriplePoint, pressure, false).Value
            ? SolveWetBulb(t, humidityRatio, pressure, TriplePoint, t, false)
            : double.NaN;

    /// <summary>The temperature of a bulb covered with ice, at or below the triple point; NaN when ice would melt there.</summary>
    public static double WetBulbOverIce(double t, double humidityRatio, double pressure)
    {
        double high = Math.Min(t, TriplePoint);
        double most = HumidityRatioOfWetBulb(t, high, pressure, true).Value;

        // A bulb read at the triple point, or in saturated air below it, comes back with a rounding error.
        return humidityRatio >= most
            ? humidityRatio <= most + (1e-12 * Math.Abs(most)) || t <= TriplePoint ? high : double.NaN
            : SolveWetBulb(t, humidityRatio, pressure, Coldest, high, true);
    }

    private static double SolveWetBulb(double t, double humidityRatio, double pressure, double low, double high, bool ice) =>
        Newton.Rising(new WetBulb(t, humidityRatio, pressure, ice), low, high, (low + high) / 2, NewtonStep, 0);

    private static readonly double LogAtTriplePointOverIce = LogSaturationOverIce(TriplePoint).Value;

    private static readonly double LogAtTriplePointOverWater = LogSaturationOverWater(TriplePoint).Value;

    private static Num Celsius(Num t, Trace? trace) => t - trace.Given("T_0", CelsiusZero, Measure.AbsoluteTemperature);

    private static Num LogSaturation(Num t, bool ice) => ice ? LogSaturationOverIce(t) : LogSaturationOverWater(t);

    // d ln pws / dT.
    private static double LogSlope(double t, bool ice) => ice
        ? (5674.5359 / (t * t)) - 9.677843e-3 + (2 * 6.2215701e-7 * t) + (3 * 2.0747825e-9 * t * t) - (4 * 9.484024e-13 * t * t * t)
            + (4.1635019 / t)
        : (5800.2206 / (t * t)) - 4.8640239e-2 + (2 * 4.1764768e-5 * t) - (3 * 1.4452093e-8 * t * t) + (6.5459673 / t);

    // ln pws less the logarithm wanted.
    private readonly struct Saturation(double log, bool ice) : ISlopedFunction
    {
        public double At(double t, out double slope)
        {
            slope = LogSlope(t, ice);
            return LogSaturation(t, ice).Value - log;
        }
    }

    // The difference of the two humidity ratios of eq. 33 or 35, times the divisor there: convex and rising with the bulb's temperature.
    private readonly struct WetBulb(double t, double humidityRatio, double pressure, bool ice) : ISlopedFunction
    {
        public double At(double bulb, out double slope)
        {
            double wet = bulb - CelsiusZero;
            double saturation = SaturationAt(bulb, ice).Value;
            double dry = pressure - saturation;
            double saturated = HumidityRatio(saturation, pressure).Value;
            double steepness = saturated * pressure / dry * LogSlope(bulb, ice);
            double latent = ice ? 2830 - (0.24 * wet) : 2501 - (2.326 * wet);
            double below = ice ? 2830 + (1.86 * (t - CelsiusZero)) - (2.1 * wet) : 2501 + (1.86 * (t - CelsiusZero)) - (4.186 * wet);
            slope = (latent * steepness) - ((ice ? 0.24 : 2.326) * saturated) + 1.006 + (humidityRatio * (ice ? 2.1 : 4.186));
            return (latent * saturated) - (1.006 * (t - bulb)) - (humidityRatio * below);
        }
    }
}

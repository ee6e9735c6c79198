using System;

namespace Refinish.Climate;

/// <summary>The formulas of <see cref="ClimateKernel"/> as expressions, and where they come from.</summary>
internal static class ClimateFormulas
{
    public static readonly Source Ideal = Ashrae("eqs. 12 and 22, definition of relative humidity");
    public static readonly Source OverIce = Ashrae("eq. 5, saturation over ice");
    public static readonly Source OverWater = Ashrae("eq. 6, saturation over liquid water");

    public static Source Ashrae(string section) => Source.Published("ASHRAE Handbook Fundamentals (2017), chapter 1", section);

    public static Source SaturationSource(double t) => ClimateKernel.IsOverIce(t) ? OverIce : OverWater;

    /// <summary>pws(T) for ice or for water; t in kelvins.</summary>
    public static Expression Saturation(Expression t, bool overIce) => Expression.Exp(overIce
        ? 6.3925247 - (5674.5359 / t) - (9.677843e-3 * t) + (6.2215701e-7 * Expression.Square(t)) + (2.0747825e-9 * Expression.Power(t, 3))
            - (9.484024e-13 * Expression.Power(t, 4)) + (4.1635019 * Expression.Ln(t))
        : 1.3914993 - (5800.2206 / t) - (4.8640239e-2 * t) + (4.1764768e-5 * Expression.Square(t)) - (1.4452093e-8 * Expression.Power(t, 3))
            + (6.5459673 * Expression.Ln(t)));

    /// <summary>A step for pws at a known temperature.</summary>
    public static WorkingStep SaturationStep(string name, string symbol, string temperatureSymbol, double t) => new(
        name,
        symbol,
        Saturation(Expression.Quantity(temperatureSymbol, t, Measure.AbsoluteTemperature), ClimateKernel.IsOverIce(t)),
        ClimateKernel.SaturationPressure(t),
        Measure.Pressure,
        SaturationSource(t));

    /// <summary>A step for the temperature at which a vapour pressure saturates.</summary>
    public static WorkingStep DewPointStep(string name, string symbol, Expression vapourPressure, double solution)
    {
        // The solution itself tells the branch; in the gap between the two formulas the triple point stands for both.
        bool ice = ClimateKernel.IsOverIce(solution) && vapourPressure.Evaluate() <= ClimateKernel.SaturationPressure(ClimateKernel.TriplePoint);
        return new WorkingStep(
            name,
            symbol,
            Expression.Solution(
                symbol,
                ice ? ClimateKernel.Coldest - 1 : ClimateKernel.TriplePoint,
                ice ? ClimateKernel.TriplePoint : ClimateKernel.Hottest,
                t => Saturation(t, ice),
                vapourPressure),
            solution,
            Measure.Temperature,
            ice ? OverIce : OverWater);
    }

    /// <summary>W of air at t whose bulb settles at a temperature, eqs. 33 and 35; both in kelvins.</summary>
    public static Expression HumidityRatioOfWetBulb(Expression t, Expression wetBulb, double pressure, bool ice)
    {
        Expression zero = Expression.Quantity("T_0", ClimateKernel.CelsiusZero, Measure.AbsoluteTemperature);
        Expression p = Expression.Quantity("p", pressure, Measure.Pressure);
        Expression saturation = Saturation(wetBulb, ice);
        Expression saturated = ClimateKernel.MassRatio * saturation / (p - saturation);
        return ice
            ? (((2830 - (0.24 * (wetBulb - zero))) * saturated) - (1.006 * (t - wetBulb))) / (2830 + (1.86 * (t - zero)) - (2.1 * (wetBulb - zero)))
            : (((2501 - (2.326 * (wetBulb - zero))) * saturated) - (1.006 * (t - wetBulb))) / (2501 + (1.86 * (t - zero)) - (4.186 * (wetBulb - zero)));
    }

    public static Source WetBulbSource(bool ice) => ice ? Ashrae("eq. 35, bulb covered with ice") : Ashrae("eq. 33, wet bulb");

    /// <summary>A step for the temperature at which a bulb settles.</summary>
    public static WorkingStep WetBulbStep(string name, string symbol, double t, Expression humidityRatio, double pressure, double solution)
    {
        bool ice = ClimateKernel.IsOverIce(solution);
        Expression dryBulb = Expression.Quantity("T", t, Measure.AbsoluteTemperature);
        return new WorkingStep(
            name,
            symbol,
            Expression.Solution(
                symbol,
                ice ? ClimateKernel.Coldest : ClimateKernel.TriplePoint,
                ice ? Math.Min(t, ClimateKernel.TriplePoint) : t,
                wet => HumidityRatioOfWetBulb(dryBulb, wet, pressure, ice),
                humidityRatio),
            solution,
            Measure.Temperature,
            WetBulbSource(ice));
    }
}

using System.Collections.Generic;

namespace Refinish.Climate;

/// <summary>The formulas of <see cref="AirSolution"/> as expressions.</summary>
internal static class AirReadingFormulas
{
    private static readonly Source Turned = Source.Derived("the formula of the reading, turned round for the unknown");

    /// <summary>The steps from two readings to the air temperature and the relative humidity.</summary>
    public static IEnumerable<WorkingStep> Steps(AirSolution solution, MoistAir air)
    {
        double pressure = air.Pressure.Pascals;
        bool direct = solution.Carrier.Kind == AirReadingKind.DryBulb;
        AirReading moisture = direct ? solution.Other : solution.Carrier;
        if (!direct)
        {
            yield return Temperature(solution, air.Kelvins, pressure);
        }

        Expression t = Expression.Quantity("T", air.Kelvins, Measure.AbsoluteTemperature);
        WorkingStep vapour = new(
            "vapour pressure", "p_w", Vapour(moisture, t, air.Kelvins, pressure), AirSolution.Vapour(moisture, air.Kelvins, pressure), Measure.Pressure, SourceOf(moisture));
        WorkingStep saturation = ClimateFormulas.SaturationStep("saturation pressure at the air temperature", "p_ws", "T", air.Kelvins);
        yield return vapour;
        yield return saturation;
        yield return new WorkingStep(
            "relative humidity", "RH", Expression.Min(1, vapour.Result() / saturation.Result()), air.RelativeHumidity.DecimalFractions, Measure.Percent, ClimateFormulas.Ideal);
    }

    private static WorkingStep Temperature(AirSolution solution, double kelvins, double pressure)
    {
        AirReading other = solution.Other;

        // The solution itself tells which branch of saturation holds; in the workings the unknown stays on that branch.
        bool ice = ClimateKernel.IsOverIce(kelvins);
        double low = ice ? ClimateKernel.Coldest : ClimateKernel.TriplePoint;
        double high = ice ? ClimateKernel.TriplePoint : MoistAir.Thermometer.Maximum;
        return new WorkingStep(
            "air temperature", "T", Expression.Solution("T", low, high, t => Rising(solution, t, kelvins, pressure), Target(other)), kelvins, Measure.AbsoluteTemperature, Turned);
    }

    private static Expression Target(AirReading other) => other.Kind is AirReadingKind.RelativeHumidity or AirReadingKind.WetBulb
        ? 0
        : Expression.Quantity(other.Symbol, other.Value, other.Measure);

    private static Expression Rising(AirSolution solution, Expression t, double kelvins, double pressure)
    {
        AirReading other = solution.Other;
        Expression vapour = Vapour(solution.Carrier, t, kelvins, pressure);
        if (other.Kind == AirReadingKind.RelativeHumidity)
        {
            return ClimateFormulas.Saturation(t, ClimateKernel.IsOverIce(kelvins)) - (vapour / Expression.Quantity("RH", other.Value, Measure.Percent));
        }

        Expression p = Expression.Quantity("p", pressure, Measure.Pressure);
        Expression w = ClimateKernel.MassRatio * vapour / (p - vapour);
        Expression celsius = t - Expression.Quantity("T_0", ClimateKernel.CelsiusZero, Measure.AbsoluteTemperature);
        return other.Kind switch
        {
            AirReadingKind.WetBulb => w - OfWetBulb(other, t, pressure),
            AirReadingKind.Enthalpy => (1006 * celsius) + (w * (2501000 + (1860 * celsius))),
            _ => ClimateKernel.DryAirGasConstant * t * (1 + (ClimateKernel.InverseMassRatio * w)) / p,
        };
    }

    private static Expression Vapour(AirReading reading, Expression t, double kelvins, double pressure)
    {
        Expression value = Expression.Quantity(reading.Symbol, reading.Value, reading.Measure);
        Expression p = Expression.Quantity("p", pressure, Measure.Pressure);
        switch (reading.Kind)
        {
            case AirReadingKind.DewPoint:
                return ClimateFormulas.Saturation(Expression.Quantity("T_d", reading.Value, Measure.AbsoluteTemperature), ClimateKernel.IsOverIce(reading.Value));
            case AirReadingKind.RelativeHumidity:
                return value * ClimateFormulas.Saturation(t, ClimateKernel.IsOverIce(kelvins));
        }

        Expression celsius = t - Expression.Quantity("T_0", ClimateKernel.CelsiusZero, Measure.AbsoluteTemperature);
        Expression w = reading.Kind switch
        {
            AirReadingKind.HumidityRatio => value,
            AirReadingKind.WetBulb => OfWetBulb(reading, t, pressure),
            AirReadingKind.Enthalpy => (value - (1006 * celsius)) / (2501000 + (1860 * celsius)),
            _ => ((value * p / (ClimateKernel.DryAirGasConstant * t)) - 1) / ClimateKernel.InverseMassRatio,
        };
        return p * w / (ClimateKernel.MassRatio + w);
    }

    private static Expression OfWetBulb(AirReading reading, Expression t, double pressure) => ClimateFormulas.HumidityRatioOfWetBulb(
        t, Expression.Quantity("T_wb", reading.Value, Measure.AbsoluteTemperature), pressure, ClimateKernel.IsOverIce(reading.Value));

    private static Source SourceOf(AirReading reading) => reading.Kind switch
    {
        AirReadingKind.DewPoint => ClimateFormulas.SaturationSource(reading.Value),
        AirReadingKind.RelativeHumidity => ClimateFormulas.Ideal,
        AirReadingKind.WetBulb => ClimateFormulas.WetBulbSource(ClimateKernel.IsOverIce(reading.Value)),
        _ => Turned,
    };
}

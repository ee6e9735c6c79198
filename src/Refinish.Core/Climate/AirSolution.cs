using System;
using Refinish.Numerics;

namespace Refinish.Climate;

/// <summary>The air that two readings fix. One of them, the carrier, gives the vapour pressure at any temperature; the other tells which temperature.</summary>
/// <remarks>
/// The carrier is the one that comes first in the order of <see cref="AirReadingKind"/>. With that choice the other reading's formula rises with the
/// temperature for every pair, so there is at most one solution. Two pairs are not taken: dew point with humidity ratio, which say the same at a known
/// pressure, and wet bulb with enthalpy, whose lines on the psychrometric chart all but coincide.
/// </remarks>
internal readonly struct AirSolution
{
    private readonly AirReading carrier;
    private readonly AirReading other;
    private readonly double pressure;

    public AirSolution(AirReading first, AirReading second, double pressure)
    {
        bool inOrder = first.Kind <= second.Kind;
        carrier = inOrder ? first : second;
        other = inOrder ? second : first;
        this.pressure = pressure;
    }

    public AirReading Carrier => carrier;

    public AirReading Other => other;

    public bool IsDependent => carrier.Kind == other.Kind
        || (carrier.Kind == AirReadingKind.DewPoint && other.Kind == AirReadingKind.HumidityRatio)
        || (carrier.Kind == AirReadingKind.WetBulb && other.Kind == AirReadingKind.Enthalpy);

    /// <summary>Temperature and vapour pressure; NaN when the readings cannot both hold between −60 and 60 °C.</summary>
    public (double Kelvins, double Vapour) Solve()
    {
        double t = carrier.Kind == AirReadingKind.DryBulb ? carrier.Value : Temperature();
        double vapour = double.IsNaN(t) ? double.NaN : Vapour(carrier.Kind == AirReadingKind.DryBulb ? other : carrier, t, pressure);
        double saturation = ClimateKernel.SaturationPressure(t);
        return vapour > saturation * (1 + 1e-9) || !(vapour >= (1 - 1e-12) * ClimateKernel.LeastPressure)
            ? (double.NaN, double.NaN)
            : (t, Math.Min(vapour, saturation));
    }

    /// <summary>Vapour pressure of air at t with this reading.</summary>
    public static double Vapour(AirReading reading, double t, double pressure) => reading.Kind switch
    {
        AirReadingKind.DewPoint => ClimateKernel.SaturationPressure(reading.Value),
        AirReadingKind.RelativeHumidity => reading.Value * ClimateKernel.SaturationPressure(t),
        _ => ClimateKernel.VapourPressure(Mixing(reading, t, pressure), pressure),
    };

    private static double Mixing(AirReading reading, double t, double pressure) => reading.Kind switch
    {
        AirReadingKind.HumidityRatio => reading.Value,
        AirReadingKind.WetBulb => ClimateKernel.HumidityRatioOfWetBulb(t, reading.Value, pressure, ClimateKernel.IsOverIce(reading.Value)),
        AirReadingKind.Enthalpy => ClimateKernel.HumidityRatioOfEnthalpy(t, reading.Value),
        _ => ClimateKernel.HumidityRatioOfVolume(t, reading.Value, pressure),
    };

    // What the other reading's formula gives for the carrier's vapour pressure, less the reading: rising with the temperature.
    private double Excess(double t)
    {
        double vapour = Vapour(carrier, t, pressure);
        if (other.Kind == AirReadingKind.RelativeHumidity)
        {
            return ClimateKernel.SaturationPressure(t) - (vapour / other.Value);
        }

        double mixing = ClimateKernel.HumidityRatio(vapour, pressure);
        return other.Kind switch
        {
            AirReadingKind.WetBulb => mixing - Mixing(other, t, pressure),
            AirReadingKind.Enthalpy => ClimateKernel.Enthalpy(t, mixing) - other.Value,
            _ => ClimateKernel.SpecificVolume(t, mixing, pressure) - other.Value,
        };
    }

    private double Temperature()
    {
        double low = Math.Max(MoistAir.Thermometer.Minimum, Math.Max(Coldest(carrier), Coldest(other)));
        double high = MoistAir.Thermometer.Maximum;
        if (low > high || !(Excess(high) >= 0))
        {
            return double.NaN;
        }

        if (Excess(low) >= 0)
        {
            // Saturated air, whose solution is the end itself, comes out a rounding error beyond it.
            return Excess(low - 1e-8) <= 0 ? low : double.NaN;
        }

        return Roots.Rising(this, static (solution, t) => solution.Excess(t), low, high);
    }

    // Air is never colder than its dew point or its wet bulb.
    private double Coldest(AirReading reading)
    {
        switch (reading.Kind)
        {
            case AirReadingKind.DewPoint:
            case AirReadingKind.WetBulb:
                return reading.Value;
            case AirReadingKind.HumidityRatio:
                double vapour = ClimateKernel.VapourPressure(reading.Value, pressure);
                return vapour < ClimateKernel.LeastPressure ? ClimateKernel.Coldest : ClimateKernel.DewPoint(vapour);
            default:
                return ClimateKernel.Coldest;
        }
    }
}

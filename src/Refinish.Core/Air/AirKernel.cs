using System;
using Refinish.Numerics;

namespace Refinish.Air;

/// <summary>
/// The well-mixed room with one coat in it, in SI, as the part of the coat's volatile mass that is in the air.
/// Symbols: λ air changes (1/s); f flash fraction; T spray time, τ time constant of the film (s); x time since spraying began, y since it ended.
/// </summary>
/// <remarks>
/// dm/dt = e(x) − λ m with e = [f + (1 − f)(1 − e^(−x/τ))]/T while spraying and (1 − f) φ₁(−T/τ) e^(−y/τ)/τ afterwards.
/// The solutions are written with φ₁ and φ₂ so that they hold without airflow (λ = 0) and when λ and 1/τ come together.
/// Each line does its operations in the order in which the workings write them.
/// </remarks>
internal static class AirKernel
{
    /// <summary>Molar volume of a gas at 25 °C and 760 mmHg by which US limits turn from ppm into mg/m³: 24.45 L/mol, 29 CFR 1910.1000 Table Z-1 and NIOSH Pocket Guide.</summary>
    public const double MolarVolume = 24.45e-3;

    /// <summary>R, J/(mol·K): exact in the SI of 2019.</summary>
    public const double GasConstant = 8.314462618;

    public const double StandardPressure = 101325;

    public const double ReferenceTemperature = 298.15;

    /// <summary>
    /// Molar volume for the fraction of the flammable limit: at the pressure of the room, and at its temperature where it is warmer than
    /// 25 °C. A colder room is taken at 25 °C, which is the careful side: the same mass is a larger part of warmer air.
    /// </summary>
    public static double FlammableMolarVolume(Room room) =>
        MolarVolume * StandardPressure / room.AirPressure.Pascals * Warmth(room);

    /// <summary>T/T₀ of a room warmer than 25 °C, otherwise 1.</summary>
    public static double Warmth(Room room) =>
        room.AirTemperature is UnitsNet.Temperature air && air.Kelvins > ReferenceTemperature ? air.Kelvins / ReferenceTemperature : 1;

    public static double BoxVolume(double length, double width, double height) => length * width * height;

    /// <summary>(e^(−x/τ) − e^(−λx))/(λ − 1/τ): what one unit of film gives to the room's air, over the film's rate.</summary>
    public static double Lag(double changes, double tau, double x) =>
        changes <= 1 / tau
            ? x * Math.Exp(-(changes * x)) * PhiFunctions.Phi1(-(((1 / tau) - changes) * x))
            : x * Math.Exp(-(x / tau)) * PhiFunctions.Phi1(-((changes - (1 / tau)) * x));

    /// <summary>The integral of <see cref="Lag"/> from 0 to x, by the balance of the faster of the two processes.</summary>
    public static double LagTime(double changes, double tau, double x) =>
        changes <= 1 / tau
            ? ((x * PhiFunctions.Phi1(-(changes * x))) - Lag(changes, tau, x)) * tau
            : ((x * PhiFunctions.Phi1(-(x / tau))) - Lag(changes, tau, x)) / changes;

    /// <summary>Airborne part at x while spraying.</summary>
    public static double Spraying(double changes, double flash, double spray, double tau, double x) =>
        ((x * PhiFunctions.Phi1(-(changes * x))) - ((1 - flash) * Lag(changes, tau, x))) / spray;

    /// <summary>Airborne part at y after spraying, with what was in the air at its end.</summary>
    public static double Drying(double changes, double filmRate, double tau, double atEnd, double y) =>
        (atEnd * Math.Exp(-(changes * y))) + (filmRate * Lag(changes, tau, y));

    /// <summary>Time integral of <see cref="Spraying"/> from 0 to x.</summary>
    public static double SprayingTime(double changes, double flash, double spray, double tau, double x) =>
        ((x * x * PhiFunctions.Phi2(-(changes * x))) - ((1 - flash) * LagTime(changes, tau, x))) / spray;

    /// <summary>Time integral of <see cref="Drying"/> from 0 to y.</summary>
    public static double DryingTime(double changes, double filmRate, double tau, double atEnd, double y) =>
        (atEnd * (y * PhiFunctions.Phi1(-(changes * y)))) + (filmRate * LagTime(changes, tau, y));

    /// <summary>What the film releases per second when spraying ends: (1 − f) φ₁(−T/τ)/τ.</summary>
    public static double FilmRate(double flash, double spray, double tau) => (1 - flash) * PhiFunctions.Phi1(-(spray / tau)) / tau;

    /// <summary>Part of the mass still in the film at time x since spraying began.</summary>
    public static double Film(double flash, double spray, double tau, double x) =>
        x <= 0 ? 0
        : x <= spray ? (1 - flash) * x * PhiFunctions.Phi1(-(x / tau)) / spray
        : (1 - flash) * PhiFunctions.Phi1(-(spray / tau)) * Math.Exp(-((x - spray) / tau));

    /// <summary>Fresh air that counts: (flow of the fan + infiltration) / K.</summary>
    public static double FreshAir(double fan, double infiltration, double mixing) => (fan + infiltration) / mixing;

    /// <summary>What the fan has to move for given air changes, beside the infiltration.</summary>
    public static double FanFlow(double changes, double volume, double mixing, double infiltration) =>
        Math.Max((changes * volume * mixing) - infiltration, 0);

    /// <summary>Σ c/L: the mixture index of exposure, Le Chatelier's sum for flammability. What has no limit is left out.</summary>
    public static double SumOfFractions(double[] values, double?[] limits)
    {
        double sum = 0;
        for (int i = 0; i < values.Length; i++)
        {
            sum += limits[i] is double limit ? values[i] / limit : 0;
        }

        return sum;
    }

    /// <summary>Volume fraction of a vapour from its mass concentration: C · V_m / M.</summary>
    public static double VolumeFraction(double concentration, double molarVolume, double molarMass) => concentration * molarVolume / molarMass;
}

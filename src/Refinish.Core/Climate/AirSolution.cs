using System;
using Refinish.Numerics;

namespace Refinish.Climate;

/// <summary>
/// The air that two readings fix. One of them, the carrier, gives the vapour pressure at any temperature; the other tells which
/// temperature.
/// </summary>
/// <remarks>
/// The carrier is the one that comes first in the order of <see cref="AirReadingKind"/>. With that choice the other reading's formula
/// rises with the temperature for every pair, so there is at most one solution. Two pairs are not taken: dew point with humidity ratio,
/// which say the same at a known pressure, and wet bulb with enthalpy, whose lines on the psychrometric chart all but coincide.
/// </remarks>
internal readonly struct AirSolution
{
    private static readonly Source Turned = Source.Derived("the formula of the reading, turned round for the unknown");

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

    public bool IsDependent => carrier.Kind == other.Kind
        || (carrier.Kind == AirReadingKind.DewPoint && other.Kind == AirReadingKind.HumidityRatio)
        || (carrier.Kind == AirReadingKind.WetBulb && other.Kind == AirReadingKind.Enthalpy);

    private bool IsDirect => carrier.Kind == AirReadingKind.DryBulb;

    private AirReading Moisture => IsDirect ? other : carrier;

    /// <summary>Temperature and vapour pressure; NaN when the readings cannot both hold between −60 and 60 °C.</summary>
    public (double Kelvins, double Vapour) Solve()
    {
        double t = IsDirect ? carrier.Value : Temperature();
        double vapour = double.IsNaN(t) ? double.NaN : Vapour(Moisture, t, ClimateKernel.IsOverIce(t)).Value;
        double saturation = ClimateKernel.SaturationPressure(t);
        return vapour > saturation * (1 + 1e-9) || !(vapour >= (1 - 1e-12) * ClimateKernel.LeastPressure)
            ? (double.NaN, double.NaN)
            : (t, Math.Min(vapour, saturation));
    }

    /// <summary>How the air temperature and the relative humidity of the air follow that <see cref="Solve"/> found.</summary>
    public Workings Workings(MoistAir air)
    {
        Trace trace = new();
        trace.Part(air.Workings());
        bool ice = ClimateKernel.IsOverIce(air.Kelvins);
        if (!IsDirect)
        {
            // The solution itself tells which branch of saturation holds; in the workings the unknown stays on that branch.
            AirSolution readings = this;
            trace.Step(
                "air temperature", "T", Measure.AbsoluteTemperature, Turned,
                Num.Solution(air.Kelvins, "T", x => readings.Rising(x, ice, trace), Target(trace)));
        }

        Num t = trace.Given("T", air.Kelvins, Measure.AbsoluteTemperature);
        Num vapour = trace.Step("vapour pressure", "p_w", Measure.Pressure, SourceOf(Moisture), Vapour(Moisture, t, ice, trace));
        Num saturation = ClimateKernel.SaturationStep(trace, "saturation pressure at the air temperature", "p_ws", "T", air.Kelvins);
        trace.Step("relative humidity", "RH", Measure.Percent, ClimateKernel.Ideal, Num.Min(1, vapour / saturation));
        return trace.Workings("Humid air from two readings");
    }

    private static Num Given(AirReading reading, Trace? trace) => trace.Given(
        reading.Symbol, reading.Value, reading.Measure.Equals(Measure.Temperature) ? Measure.AbsoluteTemperature : reading.Measure);

    private static Source SourceOf(AirReading reading) => reading.Kind switch
    {
        AirReadingKind.DewPoint => ClimateKernel.SaturationSource(reading.Value),
        AirReadingKind.RelativeHumidity => ClimateKernel.Ideal,
        AirReadingKind.WetBulb => ClimateKernel.WetBulbSource(reading.Value),
        _ => Turned,
    };

    // Vapour pressure of air at t with this reading.
    private Num Vapour(AirReading reading, Num t, bool ice, Trace? trace = null) => reading.Kind switch
    {
        AirReadingKind.DewPoint => ClimateKernel.SaturationAt(Given(reading, trace), ClimateKernel.IsOverIce(reading.Value)),
        AirReadingKind.RelativeHumidity => Given(reading, trace) * ClimateKernel.SaturationAt(t, ice),
        _ => ClimateKernel.VapourPressure(Mixing(reading, t, trace), Pressure(trace)),
    };

    private Num Mixing(AirReading reading, Num t, Trace? trace) => reading.Kind switch
    {
        AirReadingKind.HumidityRatio => Given(reading, trace),
        AirReadingKind.WetBulb => ClimateKernel.HumidityRatioOfWetBulb(
            t, Given(reading, trace), Pressure(trace), ClimateKernel.IsOverIce(reading.Value), trace),
        AirReadingKind.Enthalpy => ClimateKernel.HumidityRatioOfEnthalpy(t, Given(reading, trace), trace),
        _ => ClimateKernel.HumidityRatioOfVolume(t, Given(reading, trace), Pressure(trace)),
    };

    // What the other reading's formula gives for the carrier's vapour pressure: rising with the temperature.
    private Num Rising(Num t, bool ice, Trace? trace = null)
    {
        Num vapour = Vapour(carrier, t, ice, trace);
        if (other.Kind == AirReadingKind.RelativeHumidity)
        {
            return ClimateKernel.SaturationAt(t, ice) - (vapour / Given(other, trace));
        }

        Num mixing = ClimateKernel.HumidityRatio(vapour, Pressure(trace));
        return other.Kind switch
        {
            AirReadingKind.WetBulb => mixing - Mixing(other, t, trace),
            AirReadingKind.Enthalpy => ClimateKernel.Enthalpy(t, mixing, trace),
            _ => ClimateKernel.SpecificVolume(t, mixing, Pressure(trace)),
        };
    }

    // What that has to come to.
    private Num Target(Trace? trace = null) =>
        other.Kind is AirReadingKind.RelativeHumidity or AirReadingKind.WetBulb ? trace.Number(0) : Given(other, trace);

    private double Excess(double t) => Rising(t, ClimateKernel.IsOverIce(t)).Value - Target().Value;

    private Num Pressure(Trace? trace) => trace.Given("p", pressure, Measure.Pressure);

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
    private double Coldest(AirReading reading) => reading.Kind switch
    {
        AirReadingKind.DewPoint or AirReadingKind.WetBulb => reading.Value,
        AirReadingKind.HumidityRatio when ClimateKernel.VapourPressure(reading.Value, pressure).Value is var vapour
            && vapour >= ClimateKernel.LeastPressure => ClimateKernel.DewPoint(vapour),
        _ => ClimateKernel.Coldest,
    };
}

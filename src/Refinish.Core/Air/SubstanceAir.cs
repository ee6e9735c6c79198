using System;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Air;

/// <summary>What one substance comes to in the air of the room. Volume fractions are at 25 °C and 760 mmHg, as exposure limits are.</summary>
public sealed record SubstanceAir
{
    private readonly double released;
    private readonly double peak;
    private readonly double? peakAt;
    private readonly double fifteenMinutes;
    private readonly double? fifteenMinutesEnd;
    private readonly double eightHours;
    private readonly double? eightHoursEnd;

    internal SubstanceAir(Solvent solvent, double released, AirMaximum peak, AirMaximum fifteenMinutes, AirMaximum eightHours)
    {
        Solvent = solvent;
        this.released = released;
        this.peak = peak.Value;
        peakAt = peak.At;
        this.fifteenMinutes = fifteenMinutes.Value;
        fifteenMinutesEnd = fifteenMinutes.At;
        this.eightHours = eightHours.Value;
        eightHoursEnd = eightHours.At;
    }

    /// <summary>The substance.</summary>
    public Solvent Solvent { get; }

    /// <summary>All of it that is released by all coats.</summary>
    public Mass Released => Mass.FromKilograms(released);

    /// <summary>The peak by volume.</summary>
    public Ratio Peak => Fraction(peak);

    /// <summary>The peak by mass. Without airflow: all that is ever released, over the volume.</summary>
    public MassConcentration PeakConcentration => MassConcentration.FromKilogramsPerCubicMeter(peak);

    /// <summary>When the peak is reached, from the start of the study; <see langword="null"/> without airflow, when it is approached and never left.</summary>
    public TimeSpan? PeakAt => peakAt is double seconds ? Durations.FromSeconds(seconds) : null;

    /// <summary>The largest average over any fifteen minutes, by volume.</summary>
    public Ratio FifteenMinuteAverage => Fraction(fifteenMinutes);

    /// <summary>The largest average over any fifteen minutes, by mass.</summary>
    public MassConcentration FifteenMinuteConcentration => MassConcentration.FromKilogramsPerCubicMeter(fifteenMinutes);

    /// <summary>The worst shift's exposure spread over eight hours, by volume: 29 CFR 1910.1000(d)(1)(i).</summary>
    public Ratio EightHourAverage => Fraction(eightHours);

    /// <summary>The worst shift's exposure spread over eight hours, by mass.</summary>
    public MassConcentration EightHourConcentration => MassConcentration.FromKilogramsPerCubicMeter(eightHours);

    /// <summary>The substance and its three numbers.</summary>
    /// <returns>Text such as <c>n-butyl acetate: peak 1100 ppm, 15-minute average 820 ppm, 8-hour average 49 ppm</c>.</returns>
    public override string ToString() =>
        Solvent.Name + ": peak " + Measure.PartsPerMillion.FormatAtLeast(Peak.DecimalFractions, DisplayUnits.Si, AirStudy.ScreeningDigits)
        + ", 15-minute average " + Measure.PartsPerMillion.FormatAtLeast(FifteenMinuteAverage.DecimalFractions, DisplayUnits.Si, AirStudy.ScreeningDigits)
        + ", 8-hour average " + Measure.PartsPerMillion.FormatAtLeast(EightHourAverage.DecimalFractions, DisplayUnits.Si, AirStudy.ScreeningDigits);

    internal double? PeakSeconds => peakAt;

    internal double? FifteenMinutesEnd => fifteenMinutesEnd;

    internal double? EightHoursEnd => eightHoursEnd;

    private Ratio Fraction(double concentration) =>
        Ratio.FromDecimalFractions(AirKernel.VolumeFraction(concentration, AirKernel.MolarVolume, Solvent.MolarMass.KilogramsPerMole));
}

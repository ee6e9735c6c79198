using System;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// What one substance comes to in the air of the room. Volume fractions are at 25 °C and 760 mmHg, as exposure limits are.
/// </summary>
public sealed record SubstanceAir
{
    private readonly double released;
    private readonly AirMaximum peak;
    private readonly AirMaximum fifteenMinutes;
    private readonly AirMaximum eightHours;

    internal SubstanceAir(AirStudy study, int substance, AirPlace place)
    {
        double[] masses = study.Load.Masses(substance);
        Solvent = study.Load.Solvents[substance];
        released = ((TermWeights)masses).Total.Value;
        peak = place.Largest(masses);
        fifteenMinutes = place.Largest(masses, AirStudy.FifteenMinutes, AirStudy.FifteenMinutes);
        eightHours = place.Largest(masses, study.ShiftSeconds, AirStudy.EightHours);
    }

    /// <summary>The substance.</summary>
    public Solvent Solvent { get; }

    /// <summary>All of it that is released by all coats.</summary>
    public Mass Released => Mass.FromKilograms(released);

    /// <summary>The peak by volume.</summary>
    public Ratio Peak => Fraction(peak);

    /// <summary>The peak by mass. Without airflow: all that is ever released, over the volume.</summary>
    public MassConcentration PeakConcentration => MassConcentration.FromKilogramsPerCubicMeter(peak.Value);

    /// <summary>
    /// When the peak is reached, from the start of the study; <see langword="null"/> without airflow, when it is approached and never
    /// left.
    /// </summary>
    public TimeSpan? PeakAt => peak.At is double seconds ? Durations.FromSeconds(seconds) : null;

    /// <summary>The largest average over any fifteen minutes, by volume.</summary>
    public Ratio FifteenMinuteAverage => Fraction(fifteenMinutes);

    /// <summary>The largest average over any fifteen minutes, by mass.</summary>
    public MassConcentration FifteenMinuteConcentration => MassConcentration.FromKilogramsPerCubicMeter(fifteenMinutes.Value);

    /// <summary>The worst shift's exposure spread over eight hours, by volume: 29 CFR 1910.1000(d)(1)(i).</summary>
    public Ratio EightHourAverage => Fraction(eightHours);

    /// <summary>The worst shift's exposure spread over eight hours, by mass.</summary>
    public MassConcentration EightHourConcentration => MassConcentration.FromKilogramsPerCubicMeter(eightHours.Value);

    /// <summary>The substance and its three numbers.</summary>
    /// <returns>Text such as <c>n-butyl acetate: peak 1100 ppm, 15-minute average 820 ppm, 8-hour average 49 ppm</c>.</returns>
    public override string ToString() =>
        Solvent.Name + ": peak " + Measure.PartsPerMillion.FormatAtLeast(Peak.DecimalFractions, DisplayUnits.Si, AirStudy.ScreeningDigits)
        + ", 15-minute average " + Measure.PartsPerMillion.FormatAtLeast(FifteenMinuteAverage.DecimalFractions, DisplayUnits.Si, AirStudy.ScreeningDigits)
        + ", 8-hour average " + Measure.PartsPerMillion.FormatAtLeast(EightHourAverage.DecimalFractions, DisplayUnits.Si, AirStudy.ScreeningDigits);

    /// <summary>How its peak and averages follow.</summary>
    /// <param name="study">The room and what is released in it.</param>
    /// <param name="place">Where in the room.</param>
    /// <param name="where">What the title says of the place; may be empty.</param>
    internal Workings Workings(AirStudy study, AirPlace place, string where)
    {
        Trace t = new();
        Num[] masses = study.Load.Masses(Solvent, t);
        t.Step("all of it", "m", Measure.Mass, AirLoad.Shares, ((TermWeights)masses).Total);
        Num most = t.Step(
            "peak of " + Solvent.Name, "C_peak", Measure.MassConcentration, TermAnswers.Box, place.Moment(masses, peak.At, t));
        ByVolume("peak by volume", "c_peak", most);
        Num fifteen = t.Step(
            "largest average over 15 min", "C_15", Measure.MassConcentration, TermAnswers.Box,
            place.Window(masses, fifteenMinutes.At, AirStudy.FifteenMinutes, AirStudy.FifteenMinutes, t));
        ByVolume("15-minute average by volume", "c_15", fifteen);
        Num eight = t.Step(
            "worst shift over 8 h", "C_8h", Measure.MassConcentration, AirStudy.TimeWeighted,
            place.Window(masses, eightHours.At, study.ShiftSeconds, AirStudy.EightHours, t));
        ByVolume("8-hour average by volume", "c_8h", eight);
        return t.Workings(Solvent.Name + where);

        void ByVolume(string name, string symbol, Num concentration) => t.Step(
            name, symbol, Measure.PartsPerMillion, AirKernel.GasLaw, AirKernel.FractionForLimits(concentration, Solvent, t));
    }

    internal double? PeakSeconds => peak.At;

    internal double? FifteenMinutesEnd => fifteenMinutes.At;

    internal double? EightHoursEnd => eightHours.At;

    private Ratio Fraction(AirMaximum concentration) =>
        Ratio.FromDecimalFractions(AirKernel.FractionForLimits(concentration.Value, Solvent).Value);
}

using System;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>Quantities by what they measure, which decides the unit in which they are written.</summary>
internal static class Quantities
{
    public static Shape<Length> Tape { get; } = new QuantityShape<Length>(Units.Length, Measure.Length);

    public static Shape<Length> Distance { get; } = new QuantityShape<Length>(Units.Length, Measure.Distance);

    public static Shape<Length> Film { get; } = new QuantityShape<Length>(Units.Length, Measure.Film);

    public static Shape<Area> Area { get; } = new QuantityShape<Area>(Units.Area, Measure.Area);

    public static Shape<Area> SmallArea { get; } = new QuantityShape<Area>(Units.Area, Measure.SmallArea);

    public static Shape<Volume> Liquid { get; } = new QuantityShape<Volume>(Units.Volume, Measure.Liquid);

    /// <summary>A volume, a mass, an area, a length or pieces, as its unit says.</summary>
    public static Shape<MaterialAmount> Material { get; } = new MaterialAmountShape();

    public static Shape<Mass> Mass { get; } = new QuantityShape<Mass>(Units.Mass, Measure.Mass);

    public static Shape<Density> Density { get; } = new QuantityShape<Density>(Units.Density, Measure.Density);

    public static Shape<SpecificEntropy> SpecificHeat { get; } =
        new QuantityShape<SpecificEntropy>(Units.SpecificHeat, Measure.SpecificHeat);

    public static Shape<ThermalConductivity> Conductivity { get; } = new QuantityShape<ThermalConductivity>(Units.Conductivity,
        Measure.Conductivity);

    public static Shape<Ratio> Percent { get; } = new QuantityShape<Ratio>(Units.Ratio, Measure.Percent);

    public static Shape<Temperature> Temperature { get; } = new QuantityShape<Temperature>(Units.Temperature, Measure.Temperature);

    public static Shape<TemperatureDelta> TemperatureDifference { get; } = new QuantityShape<TemperatureDelta>(Units.TemperatureDelta,
        Measure.TemperatureDifference);

    public static Shape<Level> SoundLevel { get; } = new QuantityShape<Level>(Units.SoundLevel, Measure.SoundLevel);

    public static Shape<Pressure> Pressure { get; } = new QuantityShape<Pressure>(Units.Pressure, Measure.Pressure);

    public static Shape<VolumeFlow> FluidRate { get; } = new QuantityShape<VolumeFlow>(Units.VolumeFlow, Measure.FluidRate);

    public static Shape<VolumeFlow> Airflow { get; } = new QuantityShape<VolumeFlow>(Units.VolumeFlow, Measure.Airflow);

    public static Shape<Angle> Angle { get; } = new QuantityShape<Angle>(Units.Angle, Measure.Angle);

    public static Shape<MolarMass> MolarMass { get; } = new QuantityShape<MolarMass>(Units.MolarMass, Measure.MolarMass);

    public static Shape<MassConcentration> Concentration { get; } = new QuantityShape<MassConcentration>(Units.MassConcentration,
        Measure.MassConcentration);

    public static Shape<DynamicViscosity> Viscosity { get; } = new QuantityShape<DynamicViscosity>(Units.DynamicViscosity,
        Measure.DynamicViscosity);

    public static Shape<Speed> Speed { get; } = new QuantityShape<Speed>(Units.Speed, Measure.Speed);

    public static Shape<SpreadingRate> SpreadingRate { get; } = new QuantityShape<SpreadingRate>(Units.SpreadingRate,
        Measure.SpreadingRate);

    public static Shape<MassConcentration> CoatingContent { get; } = new QuantityShape<MassConcentration>(Units.MassConcentration,
        Measure.CoatingContent);

    public static Shape<Ratio> PartsPerMillion { get; } = new QuantityShape<Ratio>(Units.Ratio, Measure.PartsPerMillion);

    public static Shape<Mass> Weight { get; } = new QuantityShape<Mass>(Units.Mass, Measure.Weight);

    public static Shape<Volume> Capacity { get; } = new QuantityShape<Volume>(Units.Volume, Measure.Capacity);

    public static Shape<AreaDensity> AreaDensity { get; } = new QuantityShape<AreaDensity>(Units.AreaDensity, Measure.ArealMass);

    public static Shape<ForcePerLength> SurfaceTension { get; } = new QuantityShape<ForcePerLength>(Units.SurfaceTension,
        Measure.SurfaceTension);

    public static Shape<ReciprocalLength> Scattering { get; } = new QuantityShape<ReciprocalLength>(Units.Scattering, Measure.PerFilm);

    public static Shape<double> Fluidity { get; } = new QuantityShape<double>(Units.Fluidity, Measure.Fluidity);

    public static Shape<double> HydroxylNumber { get; } = new QuantityShape<double>(Units.HydroxylNumber, Measure.HydroxylNumber);

    public static Shape<TimeSpan> Duration { get; } = new QuantityShape<TimeSpan>(Units.Duration,
        (span, _) => UnitOf(span.Duration().Ticks));

    // As people say it: 7 d but 24 h, 1.5 h but 40 min.
    private static Unit<TimeSpan> UnitOf(long ticks) => Units.Duration[
        ticks > TimeSpan.TicksPerDay && ticks % TimeSpan.TicksPerDay == 0 ? "d"
        : ticks >= TimeSpan.TicksPerHour && ticks % (15 * TimeSpan.TicksPerMinute) == 0 ? "h"
        : ticks == 0 || ticks >= TimeSpan.TicksPerMinute ? "min"
        : "s"];
}

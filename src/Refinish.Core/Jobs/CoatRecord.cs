using System;
using System.Globalization;
using Refinish.Climate;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>What was found and done while one coat went on: when, who, air, surface, what was weighed, wet film.</summary>
public sealed record CoatRecord
{
    private readonly double surface;
    private readonly double baseMass;
    private readonly double hardenerMass;
    private readonly double reducerMass;
    private readonly double? wetFilm;

    /// <summary>Identifier of the run, as in the plan.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Coat
    {
        get;
        init => field = Guard.Named(value, nameof(Coat));
    }

    /// <summary>First stroke.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>Last stroke.</summary>
    public required DateTimeOffset End { get; init; }

    /// <summary>Who sprayed.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string By
    {
        get;
        init => field = Guard.Named(value, nameof(By));
    }

    /// <summary>Air at the surface before the coat, as read.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required MoistAir Air
    {
        get;
        init => field = Guard.NotNull(value, nameof(Air));
    }

    /// <summary>Temperature of the surface before the coat, as read; −20 to 80 °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature Surface
    {
        get => Temperature.FromKelvins(surface);
        init => surface = Guard.Within(value, Bounds.Between(253.15, 353.15, Measure.Temperature), nameof(Surface));
    }

    /// <summary>Base weighed for the coat, all cups together; more than 0 and at most 100 kg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Mass Base
    {
        get => Mass.FromKilograms(baseMass);
        init => baseMass = Guard.Within(value, Bounds.Positive(Measure.Mass, 100), nameof(Base));
    }

    /// <summary>Hardener weighed for the coat; 0 to 100 kg; none when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Mass Hardener
    {
        get => Mass.FromKilograms(hardenerMass);
        init => hardenerMass = Guard.Within(value, Bounds.NotNegative(Measure.Mass, 100), nameof(Hardener));
    }

    /// <summary>Reducer weighed for the coat; 0 to 100 kg; none when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Mass Reducer
    {
        get => Mass.FromKilograms(reducerMass);
        init => reducerMass = Guard.Within(value, Bounds.NotNegative(Measure.Mass, 100), nameof(Reducer));
    }

    /// <summary>Wet film found with the comb, more than 0 and at most 2 mm; <see langword="null"/> when not measured.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length? WetFilm
    {
        get => wetFilm is double metres ? Length.FromMeters(metres) : null;
        init => wetFilm = value is Length film ? Guard.Within(film, Bounds.Positive(Measure.Film, 0.002), nameof(WetFilm)) : null;
    }

    /// <summary>Hardener to 100 of base by weight, as weighed.</summary>
    public double HardenerPer100Base => 100 * hardenerMass / baseMass;

    /// <summary>How far the surface was above the dew point; negative below it.</summary>
    public TemperatureDelta SurfaceAboveDewPoint => TemperatureDelta.FromKelvins(surface - Air.DewPoint.Kelvins);

    /// <summary>How the ratio and the distance to the dew point follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression a = Expression.Quantity("m_A", baseMass, Measure.Mass);
        Expression b = Expression.Quantity("m_B", hardenerMass, Measure.Mass);
        Expression surfaceAt = Expression.Quantity("T_s", surface, Measure.AbsoluteTemperature);
        Expression dew = Expression.Quantity("T_d", Air.DewPoint.Kelvins, Measure.AbsoluteTemperature);
        return new Workings(
            Coat,
            [
                new("hardener to 100 of base by weight", "m_100", 100 * b / a, HardenerPer100Base, Measure.Number, Source.Derived("ratio of what was weighed")),
                new("surface above dew point", "ΔT", surfaceAt - dew, SurfaceAboveDewPoint.Kelvins, Measure.TemperatureDifference, Source.Derived("difference of two readings")),
            ],
            [Air.Workings()]);
    }

    /// <summary>Coat, time and who.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Coat + ", " + Start.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) + ", " + By;
}

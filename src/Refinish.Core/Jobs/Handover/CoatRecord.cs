using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Climate;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>What was found and done while one coat went on: when, who, air, surface, what was weighed, wet film.</summary>
public sealed record CoatRecord
{
    private readonly double surface;
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

    /// <summary>What was weighed of each can, all cups together, in the order of pouring; at least one.</summary>
    /// <exception cref="ArgumentException">The list is empty, an entry is missing, or one can stands twice.</exception>
    public required IReadOnlyList<PartMass> Weighed
    {
        get;
        init => field = Unique.Ids(Guard.List(value, nameof(Weighed), 1), one => one.Component, nameof(Weighed));
    }

    /// <summary>Wet film found with the comb, more than 0 and at most 2 mm; <see langword="null"/> when not measured.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length? WetFilm
    {
        get => wetFilm is double metres ? Length.FromMeters(metres) : null;
        init => wetFilm = value is Length film ? Guard.Within(film, Bounds.Positive(Measure.Film, 0.002), nameof(WetFilm)) : null;
    }

    /// <summary>Each can by weight to 100 of the first, as weighed, in the same order.</summary>
    public IReadOnlyList<double> Per100OfFirst => [.. Weighed.Select(one => 100 * one.Mass.Kilograms / Weighed[0].Mass.Kilograms)];

    /// <summary>How far the surface was above the dew point; negative below it.</summary>
    public TemperatureDelta SurfaceAboveDewPoint => TemperatureDelta.FromKelvins(surface - Air.DewPoint.Kelvins);

    /// <summary>How the ratio and the distance to the dew point follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression surfaceAt = Expression.Quantity("T_s", surface, Measure.AbsoluteTemperature);
        Expression dew = Expression.Quantity("T_d", Air.DewPoint.Kelvins, Measure.AbsoluteTemperature);
        return new Workings(
            Coat,
            [
                .. Weighed.Skip(1).Select((one, i) => new WorkingStep(
                    one.Component + " to 100 of " + Weighed[0].Component + " by weight", "m_100," + Figures.Fixed(i + 2, 0),
                    100 * Expression.Quantity("m", one.Mass.Kilograms, Measure.Mass) / Expression.Quantity("m_1",
                        Weighed[0].Mass.Kilograms, Measure.Mass),
                    Per100OfFirst[i + 1], Measure.Number, Source.Derived("ratio of what was weighed"))),
                new("surface above dew point", "ΔT", surfaceAt - dew, SurfaceAboveDewPoint.Kelvins, Measure.TemperatureDifference, Source.Derived("difference of two readings")),
            ],
            [Air.Workings()]);
    }

    /// <summary>Coat, time and who.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Coat + ", " + Start.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) + ", " + By;
}

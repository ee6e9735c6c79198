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
    private static readonly Source Weighing = Source.Derived("ratio of what was weighed");
    private static readonly Source Readings = Source.Derived("difference of two readings");

    private readonly double surface;
    private readonly double? wetFilm;

    /// <summary>Identifier of the run, as in the plan.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Coat { get; init => field = Guard.Named(value); }

    /// <summary>First stroke.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>Last stroke.</summary>
    public required DateTimeOffset End { get; init; }

    /// <summary>Who sprayed.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string By { get; init => field = Guard.Named(value); }

    /// <summary>Air at the surface before the coat, as read.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required MoistAir Air { get; init => field = Guard.NotNull(value); }

    /// <summary>Temperature of the surface before the coat, as read; −20 to 80 °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature Surface
    {
        get => Temperature.FromKelvins(surface);
        init => surface = Guard.Within(value, Bounds.Between(253.15, 353.15, Measure.Temperature));
    }

    /// <summary>What was weighed of each can, all cups together, in the order of pouring; at least one.</summary>
    /// <exception cref="ArgumentException">The list is empty, an entry is missing, or one can stands twice.</exception>
    public required IReadOnlyList<PartMass> Weighed
    {
        get;
        init => field = Unique.Ids(Guard.List(value, 1), one => one.Component, nameof(Weighed));
    }

    /// <summary>Wet film found with the comb, more than 0 and at most 2 mm; <see langword="null"/> when not measured.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length? WetFilm
    {
        get => wetFilm is double metres ? Length.FromMeters(metres) : null;
        init => wetFilm = value is Length film ? Guard.Within(film, Bounds.Positive(Measure.Film, 0.002), nameof(WetFilm)) : null;
    }

    /// <summary>Each can by weight to 100 of the first, as weighed, in the same order.</summary>
    public IReadOnlyList<double> Per100OfFirst => [.. Weighed.Select((one, i) => To100(i).Value)];

    /// <summary>How far the surface was above the dew point; negative below it.</summary>
    public TemperatureDelta SurfaceAboveDewPoint => TemperatureDelta.FromKelvins(AboveDewPoint().Value);

    /// <summary>How the ratio and the distance to the dew point follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Trace t = new();
        t.Part(Air.Workings());
        for (int i = 1; i < Weighed.Count; i++)
        {
            t.Step(Weighed[i].Component + " to 100 of " + Weighed[0].Component + " by weight", "m_100," + Figures.Fixed(i + 1, 0),
                Measure.Number, Weighing, To100(i, t));
        }

        AboveDewPoint(t);
        return t.Workings(Coat);
    }

    /// <summary>Coat, time and who.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Coat + ", " + Start.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture) + ", " + By;

    private Num To100(int i, Trace? t = null) =>
        100 * t.Given("m", Weighed[i].Mass.Kilograms, Measure.Mass) / t.Given("m_1", Weighed[0].Mass.Kilograms, Measure.Mass);

    private Num AboveDewPoint(Trace? t = null) => t.Step("surface above dew point", "ΔT", Measure.TemperatureDifference, Readings,
        t.Given("T_s", surface, Measure.AbsoluteTemperature) - t.Given("T_d", Air.DewPoint.Kelvins, Measure.AbsoluteTemperature));
}

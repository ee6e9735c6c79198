using System;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// The times of a data sheet at its reference temperature, and over which temperatures they may be shifted.
/// All times count from the end of application, induction and pot life from mixing.
/// </summary>
public sealed record CureTimes
{
    private static readonly Bounds Thermometer = Bounds.Between(253.15, 333.15, Measure.Temperature);
    private static readonly Bounds Times = Bounds.NotNegative(Measure.Hours, 60 * 24 * 3600);

    private readonly double reference;
    private readonly double minimum;
    private readonly double maximum;
    private readonly double ratePerTenKelvin = 2;

    /// <summary>The temperature at which the times hold, −20 to 60 °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature ReferenceTemperature
    {
        get => Temperature.FromKelvins(reference);
        init => reference = Guard.Within(value, Thermometer);
    }

    /// <summary>Below this temperature the product is not to be used and no time is given, −20 to 60 °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature MinimumTemperature
    {
        get => Temperature.FromKelvins(minimum);
        init => minimum = Guard.Within(value, Thermometer);
    }

    /// <summary>Above this temperature the product is not to be used and no time is given, −20 to 60 °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Temperature MaximumTemperature
    {
        get => Temperature.FromKelvins(maximum);
        init => maximum = Guard.Within(value, Thermometer);
    }

    /// <summary>By which factor reactions quicken with ten kelvins more: 2 unless the data sheet tells otherwise; 1 to 4.</summary>
    /// <remarks>
    /// A doubling for ten kelvins is the trade's rule of thumb; real systems range from about 1.5 to 2.5 (seen second-hand, no
    /// standard).
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside 1 to 4.</exception>
    public double RatePerTenKelvin
    {
        get => ratePerTenKelvin;
        init => ratePerTenKelvin = Guard.Within(value, Bounds.Between(1, 4, Measure.Number));
    }

    /// <summary>How long the mix has to stand before use; part of the pot life.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or above 60 days.</exception>
    public TimeSpan Induction { get; init => field = Guard.Time(value, Times); }

    /// <summary>How long the mix can be applied; <see langword="null"/> for a one-part product.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or above 60 days.</exception>
    public required TimeSpan? PotLife { get; init => field = Guard.Time(value, Times); }

    /// <summary>Dry enough to touch lightly.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or above 60 days.</exception>
    public required TimeSpan TouchDry { get; init => field = Guard.Time(value, Times); }

    /// <summary>The next coat may go on from here.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or above 60 days.</exception>
    public required TimeSpan RecoatOpens { get; init => field = Guard.Time(value, Times); }

    /// <summary>The next coat has to be on by here, else abrade; <see langword="null"/> when the window stays open.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or above 60 days.</exception>
    public required TimeSpan? RecoatCloses { get; init => field = Guard.Time(value, Times); }

    /// <summary>Water may run on it from here.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or above 60 days.</exception>
    public required TimeSpan WaterService { get; init => field = Guard.Time(value, Times); }

    /// <summary>Fully cured.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or above 60 days.</exception>
    public required TimeSpan FullCure { get; init => field = Guard.Time(value, Times); }

    /// <summary>Where the times come from.</summary>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>The reference temperature and the two times that are asked for most.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        "at " + Measure.Temperature.Format(reference) + ": recoat from " + CarefulTime.AtLeast(RecoatOpens)
        + ", water from " + CarefulTime.AtLeast(WaterService);

    /// <summary>Times of one data sheet have to follow each other; called when a product takes them.</summary>
    internal void CheckOrder()
    {
        Guard.Rule(minimum <= reference && reference <= maximum, nameof(ReferenceTemperature), reference, Measure.Temperature, "between MinimumTemperature and MaximumTemperature");
        Guard.Rule(PotLife is null || Induction < PotLife, nameof(Induction), Induction.TotalSeconds, Measure.Hours, "shorter than PotLife");
        Guard.Rule(RecoatCloses is null || RecoatOpens < RecoatCloses, nameof(RecoatOpens), RecoatOpens.TotalSeconds, Measure.Hours, "before RecoatCloses");
        Guard.Rule(TouchDry <= WaterService, nameof(TouchDry), TouchDry.TotalSeconds, Measure.Hours, "not after WaterService");
        Guard.Rule(WaterService <= FullCure, nameof(WaterService), WaterService.TotalSeconds, Measure.Hours, "not after FullCure");
    }

    /// <summary>Each time with its name and its symbol.</summary>
    internal (string Name, string Symbol, TimeSpan? Time)[] Named() =>
    [
        ("induction", "t_induction", Induction),
        ("pot life", "t_pot", PotLife),
        ("touch dry", "t_touch", TouchDry),
        ("recoat window opens", "t_open", RecoatOpens),
        ("recoat window closes", "t_close", RecoatCloses),
        ("water may run", "t_water", WaterService),
        ("fully cured", "t_cure", FullCure),
    ];
}

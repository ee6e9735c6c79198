using System;
using UnitsNet;

namespace Refinish.Substrates;

/// <summary>A two-part filler as its data sheet describes it.</summary>
/// <remarks><see cref="GenericPolyester"/> and <see cref="GenericEpoxy"/> are stand-ins to be replaced by a real data sheet.</remarks>
public sealed record FillerProduct
{
    private readonly double hardener;
    private readonly double density;
    private readonly double shrinkage;
    private readonly double lift;

    /// <summary>
    /// Identity by which it is found and joined; 1 to 100 characters, no '/', no control characters, no white space at either end.
    /// </summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    /// <exception cref="ArgumentException">Not an identity.</exception>
    public required string Id { get; init => field = Guard.Id(value); }

    /// <summary>Generic name.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>What it cures by; unknown when left out, and then every caution stands.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public FillerChemistry Chemistry { get; init => field = Guard.Defined(value); }

    /// <summary>Mass of hardener per mass of resin; more than 0 and at most 200 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio HardenerByMass
    {
        get => Ratio.FromDecimalFractions(hardener);
        init => hardener = Guard.Within(value, Bounds.Positive(Measure.Percent, 2));
    }

    /// <summary>Density of the mixed filler, 0.3 to 5 g/mL.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Density MixedDensity
    {
        get => Density.FromKilogramsPerCubicMeter(density);
        init => density = Guard.Within(value, Bounds.Between(300, 5000, Measure.Density));
    }

    /// <summary>
    /// Loss of volume on curing, 0 to less than 50 %. A linear shrinkage s is a volume shrinkage of 1 − (1 − s)³; see
    /// <see cref="VolumeShrinkage"/>.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio Shrinkage
    {
        get => Ratio.FromDecimalFractions(shrinkage);
        init => shrinkage = Guard.Within(value, Bounds.Below(0, 0.5, Measure.Percent));
    }

    /// <summary>Most that may be laid in one go, more than 0 and at most 100 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length MaximumLift
    {
        get => Length.FromMeters(lift);
        init => lift = Guard.Within(value, Bounds.Positive(Measure.Length, 0.1));
    }

    /// <summary>How long the mix can be worked at 25 °C, more than 0 and at most 24 h.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required TimeSpan PotLife
    {
        get;
        init
        {
            Guard.Within(value, Bounds.Positive(Measure.Minutes, 24 * 3600));
            field = value;
        }
    }

    /// <summary>How long a lift has to harden at 25 °C before it can be sanded or covered by the next; 0 to 7 days.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required TimeSpan SandableAfter
    {
        get;
        init
        {
            Guard.Within(value, Bounds.NotNegative(Measure.Minutes, 7 * 24 * 3600));
            field = value;
        }
    }

    /// <summary>Where the figures come from.</summary>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>An unsaturated polyester putty with a peroxide hardener.</summary>
    public static FillerProduct GenericPolyester { get; } = new()
    {
        Id = "polyester-filler",
        Name = "polyester filler",
        Chemistry = FillerChemistry.Polyester,
        HardenerByMass = Ratio.FromPercent(2),
        MixedDensity = Density.FromGramsPerMilliliter(1.8),
        Shrinkage = Ratio.FromPercent(7),
        MaximumLift = Length.FromMillimeters(3),
        PotLife = TimeSpan.FromTicks(5 * TimeSpan.TicksPerMinute),
        SandableAfter = TimeSpan.FromTicks(25 * TimeSpan.TicksPerMinute),
        Source = Source.Invented("stand-in within second-hand ranges: polyester shrinks 5 to 13 % by volume, hardener 1 to 3 % by mass; density, lift, pot life and hardening time from memory"),
    };

    /// <summary>An epoxy putty with an amine hardener.</summary>
    public static FillerProduct GenericEpoxy { get; } = new()
    {
        Id = "epoxy-filler",
        Name = "epoxy filler",
        Chemistry = FillerChemistry.Epoxy,
        HardenerByMass = Ratio.FromPercent(50),
        MixedDensity = Density.FromGramsPerMilliliter(1.5),
        Shrinkage = Ratio.FromPercent(2),
        MaximumLift = Length.FromMillimeters(6),
        PotLife = TimeSpan.FromTicks(30 * TimeSpan.TicksPerMinute),
        SandableAfter = TimeSpan.FromTicks(90 * TimeSpan.TicksPerMinute),
        Source = Source.Invented("stand-in within second-hand ranges: epoxy shrinks 2 to 7 % by volume; ratio, density, lift, pot life and hardening time from memory"),
    };

    /// <summary>The volume shrinkage that goes with a linear shrinkage: 1 − (1 − s)³.</summary>
    /// <param name="linear">Linear shrinkage, 0 to less than 20 %.</param>
    /// <returns>The loss of volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static Ratio VolumeShrinkage(Ratio linear)
    {
        double rest = 1 - Guard.Within(linear, Bounds.Below(0, 0.2, Measure.Percent));
        return Ratio.FromDecimalFractions(1 - (rest * rest * rest));
    }

    /// <summary>The name.</summary>
    /// <returns><see cref="Name"/>.</returns>
    public override string ToString() => Name;
}

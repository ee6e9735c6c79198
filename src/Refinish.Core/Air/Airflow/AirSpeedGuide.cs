using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Air;

/// <summary>A speed of air that a code or practice gives for an opening or a duct: at least so much, at most so much, or both.</summary>
public sealed record AirSpeedGuide
{
    private static readonly Source IntakePractice = Source.Published("a handbook of duct design for building services", "intake louvres: at most 500 ft/min through the free area; second-hand");

    private readonly double? least;
    private readonly double? most;

    /// <summary>Makes a guide.</summary>
    /// <param name="name">What it is for.</param>
    /// <param name="least">The lowest speed, more than 0 and at most 50 m/s; <see langword="null"/> when there is none.</param>
    /// <param name="most">The highest, in the same range; <see langword="null"/> when there is none.</param>
    /// <param name="standing">How well it has been looked up.</param>
    /// <param name="source">Where it stands.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A speed is outside its range, or <paramref name="standing"/> is not a named value.
    /// </exception>
    public AirSpeedGuide(string name, Speed? least, Speed? most, Standing standing, Source source)
    {
        Bounds speeds = Bounds.Positive(Measure.AirSpeed, 50);
        Name = Guard.Named(name);
        this.least = least is Speed low ? Guard.Within(low, speeds, nameof(least)) : null;
        this.most = most is Speed high ? Guard.Within(high, speeds, nameof(most)) : null;
        Standing = Guard.Defined(standing);
        Source = Guard.NotNull(source);
    }

    /// <summary>Air that comes in through a window or door opened for it: at most 500 ft/min, so that the fan is not starved.</summary>
    public static AirSpeedGuide MakeUpOpening { get; } = new("air into a make-up opening", null, Speed.FromFeetPerMinute(500), Standing.SecondHand, IntakePractice);

    /// <summary>Vapour in an exhaust duct: 1000 to 2000 ft/min (5 to 10 m/s) by common design practice.</summary>
    public static AirSpeedGuide VapourDuct { get; } = new(
        "vapour in an exhaust duct", Speed.FromFeetPerMinute(1000), Speed.FromFeetPerMinute(2000), Standing.SecondHand,
        Source.Published("tables of minimum duct design velocities for industrial ventilation", "vapours, gases, smoke: any, the economic optimum usually 1000 to 2000 ft/min; British guidance on local exhaust has 5 to 10 m/s; both second-hand"));

    /// <summary>
    /// Air past the work in an occupied spray booth or room: at least 100 ft/min. A bathroom hardly ever has it. It is a fire figure,
    /// not one for lungs.
    /// </summary>
    public static AirSpeedGuide OccupiedSprayRoom { get; } = new(
        "air past the work in an occupied spray room", Speed.FromFeetPerMinute(100), null, Standing.Seen,
        Source.Published("New York City Mechanical Code and International Mechanical Code", "502.7.3.3.2: at least 100 ft/min (0.51 m/s); that such a speed is about fire and not health: OSHA Instruction STD 01-05-010 (1973)"));

    /// <summary>All of them.</summary>
    public static IReadOnlyList<AirSpeedGuide> All { get; } = new ValueList<AirSpeedGuide>([MakeUpOpening, VapourDuct, OccupiedSprayRoom]);

    /// <summary>What it is for.</summary>
    public string Name { get; }

    /// <summary>The lowest speed; <see langword="null"/> when there is none.</summary>
    public Speed? Least => least is double speed ? Speed.FromMetersPerSecond(speed) : null;

    /// <summary>The highest speed; <see langword="null"/> when there is none.</summary>
    public Speed? Most => most is double speed ? Speed.FromMetersPerSecond(speed) : null;

    /// <summary>How well it has been looked up.</summary>
    public Standing Standing { get; }

    /// <summary>Where it stands.</summary>
    public Source Source { get; }

    /// <summary>A speed held against the guide: one comparison for each end that it has.</summary>
    /// <param name="speed">The speed, 0 or more.</param>
    /// <returns>One or two comparisons; one that cannot be judged when the guide has neither end.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="speed"/> is negative.</exception>
    public IReadOnlyList<LimitComparison> Compare(Speed speed) =>
        Compare(Guard.Within(speed, Bounds.NotNegative(Measure.AirSpeed)), null, null);

    /// <summary>The name and the speeds.</summary>
    /// <returns>Text such as <c>vapour in an exhaust duct: 5.08 m/s to 10.16 m/s</c>.</returns>
    public override string ToString() => Name + ": " + (least, most) switch
    {
        (double low, double high) => Measure.AirSpeed.Format(low) + " to " + Measure.AirSpeed.Format(high),
        (double low, null) => "at least " + Measure.AirSpeed.Format(low),
        (null, double high) => "at most " + Measure.AirSpeed.Format(high),
        _ => "no figure",
    };

    internal IReadOnlyList<LimitComparison> Compare(double speed, string? tooSlow, string? tooFast)
    {
        List<LimitComparison> comparisons = [];
        if (least is double low)
        {
            comparisons.Add(new LimitComparison(Name + ", least", speed, low, LimitSense.AtLeast, Measure.AirSpeed, Source, speed < low ? tooSlow : null));
        }

        if (most is double high)
        {
            comparisons.Add(new LimitComparison(Name + ", most", speed, high, LimitSense.AtMost, Measure.AirSpeed, Source, speed > high ? tooFast : null));
        }

        if (comparisons.Count == 0)
        {
            comparisons.Add(new LimitComparison(Name, speed, null, LimitSense.AtMost, Measure.AirSpeed, Source));
        }

        return new ValueList<LimitComparison>(comparisons);
    }
}

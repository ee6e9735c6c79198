using System;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// A cup that drains through a hole: seconds to kinematic viscosity by its published equation, within its published range of seconds.
/// </summary>
/// <remarks>
/// ν = K·t − K·c (Zahn, Shell, Ford) or ν = K·t − B/t (ISO 2431, DIN 53211), ν in mm²/s and t in seconds, for a Newtonian liquid at the
/// temperature of the equation. A paint that thins under shear reads differently in every cup. A worn cup reads low: check it with a
/// standard oil.
/// </remarks>
/// <example><code>
/// KinematicViscosity viscosity = FlowCups.Ford4.ViscosityAt(TimeSpan.FromSeconds(20));   // 59.7 cSt
/// TimeSpan same = FlowCups.Zahn2.TimeFor(viscosity);                                     // 31.1 s
/// </code></example>
public sealed record FlowCup
{
    private readonly double slope;
    private readonly double offset;
    private readonly double hyperbola;

    /// <summary>Makes a cup from its equation ν = slope·t − offset − hyperbola/t.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="slope">mm²/s per second, more than 0 and at most 1000.</param>
    /// <param name="offset">mm²/s taken away, 0 to 1000.</param>
    /// <param name="hyperbola">mm²/s times seconds, divided by the time and taken away; 0 to 100 000.</param>
    /// <param name="shortest">
    /// Shortest time for which the equation holds, 1 s to 10 min; the viscosity there has to be more than zero.
    /// </param>
    /// <param name="longest">Longest time, longer than the shortest and at most 10 min.</param>
    /// <param name="source">Where the equation comes from.</param>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FlowCup(string name, double slope, double offset, double hyperbola, TimeSpan shortest, TimeSpan longest, Source source)
    {
        Name = Guard.Named(name);
        this.slope = Guard.Within(slope, Bounds.Positive(Measure.Number, 1000));
        this.offset = Guard.Within(offset, Bounds.NotNegative(Measure.Number, 1000));
        this.hyperbola = Guard.Within(hyperbola, Bounds.NotNegative(Measure.Number, 1e5));
        Guard.Within(shortest, Bounds.Between(1, 600, Measure.Seconds));
        Guard.Within(longest, Bounds.Above(shortest.TotalSeconds, 600, Measure.Seconds));
        Shortest = shortest;
        Longest = longest;
        Source = Guard.NotNull(source);
        Guard.Rule(Least.SquareMetersPerSecond > 0, nameof(shortest), shortest.TotalSeconds, Measure.Seconds,
            "times at which the equation gives more than zero");
    }

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>Shortest time for which the equation holds.</summary>
    public TimeSpan Shortest { get; }

    /// <summary>Longest time for which the equation holds.</summary>
    public TimeSpan Longest { get; }

    /// <summary>Least viscosity the cup measures.</summary>
    public KinematicViscosity Least => Si(Viscosity(Shortest.TotalSeconds).Value);

    /// <summary>Most viscosity the cup measures.</summary>
    public KinematicViscosity Most => Si(Viscosity(Longest.TotalSeconds).Value);

    /// <summary>Where the equation comes from.</summary>
    public Source Source { get; }

    private Bounds Times => Bounds.Between(Shortest.TotalSeconds, Longest.TotalSeconds, Measure.Seconds);

    /// <summary>Kinematic viscosity from the time to drain.</summary>
    /// <param name="time">Seconds to the first break of the stream, within the cup's range.</param>
    /// <returns>The viscosity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the cup's range: take another cup.</exception>
    public KinematicViscosity ViscosityAt(TimeSpan time) => Si(Viscosity(Guard.Within(time.TotalSeconds, Times, nameof(time))).Value);

    /// <summary>Time to drain from the kinematic viscosity.</summary>
    /// <param name="viscosity">From <see cref="Least"/> to <see cref="Most"/>.</param>
    /// <returns>The time, to the tick.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the cup's range: take another cup.</exception>
    public TimeSpan TimeFor(KinematicViscosity viscosity)
    {
        double nu = Guard.Within(
            Rounded(viscosity), Bounds.Between(Rounded(Least), Rounded(Most), Measure.KinematicViscosity),
            nameof(viscosity));
        return Durations.FromSeconds(Time(nu * 1e6));
    }

    /// <summary>Whether a viscosity is within this cup's range.</summary>
    /// <param name="viscosity">Any viscosity.</param>
    /// <returns><see langword="true"/> from <see cref="Least"/> to <see cref="Most"/>.</returns>
    public bool Measures(KinematicViscosity viscosity) => viscosity >= Least && viscosity <= Most;

    /// <summary>How the viscosity follows from the time.</summary>
    /// <param name="time">Within the cup's range.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the cup's range.</exception>
    public Workings Workings(TimeSpan time)
    {
        double seconds = Guard.Within(time.TotalSeconds, Times, nameof(time));
        return Trace.Of(Name, t => Viscosity(seconds, t));
    }

    /// <summary>The name and the range.</summary>
    /// <returns>Text such as <c>Ford 4, 20 to 100 s</c>.</returns>
    public override string ToString() => Name + ", " + Figures.Significant(Shortest.TotalSeconds, 4) + " to " + Measure.Seconds.Format(Longest.TotalSeconds);

    private static KinematicViscosity Si(double squareMetersPerSecond) => KinematicViscosity.FromSquareMetersPerSecond(squareMetersPerSecond);

    private static double Rounded(KinematicViscosity viscosity) => Math.Round(viscosity.SquareMetersPerSecond * 1e6, 9) / 1e6;

    private Num Viscosity(double seconds, Trace? trace = null)
    {
        Num t = trace.Given("t", seconds, Measure.Seconds);
        Num sum = slope * t;
        sum = offset > 0 ? sum - offset : sum;
        sum = hyperbola > 0 ? sum - (hyperbola / t) : sum;

        // The constants carry mm²/s, so the sum is turned into m²/s at the end.
        return trace.Step(
            "kinematic viscosity", "ν", Measure.KinematicViscosity, Source, sum * trace.Given("mm²/s", 1e-6, Measure.KinematicViscosity));
    }

    private double Time(double nu)
    {
        double shifted = nu + offset;
        return (shifted + Math.Sqrt((shifted * shifted) + (4 * slope * hyperbola))) / (2 * slope);
    }
}

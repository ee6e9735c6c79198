using System;
using System.Threading;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>How far a coat has reacted over a history of temperatures, by integrating its rate of cure.</summary>
/// <remarks>
/// Unlike <see cref="EquivalentAge"/> it knows that a law's two reactions have their own activation energies and that a cold film turns
/// glassy and stops. Integration: Dormand–Prince 5(4) with an error of 1e-11 a step; every call begins anew at the application.
/// </remarks>
/// <example><code>
/// CureReaction epoxy = new()
/// {
///     Factor = Frequency.FromHertz(3000),
///     ActivationEnergy = MolarEnergy.FromKilojoulesPerMole(48),
///     AutocatalyticFactor = Frequency.FromHertz(1.2e5),
///     AutocatalyticActivationEnergy = MolarEnergy.FromKilojoulesPerMole(52),
///     AutocatalyticOrder = 1,
///     Order = 2,
///     Source = Source.Invented("an epoxy with an amine for this example"),
/// };
/// DateTimeOffset applied = new(2026, 3, 3, 17, 0, 0, TimeSpan.Zero);
/// ConversionCurve curve = new(epoxy, TemperatureHistory.Constant(applied, Temperature.FromDegreesCelsius(20)), applied);
/// Ratio overnight = curve.ConversionAt(applied.AddHours(15));
/// DateTimeOffset? gelled = curve.InstantOf(new GelPoint(4, 2).FloryStockmayer!.Value);
/// </code></example>
public sealed record ConversionCurve
{
    private const double Longest = 3650.0 * 24 * 3600;

    /// <summary>Takes the reaction, the temperatures and when it begins, with nothing converted by then.</summary>
    /// <param name="reaction">The law.</param>
    /// <param name="history">The temperatures of the coat.</param>
    /// <param name="applied">When the reaction begins; within the history.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or the law has no reaction.</exception>
    public ConversionCurve(CureReaction reaction, TemperatureHistory history, DateTimeOffset applied)
        : this(reaction, history, applied, Ratio.Zero)
    {
    }

    /// <summary>Takes the reaction, the temperatures and when it begins.</summary>
    /// <param name="reaction">The law.</param>
    /// <param name="history">The temperatures of the coat.</param>
    /// <param name="applied">When the reaction begins; within the history.</param>
    /// <param name="firstConversion">Conversion by then, 0 to less than 100 %. A law without its first reaction needs some.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or the law has no reaction.</exception>
    public ConversionCurve(CureReaction reaction, TemperatureHistory history, DateTimeOffset applied, Ratio firstConversion)
    {
        Reaction = Guard.NotNull(reaction);
        Reaction.CheckReacts();
        History = Guard.NotNull(history);
        History.TicksOf(applied, nameof(applied));
        Applied = applied;
        FirstConversion = Guard.Checked(firstConversion, Bounds.Below(0, 1, Measure.Percent));
    }

    /// <summary>The law.</summary>
    public CureReaction Reaction { get; }

    /// <summary>The temperatures.</summary>
    public TemperatureHistory History { get; }

    /// <summary>When the reaction begins.</summary>
    public DateTimeOffset Applied { get; }

    /// <summary>Conversion at the beginning.</summary>
    public Ratio FirstConversion { get; }

    /// <summary>The conversion at an instant.</summary>
    /// <param name="instant">From the application to the end of the history, at most ten years of 365 days later.</param>
    /// <returns>0 to 100 %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The instant is outside that time.</exception>
    public Ratio ConversionAt(DateTimeOffset instant) => ConversionAt(instant, CancellationToken.None);

    /// <summary>The conversion at an instant.</summary>
    /// <param name="instant">From the application to the end of the history, at most ten years of 365 days later.</param>
    /// <param name="cancellation">Stops a long integration.</param>
    /// <returns>0 to 100 %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The instant is outside that time.</exception>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public Ratio ConversionAt(DateTimeOffset instant, CancellationToken cancellation) =>
        Ratio.FromDecimalFractions(Alpha(instant, cancellation));

    /// <summary>The first instant at which a conversion is reached.</summary>
    /// <param name="conversion">0 to less than 100 %.</param>
    /// <returns>
    /// The instant, with the offset of <see cref="Applied"/>; <see langword="null"/> when the history ends before, or it takes more
    /// than ten years because the film has turned glassy.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public DateTimeOffset? InstantOf(Ratio conversion) => InstantOf(conversion, CancellationToken.None);

    /// <summary>The first instant at which a conversion is reached.</summary>
    /// <param name="conversion">0 to less than 100 %.</param>
    /// <param name="cancellation">Stops a long integration.</param>
    /// <returns>
    /// The instant, with the offset of <see cref="Applied"/>; <see langword="null"/> when the history ends before, or it takes more
    /// than ten years because the film has turned glassy.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public DateTimeOffset? InstantOf(Ratio conversion, CancellationToken cancellation)
    {
        double target = Guard.Within(conversion, Bounds.Below(0, 1, Measure.Percent));
        return Reach(_ => target, cancellation);
    }

    /// <summary>
    /// The first instant at which the film's glass transition has come up to its own temperature: it turns glassy and cure slows to a
    /// crawl.
    /// </summary>
    /// <param name="glass">The glass transition against conversion.</param>
    /// <returns>The instant; <see langword="null"/> when the history ends before, or it takes more than ten years.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="glass"/> is missing.</exception>
    public DateTimeOffset? InstantOfVitrification(GlassTransition glass) => InstantOfVitrification(glass, CancellationToken.None);

    /// <summary>
    /// The first instant at which the film's glass transition has come up to its own temperature: it turns glassy and cure slows to a
    /// crawl.
    /// </summary>
    /// <param name="glass">The glass transition against conversion.</param>
    /// <param name="cancellation">Stops a long integration.</param>
    /// <returns>The instant; <see langword="null"/> when the history ends before, or it takes more than ten years.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="glass"/> is missing.</exception>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public DateTimeOffset? InstantOfVitrification(GlassTransition glass, CancellationToken cancellation)
    {
        Guard.NotNull(glass);
        return Reach(glass.ConversionKelvins, cancellation);
    }

    /// <summary>The conversion at an instant, and how the rate of cure there follows from it.</summary>
    /// <param name="instant">As for <see cref="ConversionAt(DateTimeOffset)"/>.</param>
    /// <returns>The derivation; the conversion itself comes from the integration.</returns>
    /// <exception cref="ArgumentOutOfRangeException">As for <see cref="ConversionAt(DateTimeOffset)"/>.</exception>
    public Workings Workings(DateTimeOffset instant) => Reaction.Workings(History.At(instant), ConversionAt(instant));

    /// <summary>The law, and when it begins in UTC.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Reaction + ", from " + Applied.UtcDateTime.ToString("yyyy-MM-dd HH:mm'Z'", System.Globalization.CultureInfo.InvariantCulture);

    private double Alpha(DateTimeOffset instant, CancellationToken cancellation)
    {
        long applied = History.TicksOf(Applied, nameof(Applied));
        long end = History.TicksOf(instant, nameof(instant));
        double seconds = (end - applied) / (double)TimeSpan.TicksPerSecond;
        Guard.Rule(seconds >= 0 && seconds <= Longest, nameof(instant), seconds, Measure.Hours, "0 h to ten years after the application");
        CureStepper stepper = new(Reaction, FirstConversion.DecimalFractions, 0);
        for (int i = History.SegmentAt(applied); stepper.Time < seconds && i < History.List.Count; i++)
        {
            stepper.SetTemperature(History.List[i].Kelvins);
            stepper.AdvanceTo(Math.Min(seconds, SecondsTo(i, applied)), cancellation);
        }

        return Math.Min(1, stepper.Alpha);
    }

    private DateTimeOffset? Reach(Func<double, double> target, CancellationToken cancellation)
    {
        long applied = History.TicksOf(Applied, nameof(Applied));
        CureStepper stepper = new(Reaction, FirstConversion.DecimalFractions, 0);
        for (int i = History.SegmentAt(applied); i < History.List.Count; i++)
        {
            double kelvins = History.List[i].Kelvins;
            stepper.SetTemperature(kelvins);
            if (stepper.AdvanceToConversion(target(kelvins), Math.Min(Longest, SecondsTo(i, applied)), cancellation))
            {
                double ticks = Math.Ceiling(stepper.Time * TimeSpan.TicksPerSecond);
                return ticks <= DateTime.MaxValue.Ticks - Applied.UtcTicks
                    ? Applied.ToUniversalTime().AddTicks((long)ticks).ToOffset(Applied.Offset)
                    : null;
            }

            if (stepper.Time >= Longest)
            {
                break;
            }
        }

        return null;
    }

    private double SecondsTo(int segment, long applied) =>
        History.EndOf(segment) == long.MaxValue ? double.PositiveInfinity : (History.EndOf(segment) - applied) / (double)TimeSpan.TicksPerSecond;
}

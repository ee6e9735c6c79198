using System;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// One tape reading with its ±: how it is found among the measurements of a fixture, and how the measurements look when it changes.
/// </summary>
/// <typeparam name="TMeasurements">The fixture's record of measurements.</typeparam>
/// <remarks>
/// When one length follows from others, as the floor's length follows from the mouth's and the two runs, let the change carry it along;
/// <see cref="TapeReadings"/> does so for the fixtures of this library.
/// </remarks>
/// <example><code>
/// TapeReading&lt;OvalTubMeasurements&gt; depth = new(
///     "Depth", Length.FromMillimeters(3), ReadingSpread.Rectangular, static tape =&gt; tape.Depth, static (tape, length) =&gt; tape with { Depth = length });
/// </code></example>
public sealed record TapeReading<TMeasurements>
    where TMeasurements : class
{
    private readonly double plusMinus;

    /// <summary>Makes a reading.</summary>
    /// <param name="name">The measurement's name.</param>
    /// <param name="plusMinus">The ±, 0 to 0.5 m.</param>
    /// <param name="spread">What the ± means.</param>
    /// <param name="value">Finds the reading.</param>
    /// <param name="with">The measurements with another reading in its place.</param>
    /// <exception cref="ArgumentException">A text or a function is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="plusMinus"/> or <paramref name="spread"/> is outside its range.
    /// </exception>
    public TapeReading(string name, Length plusMinus, ReadingSpread spread, Func<TMeasurements, Length> value, Func<TMeasurements, Length, TMeasurements> with)
    {
        Name = Guard.Named(name);
        this.plusMinus = Guard.Within(plusMinus, Bounds.NotNegative(Measure.Length, 0.5));
        Spread = Guard.Defined(spread);
        Value = Guard.NotNull(value, nameof(value), nameof(value));
        With = Guard.NotNull(with);
    }

    /// <summary>The measurement's name.</summary>
    public string Name { get; }

    /// <summary>The ±.</summary>
    public Length PlusMinus => Length.FromMeters(plusMinus);

    /// <summary>What the ± means.</summary>
    public ReadingSpread Spread { get; }

    /// <summary>Finds the reading.</summary>
    public Func<TMeasurements, Length> Value { get; }

    /// <summary>The measurements with another reading in its place.</summary>
    public Func<TMeasurements, Length, TMeasurements> With { get; }

    /// <summary>The standard uncertainty of the reading.</summary>
    public Length StandardUncertainty => Length.FromMeters(ReadingContribution.Standard(null, plusMinus, Spread).Value);

    /// <summary>The name and the ± in one line, in metric units.</summary>
    /// <returns>Text such as <c>Depth ± 3 mm, Rectangular</c>.</returns>
    public override string ToString() => $"{Name} ± {Measure.Length.Format(plusMinus)}, {Spread}";
}

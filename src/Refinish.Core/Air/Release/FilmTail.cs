using System;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// The slow second rate of a drying film: part of what lands in the film leaves it at its own, longer time constant. With it the film's
/// release is a sum of two exponentials, fast while the surface is open and slow once diffusion through the skin governs.
/// </summary>
/// <remarks>
/// The double-exponential form is that of empirical source models for paints indoors. Fractions and time constants differ from coating
/// to coating by powers of ten: take them from a chamber test of the product; no default is offered.
/// </remarks>
/// <example><code>
/// FilmTail tail = new(Ratio.FromPercent(20), TimeSpan.FromHours(6));
/// </code></example>
public sealed record FilmTail
{
    private readonly double fraction;
    private readonly double timeConstant;

    /// <summary>Makes a tail.</summary>
    /// <param name="fraction">Part of what lands in the film, more than 0 and less than 100 %.</param>
    /// <param name="timeConstant">After it, 37 % of that part is left; 1 s to 30 days.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilmTail(Ratio fraction, TimeSpan timeConstant)
    {
        this.fraction = Guard.Within(fraction, Bounds.Below(0, 1, Measure.Percent));
        Guard.Rule(this.fraction > 0, nameof(fraction), this.fraction, Measure.Percent, "more than 0 % and less than 100 %");
        this.timeConstant = Guard.Within(timeConstant, Bounds.Between(1, 30 * 86400, Measure.Minutes));
    }

    /// <summary>Part of what lands in the film.</summary>
    public Ratio Fraction => Ratio.FromDecimalFractions(fraction);

    /// <summary>Time constant of that part.</summary>
    public TimeSpan TimeConstant => Durations.FromSeconds(timeConstant);

    /// <summary>Fraction and time constant.</summary>
    /// <returns>Text such as <c>20 % of the film at 360 min</c>.</returns>
    public override string ToString() => Measure.Percent.Format(fraction) + " of the film at " + Measure.Minutes.Format(timeConstant);
}

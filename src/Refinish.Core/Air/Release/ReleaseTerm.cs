using System;
using Refinish.Coatings;

namespace Refinish.Air;

/// <summary>
/// Part of an emission that is put on at a steady rate, flashes in part, and leaves one film at one first-order rate: the piece for which
/// the room has a closed form. A film with a fast and a slow rate is two of them, since the room answers to their sum.
/// </summary>
internal sealed class ReleaseTerm(Emission emission, double flash, TimeSpan timeConstant, FilmTail? tail = null, bool isSlow = false)
{
    public Emission Emission => emission;

    public string Name => emission.Name + (tail is null ? string.Empty : isSlow ? ", slow" : ", fast");

    /// <summary>Seconds from the start of the study.</summary>
    public double Start { get; } = emission.Start.TotalSeconds;

    public double End { get; } = emission.End.TotalSeconds;

    public double Duration { get; } = (emission.End - emission.Start).TotalSeconds;

    /// <summary>Part of this that is released while it is put on.</summary>
    public double Flash => flash;

    public double TimeConstant { get; } = timeConstant.TotalSeconds;

    /// <summary>Its mass of one substance.</summary>
    /// <param name="term">Which term it is.</param>
    /// <param name="share">The substance's share of the emission.</param>
    /// <param name="sum">The sum of all shares.</param>
    /// <param name="t">The derivation that is being made, or none.</param>
    public Num Mass(int term, SolventShare share, Num sum, Trace? t = null)
    {
        Num whole = t.Given("M_", term + 1, emission.VolatileMass.Kilograms, Measure.Mass) * Emission.Part(share, t) / sum;
        Num slow = t.Given("s", tail?.Fraction.DecimalFractions ?? 0, Measure.Percent);
        return tail is null ? whole : whole * (isSlow ? slow : 1 - slow);
    }
}

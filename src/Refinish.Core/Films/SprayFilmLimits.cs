using System;
using UnitsNet;

namespace Refinish.Films;

/// <summary>The wet film that a coat has to reach, and the one at which it begins to run.</summary>
/// <example><code>
/// SprayFilmLimits limits = new(Length.FromMicrometers(60), Length.FromMicrometers(125));
/// </code></example>
public sealed record SprayFilmLimits
{
    /// <summary>Makes the pair.</summary>
    /// <param name="minimum">Least wet film, more than 0 and at most 5 mm.</param>
    /// <param name="wetLimit">
    /// Wet film of one coat above which it may sag or trap solvent, more than <paramref name="minimum"/> and at most 5 mm.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">A film is outside its range, or the limit is not above the minimum.</exception>
    public SprayFilmLimits(Length minimum, Length wetLimit)
    {
        Minimum = Guard.Checked(minimum, Bounds.Positive(Measure.Film, 5e-3));
        WetLimit = Guard.Checked(wetLimit, Bounds.Positive(Measure.Film, 5e-3));
        Guard.Rule(WetLimit.Meters > Minimum.Meters, nameof(wetLimit), WetLimit.Meters, Measure.Film, "more than the minimum of ",
            Minimum.Meters);
    }

    /// <summary>Least wet film.</summary>
    public Length Minimum { get; }

    /// <summary>Wet film above which it may run.</summary>
    public Length WetLimit { get; }

    /// <summary>The pair in one line, in metric units.</summary>
    /// <returns>Text such as <c>60 µm to 125 µm wet</c>.</returns>
    public override string ToString() => Measure.Film.Format(Minimum.Meters) + " to " + Measure.Film.Format(WetLimit.Meters) + " wet";
}

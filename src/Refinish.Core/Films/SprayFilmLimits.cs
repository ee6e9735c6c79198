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
    /// <param name="wetLimit">Wet film of one coat above which it may sag or trap solvent, more than <paramref name="minimum"/> and at most 5 mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A film is outside its range, or the limit is not above the minimum.</exception>
    public SprayFilmLimits(Length minimum, Length wetLimit)
    {
        MinimumSi = Guard.Within(minimum, Bounds.Positive(Measure.Film, 5e-3));
        WetLimitSi = Guard.Within(wetLimit, Bounds.Positive(Measure.Film, 5e-3));
        Guard.Rule(WetLimitSi > MinimumSi, nameof(wetLimit), WetLimitSi, Measure.Film, "more than the minimum of ", MinimumSi);
    }

    /// <summary>Least wet film.</summary>
    public Length Minimum => Length.FromMeters(MinimumSi);

    /// <summary>Wet film above which it may run.</summary>
    public Length WetLimit => Length.FromMeters(WetLimitSi);

    internal double MinimumSi { get; }

    internal double WetLimitSi { get; }

    /// <summary>The pair in one line, in metric units.</summary>
    /// <returns>Text such as <c>60 µm to 125 µm wet</c>.</returns>
    public override string ToString() => Measure.Film.Format(MinimumSi) + " to " + Measure.Film.Format(WetLimitSi) + " wet";
}

using System;
using System.Collections.Generic;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// What a liquid gives off that is wiped or brushed on, such as a cleaning solvent or an adhesion promoter: it is spread at a steady
/// rate over the wipe time and the wet surface loses it at a first-order rate, as an evaporating pool does.
/// </summary>
/// <remarks>
/// The exponentially falling emission of a small spill is the usual model of it in occupational hygiene. Rags give off what they hold:
/// count their solvent too. The evaporation time is the caller's; an open wet film of acetone is gone in a minute or two, a slow
/// glycol-ether acetate in many.
/// </remarks>
/// <example><code>
/// WipeEmission wipe = new()
/// {
///     Name = "solvent wipe", Start = TimeSpan.Zero, WipeTime = TimeSpan.FromMinutes(5), VolatileMass = Mass.FromGrams(40),
///     Solvents = [new(Solvents.Acetone, Ratio.FromPercent(100))], EvaporationTime = WipeEmission.AssumedEvaporationTime,
/// };
/// </code></example>
public sealed record WipeEmission : Emission
{
    /// <summary>Time constant of the evaporating liquid, for want of a measured one: 2 min, invented.</summary>
    public static TimeSpan AssumedEvaporationTime { get; } = TimeSpan.FromMinutes(2);

    /// <summary>How long wiping lasts, more than 0 and at most 24 h.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required TimeSpan WipeTime { get; init => field = Guard.Time(value, Applying); }

    /// <summary>Time constant of the evaporating liquid: after it, 37 % of what was wet is left. 1 s to 30 days.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required TimeSpan EvaporationTime { get; init => field = Guard.Time(value, TimeConstants); }

    private protected override TimeSpan Applied => WipeTime;

    /// <summary>
    /// The mass of liquid on a wetted surface and in the rags: (A · t + V_rags) · ρ, with 1/ρ the sum of share over density.
    /// </summary>
    /// <param name="wetted">Wetted surface, more than 0 and at most 10 000 m².</param>
    /// <param name="wetFilm">
    /// Thickness of the wet film on it, more than 0 and at most 1 mm; 10 to 30 µm is a common guess without a source.
    /// </param>
    /// <param name="inRags">Liquid held by the rags, 0 to 10 L.</param>
    /// <param name="solvents">What evaporates, as shares of the mass that add up to 100 %.</param>
    /// <returns>The mass.</returns>
    /// <exception cref="ArgumentException">The list is empty or holds an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Mass VolatileMassOf(Area wetted, Length wetFilm, Volume inRags, IReadOnlyList<SolventShare> solvents)
    {
        double area = Guard.Within(wetted, Bounds.Positive(Measure.Area, 1e4));
        double film = Guard.Within(wetFilm, Bounds.Positive(Measure.Film, 1e-3));
        double rags = Guard.Within(inRags, Bounds.NotNegative(Measure.Liquid, 1e-2));
        return Mass.FromKilograms(((area * film) + rags) * BlendDensity(CheckedShares(solvents, nameof(solvents))));
    }

    /// <summary>The liquid and its times.</summary>
    /// <returns>Text such as <c>solvent wipe: 40 g from 0 min, wiped on in 5 min</c>.</returns>
    public override string ToString() =>
        Name + ": " + Measure.Mass.Format(VolatileMass.Kilograms) + " from " + Measure.Minutes.Format(Start.TotalSeconds)
        + ", wiped on in " + Measure.Minutes.Format(WipeTime.TotalSeconds);

    internal override IEnumerable<ReleaseTerm> Terms() => [new(this, 0, EvaporationTime)];
}

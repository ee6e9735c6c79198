using System;
using System.Collections.Generic;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// What one coat gives off: its volatile mass, sprayed at a steady rate over the spray time. A part flashes at once (in flight and with the
/// overspray), the rest lands in the film and leaves it at a first-order rate, or at two when a <see cref="Tail"/> is given. Nothing is
/// lost: in the end all of it has been in the air.
/// </summary>
/// <remarks>
/// The first-order film is the family of emission models used for coatings indoors (fast-drying part of the EPA wall-paint model); late
/// drying, when diffusion through the skin governs, is slower than this. Without a tail a time to clear is the least, not the most.
/// </remarks>
/// <example><code>
/// SolventEmission coat = new()
/// {
///     Name = "topcoat, first coat", Start = TimeSpan.Zero, SprayTime = TimeSpan.FromMinutes(6),
///     VolatileMass = Mass.FromGrams(164), Solvents = [new(Solvents.ButylAcetate, Ratio.FromPercent(100))],
///     FlashFraction = SolventEmission.AssumedFlashFraction, FilmTimeConstant = SolventEmission.AssumedFilmTimeConstant,
/// };
/// </code></example>
public sealed record SolventEmission : Emission
{
    /// <summary>As long as a coat may take at the gun; whether that fits into a day shows in the schedule.</summary>
    internal static readonly Bounds SprayTimes = Bounds.Positive(Measure.Minutes, 100 * 86400);

    private readonly double flashFraction;

    /// <summary>
    /// Part that flashes while spraying, for want of a measured one and of a transfer efficiency: 40 %, invented.
    /// <see cref="FlashOf(Ratio, Ratio)"/> tells it from both.
    /// </summary>
    public static Ratio AssumedFlashFraction { get; } = Ratio.FromPercent(40);

    /// <summary>
    /// Part of the solvent of what lands that flashes, for want of a measured one: 25 %, from memory of finishing handbooks, which give 10
    /// to 40 % for what air spray loses between gun and surface.
    /// </summary>
    public static Ratio AssumedFlashOfLanded { get; } = Ratio.FromPercent(25);

    /// <summary>
    /// Time constant of the drying film, for want of a measured one: 15 min, invented. A slow film lengthens the time to clear.
    /// </summary>
    public static TimeSpan AssumedFilmTimeConstant { get; } = TimeSpan.FromMinutes(15);

    /// <summary>How long spraying lasts, more than 0 and at most 100 days.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required TimeSpan SprayTime { get; init => field = Guard.Time(value, SprayTimes); }

    /// <summary>Part of the volatile mass released while spraying, 0 to 100 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio FlashFraction
    {
        get => Ratio.FromDecimalFractions(flashFraction);
        init => flashFraction = Guard.Within(value, Bounds.NotNegative(Measure.Percent, 1));
    }

    /// <summary>Time constant of the drying film: after it, 37 % of what was in the film is left. 1 s to 30 days.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required TimeSpan FilmTimeConstant { get; init => field = Guard.Time(value, TimeConstants); }

    /// <summary>The part of the film that dries more slowly; <see langword="null"/> when the film has one rate.</summary>
    public FilmTail? Tail { get; init; }

    private protected override TimeSpan Applied => SprayTime;

    /// <summary>The part that flashes: all of what misses the surface, and a part of what lands, 1 − η + η · f.</summary>
    /// <param name="transferEfficiency">Part of the spray that lands, η, more than 0 and at most 100 %.</param>
    /// <param name="ofLanded">
    /// Part of the solvent of what lands that is gone by then or at once after, f, 0 to 100 %; see <see cref="AssumedFlashOfLanded"/>.
    /// </param>
    /// <returns>The part of the volatile mass.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Ratio FlashOf(Ratio transferEfficiency, Ratio ofLanded)
    {
        double lands = Guard.Within(transferEfficiency, Bounds.Positive(Measure.Percent, 1));
        double flashes = Guard.Within(ofLanded, Bounds.NotNegative(Measure.Percent, 1));
        return Ratio.FromDecimalFractions(FlashOf(lands, flashes).Value);
    }

    internal static Num FlashOf(Num lands, Num ofLanded) => 1 - lands + (lands * ofLanded);

    /// <summary>The volatile mass in a volume of reduced coating: V · (1 − VS′) · ρ, with 1/ρ the sum of share over density.</summary>
    /// <param name="sprayedReduced">Reduced coating that leaves the gun, overspray included; more than 0 and at most 10 000 L.</param>
    /// <param name="reducedSolids">Volume solids of the reduced coating, 0 to less than 100 %.</param>
    /// <param name="solvents">What evaporates, as shares of the volatile mass that add up to 100 %.</param>
    /// <returns>The mass.</returns>
    /// <remarks>Volumes are taken as additive, everything that is not solids as evaporating.</remarks>
    /// <exception cref="ArgumentException">The list is empty or holds an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Mass VolatileMassOf(Volume sprayedReduced, Ratio reducedSolids, IReadOnlyList<SolventShare> solvents)
    {
        double volume = Guard.Within(sprayedReduced, Bounds.Positive(Measure.Liquid, 10));
        double solids = Guard.Within(reducedSolids, Bounds.Below(0, 1, Measure.Percent));
        return Mass.FromKilograms(volume * (1 - solids) * BlendDensity(CheckedShares(solvents, nameof(solvents))));
    }

    /// <summary>The coat, its solvent and its times.</summary>
    /// <returns>Text such as <c>topcoat, first coat: 164 g from 0 min, sprayed in 6 min</c>.</returns>
    public override string ToString() =>
        Name + ": " + Measure.Mass.Format(VolatileMass.Kilograms) + " from " + Measure.Minutes.Format(Start.TotalSeconds)
        + ", sprayed in " + Measure.Minutes.Format(SprayTime.TotalSeconds);

    internal override IEnumerable<ReleaseTerm> Terms() => Tail is FilmTail tail
        ? [new(this, flashFraction, FilmTimeConstant, tail), new(this, flashFraction, tail.TimeConstant, tail, isSlow: true)]
        : [new(this, flashFraction, FilmTimeConstant)];
}

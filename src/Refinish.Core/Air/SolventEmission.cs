using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// What one coat gives off: its volatile mass, sprayed at a steady rate over the spray time. A part flashes at once (in flight and
/// with the overspray), the rest lands in the film and leaves it at a first-order rate. Nothing is lost: in the end all of it has been in the air.
/// </summary>
/// <remarks>
/// The first-order film is the family of emission models used for coatings indoors (fast-drying part of the EPA wall-paint model);
/// late drying, when diffusion through the skin governs, is slower than this, so a hold time from it is the least, not the most.
/// </remarks>
/// <example><code>
/// SolventEmission coat = new()
/// {
///     Name = "topcoat, first coat", Start = TimeSpan.Zero, SprayTime = TimeSpan.FromMinutes(6),
///     VolatileMass = Mass.FromGrams(164), Solvents = [new(GenericSolvents.ButylAcetate, Ratio.FromPercent(100))],
///     FlashFraction = SolventEmission.AssumedFlashFraction, FilmTimeConstant = SolventEmission.AssumedFilmTimeConstant,
/// };
/// </code></example>
public sealed record SolventEmission
{
    private static readonly Bounds SprayTimes = Bounds.Between(1, 24 * 3600, Measure.Minutes);
    private static readonly Bounds TimeConstants = Bounds.Between(1, 30 * 86400, Measure.Minutes);

    private readonly double volatileMass;
    private readonly double flashFraction;

    /// <summary>Part that flashes while spraying, for want of a measured one: 40 %, invented.</summary>
    public static Ratio AssumedFlashFraction { get; } = Ratio.FromPercent(40);

    /// <summary>Time constant of the drying film, for want of a measured one: 15 min, invented. A slow film lengthens the time to clear.</summary>
    public static TimeSpan AssumedFilmTimeConstant { get; } = TimeSpan.FromMinutes(15);

    /// <summary>Which coat this is.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name
    {
        get;
        init => field = Guard.Named(value, nameof(Name));
    }

    /// <summary>When spraying begins, counted from the start of the study; 0 to 60 days.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required TimeSpan Start
    {
        get;
        init
        {
            Guard.Within(value, Bounds.NotNegative(Measure.Hours, 60 * 86400), nameof(Start));
            field = value;
        }
    }

    /// <summary>How long spraying lasts, 1 s to 24 h.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required TimeSpan SprayTime
    {
        get;
        init
        {
            Guard.Within(value, SprayTimes, nameof(SprayTime));
            field = value;
        }
    }

    /// <summary>All that will evaporate, overspray included; more than 0 and at most 100 kg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Mass VolatileMass
    {
        get => Mass.FromKilograms(volatileMass);
        init => volatileMass = Guard.Within(value, Bounds.Positive(Measure.Mass, 100), nameof(VolatileMass));
    }

    /// <summary>What evaporates, as shares of the volatile mass that add up to 100 %.</summary>
    /// <exception cref="ArgumentException">The list is empty, an entry is missing, or a solvent is named twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The shares do not add up to 100 % within 0.1 %.</exception>
    public required IReadOnlyList<SolventShare> Solvents
    {
        get;
        init => field = CheckedShares(value, nameof(Solvents));
    }

    /// <summary>Part of the volatile mass released while spraying, 0 to 100 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio FlashFraction
    {
        get => Ratio.FromDecimalFractions(flashFraction);
        init => flashFraction = Guard.Within(value, Bounds.NotNegative(Measure.Percent, 1), nameof(FlashFraction));
    }

    /// <summary>Time constant of the drying film: after it, 37 % of what was in the film is left. 1 s to 30 days.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required TimeSpan FilmTimeConstant
    {
        get;
        init
        {
            Guard.Within(value, TimeConstants, nameof(FilmTimeConstant));
            field = value;
        }
    }

    /// <summary>When spraying ends, counted from the start of the study.</summary>
    public TimeSpan End => Start + SprayTime;

    /// <summary>The volatile mass in a volume of reduced coating: V · (1 − VS′) · ρ, with 1/ρ the sum of share over density.</summary>
    /// <param name="sprayedReduced">Reduced coating that leaves the gun, overspray included; more than 0 and at most 100 L.</param>
    /// <param name="reducedSolids">Volume solids of the reduced coating, 0 to less than 100 %.</param>
    /// <param name="solvents">What evaporates, as shares of the volatile mass that add up to 100 %.</param>
    /// <returns>The mass.</returns>
    /// <remarks>Volumes are taken as additive, everything that is not solids as evaporating.</remarks>
    /// <exception cref="ArgumentException">The list is empty or holds an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Mass VolatileMassOf(Volume sprayedReduced, Ratio reducedSolids, IReadOnlyList<SolventShare> solvents)
    {
        double volume = Guard.Within(sprayedReduced, Bounds.Positive(Measure.Liquid, 0.1), nameof(sprayedReduced));
        double solids = Guard.Within(reducedSolids, Bounds.Below(0, 1, Measure.Percent), nameof(reducedSolids));
        return Mass.FromKilograms(volume * (1 - solids) * BlendDensity(CheckedShares(solvents, nameof(solvents))));
    }

    /// <summary>The coat, its solvent and its times.</summary>
    /// <returns>Text such as <c>topcoat, first coat: 164 g from 0 min, sprayed in 6 min</c>.</returns>
    public override string ToString() =>
        Name + ": " + Measure.Mass.Format(volatileMass) + " from " + Measure.Minutes.Format(Start.TotalSeconds)
        + ", sprayed in " + Measure.Minutes.Format(SprayTime.TotalSeconds);

    /// <summary>The sum of the shares, which may miss 100 % by the rounding of a data sheet; masses are divided by it so that none is lost.</summary>
    internal static double ShareSum(IReadOnlyList<SolventShare> solvents)
    {
        double sum = 0;
        for (int i = 0; i < solvents.Count; i++)
        {
            sum += solvents[i].MassFraction.DecimalFractions;
        }

        return sum;
    }

    private static double BlendDensity(ValueList<SolventShare> solvents) =>
        ShareSum(solvents) / solvents.Sum(share => share.MassFraction.DecimalFractions / share.Solvent.Density.KilogramsPerCubicMeter);

    private static ValueList<SolventShare> CheckedShares(IReadOnlyList<SolventShare> value, string name)
    {
        ValueList<SolventShare> shares = Guard.List(value, name, 1);
        double sum = ShareSum(shares);
        Guard.Rule(Math.Abs(sum - 1) <= 1e-3, name, sum, Measure.Percent, "shares that add up to 100 % within 0.1 %");
        if (shares.Select(share => share.Solvent.CasNumber).Distinct(StringComparer.Ordinal).Count() != shares.Count)
        {
            throw new ArgumentException(name + " names a solvent twice; add its shares up.", name);
        }

        return shares;
    }
}

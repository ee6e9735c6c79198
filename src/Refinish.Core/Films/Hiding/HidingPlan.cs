using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Colours;
using UnitsNet;

namespace Refinish.Films;

/// <summary>How many coats hide an old light or dark colour, told by reflectance Y: with or without a primer between, until the ratio to the full colour is reached.</summary>
/// <remarks>
/// Each coat is a Kubelka–Munk film over what lies below; layers of one coating add up to one film, a primer of its own optics is what the topcoat sees. Hidden means reflectance per full reflectance (the smaller per the larger) at least the ratio, 0.98 unless given,
/// as the opacity standards take it; |ΔL*| at most 0.5 or ΔE00 at most 1 are other ways to say it. For strong colours that match in Y and differ in hue use <see cref="ColourHidingPlan"/>. More than six coats: tint the primer or choose another colour.
/// </remarks>
/// <example><code>
/// HidingPlan plan = new()
/// {
///     OldReflectance = Ratio.FromPercent(20),
///     Topcoat = PaintOptics.FromReflectivity(Ratio.FromPercent(90), ReciprocalLength.FromInverseMils(3.5)),
///     CoatFilm = Length.FromMils(1.2),
///     Primer = PaintOptics.FromReflectivity(Ratio.FromPercent(85), ReciprocalLength.FromInverseMils(2)),
///     PrimerFilm = Length.FromMils(1.2),
/// };
/// int? coats = plan.CoatsNeeded;               // 3: the second reaches 0.9793, just short of 0.98
/// </code></example>
public sealed record HidingPlan
{
    private readonly double old;
    private readonly double coatFilm;
    private readonly double primerFilm;
    private readonly double ratio = 0.98;

    /// <summary>Reflectance Y of the old colour, 0 to 100 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio OldReflectance
    {
        get => Ratio.FromDecimalFractions(old);
        init => old = Guard.Within(value, Bounds.Between(0, 1, Measure.Percent), nameof(OldReflectance));
    }

    /// <summary>Absorption and scattering of the topcoat.</summary>
    /// <exception cref="ArgumentNullException">None is given.</exception>
    public required PaintOptics Topcoat
    {
        get;
        init => field = Guard.NotNull(value, nameof(Topcoat));
    }

    /// <summary>Dry film of one coat, from 1 µm to 5 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length CoatFilm
    {
        get => Length.FromMeters(coatFilm);
        init => coatFilm = Guard.Within(value, FlowRanges.Film, nameof(CoatFilm));
    }

    /// <summary>Absorption and scattering of the primer; none unless given.</summary>
    public PaintOptics? Primer { get; init; }

    /// <summary>Dry film of the primer in all, 0 to 5 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length PrimerFilm
    {
        get => Length.FromMeters(primerFilm);
        init => primerFilm = Guard.Within(value, Bounds.NotNegative(Measure.Film, 5e-3), nameof(PrimerFilm));
    }

    /// <summary>Ratio to the full reflectance at which the old colour counts as hidden, 50 to 99.99 %; 98 % unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio RatioWanted
    {
        get => Ratio.FromDecimalFractions(ratio);
        init => ratio = Guard.Within(value, Bounds.Between(0.5, 0.9999, Measure.Percent), nameof(RatioWanted));
    }

    /// <summary>Largest |ΔL*| that also has to be kept, 0.01 to 100; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double? LightnessTolerance
    {
        get;
        init => field = value is double v ? Guard.Within(v, Bounds.Between(0.01, 100, Measure.Number), nameof(LightnessTolerance)) : null;
    }

    /// <summary>Most coats looked at, 1 to 20; 6 unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int MostCoats
    {
        get;
        init => field = Guard.Count(value, 1, 20, nameof(MostCoats));
    }
    = 6;

    /// <summary>What the topcoat lies on: the old colour, or the primer over it.</summary>
    public Ratio Ground => Ratio.FromDecimalFractions(GroundOf());

    /// <summary>What is seen after one coat, two coats and so on.</summary>
    public IReadOnlyList<HidingCoat> Coats => [.. Enumerable.Range(1, MostCoats).Select(After)];

    /// <summary>The fewest coats that hide; <see langword="null"/> when none up to the most does.</summary>
    public int? CoatsNeeded
    {
        get
        {
            for (int n = 1; n <= MostCoats; n++)
            {
                HidingCoat coat = After(n);
                if (coat.Share >= ratio && !(Math.Abs(coat.LightnessDifference) > LightnessTolerance))
                {
                    return n;
                }
            }

            return null;
        }
    }

    /// <summary>Why it does not hide; <see langword="null"/> when it does.</summary>
    public string? Objection => CoatsNeeded is null
        ? "not hidden after " + Figures.Significant(MostCoats) + " coats: " + Measure.Percent.Format(After(MostCoats).Share, DisplayUnits.Si, 4) + " of the full reflectance, "
            + Measure.Percent.Format(ratio, DisplayUnits.Si, 4) + " wanted; tint the primer towards the topcoat or choose another colour"
        : null;

    /// <summary>How the coats follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        List<WorkingStep> steps = [];
        Expression ground = Expression.Quantity("R_old", old, Measure.Percent);
        if (Primer is PaintOptics primer)
        {
            WorkingStep[] constants = [.. primer.Constants("_p")];
            Expression power = Expression.Quantity("S_p", primer.S, Measure.PerFilm) * Expression.Quantity("X_p", primerFilm, Measure.Film);
            Expression depth = primer.B == 0 ? power : Expression.Tanh(constants[1].Result() * power) / constants[1].Result();
            WorkingStep primed = new("reflectance of the primer", "R_p", HidingKernel.Over(constants[0].Result(), depth, ground), GroundOf(), Measure.Percent, PaintOptics.KubelkaMunk);
            steps.AddRange([.. constants, primed]);
            ground = primed.Result();
        }

        WorkingStep[] own = [.. Topcoat.Constants(string.Empty)];
        WorkingStep full = new("full reflectance", "R_∞", 1 / (own[0].Result() + own[1].Result()), Topcoat.Infinite, Measure.Percent, PaintOptics.KubelkaMunk);
        steps.AddRange([.. own, full]);
        foreach (HidingCoat coat in Coats)
        {
            string n = Figures.Significant(coat.Coats);
            Expression power = Expression.Quantity("S", Topcoat.S, Measure.PerFilm) * Expression.Quantity("X_" + n, coat.Coats * coatFilm, Measure.Film);
            Expression depth = Topcoat.B == 0 ? power : Expression.Tanh(own[1].Result() * power) / own[1].Result();
            WorkingStep seen = new("reflectance after " + n, "R_" + n, HidingKernel.Over(own[0].Result(), depth, ground), coat.Y, Measure.Percent, PaintOptics.KubelkaMunk);
            Expression share = Expression.Min(seen.Result(), full.Result()) / Expression.Max(seen.Result(), full.Result());
            steps.AddRange([seen, new("ratio after " + n, "r_" + n, share, coat.Share, Measure.Percent, PaintOptics.KubelkaMunk)]);
            Expression lightness = 116 * (LabKernel.Compress(seen.Result()) - LabKernel.Compress(full.Result()));
            steps.Add(new("lightness difference after " + n, "ΔL*_" + n, lightness, coat.LightnessDifference, Measure.Number, PaintOptics.KubelkaMunk));
        }

        return new Workings("Coats that hide", steps);
    }

    /// <summary>The outcome in one line.</summary>
    /// <returns>Text such as <c>hidden after 3 coats: 99.2 % of the full reflectance</c>.</returns>
    public override string ToString() => CoatsNeeded is int n
        ? "hidden after " + Figures.Significant(n) + (n == 1 ? " coat: " : " coats: ") + Measure.Percent.Format(After(n).Share, DisplayUnits.Si, 3) + " of the full reflectance"
        : Objection!;

    private double GroundOf() => Primer is PaintOptics primer ? HidingKernel.Film(primer.K, primer.S, primerFilm, old) : old;

    private HidingCoat After(int coats)
    {
        double full = Topcoat.Infinite;
        double seen = HidingKernel.Film(Topcoat.K, Topcoat.S, coats * coatFilm, GroundOf());
        return new(coats, seen, Math.Min(seen, full) / Math.Max(seen, full), 116 * (LabKernel.Compress(seen) - LabKernel.Compress(full)), null, null);
    }
}

using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Colours;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// How many coats hide an old light or dark colour, told by reflectance Y: with or without a primer between, until the ratio to the
/// full colour is reached.
/// </summary>
/// <remarks>
/// Each coat is a Kubelka–Munk film over what lies below; layers of one coating add up to one film, a primer of its own optics is what
/// the topcoat sees. Hidden means reflectance per full reflectance (the smaller per the larger) at least the ratio, 0.98 unless given,
/// as the opacity standards take it; |ΔL*| at most 0.5 or ΔE00 at most 1 are other ways to say it. For strong colours that match in Y
/// and differ in hue use <see cref="ColourHidingPlan"/>. More than six coats: tint the primer or choose another colour.
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
    /// <summary>Reflectance Y of the old colour, 0 to 100 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio OldReflectance { get; init => field = Guard.Checked(value, Bounds.Between(0, 1, Measure.Percent)); }

    /// <summary>Absorption and scattering of the topcoat.</summary>
    /// <exception cref="ArgumentNullException">None is given.</exception>
    public required PaintOptics Topcoat { get; init => field = Guard.NotNull(value); }

    /// <summary>Dry film of one coat, from 1 µm to 5 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length CoatFilm { get; init => field = Guard.Checked(value, FlowRanges.Film); }

    /// <summary>Absorption and scattering of the primer; none unless given.</summary>
    public PaintOptics? Primer { get; init; }

    /// <summary>Dry film of the primer in all, 0 to 5 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length PrimerFilm { get; init => field = Guard.Checked(value, Bounds.NotNegative(Measure.Film, 5e-3)); }

    /// <summary>Ratio to the full reflectance at which the old colour counts as hidden, 50 to 99.99 %; 98 % unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio RatioWanted { get; init => field = Guard.Checked(value, Bounds.Between(0.5, 0.9999, Measure.Percent)); }
    = Ratio.FromDecimalFractions(0.98);

    /// <summary>Largest |ΔL*| that also has to be kept, 0.01 to 100; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double? LightnessTolerance
    {
        get;
        init => field = value is double v ? Guard.Within(v, Bounds.Between(0.01, 100, Measure.Number), nameof(LightnessTolerance)) : null;
    }

    /// <summary>Most coats looked at, 1 to 20; 6 unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int MostCoats { get; init => field = Guard.Count(value, 1, 20); }
    = 6;

    /// <summary>What the topcoat lies on: the old colour, or the primer over it.</summary>
    public Ratio Ground => Ratio.FromDecimalFractions(GroundOf().Value);

    /// <summary>What is seen after one coat, two coats and so on.</summary>
    public IReadOnlyList<HidingCoat> Coats => [.. Enumerable.Range(1, MostCoats).Select(After)];

    /// <summary>The fewest coats that hide; <see langword="null"/> when none up to the most does.</summary>
    public int? CoatsNeeded =>
        Coats.FirstOrDefault(
            coat => coat.Share >= RatioWanted.DecimalFractions && !(Math.Abs(coat.LightnessDifference) > LightnessTolerance))?.Coats;

    /// <summary>Why it does not hide; <see langword="null"/> when it does.</summary>
    public string? Objection => CoatsNeeded is null
        ? "not hidden after " + Figures.Significant(MostCoats) + " coats: " + Measure.Percent.Format(After(MostCoats).Share, DisplayUnits.Si, 4) + " of the full reflectance, "
            + Measure.Percent.Format(RatioWanted.DecimalFractions, DisplayUnits.Si, 4)
                + " wanted; tint the primer towards the topcoat or choose another colour"
        : null;

    /// <summary>How the coats follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Trace t = new();
        GroundOf(t);
        Num full = Topcoat.Full(t);
        for (int coats = 1; coats <= MostCoats; coats++)
        {
            string n = Figures.Significant(coats);
            Num seen = t.Step("reflectance after " + n, "R_" + n, Measure.Percent, PaintOptics.KubelkaMunk, Seen(coats, t));
            t.Step("ratio after " + n, "r_" + n, Measure.Percent, PaintOptics.KubelkaMunk, HidingKernel.Share(seen, full));
            t.Step("lightness difference after " + n, "ΔL*_" + n, Measure.Number, PaintOptics.KubelkaMunk, Lightness(seen, full, t));
        }

        return t.Workings("Coats that hide");
    }

    /// <summary>The outcome in one line.</summary>
    /// <returns>Text such as <c>hidden after 3 coats: 99.2 % of the full reflectance</c>.</returns>
    public override string ToString() => CoatsNeeded is int n
        ? "hidden after " + Figures.Significant(n) + (n == 1 ? " coat: " : " coats: ") + Measure.Percent.Format(After(n).Share, DisplayUnits.Si, 3) + " of the full reflectance"
        : Objection!;

    private Num GroundOf(Trace? t = null)
    {
        Num below = t.Given("R_old", OldReflectance.DecimalFractions, Measure.Percent);
        return Primer is null ? below : t.Step("reflectance of the primer", "R_p", Measure.Percent, PaintOptics.KubelkaMunk,
            Primer.Film(t.Given("X_p", PrimerFilm.Meters, Measure.Film), below, t, true));
    }

    private Num Seen(int coats, Trace? t = null) =>
        Topcoat.Film(t.Given("X_", coats, coats * CoatFilm.Meters, Measure.Film), GroundOf(t), t);

    private static Num Lightness(Num seen, Num full, Trace? t = null) => 116 * (LabKernel.Compress(seen, t) - LabKernel.Compress(full, t));

    private HidingCoat After(int coats)
    {
        Num full = Topcoat.Full();
        Num seen = Seen(coats);
        return new(coats, seen.Value, HidingKernel.Share(seen, full).Value, Lightness(seen, full).Value, null, null);
    }
}

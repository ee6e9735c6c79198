using System;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Films;

/// <summary>How a dry film absorbs and scatters light of one band: the K and S of Kubelka and Munk, per thickness of dry film.</summary>
/// <remarks>
/// <para>P. Kubelka and F. Munk, Zeitschrift für technische Physik 12 (1931): K/S = (1 − R∞)²/(2 R∞), R∞ the reflectance of a film
/// without end. Reflectances here are those inside the film: take the surface off first with <see cref="SurfaceReflection"/> where
/// measured ones come from a glossy film.</para>
/// <para>Both belong to one coating at one pigment volume: they change with tint and with what is let down, not with reducer, since the
/// film is dry. No published pair for a trade topcoat was found: measure them with a drawdown (<see cref="Drawdown"/>). About 0.1 to
/// 0.25 per µm is recalled for white films (from memory, unverified).</para>
/// </remarks>
/// <example><code>
/// PaintOptics white = PaintOptics.FromReflectivity(Ratio.FromPercent(90), ReciprocalLength.FromInverseMils(3.5));
/// double ks = white.AbsorptionRatio;                 // 0.005556
/// </code></example>
public sealed record PaintOptics
{
    internal static readonly Source KubelkaMunk = Source.Published("Kubelka and Munk, Zeitschrift für technische Physik 12, 1931, 593", "reflectance of a film (formulas from memory)");

    private static readonly Bounds Absorptions = Bounds.NotNegative(Measure.PerFilm, 1e8);

    /// <summary>Takes both coefficients.</summary>
    /// <param name="absorption">K, 0 to 100 per µm of dry film.</param>
    /// <param name="scattering">S, from 10⁻⁶ to 100 per µm of dry film: a film that does not scatter at all hides nothing.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public PaintOptics(ReciprocalLength absorption, ReciprocalLength scattering)
        : this(
            Guard.Within(absorption.InverseMeters, Absorptions, nameof(absorption)),
            Guard.Within(scattering.InverseMeters, CoatingProduct.Scatterings, nameof(scattering)))
    {
    }

    internal PaintOptics(double absorption, double scattering)
    {
        K = absorption;
        S = scattering;
    }

    /// <summary>K, absorption per thickness.</summary>
    public ReciprocalLength Absorption => ReciprocalLength.FromInverseMeters(K);

    /// <summary>S, scattering per thickness.</summary>
    public ReciprocalLength Scattering => ReciprocalLength.FromInverseMeters(S);

    /// <summary>K/S.</summary>
    public double AbsorptionRatio => Share().Value;

    /// <summary>R∞, what a film without end reflects.</summary>
    public Ratio Reflectivity => Ratio.FromDecimalFractions(Full().Value);

    internal double K { get; }

    internal double S { get; }

    /// <summary>From the reflectance of a film without end (a masstone) and the scattering.</summary>
    /// <param name="reflectivity">R∞, more than 0 and at most 100 %.</param>
    /// <param name="scattering">S, from 10⁻⁶ to 100 per µm of dry film.</param>
    /// <returns>The coefficients.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static PaintOptics FromReflectivity(Ratio reflectivity, ReciprocalLength scattering)
    {
        double infinite = Guard.Within(reflectivity, Bounds.Between(1e-4, 1, Measure.Percent));
        double s = Guard.Within(scattering.InverseMeters, CoatingProduct.Scatterings, nameof(scattering));
        return new((HidingKernel.Ratio(infinite) * s).Value, s);
    }

    /// <summary>From the reflectance of a film without end and that of a film of known thickness over black.</summary>
    /// <param name="reflectivity">R∞, more than 0 and less than 100 %.</param>
    /// <param name="overBlack">R₀ over black, more than 0 and less than R∞.</param>
    /// <param name="dryFilm">The film over black, from 1 µm to 5 mm dry.</param>
    /// <returns>The coefficients: S = artanh(b R₀/(1 − a R₀))/(b X).</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static PaintOptics FromOverBlack(Ratio reflectivity, Ratio overBlack, Length dryFilm)
    {
        double infinite = Guard.Within(reflectivity, Bounds.Below(1e-4, 1, Measure.Percent));
        double black = Guard.Within(overBlack, Bounds.Between(1e-6, 1, Measure.Percent));
        double film = Guard.Within(dryFilm, FlowRanges.Film);
        Guard.Rule(black < infinite, nameof(overBlack), black, Measure.Percent, "less than the reflectivity, ", infinite);
        Num ratio = HidingKernel.Ratio(infinite);
        double s = (HidingKernel.PowerOf(HidingKernel.B(ratio), (1 - ((1 + ratio) * black)) / black) / film).Value;
        return new(ratio.Value * s, Guard.Within(s, CoatingProduct.Scatterings, "scattering"));
    }

    /// <summary>How the reflectivity follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Film without end", t =>
    {
        Num ratio = t.Step("absorption to scattering", "K/S", Measure.Number, KubelkaMunk, Share(t));
        return t.Step("reflectivity", "R_∞", Measure.Percent, KubelkaMunk, HidingKernel.Reflectivity(1 + ratio, HidingKernel.B(ratio)));
    });

    /// <summary>Both coefficients in one line, per µm.</summary>
    /// <returns>Text such as <c>K 0.00077 1/µm, S 0.138 1/µm</c>.</returns>
    public override string ToString() =>
        "K " + Measure.PerFilm.Format(K, DisplayUnits.Si, 3) + ", S " + Measure.PerFilm.Format(S, DisplayUnits.Si, 3);

    internal Num A(Trace? t, bool primer = false) =>
        t.Step("1 + K/S", primer ? "a_p" : "a", Measure.Number, KubelkaMunk, 1 + Share(t, primer));

    internal Num B(Trace? t, bool primer = false) =>
        t.Step("√(a² − 1)", primer ? "b_p" : "b", Measure.Number, KubelkaMunk, HidingKernel.B(Share(t, primer)));

    /// <summary>R∞.</summary>
    internal Num Full(Trace? t = null) =>
        t.Step("full reflectance", "R_∞", Measure.Percent, KubelkaMunk, HidingKernel.Reflectivity(A(t), B(t)));

    /// <summary>Reflectance of a film over something.</summary>
    internal Num Film(Num film, Num below, Trace? t, bool primer = false)
    {
        Num a = A(t, primer);
        return HidingKernel.Over(a, HidingKernel.Depth(B(t, primer), GivenS(t, primer) * film), below);
    }

    internal Num GivenS(Trace? t, bool primer = false) => t.Given(primer ? "S_p" : "S", S, Measure.PerFilm);

    private Num Share(Trace? t = null, bool primer = false) => t.Given(primer ? "K_p" : "K", K, Measure.PerFilm) / GivenS(t, primer);
}

using System;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// The dry film at which a coating reaches a contrast ratio, 0.98 as the opacity standards take for complete hiding, and how many coats
/// that is.
/// </summary>
/// <remarks>
/// Closed form: with z = b coth bSX the contrast ratio C over a white Rw gives C Rw z² − (1 − C) z − ((1 − C) a − Rw (1 − C a²)) = 0,
/// and X = artanh(b/z)/(b S). "Complete" hiding at 0.98 is a convention (ISO 6504-3, ASTM D2805; from memory): over a black and white
/// chart the difference is still to be seen by a good eye.
/// </remarks>
/// <example><code>
/// PaintOptics white = new(ReciprocalLength.FromInverseMillimeters(5), ReciprocalLength.FromInverseMillimeters(80));
/// HidingThickness complete = new(white);
/// Length film = complete.DryFilm;                        // 61.06 µm
/// int coats = complete.CoatsOf(Length.FromMicrometers(25));   // 3
/// </code></example>
public sealed record HidingThickness
{
    private static readonly Source Algebra = Source.Derived("quadratic in b coth bSX from the contrast ratio of Kubelka and Munk");

    /// <summary>Takes the coating; the contrast ratio to reach is 98 % over a white of 80 %.</summary>
    /// <param name="optics">How it absorbs and scatters.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public HidingThickness(PaintOptics optics)
        : this(optics, Ratio.FromDecimalFractions(0.98), Ratio.FromDecimalFractions(0.8))
    {
    }

    /// <summary>Takes the coating and the ratio.</summary>
    /// <param name="optics">How it absorbs and scatters.</param>
    /// <param name="contrastRatio">Contrast ratio to reach, 10 to 99.9 %.</param>
    /// <param name="white">Reflectance of the white, 10 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public HidingThickness(PaintOptics optics, Ratio contrastRatio, Ratio white)
    {
        Optics = Guard.NotNull(optics);
        ContrastRatio = Guard.Checked(contrastRatio, Bounds.Between(0.1, 0.999, Measure.Percent));
        White = Guard.Checked(white, Bounds.Between(0.1, 1, Measure.Percent));
    }

    /// <summary>How it absorbs and scatters.</summary>
    public PaintOptics Optics { get; }

    /// <summary>Contrast ratio to reach.</summary>
    public Ratio ContrastRatio { get; }

    /// <summary>Reflectance of the white.</summary>
    public Ratio White { get; }

    /// <summary>The dry film. Every ratio below 1 is reached by some film.</summary>
    public Length DryFilm => Length.FromMeters(Thickness().Value);

    /// <summary>How many coats of a dry film that is.</summary>
    /// <param name="coat">Dry film of a coat, from 1 µm to 5 mm.</param>
    /// <returns>The number of coats.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int CoatsOf(Length coat) => (int)FilmKernel.PassesUpwards(Thickness(), Guard.Within(coat, FlowRanges.Film)).Value;

    /// <summary>How the film follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Film that hides", t => Optics.A(t), Thickness);

    /// <summary>The film in one line, in metric units.</summary>
    /// <returns>Text such as <c>contrast ratio 98 % at 61.1 µm dry</c>.</returns>
    public override string ToString() =>
        "contrast ratio " + Measure.Percent.Format(ContrastRatio.DecimalFractions) + " at "
            + Measure.Film.Format(Thickness().Value, DisplayUnits.Si, 3) + " dry";

    // b coth bSX: the positive root of C R_w z² − (1 − C) z − ((1 − C) a − R_w (1 − C a²)) = 0.
    private Num Root(Trace? t)
    {
        Num a = Optics.A(t);
        Num c = t.Given("C", ContrastRatio.DecimalFractions, Measure.Percent);
        Num w = t.Given("R_gw", White.DecimalFractions, Measure.Percent);
        Num constant = ((1 - c) * a) - (w * (1 - (c * a * a)));
        return t.Step(
            "b coth bSX", "z", Measure.Number, Algebra, (1 - c + Num.Sqrt(((1 - c) * (1 - c)) + (4 * c * w * constant))) / (2 * c * w));
    }

    private Num Thickness(Trace? t = null) =>
        t.Step("dry film", "X", Measure.Film, Algebra, HidingKernel.PowerOf(Optics.B(t), Root(t)) / Optics.GivenS(t));
}

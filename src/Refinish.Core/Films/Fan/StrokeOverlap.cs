using System;
using System.Globalization;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// The wet film of many parallel strokes over a flat panel, in closed form: the mean is fluid rate × transfer efficiency / (speed ×
/// spacing), whatever the fan's shape; how even it is depends on shape and overlap.
/// </summary>
/// <remarks>
/// More overlap is not always more even: a parabolic fan is evener at 33 % than at 50 %. Two coats crossed at right angles are independent
/// of each other, which divides the variation by √2. Source: mean by conservation of volume, Gaussian by Poisson summation, the others
/// piece by piece (derived); the Gaussian is taken whole, not cut off.
/// </remarks>
/// <example><code>
/// StrokeOverlap wall = new(gun, fan, hand);         // the gun of StrokePlan
/// double wet = wall.MeanWetFilm.Micrometers;        // 33.6
/// double uneven = wall.Variation.Percent;           // 11.2 for a parabola
/// double passes = wall.PassesFor(Length.FromMicrometers(100));                             // 2.98 at this speed
/// double slower = wall.SpeedFor(Length.FromMicrometers(100), 2).CentimetersPerSecond;      // in two passes
/// </code></example>
public sealed record StrokeOverlap
{
    private static readonly Source Conservation =
        Source.Derived("volume landed per time = fluid rate × transfer efficiency = film × speed × spacing");
    private static readonly Source Similar = Source.Derived("a fan over solid angle: width in proportion to distance");
    private static readonly Source Poisson = Source.Derived("Poisson summation of equal Gaussian strokes, σ = w/4");
    private static readonly Source Stripes = Source.Derived("flat stripes: N or N + 1 of them over each point");
    private static readonly Source Pieces =
        Source.Derived("sum of equal strokes over one period, extremes searched within its smooth pieces, squares integrated over them");
    private static readonly Source Crossed = Source.Derived("two independent patterns of half the film each");

    private static readonly Bounds Films = Bounds.Positive(Measure.Film, 5e-3);

    /// <summary>Works out the film of strokes square to the panel with the fan across the travel.</summary>
    /// <param name="gun">How much leaves the gun and how much of it lands.</param>
    /// <param name="pattern">The fan.</param>
    /// <param name="settings">How the gun is led; the trigger lead does not matter far from the edges.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public StrokeOverlap(SprayGun gun, FanPattern pattern, StrokeSettings settings)
    {
        Gun = Guard.NotNull(gun);
        Pattern = Guard.NotNull(pattern);
        Settings = Guard.NotNull(settings);
    }

    /// <summary>How much leaves the gun and how much of it lands.</summary>
    public SprayGun Gun { get; }

    /// <summary>The fan.</summary>
    public FanPattern Pattern { get; }

    /// <summary>How the gun is led.</summary>
    public StrokeSettings Settings { get; }

    /// <summary>Width of the fan at the surface.</summary>
    public Length FanWidth => Length.FromMeters(Width().Value);

    /// <summary>Distance from stroke to stroke: width × (1 − overlap).</summary>
    public Length Spacing => Length.FromMeters(Apart().Value);

    /// <summary>Mean wet film of one coat.</summary>
    public Length MeanWetFilm => Length.FromMeters(Mean().Value);

    /// <summary>Thickest place over mean.</summary>
    public Ratio MaximumOverMean => Ratio.FromDecimalFractions(Highest().Value);

    /// <summary>Thinnest place over mean; 0 where stripes stay bare.</summary>
    public Ratio MinimumOverMean => Ratio.FromDecimalFractions(Lowest().Value);

    /// <summary>Standard deviation over mean, of one coat.</summary>
    public Ratio Variation => Ratio.FromDecimalFractions(Cv().Value);

    /// <summary>Standard deviation over mean of two equal coats crossed at right angles.</summary>
    public Ratio CrossedVariation => Ratio.FromDecimalFractions(CvCrossed().Value);

    /// <summary>
    /// How many passes at this speed build a wet film: its thickness over <see cref="MeanWetFilm"/>. No whole number in general; the passes
    /// of a coat are whole, so take a whole number and <see cref="SpeedFor"/> it.
    /// </summary>
    /// <param name="wetFilm">Mean wet film in all, more than 0 and at most 5 mm.</param>
    /// <returns>The passes, as if each flashed off and lost nothing of its thickness before the next.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double PassesFor(Length wetFilm) => Guard.Within(wetFilm, Films) / Mean().Value;

    /// <summary>The speed of the gun at which a number of passes builds a mean wet film: passes × Q × TE / (film × spacing).</summary>
    /// <param name="wetFilm">Mean wet film in all, more than 0 and at most 5 mm.</param>
    /// <param name="passes">Passes, 1 to 20.</param>
    /// <returns>The speed; distance and overlap stay as they are.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is outside its range, or the film asks for a speed outside that of <see cref="StrokeSettings.Speed"/>, 1 to 300 cm/s:
    /// change the passes or the fluid rate.
    /// </exception>
    public Speed SpeedFor(Length wetFilm, int passes)
    {
        double film = Guard.Within(wetFilm, Films);
        double perFilm = Guard.Count(passes, 1, 20) * Landed().Value / Apart().Value;
        double speed = perFilm / film;
        if (!StrokeSettings.Speeds.Contains(speed))
        {
            string allowed = Measure.Film.Format(perFilm / StrokeSettings.Speeds.Maximum) + " to "
                + Measure.Film.Format(perFilm / StrokeSettings.Speeds.Minimum) + " in these passes, for a speed of "
                    + StrokeSettings.Speeds;
            Guard.Rule(false, nameof(wetFilm), film, Measure.Film, allowed);
        }

        return Speed.FromMetersPerSecond(speed);
    }

    /// <summary>How the mean and the evenness follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() =>
        Trace.Of("Parallel strokes over a flat panel", Width, Apart, Mean, t => Share(t), Highest, Lowest, Cv, CvCrossed);

    /// <summary>The mean and the evenness in one line, in metric units.</summary>
    /// <returns>Text such as <c>33.6 µm wet on the mean, 75 % to 112.5 % of it, CV 11.18 %</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0} wet on the mean, {1} to {2} of it, CV {3}",
        Measure.Film.Format(Mean().Value, DisplayUnits.Si, 3), Measure.Percent.Format(Lowest().Value, DisplayUnits.Si, 4),
        Measure.Percent.Format(Highest().Value, DisplayUnits.Si, 4), Measure.Percent.Format(Cv().Value, DisplayUnits.Si, 4));

    private Num Width(Trace? t = null) => t.Step("width of the fan at the surface", "w", Measure.Length, Similar, FanPatternKernel.Width(
        t.Given("w_0", Pattern.Width.Meters, Measure.Length), t.Given("d", Settings.Distance.Meters, Measure.Length),
        t.Given("d_0", Pattern.ReferenceDistance.Meters, Measure.Length)));

    private Num Apart(Trace? t = null) => t.Step("distance from stroke to stroke", "s", Measure.Length, Similar, Width(t) * Uncovered(t));

    // Q TE, what lands per time.
    private Num Landed(Trace? t = null) =>
        t.Given("Q", Gun.FluidRate.CubicMetersPerSecond, Measure.FluidRate)
        * t.Given("TE", Gun.TransferEfficiency.DecimalFractions, Measure.Percent);

    private Num Mean(Trace? t = null) =>
        t.Step("mean wet film", "WFT_m", Measure.Film, Conservation,
            Landed(t) / (t.Given("v", Settings.Speed.MetersPerSecond, Measure.Speed) * Apart(t)));

    private Num Share(Trace? t) =>
        t.Step("distance from stroke to stroke in widths of the fan", "σ_s", Measure.Number, Similar, Uncovered(t));

    private Num Highest(Trace? t = null) => t.Step("thickest over mean", "r_max", Measure.Percent, Method, Pattern.Shape switch
    {
        FanPatternShape.Uniform => StrokeOverlapKernel.Most(Share(t)) * Share(t),
        FanPatternShape.Gaussian => StrokeOverlapKernel.GaussianExtreme(Share(t), true, t),
        _ => StrokeOverlapKernel.BetaExtreme(Share(t), Pattern.Exponent, true, t),
    });

    private Num Lowest(Trace? t = null) => t.Step("thinnest over mean", "r_min", Measure.Percent, Method, Pattern.Shape switch
    {
        FanPatternShape.Uniform => StrokeOverlapKernel.Full(Share(t)) * Share(t),
        FanPatternShape.Gaussian => StrokeOverlapKernel.GaussianExtreme(Share(t), false, t),
        _ => StrokeOverlapKernel.BetaExtreme(Share(t), Pattern.Exponent, false, t),
    });

    private Num Cv(Trace? t = null) => t.Step("standard deviation over mean", "CV", Measure.Percent, Method, Pattern.Shape switch
    {
        FanPatternShape.Uniform => StrokeOverlapKernel.UniformVariation(Share(t)),
        FanPatternShape.Gaussian => StrokeOverlapKernel.GaussianVariation(Share(t), t),
        _ => StrokeOverlapKernel.BetaVariation(Share(t), Pattern.Exponent, t),
    });

    private Num CvCrossed(Trace? t = null) =>
        t.Step("the same for two coats crossed", "CV_x", Measure.Percent, Crossed, Cv(t) / Num.Sqrt(t.Number(2)));

    private Num Uncovered(Trace? t) => 1 - t.Given("o", Settings.Overlap.DecimalFractions, Measure.Percent);

    private Source Method => Pattern.Shape switch { FanPatternShape.Uniform => Stripes, FanPatternShape.Gaussian => Poisson, _ => Pieces };
}

using System;
using System.Collections.Generic;
using System.Globalization;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// The wet film of many parallel strokes over a flat panel, in closed form: the mean is fluid rate × transfer efficiency / (speed × spacing),
/// whatever the fan's shape; how even it is depends on shape and overlap.
/// </summary>
/// <remarks>
/// More overlap is not always more even: a parabolic fan is evener at 33 % than at 50 %.
/// Two coats crossed at right angles are independent of each other, which divides the variation by √2.
/// Source: mean by conservation of volume, Gaussian by Poisson summation, the others piece by piece (derived); the Gaussian is taken whole, not cut off.
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
    private static readonly Source Conservation = Source.Derived("volume landed per time = fluid rate × transfer efficiency = film × speed × spacing");
    private static readonly Source Similar = Source.Derived("a fan over solid angle: width in proportion to distance");
    private static readonly Source Poisson = Source.Derived("Poisson summation of equal Gaussian strokes, σ = w/4");
    private static readonly Source Stripes = Source.Derived("flat stripes: N or N + 1 of them over each point");
    private static readonly Source Pieces = Source.Derived("sum of equal strokes over one period, extremes searched within its smooth pieces, squares integrated over them");
    private static readonly Source Crossed = Source.Derived("two independent patterns of half the film each");

    private static readonly Bounds Films = Bounds.Positive(Measure.Film, 5e-3);

    private readonly double width;
    private readonly double spacing;
    private readonly double share;

    /// <summary>Works out the film of strokes square to the panel with the fan across the travel.</summary>
    /// <param name="gun">How much leaves the gun and how much of it lands.</param>
    /// <param name="pattern">The fan.</param>
    /// <param name="settings">How the gun is led; the trigger lead does not matter far from the edges.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public StrokeOverlap(SprayGun gun, FanPattern pattern, StrokeSettings settings)
    {
        Gun = Guard.NotNull(gun, nameof(gun));
        Pattern = Guard.NotNull(pattern, nameof(pattern));
        Settings = Guard.NotNull(settings, nameof(settings));
        width = FanPatternKernel.Width(pattern.WidthSi, settings.DistanceSi, pattern.ReferenceSi);
        share = 1 - settings.OverlapSi;
        spacing = width * share;
    }

    /// <summary>How much leaves the gun and how much of it lands.</summary>
    public SprayGun Gun { get; }

    /// <summary>The fan.</summary>
    public FanPattern Pattern { get; }

    /// <summary>How the gun is led.</summary>
    public StrokeSettings Settings { get; }

    /// <summary>Width of the fan at the surface.</summary>
    public Length FanWidth => Length.FromMeters(width);

    /// <summary>Distance from stroke to stroke: width × (1 − overlap).</summary>
    public Length Spacing => Length.FromMeters(spacing);

    /// <summary>Mean wet film of one coat.</summary>
    public Length MeanWetFilm => Length.FromMeters(Mean);

    /// <summary>Thickest place over mean.</summary>
    public Ratio MaximumOverMean => Ratio.FromDecimalFractions(Highest);

    /// <summary>Thinnest place over mean; 0 where stripes stay bare.</summary>
    public Ratio MinimumOverMean => Ratio.FromDecimalFractions(Lowest);

    /// <summary>Standard deviation over mean, of one coat.</summary>
    public Ratio Variation => Ratio.FromDecimalFractions(Cv);

    /// <summary>Standard deviation over mean of two equal coats crossed at right angles.</summary>
    public Ratio CrossedVariation => Ratio.FromDecimalFractions(Cv / Math.Sqrt(2));

    // Q TE, what lands per time.
    private double Landed => Gun.FluidRate.CubicMetersPerSecond * Gun.TransferEfficiency.DecimalFractions;

    private double Mean => Landed / (Settings.SpeedSi * spacing);

    private double Highest => Pattern.Shape switch
    {
        FanPatternShape.Uniform => Math.Ceiling((1 / share) - StrokeOverlapKernel.Whole) * share,
        FanPatternShape.Gaussian => StrokeOverlapKernel.GaussianExtreme(share, true),
        _ => At(StrokeOverlapKernel.BetaExtremeAt(share, Pattern.Exponent, true)),
    };

    private double Lowest => Pattern.Shape switch
    {
        FanPatternShape.Uniform => StrokeOverlapKernel.Full(share) * share,
        FanPatternShape.Gaussian => StrokeOverlapKernel.GaussianExtreme(share, false),
        _ => At(StrokeOverlapKernel.BetaExtremeAt(share, Pattern.Exponent, false)),
    };

    private double Cv => Pattern.Shape switch
    {
        FanPatternShape.Uniform => Math.Sqrt(StrokeOverlapKernel.Rest(share) * Math.Max(0, 1 - StrokeOverlapKernel.Rest(share))) * share,
        FanPatternShape.Gaussian => StrokeOverlapKernel.GaussianVariation(share),
        _ => StrokeOverlapKernel.BetaVariation(share, Pattern.Exponent),
    };

    /// <summary>
    /// How many passes at this speed build a wet film: its thickness over <see cref="MeanWetFilm"/>. No whole number in general; the
    /// passes of a coat are whole, so take a whole number and <see cref="SpeedFor"/> it.
    /// </summary>
    /// <param name="wetFilm">Mean wet film in all, more than 0 and at most 5 mm.</param>
    /// <returns>The passes, as if each flashed off and lost nothing of its thickness before the next.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double PassesFor(Length wetFilm) => Guard.Within(wetFilm, Films, nameof(wetFilm)) / Mean;

    /// <summary>The speed of the gun at which a number of passes builds a mean wet film: passes × Q × TE / (film × spacing).</summary>
    /// <param name="wetFilm">Mean wet film in all, more than 0 and at most 5 mm.</param>
    /// <param name="passes">Passes, 1 to 20.</param>
    /// <returns>The speed; distance and overlap stay as they are.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is outside its range, or the film asks for a speed outside that of <see cref="StrokeSettings.Speed"/>, 1 to 300 cm/s:
    /// change the passes or the fluid rate.
    /// </exception>
    public Speed SpeedFor(Length wetFilm, int passes = 1)
    {
        double film = Guard.Within(wetFilm, Films, nameof(wetFilm));
        double speed = Guard.Count(passes, 1, 20, nameof(passes)) * Landed / (film * spacing);
        Guard.Rule(
            StrokeSettings.Speeds.Contains(speed), nameof(wetFilm), film, Measure.Film,
            Measure.Film.Format(passes * Landed / (StrokeSettings.Speeds.Maximum * spacing)) + " to "
            + Measure.Film.Format(passes * Landed / (StrokeSettings.Speeds.Minimum * spacing))
            + " in these passes, for a speed of " + StrokeSettings.Speeds);
        return Speed.FromMetersPerSecond(speed);
    }

    /// <summary>How the mean and the evenness follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression q = Expression.Quantity("Q", Gun.FluidRate.CubicMetersPerSecond, Measure.FluidRate);
        Expression te = Expression.Quantity("TE", Gun.TransferEfficiency.DecimalFractions, Measure.Percent);
        Expression v = Expression.Quantity("v", Settings.SpeedSi, Measure.Speed);
        Expression o = Expression.Quantity("o", Settings.OverlapSi, Measure.Percent);
        Expression w0 = Expression.Quantity("w_0", Pattern.WidthSi, Measure.Length);
        Expression d = Expression.Quantity("d", Settings.DistanceSi, Measure.Length);
        Expression d0 = Expression.Quantity("d_0", Pattern.ReferenceSi, Measure.Length);
        WorkingStep fan = new("width of the fan at the surface", "w", w0 * d / d0, width, Measure.Length, Similar);
        WorkingStep distance = new("distance from stroke to stroke", "s", fan.Result() * (1 - o), spacing, Measure.Length, Similar);
        WorkingStep mean = new("mean wet film", "WFT_m", q * te / (v * distance.Result()), Mean, Measure.Film, Conservation);
        Source source = Pattern.Shape switch { FanPatternShape.Uniform => Stripes, FanPatternShape.Gaussian => Poisson, _ => Pieces };
        WorkingStep widths = new("distance from stroke to stroke in widths of the fan", "σ_s", 1 - o, share, Measure.Number, Similar);
        (Expression high, Expression low, Expression variation) = Evenness(widths.Result());
        WorkingStep most = new("thickest over mean", "r_max", high, Highest, Measure.Percent, source);
        WorkingStep least = new("thinnest over mean", "r_min", low, Lowest, Measure.Percent, source);
        WorkingStep cv = new("standard deviation over mean", "CV", variation, Cv, Measure.Percent, source);
        WorkingStep crossed = new("the same for two coats crossed", "CV_x", cv.Result() / Expression.Sqrt(2), Cv / Math.Sqrt(2), Measure.Percent, Crossed);
        return new Workings("Parallel strokes over a flat panel", [fan, distance, mean, widths, most, least, cv, crossed]);
    }

    /// <summary>The mean and the evenness in one line, in metric units.</summary>
    /// <returns>Text such as <c>33.6 µm wet on the mean, 75 % to 112.5 % of it, CV 11.18 %</c>.</returns>
    public override string ToString() => string.Format(
        CultureInfo.InvariantCulture,
        "{0} wet on the mean, {1} to {2} of it, CV {3}",
        Measure.Film.Format(Mean, DisplayUnits.Si, 3),
        Measure.Percent.Format(Lowest, DisplayUnits.Si, 4),
        Measure.Percent.Format(Highest, DisplayUnits.Si, 4),
        Measure.Percent.Format(Cv, DisplayUnits.Si, 4));

    private double At(double x)
    {
        // The piece is the one that the place belongs to; on a break both pieces agree.
        double edge = StrokeOverlapKernel.Break(share);
        (int first, int last) = StrokeOverlapKernel.Strokes(share, x <= edge ? edge / 2 : (edge + (share / 2)) / 2);
        return StrokeOverlapKernel.Beta(share, Pattern.Exponent, x, first, last);
    }

    private (Expression High, Expression Low, Expression Variation) Evenness(Expression s)
    {
        if (Pattern.Shape == FanPatternShape.Uniform)
        {
            Expression full = Expression.Floor((1 / s) + StrokeOverlapKernel.Whole);
            Expression rest = Expression.Max(0, (1 / s) - full);
            return (
                Expression.Ceiling((1 / s) - StrokeOverlapKernel.Whole) * s,
                full * s,
                Expression.Sqrt(rest * Expression.Max(0, 1 - rest)) * s);
        }

        if (Pattern.Shape == FanPatternShape.Gaussian)
        {
            List<Expression> high = [];
            List<Expression> low = [];
            List<Expression> squares = [];
            for (int n = 1; n <= StrokeOverlapKernel.Harmonics(share); n++)
            {
                Expression a = Expression.Exp((0 - Expression.Square(Expression.Pi())) * Expression.Square(n) / (8 * Expression.Square(s)));
                high.Add(a);
                low.Add(n % 2 == 0 ? a : 0 - a);
                squares.Add(Expression.Square(a));
            }

            return (1 + (2 * Expression.Sum(high)), 1 + (2 * Expression.Sum(low)), Expression.Sqrt(2 * Expression.Sum(squares)));
        }

        double edge = StrokeOverlapKernel.Break(share);
        List<Expression> pieces = [];
        foreach ((double from, double to) in new[] { (0, edge), (edge, share / 2) })
        {
            if (to > from)
            {
                (int first, int last) = StrokeOverlapKernel.Strokes(share, (from + to) / 2);
                pieces.Add(Expression.Integral(
                    "t",
                    0,
                    1,
                    t => Expression.Square(Film(s, from + ((to - from) * (Expression.Square(t) * (3 - (2 * t)))), first, last) - 1) * (6 * t * (1 - t))) * (to - from));
            }
        }

        return (Extreme(s, true), Extreme(s, false), Expression.Sqrt(Expression.Sum(pieces) / (s / 2)));
    }

    private Expression Extreme(Expression s, bool highest)
    {
        double x = StrokeOverlapKernel.BetaExtremeAt(share, Pattern.Exponent, highest);
        double edge = StrokeOverlapKernel.Break(share);
        (int first, int last) = StrokeOverlapKernel.Strokes(share, x <= edge ? edge / 2 : (edge + (share / 2)) / 2);
        return Film(s, Expression.Quantity(highest ? "x_max" : "x_min", x, Measure.Number), first, last);
    }

    private Expression Film(Expression s, Expression x, int first, int last)
    {
        List<Expression> strokes = [];
        for (int k = first; k <= last; k++)
        {
            Expression inside = Expression.Max(0, 1 - Expression.Square(2 * (x - (k * s))));
            strokes.Add(Expression.Power(inside, Pattern.Exponent - 1));
        }

        return s * Expression.Quantity("c", FanPatternKernel.BetaFactor(Pattern.Exponent), Measure.Number) * Expression.Sum(strokes);
    }
}

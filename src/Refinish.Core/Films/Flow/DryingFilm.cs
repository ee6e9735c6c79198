using System;
using System.Collections.Generic;
using Refinish.Numerics;
using UnitsNet;

namespace Refinish.Films;

/// <summary>A wet film that loses its solvent and thickens as it does: what it sags and how much of a ripple is left by the time it sets.</summary>
/// <remarks>
/// Volatile part h_v = h_v0 e^(−t/τ), solids stay, φ = h_s/h, η = η₀ e^(B (φ − φ₀)). Then Φ = ∫ dt/η, sag = ½ ρ g sin α ∫ h² dt/η, and the ripple left is
/// exp(−16 π⁴ σ/(3 λ⁴) ∫ h³ dt/η). One rate for all solvent, in all depths: a real film loses it first from its surface, then by diffusion, and thick films dry slower than this says. B, τ and η₀
/// are fitted to a trial (a sag that was seen, a viscosity of the reduced and the unreduced coating), they stand on no data sheet.
/// </remarks>
/// <example><code>
/// DryingFilm film = new()
/// {
///     WetFilm = Length.FromMicrometers(75), Solids = Ratio.FromPercent(41), Viscosity = DynamicViscosity.FromPascalSeconds(0.25),
///     SolventTime = TimeSpan.FromSeconds(60), Thickening = 16, Until = TimeSpan.FromHours(1), Slope = Angle.FromDegrees(90),
///     Density = Density.FromGramsPerMilliliter(1.1), SurfaceTension = ForcePerLength.FromMillinewtonsPerMeter(28), Wavelength = Length.FromMillimeters(3),
/// };
/// double sag = film.Sag.Millimeters;                 // 1.46
/// double left = film.RippleLeft;                     // 0.038
/// </code></example>
public sealed record DryingFilm
{
    private static readonly Source Model = Source.Derived("one rate of solvent loss and a viscosity exponential in the solids; film flow integrated over the time");

    private readonly double wet;
    private readonly double solids;
    private readonly double viscosity;
    private readonly double solventTime;
    private readonly double until;
    private readonly double slope;
    private readonly double density;
    private readonly double tension;
    private readonly double wavelength;

    /// <summary>Wet film as laid, from 1 µm to 5 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length WetFilm
    {
        get => Length.FromMeters(wet);
        init => wet = Guard.Within(value, FlowRanges.Film, nameof(WetFilm));
    }

    /// <summary>Volume solids φ₀ of the coating as it lies on the surface, reducer and flight losses included, 5 to 100 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio Solids
    {
        get => Ratio.FromDecimalFractions(solids);
        init => solids = Guard.Within(value, Bounds.Between(0.05, 1, Measure.Percent), nameof(Solids));
    }

    /// <summary>Viscosity η₀ as laid, at slow shear, from 0.1 mPa·s to 10 000 Pa·s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required DynamicViscosity Viscosity
    {
        get => DynamicViscosity.FromPascalSeconds(viscosity);
        init => viscosity = Guard.Within(value, FlowRanges.Viscosity, nameof(Viscosity));
    }

    /// <summary>Time τ in which the solvent left falls to 1/e, from 1 s to 1 day.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required TimeSpan SolventTime
    {
        get => Durations.FromSeconds(solventTime);
        init => solventTime = Guard.Within(value, Bounds.Between(1, 86400, Measure.Seconds), nameof(SolventTime));
    }

    /// <summary>B: by how many e-folds the viscosity would rise from no solids to all solids, 0 to 40.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required double Thickening
    {
        get;
        init => field = Guard.Within(value, Bounds.Between(0, 40, Measure.Number), nameof(Thickening));
    }

    /// <summary>When the film has set and nothing moves any more, more than 0 and at most 7 days.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required TimeSpan Until
    {
        get => Durations.FromSeconds(until);
        init => until = Guard.Within(value, FlowRanges.Duration, nameof(Until));
    }

    /// <summary>Slope from level, 0 (a floor) to 90° (a wall).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Angle Slope
    {
        get => Angle.FromRadians(slope);
        init => slope = Guard.Within(value, FlowRanges.Slope, nameof(Slope));
    }

    /// <summary>Density of the wet coating, 0.5 to 3 g/mL.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Density Density
    {
        get => Density.FromKilogramsPerCubicMeter(density);
        init => density = Guard.Within(value, FlowRanges.Density, nameof(Density));
    }

    /// <summary>Surface tension of the wet coating, 5 to 100 mN/m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required ForcePerLength SurfaceTension
    {
        get => ForcePerLength.FromNewtonsPerMeter(tension);
        init => tension = Guard.Within(value, FlowRanges.Tension, nameof(SurfaceTension));
    }

    /// <summary>The ripple, crest to crest, 0.05 to 100 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Wavelength
    {
        get => Length.FromMeters(wavelength);
        init => wavelength = Guard.Within(value, FlowRanges.Wavelength, nameof(Wavelength));
    }

    /// <summary>Φ = ∫ dt/η until it sets, in 1/Pa.</summary>
    public double Fluidity => Moment(0);

    /// <summary>How far the surface creeps down the slope.</summary>
    public Length Sag => Length.FromMeters(FlowKernel.Drive(density, slope) / 2 * Moment(2));

    /// <summary>Part of the ripple that is left, 0 to 1.</summary>
    public double RippleLeft => Math.Exp(-(Pull * Moment(3)));

    /// <summary>Film when it sets.</summary>
    public Length FilmAtEnd => Length.FromMeters(FilmAt(until));

    /// <summary>Viscosity when it sets. It only counts that it is large: one that is not means the film was still moving.</summary>
    public DynamicViscosity ViscosityAtEnd => DynamicViscosity.FromPascalSeconds(ViscosityAt(until));

    private double Pull => 16 * Math.PI * Math.PI * Math.PI * Math.PI * tension / (3 * wavelength * wavelength * wavelength * wavelength);

    /// <summary>How the sag and the ripple follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression sigma = Expression.Quantity("σ", tension, Measure.SurfaceTension);
        Expression drive = Expression.Quantity("ρ", density, Measure.Density) * Expression.Quantity("g", FlowKernel.Gravity, Measure.Acceleration)
            * Expression.Sin(Expression.Quantity("α", slope, Measure.Angle));
        Expression pull = 16 * Expression.Power(Expression.Pi(), 4) * sigma / (3 * Expression.Power(Expression.Quantity("λ", wavelength, Measure.Length), 4));
        return new Workings(
            "Drying film",
            [
                new("film when it sets", "h_end", Film(Expression.Quantity("t_end", until, Measure.Seconds)), FilmAt(until), Measure.Film, Model),
                new("viscosity when it sets", "η_end", Eta(Expression.Quantity("t_end", until, Measure.Seconds)), ViscosityAt(until), Measure.DynamicViscosity, Model),
                new("fluidity over time", "Φ", Integral(0), Moment(0), Measure.Fluidity, Model),
                new("sag", "L", drive / 2 * Integral(2), Sag.Meters, Measure.Length, Model),
                new("ripple left", "ε", Expression.Exp(-(pull * Integral(3))), RippleLeft, Measure.Number, Model),
            ]);
    }

    /// <summary>The sag and the ripple in one line, in metric units.</summary>
    /// <returns>Text such as <c>75 µm wet: sags 1.46 mm, 3.79 % of the ripple left</c>.</returns>
    public override string ToString() =>
        Measure.Film.Format(wet) + " wet: sags " + Measure.Length.Format(Sag.Meters, DisplayUnits.Si, 3) + ", " + Measure.Percent.Format(RippleLeft, DisplayUnits.Si, 3) + " of the ripple left";

    private double FilmAt(double time) => wet * (solids + ((1 - solids) * Math.Exp(-(time / solventTime))));

    private double ViscosityAt(double time) => viscosity * Math.Exp(Thickening * ((wet * solids / FilmAt(time)) - solids));

    private double FluidityTimesFilm(double time, int power)
    {
        double film = FilmAt(time);
        double fluid = 1 / ViscosityAt(time);
        return power switch
        {
            0 => fluid,
            2 => film * film * fluid,
            _ => film * film * film * fluid,
        };
    }

    // Panels that grow with the time: the viscosity changes in the first folds and hardly after.
    private List<double> Ends()
    {
        List<double> ends = [0];
        for (double fold = 4; fold <= 64 && fold * solventTime < until; fold *= 4)
        {
            ends.Add(fold * solventTime);
        }

        ends.Add(until);
        return ends;
    }

    private double Moment(int power)
    {
        List<double> ends = Ends();
        double sum = 0;
        for (int i = 1; i < ends.Count; i++)
        {
            sum += Quadrature.GaussLegendre((this, power), static (state, t) => state.Item1.FluidityTimesFilm(t, state.power), ends[i - 1], ends[i]);
        }

        return sum;
    }

    private Expression Film(Expression time)
    {
        Expression phi = Expression.Quantity("φ_0", solids, Measure.Number);
        return Expression.Quantity("h_0", wet, Measure.Film) * (phi + ((1 - phi) * Expression.Exp(-(time / Expression.Quantity("τ", solventTime, Measure.Seconds)))));
    }

    private Expression Eta(Expression time)
    {
        Expression phi = Expression.Quantity("φ_0", solids, Measure.Number);
        Expression rise = (Expression.Quantity("h_0", wet, Measure.Film) * phi / Film(time)) - phi;
        return Expression.Quantity("η_0", viscosity, Measure.DynamicViscosity) * Expression.Exp(Expression.Quantity("B", Thickening, Measure.Number) * rise);
    }

    private Expression Integral(int power)
    {
        List<double> ends = Ends();
        List<Expression> parts = [];
        for (int i = 1; i < ends.Count; i++)
        {
            parts.Add(Expression.Integral(
                "t",
                Expression.Quantity("t_" + Figures.Significant(i - 1), ends[i - 1], Measure.Seconds),
                Expression.Quantity("t_" + Figures.Significant(i), ends[i], Measure.Seconds),
                t => power == 0 ? 1 / Eta(t) : Expression.Power(Film(t), power) / Eta(t)));
        }

        return Expression.Sum(parts);
    }
}

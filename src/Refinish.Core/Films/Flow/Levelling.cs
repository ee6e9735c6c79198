using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Films;

/// <summary>How fast a ripple of one wavelength levels out of a wet film under surface tension (Orchard), shallow and for any depth, and what a yield stress leaves of it.</summary>
/// <remarks>
/// <para>A small ripple decays as exp(−t/T). Shallow film: 1/T = σ k⁴ h³/(3 η) with k = 2π/λ, so that T = 3 η (λ/2π)⁴/(σ h³), and the half-time is T ln 2:
/// S. E. Orchard, Applied Scientific Research A11 (1962), as given by S. Abbott, "Levelling" (read there). Any depth: 1/T = σ k/(2 η) ·
/// (sinh kh cosh kh − kh)/(cosh² kh + (kh)²), from memory; the shallow form times a depth factor that is 1 for long waves. On a level floor gravity helps: + ρ g k² h³/(3 η) (long waves).</para>
/// <para>A yield stress leaves a ripple of about τ_y λ³/(8 π³ σ h) (from memory). Gradients of surface tension as solvent leaves, substrate texture and ripples as high as the film is thick are outside this.</para>
/// </remarks>
/// <example><code>
/// Levelling levelling = new()
/// {
///     Wavelength = Length.FromMillimeters(3), Film = Length.FromMicrometers(75),
///     SurfaceTension = ForcePerLength.FromMillinewtonsPerMeter(28), Viscosity = DynamicViscosity.FromPascalSeconds(0.3),
/// };
/// double seconds = levelling.ThinHalfTime.Seconds;        // 2.745
/// </code></example>
public sealed record Levelling
{
    private static readonly Source Orchard = Source.Published("Orchard, On surface levelling in viscous liquids and gels, Applied Scientific Research A11, 1962", "shallow film, as given by S. Abbott, Levelling");
    private static readonly Source AnyDepth = Source.FromMemory("Orchard 1962, film of any depth; tends to the shallow form");
    private static readonly Source Plastic = Source.FromMemory("ripple whose capillary pressure gradient just reaches the yield stress at the wall");

    private readonly double wavelength;
    private readonly double film;
    private readonly double tension;
    private readonly double viscosity;
    private readonly double yieldStress;
    private readonly double? density;

    /// <summary>Crest to crest, from 0.05 to 100 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Wavelength
    {
        get => Length.FromMeters(wavelength);
        init => wavelength = Guard.Within(value, FlowRanges.Wavelength, nameof(Wavelength));
    }

    /// <summary>Mean wet film, from 1 µm to 5 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Film
    {
        get => Length.FromMeters(film);
        init => film = Guard.Within(value, FlowRanges.Film, nameof(Film));
    }

    /// <summary>Surface tension of the wet coating, 5 to 100 mN/m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required ForcePerLength SurfaceTension
    {
        get => ForcePerLength.FromNewtonsPerMeter(tension);
        init => tension = Guard.Within(value, FlowRanges.Tension, nameof(SurfaceTension));
    }

    /// <summary>Viscosity at slow shear, from 0.1 mPa·s to 10 000 Pa·s.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required DynamicViscosity Viscosity
    {
        get => DynamicViscosity.FromPascalSeconds(viscosity);
        init => viscosity = Guard.Within(value, FlowRanges.Viscosity, nameof(Viscosity));
    }

    /// <summary>Yield stress, 0 to 1000 Pa; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Pressure YieldStress
    {
        get => Pressure.FromPascals(yieldStress);
        init => yieldStress = Guard.Within(value, FlowRanges.YieldStress, nameof(YieldStress));
    }

    /// <summary>Density of the wet coating, 0.5 to 3 g/mL, for a level floor where gravity helps; <see langword="null"/> leaves gravity out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Density? DensityOnFloor
    {
        get => density is double d ? Density.FromKilogramsPerCubicMeter(d) : null;
        init => density = value is Density d ? Guard.Within(d, FlowRanges.Density, nameof(DensityOnFloor)) : null;
    }

    /// <summary>k h, 2π times film over wavelength: well below 1 the film is shallow.</summary>
    public double DepthNumber => Wave * film;

    /// <summary>Time in which the ripple falls to 1/e in a shallow film.</summary>
    public Duration ThinTimeConstant => Duration.FromSeconds(1 / ThinRate);

    /// <summary>Time in which the ripple halves in a shallow film.</summary>
    public Duration ThinHalfTime => Duration.FromSeconds(Math.Log(2) / ThinRate);

    /// <summary>By what the rate in a film of this depth differs from the shallow film's: 1 for long waves, less for short ones.</summary>
    public double DepthFactor => FlowKernel.DepthFactor(DepthNumber);

    /// <summary>Time in which the ripple falls to 1/e, with the depth and, where asked for, gravity.</summary>
    public Duration TimeConstant => Duration.FromSeconds(1 / Rate);

    /// <summary>Time in which the ripple halves, with the depth and, where asked for, gravity.</summary>
    public Duration HalfTime => Duration.FromSeconds(Math.Log(2) / Rate);

    /// <summary>Height from mean to crest that the yield stress holds up; zero without one.</summary>
    public Length HeldRipple => Length.FromMeters(FlowKernel.HeldRipple(yieldStress, wavelength, tension, film));

    private double Wave => 2 * Math.PI / wavelength;

    private double ThinRate => FlowKernel.ThinRate(tension, Wave, film, viscosity);

    private double Rate => (ThinRate * DepthFactor) + (density is double rho ? FlowKernel.GravityRate(rho, Wave, film, viscosity) : 0);

    /// <summary>Part of the ripple that is left after a fluidity Φ = ∫ dt/η, with the depth and, where asked for, gravity. The yield stress is left out.</summary>
    /// <param name="fluidity">Φ in 1/Pa, 0 to 10⁹.</param>
    /// <returns>The part, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double RippleLeft(double fluidity) => Math.Exp(-(Rate * viscosity * Guard.Within(fluidity, Bounds.NotNegative(Measure.Fluidity, 1e9), nameof(fluidity))));

    /// <summary>How the times follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Expression length = Expression.Quantity("λ", wavelength, Measure.Length);
        Expression h = Expression.Quantity("h", film, Measure.Film);
        Expression sigma = Expression.Quantity("σ", tension, Measure.SurfaceTension);
        Expression eta = Expression.Quantity("η", viscosity, Measure.DynamicViscosity);
        WorkingStep wave = new("wave number", "k", 2 * Expression.Pi() / length, Wave, Measure.WaveNumber, Orchard);
        WorkingStep depth = new("depth number", "kh", wave.Result() * h, DepthNumber, Measure.Number, Orchard);
        WorkingStep thin = new(
            "time to 1/e, shallow", "T_0", 3 * eta * Expression.Power(length / (2 * Expression.Pi()), 4) / (sigma * Expression.Power(h, 3)), 1 / ThinRate, Measure.Seconds, Orchard);
        WorkingStep half = new("half-time, shallow", "T_½0", Expression.Ln(2) * thin.Result(), Math.Log(2) / ThinRate, Measure.Seconds, Orchard);
        WorkingStep factor = new("depth factor", "F", Depth(depth.Result()), DepthFactor, Measure.Number, AnyDepth);
        Expression rate = factor.Result() / thin.Result();
        if (density is double rho)
        {
            rate += Expression.Quantity("ρ", rho, Measure.Density) * Expression.Quantity("g", FlowKernel.Gravity, Measure.Acceleration)
                * Expression.Square(wave.Result()) * Expression.Power(h, 3) / (3 * eta);
        }

        WorkingStep time = new("time to 1/e", "T", 1 / rate, 1 / Rate, Measure.Seconds, AnyDepth);
        List<WorkingStep> steps =
        [
            wave, depth, thin, half, factor, time,
            new("half-time", "T_½", Expression.Ln(2) * time.Result(), Math.Log(2) / Rate, Measure.Seconds, AnyDepth),
            new(
                "ripple held by the yield stress",
                "a_y",
                Expression.Quantity("τ_y", yieldStress, Measure.Pressure) * Expression.Power(length, 3) / (8 * Expression.Power(Expression.Pi(), 3) * sigma * h),
                HeldRipple.Meters,
                Measure.Film,
                Plastic),
        ];
        return new Workings("Levelling", steps);
    }

    /// <summary>The half-time in one line, in metric units.</summary>
    /// <returns>Text such as <c>3 mm ripple in 75 µm: halves in 2.745 s</c>.</returns>
    public override string ToString() =>
        Measure.Length.Format(wavelength) + " ripple in " + Measure.Film.Format(film) + ": halves in " + Measure.Seconds.Format(Math.Log(2) / Rate, DisplayUnits.Si, 4);

    private static Expression Depth(Expression x)
    {
        if (x.Evaluate() > FlowKernel.DeepWave)
        {
            return 3 / (2 * Expression.Power(x, 3));
        }

        Expression lower = Expression.Square(Expression.Cosh(x)) + Expression.Square(x);
        return x.Evaluate() < FlowKernel.ShallowWave
            ? (1 + (Expression.Square(x) / 5) + (2 * Expression.Power(x, 4) / 105) + (Expression.Power(x, 6) / 945) + (2 * Expression.Power(x, 8) / 51975)) / lower
            : 3 * ((Expression.Sinh(x) * Expression.Cosh(x)) - x) / (2 * Expression.Power(x, 3) * lower);
    }
}

using System.Globalization;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// How a wet coating resists slow shear: τ = τ_y + K γ̇ⁿ (Herschel–Bulkley), with the Newtonian, Bingham and power-law liquids as its
/// special cases.
/// </summary>
/// <remarks>
/// The numbers have to be those of slow shear: sagging and levelling shear a film at about 0.01 to 1 per second (from memory,
/// unverified), an efflux cup a thousand times faster. A cup viscosity of a shear-thinning coating is too small here, and a film judged
/// with it seems to run sooner than it does and to level better than it does.
/// </remarks>
/// <example><code>
/// FilmRheology newtonian = FilmRheology.Newtonian(DynamicViscosity.FromPascalSeconds(0.3));
/// FilmRheology bingham = FilmRheology.Bingham(Pressure.FromPascals(0.5), DynamicViscosity.FromPascalSeconds(0.3));
/// FilmRheology thinning = FilmRheology.PowerLaw(consistency: 0.8, index: 0.7);
/// </code></example>
public sealed record FilmRheology
{
    /// <summary>Makes a liquid.</summary>
    /// <param name="yieldStress">τ_y, 0 to 1000 Pa.</param>
    /// <param name="consistency">K in Pa·sⁿ, from 10⁻⁴ to 10⁴.</param>
    /// <param name="index">n, 0.1 to 2: below 1 it thins with shear, 1 is Newtonian or Bingham.</param>
    /// <exception cref="System.ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public FilmRheology(Pressure yieldStress, double consistency, double index)
    {
        YieldPascals = Guard.Within(yieldStress, Bounds.NotNegative(Measure.Pressure, 1000));
        Consistency = Guard.Within(consistency, Bounds.Between(1e-4, 1e4, Measure.Consistency));
        Index = Guard.Within(index, Bounds.Between(0.1, 2, Measure.Number));
    }

    /// <summary>Yield stress τ_y: below it nothing flows.</summary>
    public Pressure YieldStress => Pressure.FromPascals(YieldPascals);

    /// <summary>Consistency K in Pa·sⁿ; the viscosity in Pa·s when the index is 1.</summary>
    public double Consistency { get; }

    /// <summary>Shear index n.</summary>
    public double Index { get; }

    internal double YieldPascals { get; }

    /// <summary>A liquid of one viscosity.</summary>
    /// <param name="viscosity">η, from 0.1 mPa·s to 10 000 Pa·s.</param>
    /// <returns>The liquid.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public static FilmRheology Newtonian(DynamicViscosity viscosity) =>
        new(Pressure.Zero, Guard.Within(viscosity, Bounds.Between(1e-4, 1e4, Measure.DynamicViscosity)), 1);

    /// <summary>A liquid that stands up to a yield stress and has one plastic viscosity beyond it.</summary>
    /// <param name="yieldStress">τ_y, 0 to 1000 Pa.</param>
    /// <param name="plasticViscosity">η_p, from 0.1 mPa·s to 10 000 Pa·s.</param>
    /// <returns>The liquid.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public static FilmRheology Bingham(Pressure yieldStress, DynamicViscosity plasticViscosity) =>
        new(yieldStress, Guard.Within(plasticViscosity, Bounds.Between(1e-4, 1e4, Measure.DynamicViscosity)), 1);

    /// <summary>A liquid without yield stress whose viscosity is K γ̇ⁿ⁻¹.</summary>
    /// <param name="consistency">K in Pa·sⁿ, from 10⁻⁴ to 10⁴.</param>
    /// <param name="index">n, 0.1 to 2.</param>
    /// <returns>The liquid.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public static FilmRheology PowerLaw(double consistency, double index) => new(Pressure.Zero, consistency, index);

    /// <summary>The liquid in one line.</summary>
    /// <returns>Text such as <c>yield stress 0.5 Pa, 300 mPa·s</c>.</returns>
    public override string ToString() =>
        (YieldPascals > 0 ? "yield stress " + Measure.Pressure.Format(YieldPascals) + ", " : string.Empty)
        + (Index == 1 ? Measure.DynamicViscosity.Format(Consistency) : string.Format(CultureInfo.InvariantCulture, "{0}, index {1}", Measure.Consistency.Format(Consistency), Figures.Significant(Index)));
}

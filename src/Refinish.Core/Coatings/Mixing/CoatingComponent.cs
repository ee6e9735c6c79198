using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>One can: base, hardener or reducer, with the density that turns millilitres into grams, and what else its data sheet tells.</summary>
/// <remarks>
/// Every figure but the density is optional. A calculation that needs one that is missing says that it cannot judge; it never fills in a
/// guess.
/// </remarks>
/// <example><code>
/// CoatingComponent hardener = new("isocyanate-hardener", "isocyanate hardener", Density.FromGramsPerMilliliter(1.05))
/// {
///     MassSolids = Ratio.FromPercent(75), IsocyanateContent = Ratio.FromPercent(16.5), ShelfLifeOpened = TimeSpan.FromDays(30),
/// };
/// </code></example>
public sealed record CoatingComponent
{
    internal static readonly Bounds Densities = Bounds.Between(500, 5000, Measure.Density);

    private static readonly Bounds Parts = Bounds.NotNegative(Measure.Percent, 1);
    private static readonly Bounds Lives = Bounds.Positive(Measure.Hours, 3650.0 * 86400);

    private readonly double density;
    private readonly double? massSolids;
    private readonly double? volumeSolids;
    private readonly double? water;
    private readonly double? exempt;
    private readonly double? exemptDensity;
    private readonly double? epoxide;
    private readonly double? amineHydrogen;
    private readonly double? isocyanateContent;
    private readonly double? viscosity;
    private readonly double? flashPoint;

    /// <summary>Makes a component.</summary>
    /// <param name="id">
    /// Identity, such as "epoxy-primer-base"; 1 to 100 characters, no '/', no control characters, no white space at either end.
    /// </param>
    /// <param name="name">Generic name, such as "primer base".</param>
    /// <param name="density">Density at room temperature, 0.5 to 5 g/mL.</param>
    /// <exception cref="ArgumentException"><paramref name="id"/> is not an identity, or <paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="density"/> is outside its range.</exception>
    public CoatingComponent(string id, string name, Density density)
    {
        Id = Guard.Id(id);
        Name = Guard.Named(name);
        this.density = Guard.Within(density, Densities);
    }

    /// <summary>Identity of the can.</summary>
    public string Id { get; }

    /// <summary>Generic name.</summary>
    public string Name { get; }

    /// <summary>Density at room temperature.</summary>
    public Density Density => Density.FromKilogramsPerCubicMeter(density);

    /// <summary>Solids by mass, 0 to 100 %; <see langword="null"/> when not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio? MassSolids { get => Fraction(massSolids); init => massSolids = Checked(value, nameof(MassSolids)); }

    /// <summary>Solids by volume, 0 to 100 %; <see langword="null"/> when not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio? VolumeSolids { get => Fraction(volumeSolids); init => volumeSolids = Checked(value, nameof(VolumeSolids)); }

    /// <summary>Water by mass, 0 to 100 %; <see langword="null"/> when not stated, which counts as none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio? Water { get => Fraction(water); init => water = Checked(value, nameof(Water)); }

    /// <summary>Solvent that the rule in force does not count as a volatile organic compound, by mass, 0 to 100 %; <see langword="null"/> when not stated, which counts as none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio? ExemptCompounds { get => Fraction(exempt); init => exempt = Checked(value, nameof(ExemptCompounds)); }

    /// <summary>Density of the exempt solvent, 0.5 to 2 g/mL; needed where <see cref="ExemptCompounds"/> is more than zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Density? ExemptDensity
    {
        get => exemptDensity is double value ? Density.FromKilogramsPerCubicMeter(value) : null;
        init => exemptDensity = value is Density given ? Guard.Within(given, Bounds.Between(500, 2000, Measure.Density), nameof(ExemptDensity)) : null;
    }

    /// <summary>Solvents of this can, as shares of its volatile mass that add up to 100 %; empty when not stated.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The shares do not add up to 100 % within 0.1 %.</exception>
    public IReadOnlyList<SolventShare> Solvents { get; init => field = SolventShare.WithoutWater(value, nameof(Solvents)); }
    = ValueList<SolventShare>.Empty;

    /// <summary>Grams as supplied per mole of epoxide, 5 to 20 000; <see langword="null"/> when it is no epoxy or not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public MolarMass? EpoxideEquivalent
    {
        get => epoxide is double value ? MolarMass.FromKilogramsPerMole(value) : null;
        init => epoxide = value is MolarMass given ? Guard.Within(given, EquivalentWeights.Grams, nameof(EpoxideEquivalent)) : null;
    }

    /// <summary>Grams as supplied per mole of amine hydrogen, 5 to 20 000; <see langword="null"/> when it is no amine or not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public MolarMass? AmineHydrogenEquivalent
    {
        get => amineHydrogen is double value ? MolarMass.FromKilogramsPerMole(value) : null;
        init => amineHydrogen = value is MolarMass given ? Guard.Within(given, EquivalentWeights.Grams, nameof(AmineHydrogenEquivalent)) : null;
    }

    /// <summary>Hydroxyl number as supplied, more than 0 and at most 2000 mg KOH/g; of a reducer, that of its alcohols. <see langword="null"/> when not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double? HydroxylNumber
    {
        get;
        init
        {
            // Kept as given: a number that is divided and multiplied again may come back changed in its last digit.
            if (value is double given)
            {
                Guard.Within(given / 1000, EquivalentWeights.HydroxylNumbers, nameof(HydroxylNumber));
            }

            field = value;
        }
    }

    /// <summary>NCO groups as supplied by mass, more than 0 and at most 60 %; <see langword="null"/> when it is no isocyanate or not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio? IsocyanateContent
    {
        get => Fraction(isocyanateContent);
        init => isocyanateContent = value is Ratio given ? Guard.Within(given, Bounds.Positive(Measure.Percent, 0.6), nameof(IsocyanateContent)) : null;
    }

    /// <summary>Viscosity at room temperature, 0.1 mPa·s to 1000 Pa·s; <see langword="null"/> when not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public DynamicViscosity? Viscosity
    {
        get => viscosity is double value ? DynamicViscosity.FromNewtonSecondsPerMeterSquared(value) : null;
        init => viscosity = value is DynamicViscosity given ? Guard.Within(given, Bounds.Between(1e-4, 1000, Measure.DynamicViscosity), nameof(Viscosity)) : null;
    }

    /// <summary>Flash point, −60 to 300 °C; <see langword="null"/> when not stated, which is not the same as none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Temperature? FlashPoint
    {
        get => flashPoint is double value ? Temperature.FromKelvins(value) : null;
        init => flashPoint = value is Temperature given ? Guard.Within(given, Bounds.Between(213.15, 573.15, Measure.Temperature), nameof(FlashPoint)) : null;
    }

    /// <summary>How long the can keeps once opened and closed again, up to 10 years; <see langword="null"/> when not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Zero, negative or too long.</exception>
    public TimeSpan? ShelfLifeOpened
    {
        get;
        init
        {
            if (value is TimeSpan given)
            {
                Guard.Within(given, Lives, nameof(ShelfLifeOpened));
            }

            field = value;
        }
    }

    /// <summary>Sizes in which this can is sold by itself; empty when it comes only in kits or is not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A size is zero or above 1000 L.</exception>
    public IReadOnlyList<Volume> ShippingSizes
    {
        get;
        init => field = new ValueList<Volume>(Guard.NotNull(value)
            .Select(size => Volume.FromCubicMeters(Guard.Within(size, Bounds.Positive(Measure.Capacity, 1), nameof(ShippingSizes)))));
    }
    = ValueList<Volume>.Empty;

    /// <summary>The name and the density.</summary>
    /// <returns>Text such as <c>primer base, 1.35 g/mL</c>.</returns>
    public override string ToString() => Name + ", " + Measure.Density.Format(density);

    private static Ratio? Fraction(double? value) => value is double fraction ? Ratio.FromDecimalFractions(fraction) : null;

    private static double? Checked(Ratio? value, string name) => value is Ratio given ? Guard.Within(given, Parts, name) : null;
}

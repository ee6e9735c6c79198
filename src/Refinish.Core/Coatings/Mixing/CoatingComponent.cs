using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using System.Linq;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// One can: base, hardener or reducer, with the density that turns millilitres into grams, and what else its data sheet tells.
/// </summary>
/// <remarks>
/// Every figure but the density is optional. A calculation that needs one that is missing says that it cannot judge; it never fills in a
/// guess.
/// </remarks>
/// <example><code>
/// CoatingComponent hardener = new()
/// {
///     Id = "isocyanate-hardener", Name = "isocyanate hardener", Density = Density.FromGramsPerMilliliter(1.05),
///     MassSolids = Ratio.FromPercent(75), IsocyanateContent = Ratio.FromPercent(16.5), ShelfLifeOpened = TimeSpan.FromDays(30),
/// };
/// </code></example>
public sealed record CoatingComponent
{
    internal static readonly Bounds Densities = Bounds.Between(500, 5000, Measure.Density);

    private static readonly Bounds Parts = Bounds.NotNegative(Measure.Percent, 1);

    /// <summary>What is measured of a can, as a table. Every row but the density may stay empty.</summary>
    public static RecordInputs<CoatingComponent> Inputs { get; } = new(
        record => record.Values,
        (record, values) => record with { Values = values },
        InputField.Of(nameof(Density), "density", Densities),
        InputField.Of(nameof(MassSolids), "solids by mass", Parts).OrUnknown(),
        InputField.Of(nameof(VolumeSolids), "solids by volume", Parts).OrUnknown(),
        InputField.Of(nameof(Water), "water", Parts).OrUnknown(),
        InputField.Of(nameof(ExemptCompounds), "exempt solvent", Parts).OrUnknown(),
        InputField.Of(nameof(ExemptDensity), "density of the exempt solvent", Bounds.Between(500, 2000, Measure.Density)).OrUnknown(),
        InputField.Of(nameof(EpoxideEquivalent), "epoxide equivalent", EquivalentWeights.Grams).OrUnknown(),
        InputField.Of(nameof(AmineHydrogenEquivalent), "amine hydrogen equivalent", EquivalentWeights.Grams).OrUnknown(),
        InputField.Of(nameof(HydroxylNumber), "hydroxyl number", EquivalentWeights.HydroxylNumbers).OrUnknown(),
        InputField.Of(nameof(IsocyanateContent), "isocyanate content", Bounds.Positive(Measure.Percent, 0.6)).OrUnknown(),
        InputField.Of(nameof(Viscosity), "viscosity", Bounds.Between(1e-4, 1000, Measure.DynamicViscosity)).OrUnknown(),
        InputField.Of(nameof(FlashPoint), "flash point", Bounds.Between(213.15, 573.15, Measure.Temperature)).OrUnknown(),
        InputField.Of(nameof(ShelfLifeOpened), "shelf life once opened", Bounds.Positive(Measure.Hours, 3650.0 * 86400)).OrUnknown());

    /// <summary>Values that are given one by one.</summary>
    public CoatingComponent()
    {
    }

    /// <summary>Values by name.</summary>
    /// <param name="id">Identity, as <see cref="Id"/> has it.</param>
    /// <param name="name">Generic name, such as "primer base".</param>
    /// <param name="values">Values of <see cref="Inputs"/>; the density not missing.</param>
    /// <exception cref="ArgumentException">
    /// <paramref name="id"/> is not an identity, <paramref name="name"/> is empty, the values are of other inputs, or the density is
    /// missing.
    /// </exception>
    [SetsRequiredMembers]
    public CoatingComponent(string id, string name, InputValues values)
    {
        Id = id;
        Name = name;
        Values = Inputs.Whole(values, nameof(values));
    }

    private InputValues Values { get; init; } = Inputs.Empty;

    /// <summary>
    /// Identity of the can, such as "epoxy-primer-base"; 1 to 100 characters, no '/', no control characters, no white space at either end.
    /// </summary>
    /// <exception cref="ArgumentException">It cannot be an identity.</exception>
    public required string Id { get; init => field = Guard.Id(value); }

    /// <summary>Generic name, such as "primer base".</summary>
    /// <exception cref="ArgumentException">Missing or empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>Density at room temperature, 0.5 to 5 g/mL.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Density Density { get => Values.Density(); init => Values = Values.Set(value); }

    /// <summary>Solids by mass, 0 to 100 %; <see langword="null"/> when not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio? MassSolids { get => Values.MaybeRatio(); init => Values = Values.SetOrClear(value); }

    /// <summary>Solids by volume, 0 to 100 %; <see langword="null"/> when not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio? VolumeSolids { get => Values.MaybeRatio(); init => Values = Values.SetOrClear(value); }

    /// <summary>Water by mass, 0 to 100 %; <see langword="null"/> when not stated, which counts as none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio? Water { get => Values.MaybeRatio(); init => Values = Values.SetOrClear(value); }

    /// <summary>
    /// Solvent that the rule in force does not count as a volatile organic compound, by mass, 0 to 100 %; <see langword="null"/> when
    /// not stated, which counts as none.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio? ExemptCompounds { get => Values.MaybeRatio(); init => Values = Values.SetOrClear(value); }

    /// <summary>Density of the exempt solvent, 0.5 to 2 g/mL; needed where <see cref="ExemptCompounds"/> is more than zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Density? ExemptDensity { get => Values.MaybeDensity(); init => Values = Values.SetOrClear(value); }

    /// <summary>Mass as supplied per mole of epoxide, 5 to 20000 g/mol; <see langword="null"/> when it is no epoxy or not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public MolarMass? EpoxideEquivalent { get => Values.MaybeMolarMass(); init => Values = Values.SetOrClear(value); }

    /// <summary>
    /// Mass as supplied per mole of amine hydrogen, 5 to 20000 g/mol; <see langword="null"/> when it is no amine or not stated.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public MolarMass? AmineHydrogenEquivalent { get => Values.MaybeMolarMass(); init => Values = Values.SetOrClear(value); }

    /// <summary>
    /// Hydroxyl number as supplied, 0.001 to 2000 mg KOH/g; of a reducer, that of its alcohols. <see langword="null"/> when not stated.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double? HydroxylNumber
    {
        // Rounded both ways, once it is found to be in range, because a number that is divided and multiplied again may come back
        // changed in its last digit.
        get => Values.Value(nameof(HydroxylNumber)) is double si ? Math.Round(si * 1000, 9) : null;
        init => Values = Values.SetOrClear(value / 1000).SetOrClear(value is double given ? Math.Round(given, 9) / 1000 : null);
    }

    /// <summary>
    /// NCO groups as supplied by mass, more than 0 and at most 60 %; <see langword="null"/> when it is no isocyanate or not stated.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio? IsocyanateContent { get => Values.MaybeRatio(); init => Values = Values.SetOrClear(value); }

    /// <summary>Viscosity at room temperature, 0.1 mPa·s to 1000 Pa·s; <see langword="null"/> when not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public DynamicViscosity? Viscosity { get => Values.MaybeViscosity(); init => Values = Values.SetOrClear(value); }

    /// <summary>Flash point, −60 to 300 °C; <see langword="null"/> when not stated, which is not the same as none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Temperature? FlashPoint { get => Values.MaybeTemperature(); init => Values = Values.SetOrClear(value); }

    /// <summary>How long the can keeps once opened and closed again, up to 10 years; <see langword="null"/> when not stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Zero, negative or too long.</exception>
    public TimeSpan? ShelfLifeOpened { get => Values.MaybeTime(); init => Values = Values.SetOrClear(value?.TotalSeconds); }

    /// <summary>Solvents of this can, as shares of its volatile mass that add up to 100 %; empty when not stated.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The shares do not add up to 100 % within 0.1 %.</exception>
    public IReadOnlyList<SolventShare> Solvents { get; init => field = SolventShare.WithoutWater(value, nameof(Solvents)); }
    = ValueList<SolventShare>.Empty;

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
    public override string ToString() => Name + ", " + Measure.Density.Format(Density.KilogramsPerCubicMeter);
}

using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>How much of a material a job takes, with all losses.</summary>
/// <example><code>
/// MaterialNeed tape = new("masking-tape", "masking tape", Length.FromMeters(24));
/// MaterialNeed filler = new("epoxy-filler", "epoxy filler", Volume.FromMilliliters(80), Density.FromGramsPerMilliliter(1.6));
/// </code></example>
public sealed record MaterialNeed
{
    private readonly double? density;

    /// <summary>Makes a need.</summary>
    /// <param name="item">Id of the product, component or material, as in the price book.</param>
    /// <param name="name">What people call it.</param>
    /// <param name="amount">
    /// Amount: a volume, mixed, up to 1000 m³; a mass up to 1000 t; an area, a length or pieces up to 10⁶ (m², m); at least 0.
    /// </param>
    /// <exception cref="ArgumentException"><paramref name="item"/> is no identity, or <paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="amount"/> is outside its range.</exception>
    public MaterialNeed(string item, string name, MaterialAmount amount) : this(item, name, amount, default(Density?))
    {
    }

    /// <summary>Makes a need that is bought by mass where it is needed by volume, and the reverse.</summary>
    /// <param name="item">Id of the product, component or material, as in the price book.</param>
    /// <param name="name">What people call it.</param>
    /// <param name="amount">A volume, mixed, up to 1000 m³, or a mass up to 1000 t; at least 0.</param>
    /// <param name="density">Density, 0.05 to 25 g/mL; <see langword="null"/> when not known.</param>
    /// <exception cref="ArgumentException">
    /// <paramref name="item"/> is no identity, <paramref name="name"/> is empty, or <paramref name="amount"/> is an area, a length or a
    /// number of pieces, which no density turns into anything.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is outside its range.</exception>
    public MaterialNeed(string item, string name, MaterialAmount amount, Density? density)
        : this(item, name, amount, Checked(density, nameof(density)))
    {
        Guard.Within(amount.Si, Bounds.NotNegative(amount.Measure, MaterialUnits.Most(amount.Dimension)), nameof(amount));
        if (density is not null && amount.Dimension > MaterialDimension.Mass)
        {
            throw new ArgumentException(
                "density is given for " + item + ", which is needed by " + MaterialUnits.Word(amount.Dimension)
                    + "; only a volume or a mass has a use for it.",
                nameof(density));
        }
    }

    // A sum may be more than is bought, which the price tells as a gap, and what a stock covers is less than nothing until it is added up.
    internal MaterialNeed(string item, string name, MaterialAmount amount, double? density)
    {
        Item = Guard.Id(item);
        Name = Guard.Named(name);
        Amount = amount;
        this.density = density;
    }

    /// <summary>Id of the material.</summary>
    public string Item { get; }

    /// <summary>What people call it.</summary>
    public string Name { get; }

    /// <summary>How much.</summary>
    public MaterialAmount Amount { get; }

    /// <summary>
    /// Density, 0.05 to 25 g/mL, with which a need by volume is bought by mass and the reverse; <see langword="null"/>, unless given: then
    /// each is bought as it is needed.
    /// </summary>
    public Density? Density => density is double known ? UnitsNet.Density.FromKilogramsPerCubicMeter(known) : null;

    internal double? KilogramsPerCubicMeter => density;

    /// <summary>The need of several alike.</summary>
    internal MaterialNeed Times(int count) => new(Item, Name, new MaterialAmount(Amount.Dimension, Amount.Si * count), density);

    /// <summary>Name and amount.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Amount + " of " + Name;

    internal static double? Checked(Density? value, string name) =>
        value is Density known ? Guard.Within(known, Bounds.Between(50, 25_000, Measure.Density), name) : null;

    /// <summary>
    /// One need for each item, in the order in which items first appear; several where an item is needed by dimensions that nothing turns
    /// into each other. A density that one need of an item states holds for all of them.
    /// </summary>
    internal static List<MaterialNeed> Joined(IReadOnlyList<MaterialNeed> needs)
    {
        List<MaterialNeed> joined = [];
        foreach (IGrouping<string, MaterialNeed> item in needs.GroupBy(need => need.Item, StringComparer.Ordinal))
        {
            MaterialNeed first = item.First();
            double? density = item.Select(need => need.density).FirstOrDefault(known => known is not null);
            bool isAlsoByVolume = item.Any(need => need.Amount.Dimension == MaterialDimension.Volume);

            // With a density masses are counted as volume, so that the order of the needs does not matter.
            foreach (IGrouping<MaterialDimension, MaterialNeed> same in item
                .GroupBy(need => isAlsoByVolume && (need.density ?? density) is not null && need.Amount.Dimension == MaterialDimension.Mass
                    ? MaterialDimension.Volume : need.Amount.Dimension)
                .OrderBy(same => same.Key))
            {
                double sum = same.Sum(need => need.Amount.As(same.Key, need.density ?? density)!.Value.Value);
                bool isFluid = same.Key <= MaterialDimension.Mass;
                joined.Add(new MaterialNeed(item.Key, first.Name, new MaterialAmount(same.Key, sum), isFluid ? density : null));
            }
        }

        return joined;
    }
}

using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>How much of one leftover goes into a job.</summary>
public sealed record StockUse
{
    internal StockUse(OpenedKit kit, double mixed, LimitComparison age)
    {
        Kit = kit;
        Mixed = Volume.FromCubicMeters(mixed);
        Age = age;
    }

    /// <summary>The leftover.</summary>
    public OpenedKit Kit { get; }

    /// <summary>Mixed product made of it.</summary>
    public Volume Mixed { get; }

    /// <summary>What is taken of each part, in the order of the product's parts.</summary>
    public IReadOnlyList<PartVolume> Parts => new ValueList<PartVolume>(
        Kit.Product.Parts.Select(
            (part, i) => new PartVolume(part.Component.Id, Volume.FromCubicMeters(Mixed.CubicMeters * Kit.Product.ShareOf(i)))));

    /// <summary>Its age against its shelf life on the day.</summary>
    public LimitComparison Age { get; }

    /// <summary>How much of what.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Measure.Liquid.Format(Mixed.CubicMeters, DisplayUnits.Si, 3) + " out of " + Kit;
}

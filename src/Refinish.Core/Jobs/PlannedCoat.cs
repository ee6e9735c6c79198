using Refinish.Coatings;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>One coat in the order of a fixture's system.</summary>
public sealed record PlannedCoat
{
    internal PlannedCoat(CoatingLayer layer, int number, bool takesGrains)
    {
        Layer = layer;
        Number = number;
        TakesGrains = takesGrains;
    }

    /// <summary>Product, film and reducer.</summary>
    public CoatingLayer Layer { get; }

    /// <summary>The number of the coat in the system, counted from 1.</summary>
    public int Number { get; }

    /// <summary>Whether slip-resistant grains are broadcast into it while it is wet.</summary>
    public bool TakesGrains { get; }

    /// <summary>Product and number.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => "coat " + Figures.Fixed(Number, 0) + ": " + Layer.Product.Name;

    internal WorkKind Kind => Layer.Product.Role == CoatingRole.Primer ? WorkKind.SprayPrimer : WorkKind.SprayTopcoat;
}

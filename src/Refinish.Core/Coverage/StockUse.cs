using UnitsNet;

namespace Refinish.Coverage;

/// <summary>How much of one leftover goes into a job.</summary>
public sealed record StockUse
{
    private readonly double mixed;

    internal StockUse(OpenedKit kit, double mixed, LimitComparison age)
    {
        Kit = kit;
        this.mixed = mixed;
        Age = age;
    }

    /// <summary>The leftover.</summary>
    public OpenedKit Kit { get; }

    /// <summary>Mixed product made of it.</summary>
    public Volume Mixed => Volume.FromCubicMeters(mixed);

    /// <summary>Base taken.</summary>
    public Volume Base => Volume.FromCubicMeters(mixed * Kit.Product.MixRatio.BaseFraction.DecimalFractions);

    /// <summary>Hardener taken.</summary>
    public Volume Hardener => Volume.FromCubicMeters(mixed * Kit.Product.MixRatio.HardenerFraction.DecimalFractions);

    /// <summary>Its age against its shelf life on the day.</summary>
    public LimitComparison Age { get; }

    /// <summary>How much of what.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Measure.Liquid.Format(mixed, DisplayUnits.Si, 3) + " out of " + Kit;
}

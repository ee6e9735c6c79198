using Refinish.Films;
using UnitsNet;

namespace Refinish.Between;

/// <summary>The gun of an invented shop, written as any caller writes it: with required and init-only properties.</summary>
public static class ShopGun
{
    public static SprayGun Measured() => new()
    {
        FluidRate = VolumeFlow.FromMillilitersPerMinute(160),
        TransferEfficiency = Ratio.FromPercent(60),
        TriggerFraction = Ratio.FromPercent(45),
    };
}

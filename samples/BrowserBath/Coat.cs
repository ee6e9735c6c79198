using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Climate;
using Refinish.Coverage;
using Refinish.Curing;

namespace Refinish.Samples.BrowserBath;

/// <summary>One coat: its quantity, the cups it is mixed in, the window to spray it in, and the times in the cup (by the air) and on the tub (by its surface).</summary>
public sealed record Coat(string Name, CoatQuantity Quantity, SprayWindow Window, CureForecast InCup, CureForecast OnSurface, BatchRules Rules)
{
    /// <summary>Missing when the product gives no pot life at this temperature.</summary>
    public BatchPlan? Batches { get; } = InCup.IsAvailable
        ? new BatchPlan(Quantity.PouredVolume, Quantity.Gun.MeanRate, InCup.PotLife, InCup.Induction ?? TimeSpan.Zero, Rules)
        : null;

    public IReadOnlyList<PouredMix> Cups => [.. (Batches?.Batches ?? []).Select(cup => new PouredMix(Quantity.Layer.Product, cup, Quantity.Layer.Reducer))];

    /// <summary>Stand-in time, mixing of each cup and spraying, in whole minutes.</summary>
    public TimeSpan Duration => TimeSpan.FromMinutes(Math.Ceiling(
        ((InCup.Induction ?? TimeSpan.Zero) + (Cups.Count * Rules.MixingTime) + Quantity.SprayTime).TotalMinutes));
}

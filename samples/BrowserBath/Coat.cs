using System.Collections.Generic;
using Refinish.Coverage;
using Refinish.Jobs;
using UnitsNet;

namespace Refinish.Samples.BrowserBath;

/// <summary>
/// One coat as the sheet shows it: the run as it stands alone, or, once there are times, with what is left over from the coat before.
/// </summary>
public sealed record Coat(string Name, CoatRun Run, ScheduledRun? Scheduled)
{
    public CupPlan Cups => Scheduled?.Cups ?? Run.Cups;

    public IReadOnlyList<PouredMix> Mixes => Scheduled?.Mixes ?? Run.Mixes;

    public Volume LeftOver => Scheduled?.FromBefore ?? Volume.Zero;

    /// <summary>Whether its product gives times at these temperatures and a cup fits its pot life.</summary>
    public bool HasTimes => Run.InCup.IsAvailable && Run.OnSurface.IsAvailable && Run.AtWarmest.IsAvailable && Run.Cups.IsPossible;
}

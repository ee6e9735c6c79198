using System.Collections.Generic;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>Levels of tools like those of this trade, second-hand, to start from: read your own at the ear.</summary>
public static class WorkNoises
{
    private static readonly Source Sander = Page("orbital sanders 97 dB(A); sanders from 82 to 100");
    private static readonly Source Gun = Page("paint spraying measured at 93 dB(A); inside a booth 75 to 91");
    private static readonly Source Grinder =
        Page("nine-inch angle grinders 97 to 110 dB(A); the lower end, since those for rust spots are smaller");

    /// <summary>
    /// Abrading and sanding of filler, spraying, grinding of rust. Other loud work, such as cutting out grout, has no level here.
    /// </summary>
    public static IReadOnlyList<WorkNoise> Generic { get; } = new ValueList<WorkNoise>(
    [
        new(WorkKind.Key, "hand-held sander", Level.FromDecibels(97), Sander),
        new(WorkKind.SandFiller, "hand-held sander", Level.FromDecibels(97), Sander),
        new(WorkKind.SprayPrimer, "spray gun", Level.FromDecibels(93), Gun),
        new(WorkKind.SprayTopcoat, "spray gun", Level.FromDecibels(93), Gun),
        new(WorkKind.GrindRust, "angle grinder", Level.FromDecibels(97), Grinder),
    ]);

    private static Source Page(string levels) => Source.Published(
        "levels at the ear in paint and panel shops, as quoted from an Australian state's safety authority on a clinic's page",
            levels + " (second-hand)");
}

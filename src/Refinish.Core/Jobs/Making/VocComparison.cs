using System.Linq;
using Refinish.Air;
using Refinish.Coatings;

namespace Refinish.Jobs;

/// <summary>A layer against the limits on volatile organic compounds of a set: of several the one that it keeps least.</summary>
internal static class VocComparison
{
    /// <summary>
    /// Where the set has none, against the limit that the library remembers for this trade, whose name the comparison tells.
    /// </summary>
    public static LimitComparison Of(CoatingLayer layer, LimitSet limits) =>
        (limits.Voc.Count > 0 ? limits.Voc : [VocLimits.CaliforniaMeasure2007]).Select(layer.Voc).OrderBy(LeastKept.Rank).First();
}

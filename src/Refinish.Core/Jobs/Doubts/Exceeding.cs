using System.Collections.Generic;
using Refinish.Fixtures;

namespace Refinish.Jobs;

/// <summary>Doubts about what is greater than something else that was measured.</summary>
internal static class Exceeding
{
    public static IEnumerable<Doubt> Of(Doubt doubt, double value, double greatest) => Of(doubt, value, greatest, Measure.Length);

    /// <summary>The doubt with its numbers; nothing where the value is within.</summary>
    public static IEnumerable<Doubt> Of(Doubt doubt, double value, double greatest, Measure measure) =>
        value > greatest ? [doubt with { Value = value, Greatest = greatest, Measure = measure }] : [];
}

using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using Refinish.Jobs;

namespace Refinish.Json.Shapes;

/// <summary>Stored results against new ones: money first, by size, then times, then the rest as the document has it.</summary>
internal static class ResultComparer
{
    /// <summary>
    /// Numbers are written to twelve figures; platforms whose functions differ in the last digit of a double stay far below this.
    /// </summary>
    private const double Tolerance = 1e-9;

    private static readonly string[] Money = ["$.results.price", "$.results.reserve", "$.results.comparison"];
    private static readonly string[] Time =
        ["$.results.schedule", "$.results.handover", "$.results.operations", "$.results.runs", "$.results.waits"];

    public static IReadOnlyList<ValueChange> Compare(JsonElement stored, JsonElement now) =>
    [
        .. ValueComparer.Compare("$.results", stored, now, Tolerance)
            .OrderBy(change => Within(change.Path, Money) ? 0 : Within(change.Path, Time) ? 1 : 2)
            .ThenByDescending(change => Within(change.Path, Money) && change.UnitAfter is null ? Math.Abs(change.Difference ?? 0) : 0),
    ];

    private static bool Within(string path, string[] places) =>
        Array.Exists(places, place => path.StartsWith(place, StringComparison.Ordinal));
}

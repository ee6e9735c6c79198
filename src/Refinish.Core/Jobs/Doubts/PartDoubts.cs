using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;

namespace Refinish.Jobs;

/// <summary>Entries for parts of one fixture: together they are the fixture, no more and no less.</summary>
internal static class PartDoubts
{
    private const double LastDigits = 1e-9;

    private static readonly Source Whole = Source.Derived("the parts of a fixture add up to the fixture");

    /// <summary>Whether entries of one shape in one room are parts of one fixture rather than several fixtures alike.</summary>
    public static bool AreParts(IEnumerable<FixtureJob> same) => same.Skip(1).Any()
        && same.Any(entry => entry.Zones is not null || entry.ShareFraction < 1);

    public static IEnumerable<Doubt> Of(IReadOnlyList<FixtureJob> parts)
    {
        (FixtureZoneKind Zone, double Sum)[] sums =
        [
            .. parts[0].Fixture.Zones.Select(zone => (zone.Kind,
                parts.Where(part => part.Zones?.Contains(zone.Kind) != false).Sum(part => part.ShareFraction))),
        ];
        if (sums.Length == 0)
        {
            yield break;
        }

        // Several fixtures alike, each entered in parts, are a whole number of fixtures.
        double most = sums.Max(sum => sum.Sum);
        if (Math.Round(most) >= 1 && sums.All(sum => Math.Abs(sum.Sum - Math.Round(most)) < LastDigits))
        {
            yield break;
        }

        string entries = string.Join(", ", parts.Select(part => part.Id));
        foreach ((FixtureZoneKind zone, double sum) in sums.OrderBy(sum => sum.Sum).Take(1).Where(sum => sum.Sum < 1 - LastDigits))
        {
            yield return Part(zone, sum, " that the entries " + entries + " hold together",
                "See whether a part of the fixture was left out.");
        }

        foreach ((FixtureZoneKind zone, double sum) in sums.OrderByDescending(sum => sum.Sum).Take(1).Where(sum => sum.Sum > 1
            + LastDigits))
        {
            yield return Part(
                zone, sum, " that the entries " + entries + " hold together",
                    "See whether a part was entered twice, or whether they are several fixtures alike.");
        }

        Doubt Part(FixtureZoneKind zone, double sum, string what, string remedy) =>
            new(DoubtKind.Parts, parts[0].Id, zone.ToString("G"), "the share of zone " + zone.ToString("G") + what, remedy, Whole)
            {
                Value = sum, Least = 1, Greatest = 1, Measure = Measure.Percent,
            };
    }
}

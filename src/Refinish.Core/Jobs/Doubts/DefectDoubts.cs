using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;
using Refinish.Substrates;

namespace Refinish.Jobs;

/// <summary>
/// Defects against what they are on: none is larger than its fixture, and all together are no more than the part that the entry speaks of.
/// </summary>
internal static class DefectDoubts
{
    // A crack across corners is longer than the longest side: by √2 at most on a square, by 12 % on a tub.
    private const double AcrossCorners = 1.42;

    // Caulk was laid along every taped edge, and once more beside it.
    private const double BeadsPerEdge = 2;

    private const string Again = "Measure the defect again, or look which unit it was typed in.";

    private static readonly Source Larger = Source.Derived("a part is no larger than the whole");
    private static readonly Source Beads = Source.Invented("old caulk of more than twice the edges that are taped is rare");

    /// <summary>The doubts of one entry.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="lengthsHold">Whether the fixture's own lengths may be compared with.</param>
    public static IEnumerable<Doubt> Of(FixtureJob entry, bool lengthsHold)
    {
        IFixture fixture = FixtureKind.Measured(entry.Fixture);
        if (entry.Survey.Defects.Any(defect => defect is FlexingFloor) && fixture.Zones.All(zone => zone.Kind != FixtureZoneKind.Floor))
        {
            yield return new Doubt(
                DoubtKind.Defect, entry.Id, nameof(DefectKind.FlexingFloor), "a floor that gives, on a fixture without a floor",
                    "Look which fixture it belongs to.", Larger);
        }

        if (!lengthsHold)
        {
            yield break;
        }

        double area = entry.ShareFraction * fixture.Zones.Where(zone => entry.Zones?.Contains(zone.Kind) != false).Sum(zone =>
            zone.Area.SquareMeters);
        double longest = FixtureKind.Of(fixture)?.Longest(fixture) ?? 0;
        double together = 0;
        bool one = false;
        foreach (IGrouping<DefectKind, Defect> kind in entry.Survey.Defects.GroupBy(defect => defect.Kind))
        {
            // One doubt for a kind of defect: the worst.
            Defect widest = kind.OrderByDescending(defect => defect.FlatArea).First();
            Defect farthest = kind.OrderByDescending(defect => defect.Size).First();
            together += kind.Sum(defect => defect.FlatArea);
            if (widest.FlatArea > area)
            {
                one = true;
                yield return Beyond(kind.Key.Code, "the area of a defect (" + widest.Name + ")", widest.FlatArea, area,
                    Measure.Area, Larger);
            }
            else if (longest > 0 && farthest.Size > AcrossCorners * longest)
            {
                yield return Beyond(kind.Key.Code, "the length of a defect (" + farthest.Name + ")", farthest.Size,
                    AcrossCorners * longest, Measure.Length, Larger);
            }
        }

        if (!one && together > area)
        {
            yield return Beyond("Defects", "the area of all defects together", together, area, Measure.Area, Larger);
        }

        foreach (Doubt joint in Joints(entry, fixture))
        {
            yield return joint;
        }

        Doubt Beyond(string reading, string subject, double value, double greatest, Measure measure, Source source) =>
            new(DoubtKind.Defect, entry.Id, reading, subject, Again, source) { Value = value, Greatest = greatest, Measure = measure };
    }

    private static IEnumerable<Doubt> Joints(FixtureJob entry, IFixture fixture)
    {
        double caulk = entry.Survey.Defects.OfType<SiliconeResidue>().Sum(defect => defect.Joint.Meters);
        IEnumerable<Doubt> beads = Exceeding.Of(
            Of(nameof(DefectKind.SiliconeResidue), "the length of old caulk", Again, Beads), caulk,
            BeadsPerEdge * fixture.MaskedEdge.Meters);
        if (fixture is not TiledSurround { Measurements: TiledWallMeasurements tape })
        {
            return beads;
        }

        double grout = entry.Survey.Defects.OfType<GroutFailure>().Sum(defect => defect.Joint.Meters);
        double joints = tape.WallArea().Value * (tape.Joint.TileLength + tape.Joint.TileWidth
            + tape.Joint.Width) / tape.Joint.Module().Value;
        double loose = entry.Survey.Defects.OfType<LooseTiles>().Sum(defect => (double)defect.Count);
        double tiles = Math.Ceiling((tape.WallArea() / tape.Joint.Module()).Value);
        return
        [
            .. beads,
            .. Exceeding.Of(Of(nameof(DefectKind.GroutFailure), "the length of failed grout", Again, Larger), grout, joints),
            .. Exceeding.Of(
                Of(nameof(DefectKind.LooseTiles), "the number of loose tiles", "Count the loose tiles again.", Larger), loose, tiles,
                Measure.Number),
        ];

        Doubt Of(string reading, string subject, string remedy, Source source) =>
            new(DoubtKind.Defect, entry.Id, reading, subject, remedy, source);
    }
}

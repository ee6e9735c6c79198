using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;

namespace Refinish.Jobs;

/// <summary>The doubts about a job: of each fixture by itself, then of what it holds, where it stands and what stands beside it.</summary>
internal static class PlanDoubts
{
    private static readonly Source UsualMaterials = Source.CommonPractice("what tubs, sinks, pans, tops and tiled walls are made of");

    public static IEnumerable<Doubt> Of(Job job)
    {
        List<Doubt> doubts = [];
        List<FixtureJob> whole = [];
        foreach (IGrouping<(string, IFixture), FixtureJob> same in job.Fixtures.GroupBy(fixture =>
            (fixture.Room, FixtureKind.Measured(fixture.Fixture))))
        {
            // Entries for parts of one fixture hold its readings several times; they are looked at once.
            bool parts = PartDoubts.AreParts(same);
            foreach (FixtureJob fixture in parts ? same.OrderBy(entry => entry.Id, StringComparer.Ordinal).Take(1) : same)
            {
                ValueList<Doubt> own = Tried(() => new TapeDoubts(fixture.Id, fixture.Fixture).Doubts);
                doubts.AddRange(own);

                // One slip of the unit is one doubt: nothing else is held against lengths that are all wrong.
                if (!own.Any(doubt => doubt.Kind == DoubtKind.Unit))
                {
                    whole.Add(fixture);
                }
            }

            if (parts)
            {
                doubts.AddRange(Tried(() => PartDoubts.Of([.. same.OrderBy(entry => entry.Id, StringComparer.Ordinal)])));
            }

            foreach (FixtureJob fixture in same)
            {
                doubts.AddRange(OfMaterial(fixture));
                doubts.AddRange(Tried(() => DefectDoubts.Of(fixture, whole.Exists(one => one.Fixture.Equals(fixture.Fixture)))));
            }
        }

        foreach (SiteRoom room in job.Premises.Rooms)
        {
            FixtureJob[] inside = [.. whole.Where(fixture => fixture.Room == room.Id)];
            doubts.AddRange(Tried(() => NeighbourDoubts.Of(inside)));
            doubts.AddRange(Tried(() => RoomDoubts.Of(room, inside)));
        }

        return doubts;
    }

    // A fixture of a caller's own type may refuse to tell its zones; the plan leaves it out and says why.
    private static ValueList<Doubt> Tried(Func<IEnumerable<Doubt>> look) =>
        Stage.Try([], string.Empty, string.Empty, () => new ValueList<Doubt>(look())) ?? ValueList<Doubt>.Empty;

    private static IEnumerable<Doubt> OfMaterial(FixtureJob fixture)
    {
        FixtureMaterial material = fixture.Survey.Material;

        // What is unknown, or holds no coat, is told by the verdict; of a material of the caller's own nobody here knows what is made of
        // it.
        if (!material.IsUnknown && material.BondsInTheField && FixtureMaterial.TryFind(material.Id) is not null
            && FixtureKind.Of(fixture.Fixture) is { Materials.Count: > 0 } kind && !material.IsNamedIn(kind.Materials))
        {
            yield return new Doubt(
                DoubtKind.Material, fixture.Id, null, ("aeiou".Contains(kind.Name[0]) ? "an " : "a ") + kind.Name + " of "
                    + material.Name,
                "Identify the material again: preparation, promoter and verdict rest on it.", UsualMaterials);
        }
    }
}

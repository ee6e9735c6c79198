using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Jobs;

/// <summary>Dates that moved by themselves, and not only because the work starts at another time.</summary>
internal static class ChangesOfTime
{
    public static IEnumerable<PlanChange> Of(PlanFigures before, PlanFigures after)
    {
        TimeSpan moved = after.Start - before.Start ?? TimeSpan.Zero;
        return new[]
        {
            Change("start", ChangeSubject.Start, string.Empty, before.Start, after.Start, TimeSpan.Zero),
            Change("end", ChangeSubject.End, string.Empty, before.End, after.End, moved),
        }.Concat(new Pairs<FixtureFigures>(before.Fixtures, after.Fixtures, fixture => fixture.Id).All
            .Where(pair => pair.Kind == ChangeKind.Changed).Select(pair =>
                Change("water/" + pair.Key, ChangeSubject.WaterFrom, pair.Id, pair.Before!.WaterFrom, pair.After!.WaterFrom, moved)
                    is PlanChange water ? water with { Name = pair.After.Name } : null)).OfType<PlanChange>();
    }

    private static PlanChange? Change(string key, ChangeSubject subject, string about, DateTimeOffset? before, DateTimeOffset? after,
        TimeSpan moved)
    {
        return after == before || after - before == moved ? null : new PlanChange(key, subject, ChangeKinds.Of(before, after))
        {
            About = about,
            InstantBefore = before,
            InstantAfter = after,
            Time = after - before ?? TimeSpan.Zero,
        };
    }
}

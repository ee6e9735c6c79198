using System.Collections.Generic;
using System.Linq;

namespace Refinish.Jobs;

/// <summary>
/// What moved the price, so that the changes add up to its difference; and fixtures and visits, which move more than that.
/// </summary>
internal static class ChangesOfMoney
{
    public static IEnumerable<PlanChange> Of(PlanFigures before, PlanFigures after)
    {
        bool comparable = before.Total is not null && after.Total is not null && before.Currency == after.Currency;
        List<PlanChange> changes = comparable ? [.. LineGroups.Of(before, after)] : [];
        AddFixtures(changes, before, after);
        AddVisits(changes, before, after);
        if (comparable)
        {
            AddRemainder(changes, before, after);
            return changes.Select(change => change with { Currency = after.Currency });
        }

        if (before.Total is null != after.Total is null)
        {
            changes.Add(new PlanChange("price", ChangeSubject.Price, before.Total is null ? ChangeKind.Added : ChangeKind.Removed)
            {
                Name = ChangeText.Amount(before.Total is null ? after : before),
            });
        }
        else if (before.Total is not null)
        {
            changes.Add(new PlanChange("currency", ChangeSubject.Currency, ChangeKind.Changed)
            {
                Name = ChangeText.Amount(before) + " became " + ChangeText.Amount(after),
            });
        }

        return changes;
    }

    private static void AddFixtures(List<PlanChange> changes, PlanFigures before, PlanFigures after)
    {
        foreach (Pairs<FixtureFigures>.Pair pair in new Pairs<FixtureFigures>(before.Fixtures, after.Fixtures, fixture => fixture.Id).All)
        {
            if (pair.Kind == ChangeKind.Changed)
            {
                continue;
            }

            FixtureFigures fixture = (pair.After ?? pair.Before)!;
            string key = "fixture/" + pair.Key;
            int at = changes.FindIndex(change => change.Key == key);
            if (at >= 0)
            {
                changes[at] = changes[at] with { Name = fixture.Name };
            }
            else
            {
                changes.Add(new PlanChange(key, ChangeSubject.Fixture, pair.Kind) { About = fixture.Id, Name = fixture.Name });
            }
        }
    }

    private static void AddVisits(List<PlanChange> changes, PlanFigures before, PlanFigures after)
    {
        if (before.Trips is int was && after.Trips is int now && was != now
            && !changes.Exists(change => change.Subject == ChangeSubject.Visits))
        {
            changes.Add(new PlanChange("visits", ChangeSubject.Visits, ChangeKind.Changed) { Name = "visits", QuantityBefore = was,
                QuantityAfter = now });
        }
    }

    // Lines of a plan add up to its totals; stored figures that someone changed may not.
    private static void AddRemainder(List<PlanChange> changes, PlanFigures before, PlanFigures after)
    {
        decimal price = after.Total!.Value - before.Total!.Value - changes.Sum(change => change.Price);
        decimal cost = (after.Cost ?? 0) - (before.Cost ?? 0) - changes.Sum(change => change.Cost);
        if (price != 0 || cost != 0)
        {
            changes.Add(new PlanChange("remainder", ChangeSubject.Remainder, ChangeKind.Changed) { Name = "not in any line", Price = price,
                Cost = cost });
        }
    }
}

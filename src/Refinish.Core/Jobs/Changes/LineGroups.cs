using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>
/// Makes one change of all lines that one thing moved. Every line is in one change or in none, and the changes add up to the difference of
/// the lines.
/// </summary>
internal static class LineGroups
{
    public static IEnumerable<PlanChange> Of(PlanFigures before, PlanFigures after)
    {
        HashSet<string> moved = new(before.Fixtures.Select(fixture => fixture.Id), StringComparer.Ordinal);
        moved.SymmetricExceptWith(after.Fixtures.Select(fixture => fixture.Id));
        Pairs<LineFigures> pairs = new(before.Lines, after.Lines, line => line.Id);
        List<LineChange> lines = [.. pairs.All.Select(pair => new LineChange(pair.Before, pair.After))];
        List<PlanChange> changes = [];
        HashSet<LineChange> told = new(ByReference.Of<LineChange>());
        foreach (IGrouping<(decimal Before, decimal After), LineChange> rate in lines.Where(line => IsRateOfLabour(line, moved))
            .GroupBy(line => (line.Before!.Rate, line.After!.Rate)).Where(rate => rate.Count() > 1))
        {
            LineChange[] same = [.. rate];
            told.UnionWith(same);
            changes.Add(Change(new("labour-rate/" + same.Select(line => line.Id).OrderBy(id => id, StringComparer.Ordinal).First(),
                ChangeSubject.LabourRate, string.Empty), same));
        }

        List<LineChange> carried = [];
        foreach (IGrouping<LineFamily, LineChange> group in lines.Where(line => !told.Contains(line))
            .GroupBy(line => LineFamily.Of(line.Either, moved)))
        {
            if (group.Key.Subject != ChangeSubject.SharedCosts && group.Any(Moved))
            {
                changes.Add(Change(group.Key, [.. group]));
            }
            else
            {
                carried.AddRange(group.Where(line => line.Price != 0 || line.Cost != 0));
            }
        }

        if (carried.Count > 0 && (carried.Sum(line => line.Price) != 0 || carried.Sum(line => line.Cost) != 0))
        {
            bool isLeast = before.MinimumChargeApplied || after.MinimumChargeApplied;
            changes.Add(Named(new PlanChange("shared-costs", ChangeSubject.SharedCosts, ChangeKind.Changed), carried) with
            {
                Name = isLeast ? "minimum charge" : "overhead and margin",
                Cause = isLeast ? ChangeCause.MinimumCharge : ChangeCause.SharedCosts,
            });
        }

        return changes;
    }

    private static bool Moved(LineChange line) => line.Before is null || line.After is null || !line.Before.HasOwnFiguresOf(line.After);

    private static bool IsRateOfLabour(LineChange line, HashSet<string> moved) =>
        line is { Before: LineFigures before, After: LineFigures after }
        && after.Category == LineCategory.Labour && before.Category == LineCategory.Labour
        && before.Quantity == after.Quantity && before.Unit == after.Unit && before.Rate != after.Rate
        && (after.Fixture is null || !moved.Contains(after.Fixture));

    private static PlanChange Change(LineFamily key, LineChange[] lines)
    {
        bool isNew = lines.All(line => line.Before is null);
        bool isGone = lines.All(line => line.After is null);
        ChangeKind kind = isNew ? ChangeKind.Added : isGone ? ChangeKind.Removed : ChangeKind.Changed;
        PlanChange change = Named(new PlanChange(key.Key, key.Subject, kind), lines);
        bool counts = key.Subject != ChangeSubject.Fixture && lines.Select(line => line.Either.Unit).Distinct().Count() == 1;
        return change with
        {
            About = key.About,
            Place = key.Subject == ChangeSubject.LabourRate ? null : lines[0].Either.Fixture ?? lines[0].Either.Room,
            Cause = CauseOf(key.Subject, lines),
            Time = Durations.FromHours((double)(Hours(lines, line => line.After) - Hours(lines, line => line.Before))),
            Unit = counts ? lines[0].Either.Unit : string.Empty,
            QuantityBefore = counts && !isNew ? lines.Sum(line => line.Before?.Quantity ?? 0) : null,
            QuantityAfter = counts && !isGone ? lines.Sum(line => line.After?.Quantity ?? 0) : null,
            RateBefore = OneRate(lines, line => line.Before),
            RateAfter = OneRate(lines, line => line.After),
        };
    }

    private static PlanChange Named(PlanChange change, IReadOnlyList<LineChange> lines) => change with
    {
        Name = change.Subject switch
        {
            ChangeSubject.LabourRate => "rate of an hour",
            ChangeSubject.Visits => "visits",
            _ => lines[0].Either.Description,
        },
        Price = lines.Sum(line => line.Price),
        Cost = lines.Sum(line => line.Cost),
        Lines = new ValueList<LineChange>(lines.OrderBy(line => line.Id, StringComparer.Ordinal)),
    };

    private static ChangeCause CauseOf(ChangeSubject subject, IReadOnlyList<LineChange> lines)
    {
        bool sameRates = lines.All(line => line.Before is null || line.After is null || line.Before.Rate == line.After.Rate);
        bool sameQuantities = lines.All(line => line.Before?.Quantity == line.After?.Quantity);
        bool sameKits = lines.All(line => (line.Before?.Unit ?? line.After?.Unit) == LineUnit.Kit.Symbol());
        return subject == ChangeSubject.Fixture ? ChangeCause.Unknown
            : sameQuantities && sameRates ? ChangeCause.Unknown
            : sameQuantities ? ChangeCause.Rate
            : !sameRates ? ChangeCause.QuantityAndRate
            : subject == ChangeSubject.Material && sameKits ? ChangeCause.Kits
            : ChangeCause.Quantity;
    }

    private static decimal Hours(IReadOnlyList<LineChange> lines, Func<LineChange, LineFigures?> side) => lines.Select(side)
        .Where(line => line is { Category: LineCategory.Labour } && line.Unit == LineUnit.Hour.Symbol()).Sum(line => line!.Quantity);

    private static decimal? OneRate(IReadOnlyList<LineChange> lines, Func<LineChange, LineFigures?> side)
    {
        decimal[] rates = [.. lines.Select(side).Where(line => line is not null).Select(line => line!.Rate).Distinct()];
        return rates.Length == 1 ? rates[0] : null;
    }
}

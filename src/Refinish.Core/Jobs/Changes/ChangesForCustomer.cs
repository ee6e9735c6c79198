using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>
/// The changes as the customer can check them against the two quotes: item by item, discount, each tax, total, payments, dates. Nothing in
/// them tells hours, materials, rates or costs.
/// </summary>
internal static class ChangesForCustomer
{
    public static IEnumerable<PlanChange> Of(PlanChanges all)
    {
        List<PlanChange> changes = [.. Prices(all)];
        IReadOnlyCollection<string>? told = Told(all);
        changes.AddRange(all.Changes.Where(change => change.Subject switch
        {
            ChangeSubject.Visits or ChangeSubject.Start or ChangeSubject.End or ChangeSubject.WaterFrom or ChangeSubject.Refusal
                or ChangeSubject.Price or ChangeSubject.Currency or ChangeSubject.Objection or ChangeSubject.Condition => true,
            ChangeSubject.Caution => told is null || told.Contains(change.Key.Substring("caution/".Length)),
            ChangeSubject.Fixture or ChangeSubject.Option => all.Total is null || all.Before.Quote is null || all.After.Quote is null,
            _ => false,
        }).Select(change => Stripped(change) with { Price = 0 }));
        return changes;
    }

    /// <summary>The figures without what only the shop knows.</summary>
    public static PlanFigures Seen(PlanFigures figures) => figures with
    {
        Cost = null,
        Paid = null,
        Lines = new ValueList<LineFigures>(figures.Lines.Where(line => line.Category is LineCategory.Discount or LineCategory.Tax)),
        Gaps = ValueList<PlanRemark>.Empty,
        Visits = new ValueList<VisitFigures>(figures.Visits.Select(visit => visit with { Paid = TimeSpan.Zero })),
    };

    private static IEnumerable<PlanChange> Prices(PlanChanges all)
    {
        QuoteFigures? was = all.Before.Quote;
        QuoteFigures? now = all.After.Quote;
        if (all.Total is not decimal total)
        {
            return [];
        }

        // Where both quotes show each price with its discount and tax, discount and tax are told, and move nothing beside the items.
        bool withTax = was?.PricesShown == PricesShown.WithTax && now?.PricesShown == PricesShown.WithTax;
        List<PlanChange> changes = [.. was is null || now is null ? [] : Items(was, now, withTax)];
        changes.AddRange(all.Changes.Where(change => change.Subject is ChangeSubject.Discount or ChangeSubject.Tax)
            .Select(change => Stripped(change) with
            {
                Price = withTax ? 0 : change.Price,
                IsInPrices = withTax,
                AmountBefore = change.Kind == ChangeKind.Added ? null : change.Lines.Sum(line => line.Before?.Price ?? 0),
                AmountAfter = change.Kind == ChangeKind.Removed ? null : change.Lines.Sum(line => line.After?.Price ?? 0),
            }));
        decimal rest = total - changes.Sum(change => change.Price);
        if (rest != 0)
        {
            // Figures without a quote, as earlier versions stored them, have no items to hold against each other.
            changes.Add(was is null || now is null
                ? new PlanChange("work", ChangeSubject.Work, ChangeKind.Changed) { Name = "work and materials", Price = rest }
                : new PlanChange("remainder", ChangeSubject.Remainder, ChangeKind.Changed) { Name = "not in any item", Price = rest });
        }

        if (total != 0)
        {
            changes.Add(new PlanChange("total", ChangeSubject.Total, ChangeKind.Changed)
            {
                Name = "total with tax", AmountBefore = all.Before.Total, AmountAfter = all.After.Total,
            });
        }

        if (was is not null && now is not null)
        {
            changes.AddRange(Payments(was, now));
            if (was.ValidUntil != now.ValidUntil)
            {
                changes.Add(new PlanChange("validity", ChangeSubject.Validity, ChangeKinds.Of(was.ValidUntil, now.ValidUntil))
                {
                    InstantBefore = At(was.ValidUntil), InstantAfter = At(now.ValidUntil),
                    Time = now.ValidUntil - was.ValidUntil ?? TimeSpan.Zero,
                });
            }
        }

        return changes.Select(change => change with { Currency = all.Currency });
    }

    // Under their fixture, in the order of the quote; what concerns the job as a whole is last.
    private static IEnumerable<PlanChange> Items(QuoteFigures before, QuoteFigures after, bool withTax)
    {
        List<Pairs<ItemFigures>.Pair> pairs = new Pairs<ItemFigures>(before.Items, after.Items, item => item.Id).All;
        List<string> fixtures = [.. pairs.Select(pair => (pair.After ?? pair.Before)!.Fixture).OfType<string>().Distinct()];
        foreach (Pairs<ItemFigures>.Pair pair in pairs.OrderBy(pair => (pair.After ?? pair.Before)!.Fixture is string fixture
            ? fixtures.IndexOf(fixture) : fixtures.Count))
        {
            ItemFigures item = (pair.After ?? pair.Before)!;
            decimal? was = withTax ? pair.Before?.WithTax : pair.Before?.Price;
            decimal? now = withTax ? pair.After?.WithTax : pair.After?.Price;
            if (pair.Kind != ChangeKind.Changed || was != now || pair.Before!.Quantity != pair.After!.Quantity)
            {
                yield return new PlanChange(pair.Key, item.Kind switch
                {
                    QuoteItemKind.Fixture => ChangeSubject.Fixture,
                    QuoteItemKind.Option => ChangeSubject.Option,
                    _ => ChangeSubject.OtherLine,
                }, pair.Kind)
                {
                    About = item.Id,
                    Name = item.Description,
                    Place = item.Fixture,
                    Unit = item.Unit,
                    QuantityBefore = pair.Before?.Quantity,
                    QuantityAfter = pair.After?.Quantity,
                    AmountBefore = was,
                    AmountAfter = now,
                    Price = (now ?? 0) - (was ?? 0),
                };
            }
        }
    }

    private static IEnumerable<PlanChange> Payments(QuoteFigures before, QuoteFigures after) =>
        new Pairs<PaymentFigures>(before.Payments, after.Payments, payment => payment.Id).All
            .Where(pair => pair.Before?.Amount != pair.After?.Amount || pair.Before?.Told != pair.After?.Told)
            .Select(pair => new PlanChange("payment/" + pair.Key, ChangeSubject.Payment, pair.Kind)
            {
                About = pair.Id,
                Name = pair.Kind == ChangeKind.Changed && pair.Before!.Told != pair.After!.Told
                    ? pair.After.Told + " instead of " + pair.Before.Told
                    : (pair.After ?? pair.Before)!.Told,
                AmountBefore = pair.Before?.Amount,
                AmountAfter = pair.After?.Amount,
            });

    // Without two quotes nothing says whom a caution concerns, so that all are told.
    private static HashSet<string>? Told(PlanChanges all)
    {
        if (all.Before.Quote is not QuoteFigures was || all.After.Quote is not QuoteFigures now)
        {
            return null;
        }

        HashSet<string> told = new(was.Cautions, StringComparer.Ordinal);
        told.UnionWith(now.Cautions);
        return told;
    }

    private static PlanChange Stripped(PlanChange change) => change with
    {
        Cost = 0,
        Cause = ChangeCause.Unknown,
        Lines = ValueList<LineChange>.Empty,
        RateBefore = change.Subject == ChangeSubject.Tax ? change.RateBefore : null,
        RateAfter = change.Subject == ChangeSubject.Tax ? change.RateAfter : null,
    };

    private static DateTimeOffset? At(DateTime? day) => day is DateTime last ? new DateTimeOffset(last.Date.Ticks, TimeSpan.Zero) : null;
}

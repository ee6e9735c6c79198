using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>English of a change, made of its fields alone.</summary>
internal static class ChangeText
{
    private static readonly HashSet<string> CountedByPiece = new(
        new[] { LineUnit.Each, LineUnit.Set, LineUnit.Job, LineUnit.Fixture }.Select(unit => unit.Symbol()), StringComparer.Ordinal);

    public static string Amount(PlanFigures figures) => figures.Total is decimal total ? Amount(total, figures.Currency) : "no price";

    /// <summary>An amount in a currency by its code; a code that is not known keeps the decimals that it came with.</summary>
    public static string Amount(decimal amount, string? code) => Currency.TryOf(code, out Currency? currency)
        ? currency!.Text(amount)
        : amount.ToString(CultureInfo.InvariantCulture) + (code is null ? string.Empty : " " + code);

    /// <summary>A count with its noun, which takes an s for any number but one.</summary>
    public static string Count(int count, string noun) => Figures.Fixed(count, 0) + " " + noun + (count == 1 ? string.Empty : "s");

    public static string Clock(DateTimeOffset instant) =>
        CarefulTime.Up(instant).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    public static string Of(PlanChange change, DisplayUnits units, LineReader reader)
    {
        string what = What(change, units, reader == LineReader.Shop);
        string money = Money(change, reader);
        return Sentences.Closed(Sentences.Begun(what.TrimEnd('.') + (money.Length == 0 ? string.Empty : "; " + money)));
    }

    private static string What(PlanChange change, DisplayUnits units, bool rates) => change.Subject switch
    {
        ChangeSubject.Refusal => "today's library refuses the input: " + change.RemarkAfter!.Sentence(units),
        ChangeSubject.Price =>
            change.Kind == ChangeKind.Added ? "there is a price now, " + change.Name : "there is no price any more; it was " + change.Name,
        ChangeSubject.Currency => change.Name + "; amounts of two currencies are not compared",
        ChangeSubject.Objection =>
            Remark(change, units, "stands in the way now: ", "no longer stands in the way: ", "still stands in the way: "),
        ChangeSubject.PriceGap =>
            Remark(change, units, "the price book lacks ", "the price book no longer lacks ", "the price book lacks "),
        ChangeSubject.Condition => Remark(change, units, "has to be met now: ", "need not be met any more: ", "still has to be met: "),
        ChangeSubject.Caution => Remark(change, units, "new caution: ", "the caution falls away: ", "the caution now says: "),
        ChangeSubject.Fixture => change.Name + ": " + change.Kind switch
        {
            ChangeKind.Added => "added",
            ChangeKind.Removed => "struck",
            _ => Amounts(change),
        },
        ChangeSubject.Material => change.Name + ": " + Kits(change, units),
        ChangeSubject.LabourRate => "rate of an hour" + (rates
            ? ": " + Amount(change.RateBefore!.Value, change.Currency) + " became " + Amount(change.RateAfter!.Value, change.Currency)
            : " of labour"),
        ChangeSubject.Visits => "visits: " + Counted(change, string.Empty),
        ChangeSubject.SharedCosts => change.Cause == ChangeCause.MinimumCharge
            ? "the minimum charge decides the price; what the other lines carry on top of their cost"
            : "overhead, warranty reserve and margin, as the other lines carry them",
        ChangeSubject.Tax or ChangeSubject.Discount when change is { AmountBefore: not null, AmountAfter: not null } =>
            change.Name + ": " + (change.Subject == ChangeSubject.Discount || change.RateBefore == change.RateAfter ? string.Empty
                : Share(change.RateBefore) + " became " + Share(change.RateAfter) + ", ") + Amounts(change),
        ChangeSubject.Tax => change.Name + ": " + (change.Kind == ChangeKind.Changed
            ? change.RateBefore == change.RateAfter ? "on another price" : Share(change.RateBefore) + " became " + Share(change.RateAfter)
            : change.Kind == ChangeKind.Added ? "charged" : "no longer charged"),
        ChangeSubject.Discount => change.Kind switch
        {
            ChangeKind.Added => "discount given",
            ChangeKind.Removed => "no discount any more",
            _ => "another discount",
        },
        ChangeSubject.Remainder or ChangeSubject.Work => change.Name,
        ChangeSubject.Total or ChangeSubject.Payment => change.Name + ": " + Amounts(change),
        ChangeSubject.Validity => "the quote holds until " + Day(change.InstantAfter) + "; before, until " + Day(change.InstantBefore),
        ChangeSubject.Start => "start: " + Instants(change),
        ChangeSubject.End => "end of the last visit: " + Instants(change),
        ChangeSubject.WaterFrom => "no water on " + change.Name + " before: " + Instants(change),
        _ => Line(change, rates),
    };

    private static string Line(PlanChange change, bool rates)
    {
        string? fixture = change.PlaceName;
        string head = change.Name + (fixture is null ? string.Empty : " (" + fixture + ")") + ": ";
        if (change.AmountBefore is not null && change.AmountAfter is not null && change.QuantityBefore == change.QuantityAfter)
        {
            return head + Amounts(change);
        }

        return change.Cause switch
        {
            ChangeCause.Rate when rates && change.RateBefore is not null && change.RateAfter is not null =>
                head + "rate of " + Number(change.RateBefore) + " became " + Number(change.RateAfter),
            ChangeCause.Rate or ChangeCause.Unknown when change is { AmountBefore: null, AmountAfter: null } => head + "priced otherwise",
            _ => head + Counted(change, change.Unit),
        };
    }

    private static string Counted(PlanChange change, string unit) => change.Kind switch
    {
        ChangeKind.Added => GoesWithoutSaying(change.QuantityAfter, unit) ? "new" : "new, " + Quantity(change.QuantityAfter, unit),
        ChangeKind.Removed => GoesWithoutSaying(change.QuantityBefore, unit)
            ? "gone"
            : "gone, was " + Quantity(change.QuantityBefore, unit),
        _ => change.QuantityBefore is null
            ? "other quantities" : Quantity(change.QuantityBefore, unit) + " became " + Quantity(change.QuantityAfter, unit),
    };

    // That there is one of it; not one hour or one metre.
    private static bool GoesWithoutSaying(decimal? quantity, string unit) =>
        quantity is null || (quantity == 1 && CountedByPiece.Contains(unit));

    private static string Day(DateTimeOffset? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "no stated day";

    private static string Amounts(PlanChange change) => change switch
    {
        { AmountBefore: null } => "new, " + Amount(change.AmountAfter!.Value, change.Currency),
        { AmountAfter: null } => "no longer asked for, was " + Amount(change.AmountBefore!.Value, change.Currency),
        _ when change.AmountBefore == change.AmountAfter => Amount(change.AmountAfter!.Value, change.Currency),
        _ => Amount(change.AmountBefore!.Value, change.Currency) + " became " + Amount(change.AmountAfter!.Value, change.Currency),
    };

    private static string Kits(PlanChange change, DisplayUnits units)
    {
        string before = Kits(change.Lines.Select(line => line.Before), units);
        string after = Kits(change.Lines.Select(line => line.After), units);
        return change.Kind switch
        {
            ChangeKind.Added => "new, " + after,
            ChangeKind.Removed => "gone, was " + before,
            _ when before == after => before + " at another price",
            _ => before + " became " + after,
        };
    }

    private static string Kits(IEnumerable<LineFigures?> lines, DisplayUnits units) => string.Join(" + ", lines
        .Where(line => line is { Quantity: not 0 }).OrderBy(line => KitSize.Of(line!) ?? double.MaxValue)
        .Select(line => KitSize.Of(line!) is double size
            ? Number(line!.Quantity) + " × " + KitSize.Text(size, units) : Quantity(line!.Quantity, line.Unit)));

    private static string Remark(PlanChange change, DisplayUnits units, string added, string removed, string changed) => change.Kind switch
    {
        ChangeKind.Added => added + change.RemarkAfter!.Sentence(units),
        ChangeKind.Removed => removed + change.RemarkBefore!.Sentence(units),
        _ => changed + change.RemarkAfter!.Sentence(units),
    };

    private static string Instants(PlanChange change) => change switch
    {
        { InstantBefore: null } => "now " + Clock(change.InstantAfter!.Value),
        { InstantAfter: null } => "cannot be said any more, was " + Clock(change.InstantBefore!.Value),
        _ => Clock(change.InstantBefore!.Value) + " became " + Clock(change.InstantAfter!.Value) + ", "
            + Span(change.Time.Duration()) + (change.Time < TimeSpan.Zero ? " earlier" : " later"),
    };

    // Hours below a day; beyond it nobody counts in hours.
    private static string Span(TimeSpan time)
    {
        if (time < TimeSpan.FromDays(1))
        {
            return Measure.Hours.Format(time.TotalSeconds, DisplayUnits.Si, 4);
        }

        string days = time.TotalDays.ToString("0.#", CultureInfo.InvariantCulture);
        return days + (days == "1" ? " day" : " days");
    }

    private static string Money(PlanChange change, LineReader reader)
    {
        bool cost = reader == LineReader.Shop && change.Cost != 0;
        string price = change.IsInPrices ? "it is in the prices"
            : change.Price == 0 ? cost ? "price as before" : string.Empty
            : "price " + Signed(change.Price, change.Currency);
        return price + (cost ? " (cost " + Signed(change.Cost, change.Currency) + ")" : string.Empty);
    }

    private static string Signed(decimal amount, string? currency) => (amount > 0 ? "+" : string.Empty) + Amount(amount, currency);

    private static string Share(decimal? share) => Measure.Percent.Format((double)share!.Value);

    private static string Quantity(decimal? quantity, string unit) => Number(quantity) + (unit.Length == 0 ? string.Empty : " " + unit);

    private static string Number(decimal? number) => number!.Value.ToString("0.############################", CultureInfo.InvariantCulture);
}

using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using OxyPlot;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Pictures.Drawing;

namespace Refinish.Pictures;

/// <summary>From the old price to the new one, change by change, the largest first; what is small is taken together.</summary>
/// <remarks>
/// The steps add up from the total before to the total after, exactly. The axis does not begin at zero, so that a change of a few per cent can
/// be seen; the picture says so, and the bars of the totals have no height to be compared. What moved no money is not in it.
/// </remarks>
/// <example><code>
/// static string Svg(JobPlan before, JobPlan after) => new ChangesPicture(PlanChanges.Between(before, after), LineReader.Customer).ToSvg();
/// </code></example>
public sealed class ChangesPicture : Picture
{
    private const int MostSteps = 8;
    private readonly PlanChanges changes;
    private readonly IReadOnlyList<PlanChange> shown;

    /// <summary>Pictures changes for the shop.</summary>
    /// <param name="changes">The changes.</param>
    /// <exception cref="ArgumentNullException"><paramref name="changes"/> is missing.</exception>
    public ChangesPicture(PlanChanges changes)
        : this(changes, LineReader.Shop)
    {
    }

    /// <summary>Pictures changes for the shop, or for a customer, who sees work and materials as one step.</summary>
    /// <param name="changes">The changes.</param>
    /// <param name="reader">Who reads it.</param>
    /// <exception cref="ArgumentNullException"><paramref name="changes"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="reader"/> is not a named value.</exception>
    public ChangesPicture(PlanChanges changes, LineReader reader)
        : base("From the old price to the new one", Given.NotNull(changes, nameof(changes)).After.Job)
    {
        this.changes = changes;
        shown = reader switch
        {
            LineReader.Shop => changes.Changes,
            LineReader.Customer => changes.ForCustomer(),
            _ => throw new ArgumentOutOfRangeException(nameof(reader), "reader is not a named value."),
        };
    }

    /// <inheritdoc/>
    public override string Describe(DisplayUnits units)
    {
        if (changes.Total is null)
        {
            return "There are no two prices to compare, but " + Text(changes.Changes.Count) + " changes. " + string.Join(" ", InTheWay(units));
        }

        return "Bars that begin where the one before ends, from the total before to the total after. " + string.Join("; ", Steps()
            .Select(step => step.Name + " " + Number(step))) + ". In " + changes.Currency + ".";
    }

    private protected override void Draw(Page page)
    {
        if (changes.Total is not decimal total)
        {
            page.Paragraph("There are no two prices to compare.");
            foreach (string line in InTheWay(page.Units))
            {
                page.Warning(line);
            }

            return;
        }

        List<Step> steps = [.. Steps()];
        page.Paragraph(string.Format(
            CultureInfo.InvariantCulture, "{0} became {1} {2}: {3}", Amount(steps[0].To), Amount(steps[steps.Count - 1].To), changes.Currency,
            total == 0 ? "the total stays" : Signed(total)));
        decimal most = steps.Max(step => Math.Max(step.From, step.To));
        decimal least = steps.Min(step => Math.Min(step.From, step.To));
        decimal room = most > least ? (most - least) / 4 : Math.Max(1, most / 20);
        least = least > 0 ? Math.Max(0, least - room) : least - room;
        double label = page.IsNarrow ? 8 : 230;
        double row = page.IsNarrow ? 42 : 28;
        Chart chart = new(
            Chart.Scale((double)least, (double)most, Chart.Round((double)least, (double)most, page.IsNarrow ? 3 : 6)
                .Select(at => (at, Figures(at)))),
            Chart.Hidden(steps.Count, 0),
            new OxyThickness(label, 0, page.IsNarrow ? 8 : 92, 26));
        chart.Add((sheet, at) => Bars(sheet, at, steps, least, most, page.IsNarrow, label));
        chart.Draw(page, (steps.Count * row) + 26);
        page.Note("Amounts in " + changes.Currency + (least > 0 ? "; the axis does not begin at zero." : "."));
    }

    private void Bars(Sheet sheet, Func<double, double, ScreenPoint> at, List<Step> steps, decimal least, decimal most, bool narrow, double label)
    {
        for (int i = 0; i < steps.Count; i++)
        {
            Step step = steps[i];
            ScreenPoint from = at((double)(step.IsSum ? least : step.From), i);
            ScreenPoint to = at((double)step.To, i + 1);
            double left = Math.Min(from.X, to.X);
            double width = Math.Abs(to.X - from.X);
            double top = from.Y + (narrow ? 20 : 4);
            double height = to.Y - top - (narrow ? 3 : 4);
            if (step.IsSum)
            {
                // A mark at its amount and no bar: a length from the middle of an axis says nothing.
                sheet.Line(to.X, top - 1, to.X, top + height + 1, Ink.Line, 3);
            }
            else
            {
                (OxyColor fill, OxyColor line) = step.To >= step.From ? (Ink.BlueTint, Ink.Blue) : (Ink.GreenTint, Ink.Green);
                sheet.Rectangle(left, top, width, height, fill, OxyColors.Transparent);
                if (step.To < step.From)
                {
                    sheet.Hatch(left, top, width, height, line, falling: true);
                }

                sheet.Rectangle(left, top, width, height, OxyColors.Transparent, line, 1);
            }

            double end = step.IsSum ? to.X : left + width;
            ScreenPoint edge = at((double)most, 0);
            if (narrow)
            {
                string number = Number(step);
                sheet.Text(at((double)least, 0).X, from.Y + 11,
                    TextWidths.Shortened(step.Name, Page.Normal, edge.X - at((double)least, 0).X - TextWidths.Of(number, Page.Normal, step.IsSum) - 10, step.IsSum),
                    Ink.Line, Page.Normal, bold: step.IsSum);
                sheet.Text(edge.X, from.Y + 11, number, Ink.Line, Page.Normal, HorizontalAlignment.Right, bold: step.IsSum);
                continue;
            }

            if (i + 1 < steps.Count)
            {
                sheet.Line(to.X, top + height, to.X, to.Y + 4, Ink.Note);
            }

            sheet.Text(at((double)least, 0).X - 8, (from.Y + to.Y) / 2, TextWidths.Shortened(step.Name, Page.Normal, label - 12, step.IsSum), Ink.Line, Page.Normal,
                HorizontalAlignment.Right, bold: step.IsSum);
            sheet.Text(end + 6, top + (height / 2), Number(step), Ink.Line, Page.Normal, bold: step.IsSum);
        }
    }

    // In the order of the list, which is by size; a small rest is one step.
    private IEnumerable<Step> Steps()
    {
        decimal at = changes.Before.Total!.Value;
        yield return new Step("before", at, at, true);
        PlanChange[] moved = [.. shown.Where(change => change.Price != 0)];
        int single = moved.Length <= MostSteps ? moved.Length : MostSteps - 1;
        foreach (PlanChange change in moved.Take(single))
        {
            yield return new Step(Name(change), at, at += change.Price, false);
        }

        if (moved.Length > single)
        {
            yield return new Step("all " + Text(moved.Length - single) + " others", at, at += moved.Skip(single).Sum(change => change.Price), false);
        }

        yield return new Step("after", at, at, true);
    }

    private static string Name(PlanChange change) => change.Name + (change.Place is string place && change.Subject != ChangeSubject.Fixture ? ", " + place : string.Empty)
        + (change.Kind, change.Subject) switch
        {
            (ChangeKind.Added, ChangeSubject.Fixture or ChangeSubject.Option) => ": new",
            (ChangeKind.Removed, ChangeSubject.Fixture) => ": struck",
            (ChangeKind.Removed, ChangeSubject.Option) => ": declined",
            _ => string.Empty,
        };

    private IEnumerable<string> InTheWay(DisplayUnits units) => changes.Changes
        .Where(change => change.Subject is ChangeSubject.Refusal or ChangeSubject.Price or ChangeSubject.Currency or ChangeSubject.Objection or ChangeSubject.PriceGap)
        .Select(change => change.Sentence(units));

    private string Number(Step step) => step.IsSum ? Amount(step.To) : Signed(step.To - step.From);

    private string Signed(decimal amount) => (amount > 0 ? "+" : string.Empty) + Amount(amount);

    // With the decimals of the currency and without its code, which stands once below.
    private string Amount(decimal amount) => Currency.TryOf(changes.Currency, out Currency? currency)
        ? currency!.Text(amount).Split(' ')[0]
        : amount.ToString(CultureInfo.InvariantCulture);

    private static string Figures(double number) => number.ToString("0.######", CultureInfo.InvariantCulture);

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private sealed record Step(string Name, decimal From, decimal To, bool IsSum);
}

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
/// The steps add up from the total before to the total after, exactly. The axis does not begin at zero, so that a change of a few per cent
/// can be seen; the picture says so, and the bars of the totals have no height to be compared. What moved no money is not in it. It shows
/// what the changes hold: for a customer take <see cref="PlanChanges.For"/>.
/// </remarks>
/// <example><code>
/// static string Svg(JobPlan before, JobPlan after) =>
///     new ChangesPicture(PlanChanges.Between(before, after).For(LineReader.Customer)).ToSvg();
/// </code></example>
public sealed class ChangesPicture : Picture
{
    private const int MostSteps = 8;
    private const double Line = 16;
    private const double Bar = 20;
    private readonly PlanChanges changes;

    /// <summary>Pictures changes for their reader.</summary>
    /// <param name="changes">The changes.</param>
    /// <exception cref="ArgumentNullException"><paramref name="changes"/> is missing.</exception>
    public ChangesPicture(PlanChanges changes)
        : base("From the old price to the new one", Subtitle(Given.NotNull(changes, nameof(changes))))
    {
        this.changes = changes;
    }

    /// <inheritdoc/>
    public override string Describe(DisplayUnits units)
    {
        if (changes.Total is null)
        {
            return "There are no two prices to compare, but " + Text(changes.Changes.Count)
                + (changes.Changes.Count == 1 ? " change. " : " changes. ") + string.Join(" ", InTheWay(units));
        }

        return "Bars that begin where the one before ends, from the total before to the total after. " + string.Join("; ", Steps()
            .Select(step => step.Name + " " + Number(step))) + ". In " + changes.Currency + ".";
    }

    private protected override void Draw(Page page)
    {
        if (changes.Total is not decimal total)
        {
            page.Paragraph("There are no two prices to compare.");
            page.Warnings(InTheWay(page.Units));

            return;
        }

        List<Step> steps = [.. Steps()];
        page.Paragraph(string.Format(
            CultureInfo.InvariantCulture, "{0} became {1} {2}: {3}", Amount(steps[0].To), Amount(steps[steps.Count - 1].To),
                changes.Currency,
            total == 0 ? "the total stays" : Signed(total)));
        decimal most = steps.Max(step => Math.Max(step.From, step.To));
        decimal least = steps.Min(step => Math.Min(step.From, step.To));
        decimal room = most > least ? (most - least) / 4 : Math.Max(1, most / 20);
        least = least > 0 ? Math.Max(0, least - room) : least - room;
        double label = page.IsNarrow ? 8 : 230;
        double[] rows = [0, .. Rows(page, steps, label)];
        for (int i = 1; i < rows.Length; i++)
        {
            rows[i] += rows[i - 1];
        }

        double height = rows[rows.Length - 1];
        Chart chart = new(
            Chart.Scale((double)least, (double)most, Chart.Round((double)least, (double)most, page.IsNarrow ? 3 : 6)
                .Select(at => (at, Figures(at)))),
            Chart.Hidden(height, 0),
            new OxyThickness(label, 0, page.IsNarrow ? 8 : 92, 26));
        chart.Add((sheet, at) => Bars(sheet, at, steps, rows, least, most, page.IsNarrow));
        chart.Draw(page, height + 26);
        page.Note("Amounts in " + changes.Currency + (least > 0 ? "; the axis does not begin at zero." : "."));
    }

    private void Bars(
        Sheet sheet, Func<double, double, ScreenPoint> at, List<Step> steps, double[] rows, decimal least, decimal most, bool narrow)
    {
        for (int i = 0; i < steps.Count; i++)
        {
            Step step = steps[i];
            ScreenPoint from = at((double)(step.IsSum ? least : step.From), rows[i]);
            ScreenPoint to = at((double)step.To, rows[i + 1]);
            double left = Math.Min(from.X, to.X);
            double width = Math.Abs(to.X - from.X);

            // A name of several lines makes its row higher, and the bar stands below it or beside its middle.
            double top = narrow ? to.Y - 22 : ((from.Y + to.Y) / 2) - (Bar / 2);
            double height = narrow ? Bar - 1 : Bar;
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
                Lines(sheet, at((double)least, 0).X, from.Y + 11, step, HorizontalAlignment.Left);
                sheet.Text(edge.X, from.Y + 11, Number(step), Ink.Line, Page.Normal, HorizontalAlignment.Right, bold: step.IsSum);
                continue;
            }

            if (i + 1 < steps.Count)
            {
                sheet.Line(to.X, top + height, to.X, at((double)step.To, (rows[i + 1] + rows[i + 2]) / 2).Y - (Bar / 2), Ink.Note);
            }

            double first = ((from.Y + to.Y) / 2) - ((step.Lines.Count - 1) * Line / 2);
            Lines(sheet, at((double)least, 0).X - 8, first, step, HorizontalAlignment.Right);
            sheet.Text(end + 6, top + (height / 2), Number(step), Ink.Line, Page.Normal, bold: step.IsSum);
        }
    }

    private static void Lines(Sheet sheet, double x, double y, Step step, HorizontalAlignment align)
    {
        for (int i = 0; i < step.Lines.Count; i++)
        {
            sheet.Text(x, y + (i * Line), step.Lines[i], Ink.Line, Page.Normal, align, bold: step.IsSum);
        }
    }

    // Names are wrapped, never cut: at the left of the bars, or above them beside the number where the page is narrow.
    private IEnumerable<double> Rows(Page page, List<Step> steps, double label)
    {
        foreach (Step step in steps)
        {
            double width = page.IsNarrow
                ? page.Inside - (2 * label) - TextWidths.Of(Number(step), Page.Normal, step.IsSum) - 10
                : label - 12;
            step.Lines = TextWidths.Wrapped(step.Name, Page.Normal, width, step.IsSum);
            double more = (step.Lines.Count - 1) * Line;
            yield return page.IsNarrow ? 42 + more : Math.Max(28, 12 + Line + more);
        }
    }

    // In the order of the list, but the largest first where it has another; a small rest is one step.
    private IEnumerable<Step> Steps()
    {
        decimal at = changes.Before.Total!.Value;
        yield return new Step("before", at, at, true);
        PlanChange[] moved = [.. changes.Changes.Where(change => change.Price != 0).OrderByDescending(change => Math.Abs(change.Price))];
        int single = moved.Length <= MostSteps ? moved.Length : MostSteps - 1;
        foreach (PlanChange change in moved.Take(single))
        {
            yield return new Step(Name(change), at, at += change.Price, false);
        }

        if (moved.Length > single)
        {
            yield return new Step("all " + Text(moved.Length - single) + " others", at,
                at += moved.Skip(single).Sum(change => change.Price), false);
        }

        yield return new Step("after", at, at, true);
    }

    private static string Name(PlanChange change) => change.Name
        + (change.PlaceName is string place && change.Subject != ChangeSubject.Fixture ? ", " + place : string.Empty)
        + (change.Kind, change.Subject) switch
        {
            (ChangeKind.Added, ChangeSubject.Fixture or ChangeSubject.Option or ChangeSubject.OtherLine) => ": new",
            (ChangeKind.Removed, ChangeSubject.Fixture) => ": struck",
            (ChangeKind.Removed, ChangeSubject.Option) => ": declined",
            (ChangeKind.Removed, ChangeSubject.OtherLine) => ": gone",
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

    // The job, and the number and revisions of the quote as far as they are known.
    private static string Subtitle(PlanChanges changes)
    {
        string name = changes.After.Name != changes.After.Job ? changes.After.Name : changes.Before.Name;
        string quotes = (changes.Before.Quote, changes.After.Quote) switch
        {
            (QuoteFigures was, QuoteFigures now) when Quote(was) != Quote(now) && Quote(was).Length > 0 => was.Number == now.Number
                ? Quote(was) + " to " + Revision(now)
                : Quote(was) + " to " + Quote(now),
            (QuoteFigures was, null) => Quote(was),
            (_, QuoteFigures now) => Quote(now),
            _ => string.Empty,
        };
        return name + (quotes.Length == 0 ? string.Empty : ", " + quotes);

        static string Quote(QuoteFigures quote) => string.Join(", ", new[] { quote.Number, quote.Revision is null ? null : Revision(quote) }
            .Where(part => part is not null));
        static string Revision(QuoteFigures quote) => quote.Revision is string revision ? "revision " + revision : "no revision";
    }

    private sealed record Step(string Name, decimal From, decimal To, bool IsSum)
    {
        public IReadOnlyList<string> Lines { get; set; } = [];
    }
}

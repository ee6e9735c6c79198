using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;

namespace Refinish.Pictures.Drawing;

/// <summary>
/// A price as level bars, one below the other, each with its name and its amount. Names that are too long are broken into lines.
/// </summary>
internal static class PriceBars
{
    private const double LeastNameWidth = 180;
    private const double MostNameWidth = 230;
    private const double Line = 17;
    private const double Indent = 14;
    private const double Apart = 12;

    public static void Draw(Page page, IReadOnlyList<PriceStep> steps, Func<decimal, string> text)
    {
        decimal most = Math.Max(1, steps.Max(step => Math.Max(step.From, step.To)));
        decimal least = Math.Min(0, steps.Min(step => Math.Min(step.From, step.To)));
        bool narrow = page.IsNarrow;
        double amounts = narrow ? 8 : 82;
        double label = narrow
            ? 8
            : Math.Max(LeastNameWidth, Math.Min(MostNameWidth, 12 + steps.Max(step => In(step) + WidthOf(step, step.Name))));
        List<Row> rows = [];
        double down = 0;
        foreach (PriceStep step in steps)
        {
            string amount = (step.Amount < 0 || step.IsSum || rows.Count == 0 ? string.Empty : "+") + text(step.Amount);
            double room = (narrow ? page.Inside - label - amounts - WidthOf(step, amount) - 8 : label - 10) - In(step);
            IReadOnlyList<string> name = TextWidths.Wrapped(step.Name, Page.Normal, room, step.IsSum);
            down += step.IsApart ? Apart : 0;
            rows.Add(new Row(step, name, amount, down));
            down += (narrow ? 42 : 28) + ((name.Count - 1) * Line);
        }

        Chart chart = new(
            Chart.Scale((double)least, (double)most, Chart.Round((double)least, (double)most, narrow ? 3 : 6)
                .Select(at => (at, Figures.Significant(at, 6)))),
            Chart.Hidden(down, 0),
            new OxyThickness(label, 0, amounts, 26));
        chart.Add((sheet, at) => Bars(sheet, at, rows, down, (double)least, (double)most, narrow ? null : page.Left));
        chart.Draw(page, down + 26);
    }

    private static double In(PriceStep step) => step.IsUnder ? Indent : 0;

    private static double WidthOf(PriceStep step, string text) => TextWidths.Of(text, Page.Normal, step.IsSum);

    private static void Bars(Sheet sheet, Func<double, double, ScreenPoint> at, List<Row> rows, double down, double least, double most,
        double? names)
    {
        bool narrow = names is null;
        for (int i = 0; i < rows.Count; i++)
        {
            PriceStep step = rows[i].Step;
            ScreenPoint from = at((double)step.From, rows[i].Top);
            ScreenPoint to = at((double)step.To, i + 1 < rows.Count ? rows[i + 1].Top - (rows[i + 1].Step.IsApart ? Apart : 0) : down);
            double left = Math.Min(from.X, to.X);
            double width = Math.Abs(to.X - from.X);
            double top = from.Y + (narrow ? 3 + (rows[i].Name.Count * Line) : 4);
            double height = narrow ? to.Y - top - 3 : 20;
            (OxyColor fill, OxyColor line) = step.Kind switch
            {
                PriceStepKind.Sum => (Ink.Body, Ink.Line),
                PriceStepKind.Earned => (Ink.GreenTint, Ink.Green),
                PriceStepKind.Less => (Ink.VermillionTint, Ink.Vermillion),
                PriceStepKind.PassedOn => (Ink.Paper, Ink.Note),
                _ => (Ink.BlueTint, Ink.Blue),
            };
            sheet.Rectangle(left, top, width, height, fill, OxyColors.Transparent);
            if (step.Kind is PriceStepKind.Earned or PriceStepKind.Less)
            {
                sheet.Hatch(left, top, width, height, line, falling: step.Kind == PriceStepKind.Less);
            }

            sheet.Rectangle(left, top, width, height, OxyColors.Transparent, line, step.IsSum ? 2 : 1);
            double begin = (narrow ? at(least, 0).X : names!.Value) + In(step);
            double middle = from.Y + (narrow ? 11 : 14);
            for (int k = 0; k < rows[i].Name.Count; k++)
            {
                sheet.Text(begin, middle + (k * Line), rows[i].Name[k], Ink.Line, Page.Normal, bold: step.IsSum);
            }

            if (narrow)
            {
                sheet.Text(at(most, 0).X, middle, rows[i].Amount, Ink.Line, Page.Normal, HorizontalAlignment.Right, bold: step.IsSum);
                continue;
            }

            if (i + 1 < rows.Count)
            {
                sheet.Line(to.X, top + height, to.X, at(0, rows[i + 1].Top).Y + 4, Ink.Note);
            }

            sheet.Text(left + width + 6, top + (height / 2), rows[i].Amount, Ink.Line, Page.Normal, bold: step.IsSum);
        }
    }

    /// <summary>A bar with the lines of its name, its amount in words, and how far down it begins.</summary>
    private sealed record Row(PriceStep Step, IReadOnlyList<string> Name, string Amount, double Top);
}

using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;

namespace Refinish.Pictures.Drawing;

/// <summary>A price as level bars, one below the other, each with its name and its amount.</summary>
internal static class PriceBars
{
    private const double LeastNameWidth = 180;
    private const double MostNameWidth = 230;

    public static void Draw(Page page, IReadOnlyList<PriceStep> steps, Func<decimal, string> text)
    {
        decimal most = Math.Max(1, steps.Max(step => Math.Max(step.From, step.To)));
        decimal least = Math.Min(0, steps.Min(step => Math.Min(step.From, step.To)));
        double amounts = page.IsNarrow ? 8 : 82;
        double label = page.IsNarrow
            ? 8
            : Math.Max(LeastNameWidth, Math.Min(MostNameWidth, 12 + steps.Max(step => TextWidths.Of(step.Name, Page.Normal, step.IsSum))));
        double row = page.IsNarrow ? 42 : 28;
        Chart chart = new(
            Chart.Scale((double)least, (double)most, Chart.Round((double)least, (double)most, page.IsNarrow ? 3 : 6)
                .Select(at => (at, Figures.Significant(at, 6)))),
            Chart.Hidden(steps.Count, 0),
            new OxyThickness(label, 0, amounts, 26));
        chart.Add((sheet, at) => Bars(sheet, at, steps, text, (double)least, (double)most, page.IsNarrow ? null : label - 10));
        chart.Draw(page, (steps.Count * row) + 26);
    }

    private static void Bars(Sheet sheet, Func<double, double, ScreenPoint> at, IReadOnlyList<PriceStep> steps, Func<decimal, string> text,
        double least,
        double most, double? names)
    {
        bool narrow = names is null;
        for (int i = 0; i < steps.Count; i++)
        {
            PriceStep step = steps[i];
            ScreenPoint from = at((double)step.From, i);
            ScreenPoint to = at((double)step.To, i + 1);
            double left = Math.Min(from.X, to.X);
            double width = Math.Abs(to.X - from.X);
            double top = from.Y + (narrow ? 20 : 4);
            double height = to.Y - top - (narrow ? 3 : 4);
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
            string amount = (step.Amount < 0 || step.IsSum || i == 0 ? string.Empty : "+") + text(step.Amount);
            if (narrow)
            {
                double start = at(0, 0).X;
                double end = at(most, 0).X;
                double room = end - start - TextWidths.Of(amount, Page.Normal, step.IsSum) - 8;
                sheet.Text(start, from.Y + 11, TextWidths.Shortened(step.Name, Page.Normal, room, step.IsSum), Ink.Line, Page.Normal,
                    bold: step.IsSum);
                sheet.Text(end, from.Y + 11, amount, Ink.Line, Page.Normal, HorizontalAlignment.Right, bold: step.IsSum);
                continue;
            }

            if (i + 1 < steps.Count)
            {
                sheet.Line(to.X, top + height, to.X, to.Y + 4, Ink.Note);
            }

            sheet.Text(at(least, 0).X - 8, (from.Y + to.Y) / 2, TextWidths.Shortened(step.Name, Page.Normal, names!.Value, step.IsSum),
                Ink.Line, Page.Normal,
                HorizontalAlignment.Right, bold: step.IsSum);
            sheet.Text(left + width + 6, top + (height / 2), amount, Ink.Line, Page.Normal, bold: step.IsSum);
        }
    }
}

using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;
using Refinish.Fixtures;
using Refinish.Pictures.Drawing;

namespace Refinish.Pictures.Drafting;

/// <summary>
/// Puts the views of a blueprint on a page, all at one scale, side by side when there is room, each with its dimension lines around it.
/// </summary>
internal sealed class BlueprintPainter
{
    private const double Head = 22;
    private const double Gap = 24;
    private const double Mark = 9;
    private readonly Page page;
    private readonly Blueprint blueprint;
    private readonly Func<FixtureZoneKind, char?> letter;
    private readonly Dictionary<string, int> numbers = [];

    // What stands already, in all views: labels, numbers, letters, headings.
    private readonly List<OxyRect> taken = [];
    private readonly List<Action> marks = [];
    private double scale;

    private BlueprintPainter(Page page, Blueprint blueprint, Func<FixtureZoneKind, char?> letter)
    {
        this.page = page;
        this.blueprint = blueprint;
        this.letter = letter;
        foreach (string words in blueprint.Views.SelectMany(view => view.Points).Select(point => point.Words))
        {
            NumberOf(words);
        }
    }

    /// <summary>Draws all views.</summary>
    /// <returns>The words of the numbered points, from 1 on.</returns>
    public static IEnumerable<string> Draw(Page page, Blueprint blueprint, Func<FixtureZoneKind, char?> letter)
    {
        BlueprintPainter painter = new(page, blueprint, letter);
        if (blueprint.Views.Count > 0)
        {
            painter.Draw();
            foreach (Action mark in painter.marks)
            {
                mark();
            }
        }

        return painter.numbers.OrderBy(pair => pair.Value).Select(pair => pair.Key);
    }

    private void Draw()
    {
        double tallest = page.IsNarrow ? 300 : 360;
        double stacked = Fit(views => views.Min(frame => Math.Min((page.Inside - frame.Beside) / frame.View.Width, tallest / frame.View.Height)));
        double row = Fit(views => Math.Min(
            (page.Inside - (Gap * (views.Count - 1)) - views.Sum(frame => frame.Beside)) / views.Sum(frame => frame.View.Width),
            tallest / views.Max(frame => frame.View.Height)));
        bool besides = blueprint.Views.Count > 1 && row >= 0.7 * stacked;
        scale = besides ? row : stacked;
        List<Frame> frames = Frames();
        if (besides)
        {
            double x = page.Left + ((page.Inside - frames.Sum(frame => frame.Width) - (Gap * (frames.Count - 1))) / 2);
            double top = page.Y;
            double above = frames.Max(frame => frame.Above);
            foreach (Frame frame in frames)
            {
                Draw(frame, x, top, above);
                x += frame.Width + Gap;
            }

            page.Y = top + Head + above + frames.Max(frame => (frame.View.Height * scale) + frame.Below);
            return;
        }

        // One above the other, their left edges in line so that lengths can be followed from view to view.
        double left = frames.Max(frame => frame.Left);
        double widest = frames.Max(frame => left + (frame.View.Width * scale) + frame.Right);
        double start = widest <= page.Inside ? page.Left + ((page.Inside - widest) / 2) : page.Left;
        foreach (Frame frame in frames)
        {
            double at = widest <= page.Inside ? start + left - frame.Left : page.Left + ((page.Inside - frame.Width) / 2);
            Draw(frame, at, page.Y, frame.Above);
            page.Y += Head + frame.Above + (frame.View.Height * scale) + frame.Below;
        }
    }

    // The dimension lines depend on the scale and the scale on the room that they take; it settles in a few rounds, always on the
    // smaller side.
    private double Fit(Func<List<Frame>, double> largest)
    {
        scale = page.Inside / blueprint.Views.Max(view => view.Width);
        double found = scale;
        for (int i = 0; i < 12; i++)
        {
            found = Math.Max(1e-3, largest(Frames()));
            if (found >= scale * (1 - 1e-9) && i > 0)
            {
                break;
            }

            scale = Math.Min(scale, found);
        }

        return scale;
    }

    // One number for what is said in the same words.
    private int NumberOf(string words)
    {
        if (!numbers.TryGetValue(words, out int number))
        {
            numbers.Add(words, number = numbers.Count + 1);
        }

        return number;
    }

    private List<Frame> Frames() => [.. blueprint.Views.Select(view => new Frame(view, scale, page.Units))];

    private void Draw(Frame frame, double x, double y, double above)
    {
        Sheet sheet = page.Sheet;
        View view = frame.View;
        double left = x + frame.Left;
        double top = y + Head + above;
        sheet.Text(left, y + 8, TextWidths.Shortened(view.Name, Page.Small, Math.Max(Math.Min(x + frame.Width + Gap - 6, page.Right) - left, 40), bold: true), Ink.Line, Page.Small, bold: true);
        ScreenPoint At(DataPoint point) => new(left + (point.X * scale), top + (point.Y * scale));
        foreach (Outline outline in view.Outlines)
        {
            Paint([.. outline.Points.Select(At)], outline.Stroke);
        }

        List<Action> labels = [];
        taken.Add(new OxyRect(left - 2, y, Math.Min(page.Right - left, TextWidths.Of(view.Name, Page.Small, bold: true)) + 4, 17));
        foreach (PlacedDimension placed in frame.Placed)
        {
            Dimensions(placed, left, top, view, labels);
        }

        foreach (Action label in labels)
        {
            label();
        }

        // Letters and numbers go in once every view has its lines and labels.
        marks.Add(() => Marks(view, At, new OxyRect(page.Left - 6, y, page.Inside + 12, Head + above + (view.Height * scale) + frame.Below)));
    }

    private void Marks(View view, Func<DataPoint, ScreenPoint> place, OxyRect within)
    {
        Sheet sheet = page.Sheet;
        foreach ((DataPoint at, FixtureZoneKind zone) in view.Zones)
        {
            if (letter(zone) is char sign)
            {
                ScreenPoint point = Free(place(at), 0, 0, 8.5, within);
                sheet.Rectangle(point.X - 8, point.Y - 8, 16, 16, Ink.Paper, Ink.Line);
                sheet.Text(point.X, point.Y, sign.ToString(), Ink.Line, Page.Small, HorizontalAlignment.Center, bold: true);
            }
        }

        // The marked spots themselves stay free of numbers.
        taken.AddRange(view.Points.Select(point => place(point.At)).Select(point => new OxyRect(point.X - 3, point.Y - 3, 6, 6)));
        foreach ((DataPoint at, string words, double direction) in view.Points)
        {
            ScreenPoint spot = place(at);
            ScreenPoint number = Free(spot, direction, 24, Mark + 1, within);
            double dx = number.X - spot.X;
            double dy = number.Y - spot.Y;
            double away = Math.Max(1e-9, Math.Sqrt((dx * dx) + (dy * dy)));
            sheet.Line(spot.X, spot.Y, number.X - (dx / away * Mark), number.Y - (dy / away * Mark), Ink.Note);
            sheet.Circle(spot.X, spot.Y, 2, Ink.Note, OxyColors.Transparent);
            NumberMark(sheet, number.X, number.Y, NumberOf(words));
        }
    }

    public static void NumberMark(Sheet sheet, double x, double y, int number)
    {
        sheet.Circle(x, y, Mark, Ink.Paper, Ink.Line);
        sheet.Text(x, y, Figures.Fixed(number, 0), Ink.Line, 11, HorizontalAlignment.Center);
    }

    private void Paint(ScreenPoint[] points, Stroke stroke)
    {
        Sheet sheet = page.Sheet;
        switch (stroke)
        {
            case Stroke.Body or Stroke.Hollow or Stroke.ClosedEdge:
                OxyColor fill = stroke == Stroke.Body ? Ink.Body : stroke == Stroke.Hollow ? Ink.Paper : OxyColors.Transparent;
                sheet.DrawPolygon(points, fill, Ink.Line, 1.6, EdgeRenderingMode.Automatic, null, LineJoin.Round);
                break;
            case Stroke.Hidden:
                sheet.DrawLine(points, Ink.Note, 1, EdgeRenderingMode.Automatic, [5, 3], LineJoin.Round);
                break;
            case Stroke.Fine:
                sheet.DrawLine(points, Ink.Faint, 1, EdgeRenderingMode.Automatic, null, LineJoin.Round);
                break;
            case Stroke.Wall:
                sheet.DrawLine(points, Ink.Line, 3.2, EdgeRenderingMode.Automatic, null, LineJoin.Miter);
                break;
            default:
                sheet.DrawLine(points, Ink.Line, 1.6, EdgeRenderingMode.Automatic, null, LineJoin.Round);
                break;
        }
    }

    private void Dimensions(PlacedDimension placed, double left, double top, View view, List<Action> labels)
    {
        Sheet sheet = page.Sheet;
        Dimension dimension = placed.Dimension;
        bool across = dimension.Side is Side.Top or Side.Bottom;
        double out0 = Frame.First + (placed.Level * Frame.Next);
        double line = dimension.Side switch
        {
            Side.Top => top - out0,
            Side.Bottom => top + (view.Height * scale) + out0,
            Side.Left => left - out0,
            _ => left + (view.Width * scale) + out0,
        };
        double beyond = dimension.Side is Side.Top or Side.Left ? -4 : 4;
        double reach = (across ? top : left) + (dimension.Reach * scale);
        double origin = across ? left : top;
        foreach (double end in (double[])[placed.From, placed.To])
        {
            double at = origin + end;
            if (across)
            {
                sheet.Line(at, reach, at, line + beyond, Ink.Note, 0.7);
                sheet.Line(at - 3.5, line + 3.5, at + 3.5, line - 3.5, Ink.Blue, 1.6);
            }
            else
            {
                sheet.Line(reach, at, line + beyond, at, Ink.Note, 0.7);
                sheet.Line(line - 3.5, at + 3.5, line + 3.5, at - 3.5, Ink.Blue, 1.6);
            }
        }

        double from = origin + Math.Min(placed.From, placed.LabelFrom);
        double to = origin + Math.Max(placed.To, placed.LabelTo);
        double middle = origin + ((placed.LabelFrom + placed.LabelTo) / 2);
        double half = (placed.LabelTo - placed.LabelFrom) / 2;
        if (across)
        {
            sheet.Line(from, line, to, line, Ink.Blue, 1.2);
            taken.Add(new OxyRect(middle - half - 2, line - 8, (2 * half) + 4, 16));
        }
        else
        {
            sheet.Line(line, from, line, to, Ink.Blue, 1.2);
            taken.Add(new OxyRect(line - 8, middle - half - 2, 16, (2 * half) + 4));
        }

        labels.Add(() =>
        {
            // The line is broken where its label stands.
            if (placed.IsNumbered)
            {
                NumberMark(sheet, line, middle, NumberOf(placed.Text.Replace('\u00A0', ' ')));
            }
            else if (across)
            {
                sheet.Rectangle(middle - half - 3, line - 8, (2 * half) + 6, 16, Ink.Paper, OxyColors.Transparent);
                sheet.Text(middle, line, placed.Text, Ink.Line, Page.Small, HorizontalAlignment.Center);
            }
            else
            {
                sheet.Rectangle(line - 8, middle - half - 3, 16, (2 * half) + 6, Ink.Paper, OxyColors.Transparent);
                sheet.Text(line, middle, placed.Text, Ink.Line, Page.Small, HorizontalAlignment.Center, rotation: -90);
            }
        });
    }

    // The nearest place about a spot, in the wanted direction first, where nothing stands yet.
    private ScreenPoint Free(ScreenPoint spot, double direction, double away, double half, OxyRect within)
    {
        for (int ring = 0; ring < 12; ring++)
        {
            double radius = away + (ring * 10);
            for (int turn = 0; turn < 12; turn++)
            {
                double angle = (direction + (turn % 2 == 0 ? turn * 15 : -(turn + 1) * 15)) * Math.PI / 180;
                ScreenPoint at = new(spot.X + (radius * Math.Cos(angle)), spot.Y + (radius * Math.Sin(angle)));
                OxyRect box = new(at.X - half, at.Y - half, 2 * half, 2 * half);
                bool clear = box.Left >= within.Left && box.Right <= within.Right && box.Top >= within.Top && box.Bottom <= within.Bottom
                    && taken.All(other => other.Right <= box.Left || other.Left >= box.Right || other.Bottom <= box.Top || other.Top >= box.Bottom);
                if (clear)
                {
                    taken.Add(box);
                    return at;
                }

                if (radius == 0)
                {
                    break;
                }
            }
        }

        return spot;
    }
}

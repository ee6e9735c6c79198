using OxyPlot;

namespace Refinish.Pictures.Drawing;

/// <summary>The bars of a timeline, one for each kind: no colour stands alone.</summary>
internal static class TimelineMarks
{
    public const double Bar = 14;

    /// <summary>A bar or, for a wait, a dotted line, about a height; narrow bars stay visible.</summary>
    public static void Draw(Sheet sheet, TimelineKind kind, double left, double width, double middle)
    {
        double top = middle - (Bar / 2);
        switch (kind)
        {
            case TimelineKind.Wait:
                Dots(sheet, left, left + width, middle);
                return;
            case TimelineKind.Coat:
                sheet.Rectangle(left, top, width, Bar, Ink.VermillionTint, OxyColors.Transparent);
                sheet.Hatch(left, top, width, Bar, Ink.Vermillion, 5);
                sheet.Rectangle(left, top, width, Bar, OxyColors.Transparent, Ink.Vermillion, 1.2);
                return;
            case TimelineKind.StandBy:
                sheet.Rectangle(left, top, width, Bar, Ink.Paper, OxyColors.Transparent);
                sheet.Hatch(left, top, width, Bar, Ink.Blue, 7, falling: true);
                sheet.Rectangle(left, top, width, Bar, OxyColors.Transparent, Ink.Blue, 1.2);
                return;
            default:
                sheet.Rectangle(left, top, width, Bar, Ink.BlueTint, OxyColors.Transparent);
                sheet.Rectangle(left, top, width, Bar, OxyColors.Transparent, Ink.Blue, 1.2);
                return;
        }
    }

    /// <summary>A window from its opening to its closing.</summary>
    public static void Window(Sheet sheet, double left, double width, double middle) => sheet.Rectangle(left, middle - 3, width, 6,
        Ink.GreenTint, Ink.Green, 0.7);

    /// <summary>Closed to others, as high as a bar: neither an outline nor a hatch, which are those of coats.</summary>
    public static void Closed(Sheet sheet, double left, double width, double middle)
    {
        sheet.Rectangle(left, middle - (Bar / 2), width, Bar, Ink.VermillionTint, OxyColors.Transparent);
        foreach (int edge in new[] { -1, 1 })
        {
            sheet.Line(left, middle + (edge * Bar / 2), left + width, middle + (edge * Bar / 2), Ink.Vermillion, 2);
        }
    }

    /// <summary>The first water, and from then on.</summary>
    public static void Water(Sheet sheet, double left, double right, double top, double bottom)
    {
        double third = (bottom - top) / 3;
        if (right > left)
        {
            sheet.Rectangle(left, top + third, right - left, third, Ink.GreenTint, OxyColors.Transparent);
        }

        sheet.Line(left, top, left, bottom, Ink.Green, 3);
    }

    /// <summary>The edge of a window.</summary>
    public static void Edge(Sheet sheet, double x, double middle) => sheet.Line(x, middle - 5, x, middle + 5, Ink.Green, 1.8);

    /// <summary>Leave alone, or wait.</summary>
    public static void Dots(Sheet sheet, double left, double right, double middle) => sheet.Line(left, middle, right, middle, Ink.Note,
        1.5, [2, 3]);

    /// <summary>Nobody in the room until it is clear of vapour.</summary>
    public static void Clearing(Sheet sheet, double left, double right, double middle) => sheet.Line(left, middle, right, middle,
        Ink.Vermillion, 2, [5, 3]);
}

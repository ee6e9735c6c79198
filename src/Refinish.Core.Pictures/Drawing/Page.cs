using System;
using System.Collections.Generic;
using OxyPlot;

namespace Refinish.Pictures.Drawing;

/// <summary>A page that is filled from the top: heading, paragraphs, drawings, notes. Its height is what was needed.</summary>
internal sealed class Page
{
    public const double Small = 12;
    public const double Normal = 13;
    private const double Large = 17;

    public Page(PictureStyle style)
    {
        Style = style;
        Sheet = new Sheet(style.Theme);
        Margin = style.Width < 520 ? 12 : 20;
        Y = Margin;
    }

    public PictureStyle Style { get; }

    public Sheet Sheet { get; }

    public DisplayUnits Units => Style.Units;

    public double Margin { get; }

    public double Left => Margin;

    public double Right => Style.Width - Margin;

    public double Inside => Right - Left;

    /// <summary>Too narrow for a label beside what it names.</summary>
    public bool IsNarrow => Style.Width < 560;

    /// <summary>Down to where the page is filled.</summary>
    public double Y { get; set; }

    public void Heading(string title, string? subject)
    {
        foreach (string line in TextWidths.Wrapped(title, Large, Inside, bold: true))
        {
            Sheet.Text(Left, Y, line, Ink.Line, Large, along: VerticalAlignment.Top, bold: true);
            Y += 22;
        }

        Y += 2;
        if (subject is not null)
        {
            Note(subject);
        }
    }

    /// <summary>A part of the page under a rule of its own.</summary>
    public void Section(string text)
    {
        Y += 8;
        Sheet.Line(Left, Y, Right, Y, Ink.Line, 1.5);
        Y += 7;
        Paragraph(text, 15, Ink.Line, bold: true);
    }

    public void SubHeading(string text)
    {
        Y += 4;
        Paragraph(text, Normal, Ink.Line, bold: true);
    }

    public void Paragraph(string text, double size = Normal, OxyColor? colour = null, bool bold = false)
    {
        foreach (string line in TextWidths.Wrapped(text, size, Inside, bold))
        {
            Sheet.Text(Left, Y, line, colour ?? Ink.Line, size, along: VerticalAlignment.Top, bold: bold);
            Y += Math.Ceiling(size * 1.4);
        }

        Y += 3;
    }

    /// <summary>A note in the second rank.</summary>
    public void Note(string text) => Paragraph(text, Small, Ink.Note);

    /// <summary>Something that stands in the way or can hurt: marked by a bar at its left as well as by its words.</summary>
    public void Warning(string text)
    {
        IReadOnlyList<string> lines = TextWidths.Wrapped(text, Small, Inside - 12);
        double height = (lines.Count * 17) + 2;
        Sheet.Rectangle(Left, Y, 4, height, Ink.Vermillion, OxyColors.Transparent);
        foreach (string line in lines)
        {
            Sheet.Text(Left + 12, Y + 2, line, Ink.Line, Small, along: VerticalAlignment.Top);
            Y += 17;
        }

        Y += 7;
    }

    public void Warnings(IEnumerable<string> texts)
    {
        foreach (string text in texts)
        {
            Warning(text);
        }
    }

    /// <summary>Marks with their words, as many in a line as fit. A mark is 24 wide and drawn about the height given.</summary>
    public void Legend(IEnumerable<(string Words, Action<double, double> Mark)> entries)
    {
        double x = Left;
        foreach ((string words, Action<double, double> mark) in entries)
        {
            double width = 32 + TextWidths.Of(words, Small);
            if (x > Left && x + width > Right)
            {
                x = Left;
                Y += 19;
            }

            mark(x, Y + 8);
            Sheet.Text(x + 31, Y + 8, words, Ink.Note, Small);
            x += width + 18;
        }

        Y += 22;
    }

    public string ToSvg(string title, string description) => Sheet.ToSvg(Style.Width, Math.Ceiling(Y + Margin - 6), title, description);
}

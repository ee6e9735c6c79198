using System;
using System.Collections.Generic;
using System.Text;

namespace Refinish.Pictures.Drawing;

/// <summary>
/// How wide a text comes out at most. The reader's font is not known; these are the advance widths of DejaVu Sans, the widest of the usual
/// sans-serif faces, in thousandths of the size, so that text in any of the others leaves room rather than runs over.
/// </summary>
internal static class TextWidths
{
    private const double Bold = 1.12;

    private static readonly string[] Units =
        ["%", "h", "min", "s", "d", "ppm", "mg/m³", "m³/h", "cfm", "°C", "°F", "µm", "mil", "mm", "m", "m²", "m³", "in", "ft", "ft²", "ft³", "L", "EUR"];

    private static readonly short[] Ascii =
    [
        318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636, 636, 636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531,
        1000, 684, 686, 698, 770, 632, 575, 775, 752, 295, 295, 656, 557, 863, 748, 787, 603, 787, 695, 635, 611, 732, 684, 989, 685, 611, 685, 390, 337, 390, 838, 500,
        500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579, 278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838,
    ];

    public static double Of(string text, double size, bool bold = false)
    {
        double sum = 0;
        foreach (char c in text)
        {
            sum += c is >= ' ' and <= '~' ? Ascii[c - ' ']
                : c is '²' or '³' ? 401
                : c is '·' or '\u00A0' ? 318
                : c is '–' or '°' ? 500
                : c is '≥' or '≤' or '−' or '→' or '×' or '±' ? 838
                : c is '…' || c >= 0x2E80 ? 1000
                : 700;
        }

        return sum * size / 1000 * (bold ? Bold : 1);
    }

    /// <summary>Lines that fit a width, broken between words but not between a number and its unit, and within a word only when it is too long by itself.</summary>
    public static IReadOnlyList<string> Wrapped(string text, double size, double width, bool bold = false)
    {
        List<string> lines = [];
        StringBuilder line = new();
        foreach (string word in Words(text))
        {
            if (line.Length > 0 && Of(line + " " + word, size, bold) <= width)
            {
                line.Append(' ').Append(word);
                continue;
            }

            if (line.Length > 0)
            {
                lines.Add(line.ToString());
                line.Clear();
            }

            foreach (char c in word)
            {
                // A pair that makes one sign is not torn apart.
                if (line.Length > 0 && !char.IsLowSurrogate(c) && Of(line.ToString() + c, size, bold) > width)
                {
                    lines.Add(line.ToString());
                    line.Clear();
                }

                line.Append(c);
            }
        }

        if (line.Length > 0)
        {
            lines.Add(line.ToString());
        }

        return lines;
    }

    private static List<string> Words(string text)
    {
        List<string> words = [];
        foreach (string word in text.Split([' ', '\n', '\t', '\r'], StringSplitOptions.RemoveEmptyEntries))
        {
            string before = words.Count == 0 ? string.Empty : words[words.Count - 1];
            if (before.Length > 0 && char.IsDigit(before[before.Length - 1]) && Array.IndexOf(Units, word.TrimEnd('.', ',', ';', ':', ')')) >= 0)
            {
                words[words.Count - 1] = before + " " + word;
            }
            else
            {
                words.Add(word);
            }
        }

        return words;
    }

    /// <summary>The text, or as much of it as fits with an ellipsis behind.</summary>
    public static string Shortened(string text, double size, double width, bool bold = false)
    {
        if (Of(text, size, bold) <= width)
        {
            return text;
        }

        int length = text.Length;
        while (length > 1 && (Of(text.Substring(0, length).TrimEnd() + "…", size, bold) > width || char.IsHighSurrogate(text[length - 1])))
        {
            length--;
        }

        return text.Substring(0, length).TrimEnd() + "…";
    }
}

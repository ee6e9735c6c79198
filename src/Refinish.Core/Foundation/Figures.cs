using System;
using System.Globalization;
using System.Text;

namespace Refinish;

/// <summary>Numbers as text: significant figures, a point as decimal sign, whatever the culture of the thread.</summary>
internal static class Figures
{
    private const string Superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    /// <summary>At most <paramref name="figures"/> significant figures, no trailing zeros; powers of ten outside 1e-4 … 1e7.</summary>
    public static string Significant(double value, int figures = 6)
    {
        if (value == 0)
        {
            return "0";
        }

        int exponent = Exponent(value, figures);
        return exponent is < -4 or > 7
            ? Trimmed(value / Math.Pow(10, exponent), figures - 1) + "×10" + Superscript(exponent)
            : Trimmed(value, Math.Max(0, figures - 1 - exponent));
    }

    public static string SignificantLatex(double value, int figures = 6)
    {
        if (value == 0)
        {
            return "0";
        }

        int exponent = Exponent(value, figures);
        return exponent is < -4 or > 7
            ? Trimmed(value / Math.Pow(10, exponent), figures - 1) + " \\times 10^{" + exponent.ToString(CultureInfo.InvariantCulture) + "}"
            : Trimmed(value, Math.Max(0, figures - 1 - exponent));
    }

    /// <summary>The number with some significant figures that is next above or below; one that has no more of them, but for its last digits, stays.</summary>
    public static double Towards(double value, int figures, bool up)
    {
        if (value == 0)
        {
            return 0;
        }

        double unit = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - figures + 1);
        double scaled = value / unit;
        double slack = 1e-9 * Math.Abs(scaled);
        return (up ? Math.Ceiling(scaled - slack) : Math.Floor(scaled + slack)) * unit;
    }

    /// <summary>A fixed number of decimals, as money and gauge readings are written.</summary>
    public static string Fixed(double value, int decimals)
    {
        string text = value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return IsNegativeZero(text) ? text.Substring(1) : text;
    }

    private static int Exponent(double value, int figures)
    {
        int exponent = (int)Math.Floor(Math.Log10(Math.Abs(value)));

        // 9.99999 rounds up into the next power of ten.
        double scaled = Math.Abs(value) / Math.Pow(10, exponent);
        return Math.Round(scaled, Math.Min(15, figures - 1)) >= 10 ? exponent + 1 : exponent;
    }

    private static string Trimmed(double value, int decimals)
    {
        string text = value.ToString("F" + Math.Min(decimals, 15).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        if (decimals > 0)
        {
            text = text.TrimEnd('0').TrimEnd('.');
        }

        return IsNegativeZero(text) ? text.Substring(1) : text;
    }

    private static bool IsNegativeZero(string text)
    {
        foreach (char c in text)
        {
            if (c is >= '1' and <= '9')
            {
                return false;
            }
        }

        return text.Length > 0 && text[0] == '-';
    }

    private static string Superscript(int exponent)
    {
        StringBuilder text = new();
        foreach (char c in exponent.ToString(CultureInfo.InvariantCulture))
        {
            text.Append(c == '-' ? '⁻' : Superscripts[c - '0']);
        }

        return text.ToString();
    }
}

using System;
using System.Globalization;
using System.Linq;

namespace Refinish;

/// <summary>Numbers as text: significant figures, a point as decimal sign, whatever the culture of the thread.</summary>
internal static class Figures
{
    private const string Superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    /// <summary>At most <paramref name="figures"/> significant figures, no trailing zeros; powers of ten outside 1e-4 … 1e7.</summary>
    public static string Significant(double value, int figures = 6) => Written(value, figures, static exponent => "×10" + Superscript(exponent));

    /// <summary>
    /// As <see cref="Significant(double, int)"/>, but never below the value when rounded up and never above it when rounded down.
    /// </summary>
    public static string Significant(double value, int figures, bool up) => Significant(Careful(value, figures, up), figures);

    /// <summary>The number that <see cref="Significant(double, int, bool)"/> writes.</summary>
    public static double Careful(double value, int figures, bool up)
    {
        if (value == 0)
        {
            return 0;
        }

        double unit = Math.Pow(10, (int)Math.Floor(Math.Log10(Math.Abs(value))) - figures + 1);
        double count = value / unit;

        // A quotient of doubles may miss a whole number by its last digits.
        return (up ? Math.Ceiling(count - 1e-9) : Math.Floor(count + 1e-9)) * unit;
    }

    public static string SignificantLatex(double value, int figures = 6) =>
        Written(value, figures, static exponent => " \\times 10^{" + exponent.ToString(CultureInfo.InvariantCulture) + "}");

    /// <summary>A fixed number of decimals, as money and gauge readings are written.</summary>
    public static string Fixed(double value, int decimals)
    {
        string text = value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return IsNegativeZero(text) ? text.Substring(1) : text;
    }

    private static string Written(double value, int figures, Func<int, string> power)
    {
        int exponent = value == 0 ? 0 : Exponent(value, figures);
        return exponent is < -4 or > 7
            ? Trimmed(value / Math.Pow(10, exponent), figures - 1) + power(exponent)
            : Trimmed(value, Math.Max(0, figures - 1 - exponent));
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

    private static bool IsNegativeZero(string text) =>
        text.Length > 0 && text[0] == '-' && text.All(static c => c is not (>= '1' and <= '9'));

    private static string Superscript(int exponent) => string.Concat(
        exponent.ToString(CultureInfo.InvariantCulture).Select(static c => c == '-' ? '⁻' : Superscripts[c - '0']));
}

using System;
using System.Globalization;

namespace Refinish.Pictures.Tests;

/// <summary>The colours of the light paper by their published or chosen values, and the contrast of WCAG 2.1.</summary>
internal static class Paint
{
    // M. Okabe and K. Ito, Color Universal Design (2008): blue, vermillion, bluish green.
    public const string Blue = "#0072B2";
    public const string Vermillion = "#D55E00";
    public const string Green = "#009E73";
    public const string BlueTint = "#C5DDE9";
    public const string VermillionTint = "#F3D8C1";
    public const string GreenTint = "#C5E7DB";
    public const string Paper = "#FCFBF8";
    public const string Line = "#1B2126";

    /// <summary>(L1 + 0.05) / (L2 + 0.05) with relative luminance as WCAG 2.1 defines both.</summary>
    public static double Contrast(string one, string other)
    {
        double a = Luminance(one);
        double b = Luminance(other);
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string colour)
    {
        double Channel(int start)
        {
            double value = int.Parse(colour.AsSpan(start, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0;
            return value <= 0.03928 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
        }

        return (0.2126 * Channel(1)) + (0.7152 * Channel(3)) + (0.0722 * Channel(5));
    }
}

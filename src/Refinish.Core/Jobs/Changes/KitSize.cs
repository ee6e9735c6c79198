using System;
using System.Globalization;

namespace Refinish.Jobs;

/// <summary>The size of a kit by the id of its line, in words that a shop counts in.</summary>
internal static class KitSize
{
    private const double UsQuart = 0.946352946e-3;

    /// <returns>Cubic metres; null for a line that is no kit of a known volume.</returns>
    public static double? Of(LineFigures line) =>
        double.TryParse(LineFamily.Part(line.Item, 2), NumberStyles.Float, CultureInfo.InvariantCulture, out double millilitres)
            && millilitres > 0
            ? millilitres * 1e-6
            : null;

    public static string Text(double size, DisplayUnits units)
    {
        if (units == DisplayUnits.Si)
        {
            return (size < 1e-3 ? Measure.Liquid : Measure.Capacity).Format(size, units, 4);
        }

        double quarts = Math.Round(size / UsQuart);
        bool isWhole = quarts >= 1 && Math.Abs((size / UsQuart) - quarts) < 1e-6;
        return !isWhole ? (size < 4 * UsQuart ? Measure.Liquid : Measure.Capacity).Format(size, units, 4)
            : quarts % 4 == 0 ? Figures.Fixed(quarts / 4, 0) + " US gal"
            : Figures.Fixed(quarts, 0) + " US qt";
    }
}

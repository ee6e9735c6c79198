using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;

namespace Refinish.Fixtures;

/// <summary>The slips between tape and form: what would have been meant if a length came about by one.</summary>
internal static class Slips
{
    /// <summary>
    /// Factors from what stands there to what was meant, by the definitions of the units, and the unit in which the number was taken, in m;
    /// 0 where any may be meant.
    /// </summary>
    public static readonly (ReadingSlip Slip, double Factor, double TakenIn)[] Factors =
    [
        (ReadingSlip.InchesAsCentimetres, 2.54, 0.01), (ReadingSlip.CentimetresAsInches, 1 / 2.54, 0.0254),
        (ReadingSlip.FeetAsMetres, 0.3048, 1), (ReadingSlip.MetresAsFeet, 1 / 0.3048, 0.3048),
        (ReadingSlip.TenTimesTooSmall, 10, 0), (ReadingSlip.TenTimesTooLarge, 0.1, 0),
        (ReadingSlip.InchesAsMillimetres, 25.4, 0.001), (ReadingSlip.MillimetresAsInches, 1 / 25.4, 0.0254),
        (ReadingSlip.FeetAsInches, 12, 0.0254), (ReadingSlip.InchesAsFeet, 1.0 / 12, 0.3048),
    ];

    private const double Inch = 0.0254;

    // A number that was typed has few digits in the unit it was typed in; in the others it has many.
    private static readonly double[] TypedIn = [Inch, 0.01, 0.001];

    public static string InWords(ReadingSlip slip) => slip switch
    {
        ReadingSlip.InchesAsCentimetres => "inches typed as centimetres",
        ReadingSlip.CentimetresAsInches => "centimetres typed as inches",
        ReadingSlip.InchesAsMillimetres => "inches typed as millimetres",
        ReadingSlip.MillimetresAsInches => "millimetres typed as inches",
        ReadingSlip.FeetAsMetres => "feet typed as metres",
        ReadingSlip.MetresAsFeet => "metres typed as feet",
        ReadingSlip.FeetAsInches => "feet typed as inches",
        ReadingSlip.InchesAsFeet => "inches typed as feet",
        ReadingSlip.TenTimesTooSmall => "centimetres typed as millimetres, or a digit lost",
        ReadingSlip.TenTimesTooLarge => "millimetres typed as centimetres, or a digit too many",
        ReadingSlip.DigitsSwapped => "two digits swapped", _ => "a digit typed twice", };

    /// <summary>
    /// Whether a length is a number of few digits in a unit, as numbers are that somebody typed in it: four digits, or a sixteenth of an
    /// inch. That tells inches typed as centimetres from metres typed as feet.
    /// </summary>
    public static bool LooksTyped(double metres, double unit)
    {
        double number = metres / unit;
        return unit == 0 || Same(Digits4(number), number) || (unit == Inch && Same(Math.Round(number * 16) / 16, number));
    }

    /// <summary>
    /// Whatever one slip would turn into the length given, by what the number looks like; may hold the same length twice.
    /// </summary>
    public static IEnumerable<LikelySlip> LookingTyped(double metres) => [.. Units(metres, true), .. Digits(metres)];

    /// <summary>
    /// The same where the number was converted or rounded on its way, so that it looks typed in no unit that explains it.
    /// </summary>
    public static IEnumerable<LikelySlip> Others(double metres) => Units(metres, false);

    private static IEnumerable<LikelySlip> Units(double metres, bool typed) =>
        Factors.Where(factor => LooksTyped(metres, factor.TakenIn) == typed)
        .Select(factor => new LikelySlip(factor.Slip, metres * factor.Factor));

    private static IEnumerable<LikelySlip> Digits(double metres)
    {
        foreach (double unit in TypedIn)
        {
            if (!LooksTyped(metres, unit))
            {
                continue;
            }

            string text = (metres / unit).ToString("0.####", CultureInfo.InvariantCulture);
            int point = text.IndexOf('.');
            string digits = text.Replace(".", string.Empty);
            for (int i = 0; i + 1 < digits.Length; i++)
            {
                string begun = digits.Substring(0, i);
                string rest = digits.Substring(i + 2);
                if (digits[i] != digits[i + 1])
                {
                    yield return new LikelySlip(ReadingSlip.DigitsSwapped, Number(begun + digits[i + 1] + digits[i] + rest, point) * unit);
                }
                else if (point < 0 || i + 1 < point)
                {
                    yield return new LikelySlip(ReadingSlip.DigitDoubled, Number(begun + digits[i] + rest, point - 1) * unit);
                }
            }
        }
    }

    private static double Digits4(double number)
    {
        double place = Math.Pow(10, 3 - Math.Floor(Math.Log10(number)));
        return Math.Round(number * place) / place;
    }

    private static bool Same(double rounded, double number) => Math.Abs(rounded - number) <= 1e-9 * number;

    private static double Number(string digits, int point) =>
        double.Parse(point > 0 ? digits.Insert(point, ".") : digits, CultureInfo.InvariantCulture);
}

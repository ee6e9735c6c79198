using System;

namespace Refinish.Numerics;

/// <summary>
/// The one root finder of the library that needs no slope, by the method of T. R. Chandrupatla, Advances in Engineering Software 28 (1997)
/// 145 (from memory, unverified): inverse quadratic interpolation where the last three points allow it, bisection where they do not. The
/// bracket is kept at every step.
/// </summary>
/// <remarks>
/// Not Brent of MathNet.Numerics, which takes a delegate and throws where rounding puts a root outside or the last digit is asked for; its
/// accuracy is absolute, and it hands out one number that may lie on either side of the root.
/// </remarks>
internal static class Roots
{
    /// <summary>Good to the last digits, where a value costs much: one or two looks fewer than to the very last.</summary>
    public const double Sharp = 4e-16;

    /// <summary>
    /// Good enough for the place of a maximum, where an error of the place counts squared: 1e-9 of it is 1e-18 of the value.
    /// </summary>
    public const double OfMaximum = 1e-9;

    // From one double to the next, at most.
    private const double Digit = 2.220446049250313e-16;

    // Far more than any smooth function needs; from there on the bracket is halved until it is closed.
    private const int Interpolations = 60;

    /// <summary>The number at which a rising function passes zero, to the last digit of a double.</summary>
    /// <param name="state">What the function needs, so that no closure is made.</param>
    /// <param name="rising">The function; not above zero at <paramref name="low"/>, not below zero at <paramref name="high"/>.</param>
    /// <param name="low">The lower end.</param>
    /// <param name="high">The upper end.</param>
    public static double Rising<T>(T state, Func<T, double, double> rising, double low, double high)
    {
        Given<T> function = new(state, rising);
        double atLow = function.At(low);
        double atHigh = function.At(high);
        if (atLow == 0 || atHigh == 0)
        {
            return atLow == 0 ? low : high;
        }

        // An end on the wrong side lies at a pole or a rounding error beyond the root: its value is of no use, and its place still an end.
        atHigh = atHigh > 0 ? atHigh : double.PositiveInfinity;
        atLow = atLow < 0 ? atLow : double.NegativeInfinity;
        return Close(function, high, atHigh, low, atLow, 0).Nearest;
    }

    /// <summary>
    /// Where a function changes sign, whether it rises or falls. Where both ends have one sign, as rounding makes it when the root is an
    /// end, the end at which the function is nearer to zero.
    /// </summary>
    /// <param name="function">The function.</param>
    /// <param name="low">The lower end.</param>
    /// <param name="high">The upper end.</param>
    /// <param name="tolerance">Greatest width of the bracket, as a part of the sum of its ends; 0 for two neighbouring doubles.</param>
    public static Enclosure Enclose<T>(T function, double low, double high, double tolerance = 0)
        where T : struct, IFunction
    {
        double atLow = function.At(low);
        double atHigh = function.At(high);
        if (!((atHigh > 0 && atLow < 0) || (atHigh < 0 && atLow > 0)))
        {
            double end = Math.Abs(atLow) <= Math.Abs(atHigh) ? low : high;
            return new Enclosure(end, 0, end, 0);
        }

        return Close(function, high, atHigh, low, atLow, tolerance);
    }

    // The root lies between a, the newest point, and b; c is the one that a or b replaced.
    private static Enclosure Close<T>(T function, double a, double atA, double b, double atB, double tolerance)
        where T : struct, IFunction
    {
        double c = a;
        double atC = atA;
        double step = 0.5;
        for (int i = 0; true; i++)
        {
            double width = Math.Abs(b - a);
            double allowed = tolerance * (Math.Abs(a) + Math.Abs(b));
            if (width <= allowed)
            {
                break;
            }

            // Half of what is allowed away from either end, so that a root beside an end closes the bracket.
            double least = Math.Min(0.5, Math.Max(0.5 * allowed, Digit * Math.Max(Math.Abs(a), Math.Abs(b))) / width);
            double guess = a + (Math.Min(Math.Max(step, least), 1 - least) * (b - a));
            if (!((guess > a && guess < b) || (guess > b && guess < a)))
            {
                guess = a + ((b - a) / 2);
                if (guess == a || guess == b)
                {
                    break;
                }
            }

            double value = function.At(guess);
            if (value == 0)
            {
                return new Enclosure(guess, 0, guess, 0);
            }

            if (value > 0 == atA > 0)
            {
                c = a;
                atC = atA;
            }
            else
            {
                c = b;
                atC = atB;
                b = a;
                atB = atA;
            }

            a = guess;
            atA = value;
            double xi = (a - b) / (c - b);
            double phi = (atA - atB) / (atC - atB);
            step = i < Interpolations && phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi
                ? (atA / (atB - atA) * (atC / (atB - atC))) + ((c - a) / (b - a) * (atA / (atC - atA)) * (atB / (atC - atB)))
                : 0.5;
        }

        return new Enclosure(a, atA, b, atB);
    }
}

using System;

namespace Refinish.Air;

/// <summary>A function of time that is looked at often; a struct, so that looking costs no allocation.</summary>
internal interface ITimeFunction
{
    double At(double time);
}

/// <summary>
/// The place where a function changes sign, by the method of T. R. Chandrupatla, Advances in Engineering Software 28 (1997) (from memory,
/// unverified): inverse quadratic interpolation where the last three points allow it, bisection where they do not.
/// </summary>
internal static class SignChange
{
    /// <summary>Good to the last digits: for a time or a flow that is itself the result.</summary>
    public const double Sharp = 4e-16;

    /// <summary>Good enough for the place of a maximum, where an error of the place counts squared: 1e-9 of it is 1e-18 of the value.</summary>
    public const double Maximum = 1e-9;

    /// <summary>
    /// The end of the last bracket that lies on the side of <paramref name="upper"/>; the bracket is narrower than the tolerance times its
    /// ends.
    /// </summary>
    public static double Find<T>(T function, double lower, double upper, double tolerance = Sharp)
        where T : struct, ITimeFunction
    {
        // The root lies between a, the newest point, and b; c is the one that a or b replaced.
        double a = upper;
        double b = lower;
        double c = upper;
        double atA = function.At(a);
        double atB = function.At(b);
        double atC = atA;
        double step = 0.5;
        for (int i = 0; i < 200; i++)
        {
            double width = Math.Abs(b - a);
            double allowed = tolerance * (Math.Abs(a) + Math.Abs(b));
            if (width <= allowed)
            {
                break;
            }

            // Half of what is allowed away from either end, so that a root beside an end closes the bracket.
            double least = Math.Min(0.5, 0.5 * allowed / width);
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
                return guess;
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
            step = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi
                ? (atA / (atB - atA) * (atC / (atB - atC))) + ((c - a) / (b - a) * (atA / (atC - atA)) * (atB / (atC - atB)))
                : 0.5;
        }

        return Math.Max(a, b);
    }
}

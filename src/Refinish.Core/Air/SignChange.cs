using System;

namespace Refinish.Air;

/// <summary>A function of time that is looked at often; a struct, so that looking costs no allocation.</summary>
internal interface ITimeFunction
{
    double At(double time);
}

/// <summary>The place where a function changes sign, by the Illinois method with bisection as its conscience.</summary>
internal static class SignChange
{
    /// <summary>Good to the last digits: for a time or a flow that is itself the result.</summary>
    public const double Sharp = 4e-16;

    /// <summary>Good enough for the place of a maximum, where an error of the place counts squared: 1e-9 of it is 1e-18 of the value.</summary>
    public const double Maximum = 1e-9;

    public static double Find<T>(T function, double lower, double upper, double tolerance = Sharp)
        where T : struct, ITimeFunction
    {
        double low = function.At(lower);
        double high = function.At(upper);
        double width = upper - lower;
        for (int i = 0; i < 200 && upper - lower > tolerance * (Math.Abs(lower) + Math.Abs(upper)); i++)
        {
            double middle = lower + ((upper - lower) / 2);
            double guess = i % 3 == 2 && upper - lower > width / 2 ? middle : lower + ((upper - lower) * (low / (low - high)));
            if (i % 3 == 2)
            {
                width = upper - lower;
            }

            if (!(guess > lower && guess < upper))
            {
                guess = middle;
                if (!(guess > lower && guess < upper))
                {
                    break;
                }
            }

            double value = function.At(guess);
            if (value == 0)
            {
                return guess;
            }

            if (value > 0 == low > 0)
            {
                lower = guess;
                low = value;
                high /= 2;
            }
            else
            {
                upper = guess;
                high = value;
                low /= 2;
            }
        }

        return upper;
    }
}

using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>
/// An amount of money divided by weight into parts of whole minor units that add up to it: each part is cut, and what is left goes to the largest
/// remainders, the earlier among equals (Hamilton's method).
/// </summary>
internal static class Apportionment
{
    /// <summary>Divides an amount. Weights that are all 0 count as equal.</summary>
    /// <param name="amount">A multiple of <paramref name="step"/>, of either sign.</param>
    /// <param name="weights">At least one, none negative.</param>
    /// <param name="step">The smallest amount: a minor unit or a coin.</param>
    public static decimal[] Of(decimal amount, IReadOnlyList<decimal> weights, decimal step)
    {
        decimal sign = amount < 0 ? -1 : 1;
        decimal units = Math.Abs(amount) / step;
        decimal all = weights.Sum();
        decimal[] parts = new decimal[weights.Count];
        decimal[] rests = new decimal[weights.Count];
        decimal left = units;
        for (int i = 0; i < parts.Length; i++)
        {
            decimal exact = all > 0 ? units * (weights[i] / all) : units / parts.Length;
            parts[i] = Math.Floor(exact);
            rests[i] = exact - parts[i];
            left -= parts[i];
        }

        // A share that was rounded up to a whole by the last digit of a decimal would leave less than nothing.
        IOrderedEnumerable<int> order = Enumerable.Range(0, parts.Length).OrderByDescending(i => rests[i]).ThenBy(i => i);
        foreach (int i in order)
        {
            if (left <= 0)
            {
                break;
            }

            parts[i]++;
            left--;
        }

        if (left < 0)
        {
            int most = Enumerable.Range(0, parts.Length).OrderByDescending(i => parts[i]).First();
            parts[most] += left;
        }

        for (int i = 0; i < parts.Length; i++)
        {
            parts[i] = sign * parts[i] * step;
        }

        return parts;
    }
}

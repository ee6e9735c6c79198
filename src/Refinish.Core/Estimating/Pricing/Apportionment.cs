using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;

namespace Refinish.Estimating;

/// <summary>
/// An amount of money divided by weight into parts of whole minor units that add up to it: each part is cut, and what is left goes to the
/// largest remainders, the earlier among equals (Hamilton's method).
/// </summary>
internal static class Apportionment
{
    /// <summary>Divides an amount. Weights that are all 0 count as equal.</summary>
    /// <param name="amount">A multiple of <paramref name="step"/>, of either sign.</param>
    /// <param name="weights">At least one, none negative.</param>
    /// <param name="step">The smallest amount: a minor unit or a coin.</param>
    public static decimal[] Of(decimal amount, IReadOnlyList<decimal> weights, decimal step)
    {
        // Whole numbers, because the last digit of a decimal quotient would settle between remainders that are equal.
        BigInteger units = new(Math.Abs(amount) / step);
        BigInteger[] shares = Whole(weights);
        BigInteger all = shares.Aggregate(BigInteger.Add);
        BigInteger[] parts = new BigInteger[shares.Length];
        BigInteger[] rests = new BigInteger[shares.Length];
        BigInteger left = units;
        for (int i = 0; i < parts.Length; i++)
        {
            parts[i] = BigInteger.DivRem(units * shares[i], all, out rests[i]);
            left -= parts[i];
        }

        foreach (int i in Enumerable.Range(0, parts.Length).OrderByDescending(i => rests[i]).ThenBy(i => i).Take((int)left))
        {
            parts[i]++;
        }

        decimal signed = amount < 0 ? -step : step;
        return Array.ConvertAll(parts, part => (decimal)part * signed);
    }

    private static BigInteger[] Whole(IReadOnlyList<decimal> weights)
    {
        int places = weights.Max(Places);
        BigInteger[] whole = new BigInteger[weights.Count];
        bool any = false;
        for (int i = 0; i < whole.Length; i++)
        {
            whole[i] = Mantissa(weights[i]) * BigInteger.Pow(10, places - Places(weights[i]));
            any |= !whole[i].IsZero;
        }

        return any ? whole : Array.ConvertAll(whole, static _ => BigInteger.One);
    }

    private static int Places(decimal number) => (decimal.GetBits(number)[3] >> 16) & 0xFF;

    private static BigInteger Mantissa(decimal number)
    {
        int[] bits = decimal.GetBits(number);
        return new BigInteger(new decimal(bits[0], bits[1], bits[2], false, 0));
    }
}

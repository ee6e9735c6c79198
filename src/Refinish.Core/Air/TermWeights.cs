using System;

namespace Refinish.Air;

/// <summary>
/// What each term counts in a sum: its mass of a substance, or the volume of air that its vapour can bring to the limits. Plain numbers, or
/// those of a derivation, in which a term that has no part is left out.
/// </summary>
internal readonly struct TermWeights
{
    private readonly double[]? plain;
    private readonly Num[]? written;

    private TermWeights(double[]? plain, Num[]? written)
    {
        this.plain = plain;
        this.written = written;
    }

    public static implicit operator TermWeights(double[] weights) => new(weights, null);

    public static implicit operator TermWeights(Num[] weights) => new(null, weights);

    /// <summary>All of it: what would be in the air if nothing left it.</summary>
    public Num Total
    {
        get
        {
            Num sum = 0;
            for (int i = 0; i < Count; i++)
            {
                if (!IsNothing(this[i]))
                {
                    sum += this[i];
                }
            }

            return sum;
        }
    }

    private int Count => plain?.Length ?? written!.Length;

    private Num this[int term] => plain is null ? written![term] : plain[term];

    /// <summary>Σ weight · part, the superposition of all terms; <paramref name="of"/> is what the parts are taken of.</summary>
    public Num Sum<T>(T of, Func<T, int, Num> part)
    {
        Num sum = 0;
        for (int i = 0; i < Count; i++)
        {
            Num one = IsNothing(this[i]) ? 0 : part(of, i);
            if (!IsNothing(one))
            {
                sum += this[i] * one;
            }
        }

        return sum;
    }

    private static bool IsNothing(Num x) => x.Value == 0 && !x.IsTraced;
}

using System;

namespace Refinish.Numerics;

/// <summary>
/// The zeros of h(y) = Σ c_j e^(−r_j y) on an interval, all of them: e^(r_0 y) h has the same zeros and a derivative with one term less, so
/// the zeros of the shorter sum cut the interval into pieces on which h changes sign at most once. By Descartes' rule of signs, which holds
/// for such sums, there are no more zeros than changes of sign among the coefficients; with none or one there is nothing to cut.
/// </summary>
internal static class ExponentialSum
{
    /// <summary>Writes the zeros inside (0, length) in rising order and returns how many there are; rates ascend and differ.</summary>
    public static int Zeros(double[] coefficients, double[] rates, int count, double length, double[] zeros)
    {
        if (count < 2)
        {
            return 0;
        }

        if (count == 2)
        {
            double ratio = -coefficients[1] / coefficients[0];
            double zero = ratio > 0 ? Math.Log(ratio) / (rates[1] - rates[0]) : -1;
            if (zero > 0 && zero < length)
            {
                zeros[0] = zero;
                return 1;
            }

            return 0;
        }

        int signs = SignChanges(coefficients, count);
        if (signs < 2)
        {
            Sum whole = new(coefficients, rates, count);
            if (signs == 1 && Opposite(whole.At(0), whole.At(length)))
            {
                zeros[0] = Roots.Enclose(whole, 0, length, Roots.Sharp).Upper;
                return 1;
            }

            return 0;
        }

        double[] shorter = new double[count - 1];
        double[] tail = new double[count - 1];
        for (int j = 1; j < count; j++)
        {
            shorter[j - 1] = -coefficients[j] * (rates[j] - rates[0]);
            tail[j - 1] = rates[j];
        }

        double[] cuts = new double[count];
        int pieces = Zeros(shorter, tail, count - 1, length, cuts);
        cuts[pieces] = length;
        int found = 0;
        double lower = 0;
        Sum sum = new(coefficients, rates, count);
        for (int i = 0; i <= pieces; i++)
        {
            double upper = cuts[i];
            if (Opposite(sum.At(lower), sum.At(upper)))
            {
                zeros[found++] = Roots.Enclose(sum, lower, upper, Roots.Sharp).Upper;
            }

            lower = upper;
        }

        return found;
    }

    // Not by their product, which is nothing when both are tiny.
    private static bool Opposite(double a, double b) => (a > 0 && b < 0) || (a < 0 && b > 0);

    private static int SignChanges(double[] coefficients, int count)
    {
        int changes = 0;
        for (int j = 1; j < count; j++)
        {
            changes += coefficients[j] > 0 == coefficients[j - 1] > 0 ? 0 : 1;
        }

        return changes;
    }

    // h times e^(r_0 y), so that the slowest term does not underflow.
    private readonly struct Sum(double[] coefficients, double[] rates, int count) : IFunction
    {
        public double At(double time)
        {
            double sum = coefficients[0];
            for (int j = 1; j < count; j++)
            {
                sum += coefficients[j] * Math.Exp(-((rates[j] - rates[0]) * time));
            }

            return sum;
        }
    }
}

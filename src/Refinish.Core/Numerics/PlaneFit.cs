using System;
using System.Collections.Generic;

namespace Refinish.Numerics;

/// <summary>
/// Least squares of standardised values y over standardised columns x: b solves (XᵀX/n) b = Xᵀy/n, by Cholesky's factors; the standard
/// error of b_i is √((1 − R²)/(n − m − 1) · (XᵀX/n)⁻¹_ii). With too few values b is the correlation and its error 1/√n.
/// </summary>
internal sealed class PlaneFit
{
    private const int Spare = 10;

    public PlaneFit(IReadOnlyList<double[]> columns, double[] values)
    {
        int count = columns.Count;
        double[] right = new double[count];
        double[,] factor = new double[count, count];
        for (int i = 0; i < count; i++)
        {
            right[i] = Product(columns[i], values);
            for (int j = 0; j <= i; j++)
            {
                factor[i, j] = Product(columns[i], columns[j]);
            }
        }

        Effects = right;
        Errors = new double[count];
        if (values.Length <= count + Spare || !Factor(factor))
        {
            for (int i = 0; i < count; i++)
            {
                Errors[i] = 1 / Math.Sqrt(values.Length);
            }

            return;
        }

        Effects = Solved(factor, right);
        double explained = 0;
        for (int i = 0; i < count; i++)
        {
            explained += Effects[i] * right[i];
        }

        double left = Math.Max(0, 1 - explained) / (values.Length - count - 1);
        for (int i = 0; i < count; i++)
        {
            double[] unit = new double[count];
            unit[i] = 1;
            Errors[i] = Math.Sqrt(left * Solved(factor, unit)[i]);
        }
    }

    public double[] Effects { get; }

    public double[] Errors { get; }

    private static double Product(double[] a, double[] b)
    {
        double sum = 0;
        for (int i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum / a.Length;
    }

    // The lower factor in place; false when columns depend on each other.
    private static bool Factor(double[,] matrix)
    {
        for (int j = 0; j < matrix.GetLength(0); j++)
        {
            for (int i = j; i < matrix.GetLength(0); i++)
            {
                double sum = matrix[i, j];
                for (int k = 0; k < j; k++)
                {
                    sum -= matrix[i, k] * matrix[j, k];
                }

                if (i == j && sum <= 1e-9)
                {
                    return false;
                }

                matrix[i, j] = i == j ? Math.Sqrt(sum) : sum / matrix[j, j];
            }
        }

        return true;
    }

    private static double[] Solved(double[,] factor, double[] right)
    {
        int count = right.Length;
        double[] x = (double[])right.Clone();
        for (int i = 0; i < count; i++)
        {
            for (int k = 0; k < i; k++)
            {
                x[i] -= factor[i, k] * x[k];
            }

            x[i] /= factor[i, i];
        }

        for (int i = count - 1; i >= 0; i--)
        {
            for (int k = i + 1; k < count; k++)
            {
                x[i] -= factor[k, i] * x[k];
            }

            x[i] /= factor[i, i];
        }

        return x;
    }
}

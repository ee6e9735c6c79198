using System;

namespace Refinish.Numerics;

/// <summary>
/// The φ-functions of exponential integrators, φ₁(z) = (e^z − 1)/z and φ₂(z) = (φ₁(z) − 1)/z, without loss of digits near zero. They let
/// one formula hold for a first-order process with any rate, zero included, and for two rates that come together.
/// </summary>
/// <remarks>Names as in M. Hochbruck and A. Ostermann, "Exponential integrators", Acta Numerica 19 (2010); from memory, the algebra is
/// elementary.</remarks>
internal static class PhiFunctions
{
    /// <summary>The mean of e^(s·z) over s from 0 to 1; 1 at z = 0.</summary>
    public static double Phi1(double z)
    {
        // The series near zero: the quotient loses its digits there, and how many depends on the host's exponential.
        return Math.Abs(z) <= 0.05 ? Phi1Near(z) : (Math.Exp(z) - 1) / z;
    }

    /// <summary>φ₂, which is 1/2 at z = 0; for z = −x it is the mean of a first-order rise over x time constants, divided by x.</summary>
    public static double Phi2(double z)
    {
        if (Math.Abs(z) >= 1)
        {
            return (Phi1(z) - 1) / z;
        }

        // Σ zⁿ/(n + 2)!; the first term left out is below 1e-18.
        double term = 0.5;
        double sum = term;
        for (int n = 1; n <= 17; n++)
        {
            term *= z / (n + 2);
            sum += term;
        }

        return sum;
    }

    /// <summary>φ₁ where e^z is already at hand: to the last digits but one, without a logarithm.</summary>
    public static double Phi1(double z, double expZ) => Math.Abs(z) > 0.05 ? (expZ - 1) / z : Phi1Near(z);

    /// <summary>φ₂ where e^z is already at hand: to 1e-14.</summary>
    public static double Phi2(double z, double expZ) => Math.Abs(z) > 0.2 ? (((expZ - 1) / z) - 1) / z : Phi2Near(z);

    /// <summary>φ₁ for |z| up to 0.05: Σ zⁿ/(n + 1)!, whose first term left out is below 1e-17.</summary>
    public static double Phi1Near(double z) =>
        1 + (z * ((1.0 / 2) + (z * ((1.0 / 6) + (z * ((1.0 / 24) + (z * ((1.0 / 120) + (z * ((1.0 / 720) + (z * ((1.0 / 5040) + (z * (1.0 / 40320))))))))))))));

    // Σ zⁿ/(n + 2)! for |z| up to 0.2; the first term left out is below 1e-17.
    private static double Phi2Near(double z) =>
        (1.0 / 2) + (z * ((1.0 / 6) + (z * ((1.0 / 24) + (z * ((1.0 / 120) + (z * ((1.0 / 720) + (z * ((1.0 / 5040) + (z * ((1.0 / 40320)
            + (z * ((1.0 / 362880) + (z * ((1.0 / 3628800) + (z * ((1.0 / 39916800) + (z * (1.0 / 479001600))))))))))))))))))));
}

using System;

namespace Refinish.Films;

/// <summary>
/// Kubelka–Munk. Symbols: K absorption and S scattering (1/m), X film (m), a = 1 + K/S, b = √(a² − 1), R_g what lies below, R what is seen, R_∞ the film without end.
/// Written with T = tanh(b S X)/b, which is S X for a film that does not absorb, so that no form divides by zero.
/// </summary>
internal static class HidingKernel
{
    public static double A(double absorption, double scattering) => 1 + (absorption / scattering);

    /// <summary>√(a² − 1) without the loss of digits near a = 1.</summary>
    public static double B(double absorption, double scattering)
    {
        double ratio = absorption / scattering;
        return Math.Sqrt(ratio * (ratio + 2));
    }

    public static double Depth(double b, double power) => b == 0 ? power : Math.Tanh(b * power) / b;

    public static double Over(double a, double depth, double below) => (((1 - (below * a)) * depth) + below) / (((a - below) * depth) + 1);

    public static double Reflectivity(double a, double b) => 1 / (a + b);

    /// <summary>K/S = (1 − R_∞)²/(2 R_∞).</summary>
    public static double Ratio(double reflectivity) => (1 - reflectivity) * (1 - reflectivity) / (2 * reflectivity);

    /// <summary>Reflectance of a film over something.</summary>
    public static double Film(double absorption, double scattering, double film, double below) =>
        Over(A(absorption, scattering), Depth(B(absorption, scattering), scattering * film), below);

    /// <summary>b coth(b S X) of the film whose contrast ratio is C over a white of R_w: the positive root of C R_w z² − (1 − C) z − ((1 − C) a − R_w (1 − C a²)) = 0.</summary>
    public static double ContrastRoot(double a, double contrast, double white)
    {
        double open = 1 - contrast;
        double constant = (open * a) - (white * (1 - (contrast * a * a)));
        return (open + Math.Sqrt((open * open) + (4 * contrast * white * constant))) / (2 * contrast * white);
    }

    /// <summary>artanh(b/z)/b, which is 1/z at b = 0.</summary>
    public static double PowerOf(double b, double z) => b == 0 ? 1 / z : Artanh(b / z) / b;

    /// <summary>Below 0.01 as a series, for the logarithm would lose digits.</summary>
    public static double Artanh(double x)
    {
        double q = x * x;
        return x < 0.01 ? x * (1 + (q / 3) + (q * q / 5) + (q * q * q / 7) + (q * q * q * q / 9)) : Math.Log((1 + x) / (1 - x)) / 2;
    }

    public static Expression Artanh(Expression x) => x.Evaluate() < 0.01
        ? x * (1 + (Expression.Square(x) / 3) + (Expression.Power(x, 4) / 5) + (Expression.Power(x, 6) / 7) + (Expression.Power(x, 8) / 9))
        : Expression.Ln((1 + x) / (1 - x)) / 2;

    public static Expression Over(Expression a, Expression depth, Expression below) => (((1 - (below * a)) * depth) + below) / (((a - below) * depth) + 1);
}

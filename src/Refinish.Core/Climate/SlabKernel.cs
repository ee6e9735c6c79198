using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Numerics;

namespace Refinish.Climate;

/// <summary>
/// Warming of a plane wall whose one face meets the air and whose other loses nothing, as the part of the first difference that is left: θ
/// = Σ C_n e^(−ζ_n² Fo) cos(ζ_n x), with ζ_n tan ζ_n = Bi, C_n = 4 sin ζ_n / (2 ζ_n + sin 2ζ_n); x is 1 at the face and 0 at the back, Fo =
/// a t / L² the Fourier number, Bi = h L / k the Biot number.
/// </summary>
/// <remarks>
/// Series: H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 2nd ed., section 3.11; short times: section 2.7, the half space.
/// </remarks>
internal static class SlabKernel
{
    /// <summary>Where the series comes from.</summary>
    public static readonly Source Carslaw =
        Source.Published("H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 2nd ed.", "section 3.11 (section from memory)");

    private static readonly Source HalfSpace =
        Source.Published("H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 2nd ed.", "section 2.7 (section from memory)");

    /// <summary>
    /// Up to here the wall is a half space to well below the last digit: the far side has felt 2 erfc(1/(2 √Fo)) = 4e-29.
    /// </summary>
    public const double ShortTime = 2e-3;

    /// <summary>The n-th root of ζ tan ζ = Bi, from (n − 1) π to (n − ½) π; n from 1.</summary>
    public static double Eigenvalue(double biot, int n)
    {
        double low = (n - 1) * Math.PI;
        double high = low + (Math.PI / 2);
        double sign = n % 2 == 0 ? -1 : 1;

        double start = n == 1 ? Math.Sqrt(biot / (1 + (biot * 4 / (Math.PI * Math.PI)))) : low + Math.Atan(biot / (low + 0.5));
        return Newton.Rising(new Crossing(biot, sign), low, high, start, 0, 4e-16);
    }

    public static Num Coefficient(Num zeta) => 4 * Num.Sin(zeta) / ((2 * zeta) + Num.Sin(2 * zeta));

    /// <summary>How many terms of the series count at a Fourier number.</summary>
    public static int Terms(double fourier) => 2 + (int)(Math.Sqrt(40 / fourier) / Math.PI);

    /// <summary>What is left of the first difference at the face; 1 at the beginning, 0 at the end.</summary>
    public static double Face(double biot, double fourier) => fourier <= ShortTime
        ? Special.ScaledErfc(biot * Math.Sqrt(fourier))
        : Series(biot, fourier, true);

    /// <summary>What is left of the first difference at the back, the last place to warm.</summary>
    public static double Back(double biot, double fourier) => fourier <= ShortTime ? 1 : Series(biot, fourier, false);

    /// <summary>
    /// Share of all its heat that the wall has taken, 1 − Σ C_n e^(−ζ_n² Fo) sin ζ_n / ζ_n; Bi times the integral of <see cref="Face"/>.
    /// </summary>
    public static double Taken(double biot, double fourier)
    {
        if (fourier <= ShortTime)
        {
            return HalfSpaceTaken(biot * Math.Sqrt(fourier)) / biot;
        }

        double sum = 0;
        for (int n = Terms(fourier); n >= 1; n--)
        {
            double zeta = Eigenvalue(biot, n);
            sum += Coefficient(zeta).Value * Math.Exp(-(zeta * zeta * fourier)) * Math.Sin(zeta) / zeta;
        }

        return 1 - sum;
    }

    /// <summary>The Fourier number at which a share of the first difference is left, 0 to 1 exclusive.</summary>
    public static double Fourier(double biot, double left, bool face)
    {
        double zeta = Eigenvalue(biot, 1);

        // The first term alone is never below the whole series at the back, and by then the others are gone at the face.
        double latest = (Math.Log(1.3 / left) / (zeta * zeta)) + 1;
        return Math.Exp(Roots.Rising(
            (biot, left, face),
            static (wall, log) => wall.left - (wall.face ? Face(wall.biot, Math.Exp(log)) : Back(wall.biot, Math.Exp(log))),
            -60,
            Math.Log(latest)));
    }

    /// <summary>A root of ζ tan ζ = Bi as a step.</summary>
    public static Num EigenvalueStep(Trace trace, double biot, int n)
    {
        string index = Figures.Significant(n);
        return trace.Step(
            "root " + index + " of ζ tan ζ = Bi", "ζ_" + index, Measure.Number, Carslaw,
            Num.Solution(Eigenvalue(biot, n), "ζ_" + index, z => z * Num.Tan(z), trace.Given("Bi", biot, Measure.Number)));
    }

    /// <summary>The time at which the face or the back has come a share of the way, which <see cref="Fourier"/> found, with the terms of
    /// the series as steps.</summary>
    public static Num TimeStep(Trace trace, string name, string symbol, Num diffusion, double biot, Num way, double seconds, bool face)
    {
        double fourier = seconds / diffusion.Value;
        bool early = fourier <= ShortTime;
        List<(Num Zeta, Num Coefficient)> terms = [];
        for (int n = 1; !early && n <= Terms(fourier * 0.999); n++)
        {
            string index = Figures.Significant(n);
            Num z = EigenvalueStep(trace, biot, n);
            terms.Insert(0, (z, trace.Step(
                "coefficient " + index + ", " + (face ? "face" : "back"), "C_" + index, Measure.Number, Carslaw,
                Coefficient(z) * (face ? Num.Cos(z) : 1))));
        }

        return trace.Step(
            name, symbol, Measure.Minutes, early ? HalfSpace : Carslaw, Num.Solution(seconds, symbol, t => 1 - Left(t / diffusion), way));

        Num Left(Num fo) => early
            ? Num.Function("erfcx", "\\operatorname{erfcx}", Special.ScaledErfc, trace.Given("Bi", biot, Measure.Number) * Num.Sqrt(fo))
            : Num.Sum(terms.Select(term => term.Coefficient * Num.Exp(-(Num.Square(term.Zeta) * fo))));
    }

    // e^(x²) erfc(x) − 1 + 2x/√π: twice the integral of x e^(x²) erfc(x).
    private static double HalfSpaceTaken(double x)
    {
        if (x >= 0.5)
        {
            return Special.ScaledErfc(x) - 1 + (2 * x / Math.Sqrt(Math.PI));
        }

        // Σ (−x)^k / Γ(1 + k/2) from the second term on, since the difference would lose digits; Γ(5/2) = 3√π/4.
        double even = x * x;
        double odd = -(x * x * x) * 4 / (3 * Math.Sqrt(Math.PI));
        double sum = 0;
        for (int k = 2; k < 40; k += 2)
        {
            sum += even + odd;
            even *= x * x / (1 + (k / 2.0));
            odd *= x * x / (1 + ((k + 1) / 2.0));
        }

        return sum;
    }

    private static double Series(double biot, double fourier, bool face)
    {
        double sum = 0;
        for (int n = Terms(fourier); n >= 1; n--)
        {
            double zeta = Eigenvalue(biot, n);
            sum += Coefficient(zeta).Value * Math.Exp(-(zeta * zeta * fourier)) * (face ? Math.Cos(zeta) : 1);
        }

        return sum;
    }

    // ζ sin ζ − Bi cos ζ, which has no poles; rising in the first interval, and turned round in every other.
    private readonly struct Crossing(double biot, double sign) : ISlopedFunction
    {
        public double At(double zeta, out double slope)
        {
            double sin = Math.Sin(zeta);
            double cos = Math.Cos(zeta);
            slope = sign * ((zeta * cos) + ((1 + biot) * sin));
            return sign * ((zeta * sin) - (biot * cos));
        }
    }
}

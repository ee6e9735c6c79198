using System;
using System.Collections.Generic;
using Refinish.Numerics;

namespace Refinish.Climate;

/// <summary>The plane wall's times, and its formulas as expressions.</summary>
internal static class WarmUpFormulas
{
    private static readonly Source Series = Source.Published("H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 2nd ed.", "section 3.11 (section from memory)");
    private static readonly Source HalfSpace = Source.Published("H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 2nd ed.", "section 2.7 (section from memory)");

    /// <summary>The Fourier number at which a share of the first difference is left, 0 to 1 exclusive.</summary>
    public static double Fourier(double biot, double left, bool face)
    {
        double zeta = SlabKernel.Eigenvalue(biot, 1);

        // The first term alone is never below the whole series at the back, and by then the others are gone at the face.
        double latest = (Math.Log(1.3 / left) / (zeta * zeta)) + 1;
        return Math.Exp(Roots.Rising(
            (biot, left, face),
            static (wall, log) => wall.left - (wall.face ? SlabKernel.Face(wall.biot, Math.Exp(log)) : SlabKernel.Back(wall.biot, Math.Exp(log))),
            -60,
            Math.Log(latest)));
    }

    /// <summary>The time of a Fourier number of one, the first eigenvalue and the time constant that goes with it.</summary>
    public static void AddSlab(List<WorkingStep> steps, WorkingStep tau, WorkingStep biot, double diffusionTime, double slowest)
    {
        WorkingStep diffusion = new("time of a Fourier number of one, L²/a", "t_L", tau.Result() * biot.Result(), diffusionTime, Measure.Minutes, Source.Derived("τ Bi = L²/a when the mass lies behind the area"));
        steps.Add(diffusion);
        WorkingStep first = EigenvalueStep(biot.Value, 1);
        steps.Add(first);
        steps.Add(new("time constant of the slowest term", "τ_1", diffusion.Result() / Expression.Square(first.Result()), slowest, Measure.Minutes, Series));
    }

    /// <summary>The time at which the face or the back has come a share of the way.</summary>
    public static void AddTime(List<WorkingStep> steps, string name, string symbol, WorkingStep diffusion, double biot, Expression way, double seconds, bool face)
    {
        if (seconds == 0)
        {
            steps.Add(new(name, symbol, 0, 0, Measure.Minutes, Series));
            return;
        }

        double fourier = seconds / diffusion.Value;
        bool early = fourier <= SlabKernel.ShortTime;
        List<(Expression Zeta, Expression Coefficient)> terms = [];
        for (int n = 1; !early && n <= SlabKernel.Terms(fourier * 0.999); n++)
        {
            WorkingStep zeta = EigenvalueStep(biot, n);
            Expression z = zeta.Result();
            WorkingStep coefficient = new(
                "coefficient " + Figures.Significant(n) + ", " + (face ? "face" : "back"),
                "C_" + Figures.Significant(n),
                4 * Expression.Sin(z) / ((2 * z) + Expression.Sin(2 * z)) * (face ? Expression.Cos(z) : 1),
                SlabKernel.Coefficient(zeta.Value) * (face ? Math.Cos(zeta.Value) : 1),
                Measure.Number,
                Series);
            steps.Add(zeta);
            steps.Add(coefficient);
            terms.Add((z, coefficient.Result()));
        }

        // Where the terms that were taken are enough.
        double low = early ? 0 : seconds / 2;
        steps.Add(new(
            name,
            symbol,
            Expression.Solution(symbol, low, seconds * 2, t => 1 - Left(t / diffusion.Result()), way),
            seconds,
            Measure.Minutes,
            early ? HalfSpace : Series));

        Expression Left(Expression fourierNumber)
        {
            if (early)
            {
                return Expression.Function("erfcx", "\\operatorname{erfcx}", Special.ScaledErfc, Expression.Quantity("Bi", biot, Measure.Number) * Expression.Sqrt(fourierNumber));
            }

            List<Expression> summands = [];
            for (int n = terms.Count - 1; n >= 0; n--)
            {
                summands.Add(terms[n].Coefficient * Expression.Exp(-(Expression.Square(terms[n].Zeta) * fourierNumber)));
            }

            return Expression.Sum(summands);
        }
    }

    private static WorkingStep EigenvalueStep(double biot, int n)
    {
        string symbol = "ζ_" + Figures.Significant(n);
        double low = (n - 1) * Math.PI;
        return new(
            "root " + Figures.Significant(n) + " of ζ tan ζ = Bi",
            symbol,
            Expression.Solution(symbol, low, low + (Math.PI / 2), z => z * Expression.Tan(z), Expression.Quantity("Bi", biot, Measure.Number)),
            SlabKernel.Eigenvalue(biot, n),
            Measure.Number,
            Series);
    }
}

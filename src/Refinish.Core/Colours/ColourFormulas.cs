using System;

namespace Refinish.Colours;

/// <summary>The formulas of <see cref="ColourKernel"/> as expressions.</summary>
internal static class ColourFormulas
{
    private static readonly Source Paper = Source.Published(
        "Sharma, Wu and Dalal, The CIEDE2000 color-difference formula, Color Research and Application 30(1), 2005", "eqs. 2 to 22");

    /// <summary>The hue angle 0 … 360° by the quadrant of a and b.</summary>
    public static Expression Hue(Expression a, double aValue, Expression b, double bValue)
    {
        if (aValue == 0)
        {
            return bValue == 0 ? Expression.Number(0) : Degrees(bValue > 0 ? 90 : 270);
        }

        Expression angle = Expression.Arctan(b / a);
        return aValue < 0 ? Degrees(180) + angle : bValue < 0 ? Degrees(360) + angle : angle;
    }

    public static WorkingStep[] Ciede2000(CieLab reference, CieLab sample, ColourKernel k)
    {
        Expression b1 = Expression.Quantity("b*_1", reference.B, Measure.Number);
        Expression b2 = Expression.Quantity("b*_2", sample.B, Measure.Number);
        Expression l1 = Expression.Quantity("L*_1", reference.L, Measure.Number);
        Expression l2 = Expression.Quantity("L*_2", sample.L, Measure.Number);
        WorkingStep meanAb = Step(
            "mean chroma", "C_m", (Expression.Quantity("C*_1", reference.Chroma, Measure.Number) + Expression.Quantity("C*_2", sample.Chroma, Measure.Number)) / 2, k.MeanChromaAb);
        WorkingStep g = Step("chroma-dependent stretch of a*", "G", 0.5 * (1 - Expression.Sqrt(Saturating(meanAb.Result()))), k.G);
        WorkingStep a1 = Step("stretched a* of the reference", "a′_1", (1 + g.Result()) * Expression.Quantity("a*_1", reference.A, Measure.Number), k.A1);
        WorkingStep a2 = Step("stretched a* of the sample", "a′_2", (1 + g.Result()) * Expression.Quantity("a*_2", sample.A, Measure.Number), k.A2);
        WorkingStep c1 = Step("chroma of the reference", "C′_1", Expression.Sqrt(Expression.Square(a1.Result()) + Expression.Square(b1)), k.C1);
        WorkingStep c2 = Step("chroma of the sample", "C′_2", Expression.Sqrt(Expression.Square(a2.Result()) + Expression.Square(b2)), k.C2);
        WorkingStep h1 = Angle("hue of the reference", "h′_1", Hue(a1.Result(), k.A1, b1, reference.B), k.H1);
        WorkingStep h2 = Angle("hue of the sample", "h′_2", Hue(a2.Result(), k.A2, b2, sample.B), k.H2);
        WorkingStep deltaL = Step("lightness difference", "ΔL′", l2 - l1, k.DeltaL);
        WorkingStep deltaC = Step("chroma difference", "ΔC′", c2.Result() - c1.Result(), k.DeltaC);
        WorkingStep deltaHue = Angle(
            "hue angle difference", "Δh′", k.IsGrey ? Expression.Number(0) : Turned(h2.Result() - h1.Result(), k.Turn), k.DeltaHue);
        WorkingStep deltaH = Step(
            "hue difference", "ΔH′", 2 * Expression.Sqrt(c1.Result() * c2.Result()) * Expression.Sin(deltaHue.Result() / 2), k.DeltaH);
        WorkingStep meanL = Step("mean lightness", "L′_m", (l1 + l2) / 2, k.MeanL);
        WorkingStep meanC = Step("mean chroma", "C′_m", (c1.Result() + c2.Result()) / 2, k.MeanC);
        WorkingStep meanHue = Angle(
            "mean hue angle", "h′_m", k.IsGrey ? h1.Result() + h2.Result() : Turned((h1.Result() + h2.Result()) / 2, k.MeanTurn), k.MeanHue);
        Expression hm = meanHue.Result();
        WorkingStep t = Step(
            "hue weighting",
            "T",
            1 - (0.17 * Expression.Cos(hm - Degrees(30))) + (0.24 * Expression.Cos(2 * hm)) + (0.32 * Expression.Cos((3 * hm) + Degrees(6)))
                - (0.20 * Expression.Cos((4 * hm) - Degrees(63))),
            k.T);
        WorkingStep theta = Angle("rotation in the blue", "Δθ", Degrees(30) * Expression.Exp(-Expression.Square((hm - Degrees(275)) / Degrees(25))), k.DeltaTheta);
        WorkingStep rc = Step("chroma of the rotation", "R_C", 2 * Expression.Sqrt(Saturating(meanC.Result())), k.RC);
        Expression fromMiddle = Expression.Square(meanL.Result() - 50);
        WorkingStep sl = Step("lightness weight", "S_L", 1 + (0.015 * fromMiddle / Expression.Sqrt(20 + fromMiddle)), k.SL);
        WorkingStep sc = Step("chroma weight", "S_C", 1 + (0.045 * meanC.Result()), k.SC);
        WorkingStep sh = Step("hue weight", "S_H", 1 + (0.015 * meanC.Result() * t.Result()), k.SH);
        WorkingStep rt = Step("rotation term", "R_T", -(Expression.Sin(2 * theta.Result()) * rc.Result()), k.RT);
        Expression c = deltaC.Result() / sc.Result();
        Expression h = deltaH.Result() / sh.Result();
        WorkingStep difference = Step(
            "CIEDE2000 colour difference",
            "ΔE_00",
            Expression.Sqrt(Expression.Square(deltaL.Result() / sl.Result()) + Expression.Square(c) + Expression.Square(h) + (rt.Result() * c * h)),
            k.Difference);
        return [meanAb, g, a1, a2, c1, c2, h1, h2, deltaL, deltaC, deltaHue, deltaH, meanL, meanC, meanHue, t, theta, rc, sl, sc, sh, rt, difference];
    }

    private static WorkingStep Step(string name, string symbol, Expression formula, double value) => new(name, symbol, formula, value, Measure.Number, Paper);

    private static WorkingStep Angle(string name, string symbol, Expression formula, double value) => new(name, symbol, formula, value, Measure.Angle, Paper);

    private static Expression Saturating(Expression chroma) =>
        Expression.Power(chroma, 7) / (Expression.Power(chroma, 7) + Expression.Power(25, 7));

    private static Expression Turned(Expression angle, double turn) =>
        turn == 0 ? angle : turn > 0 ? angle + Degrees(turn / ColourKernel.Degree) : angle - Degrees(-turn / ColourKernel.Degree);

    private static Expression Degrees(double degrees)
    {
        double rounded = Math.Round(degrees);
        return Expression.Quantity(Figures.Significant(rounded) + "°", rounded * ColourKernel.Degree, Measure.Angle);
    }
}

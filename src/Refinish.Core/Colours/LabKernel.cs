using System;

namespace Refinish.Colours;

/// <summary>CIE 1976: f(t) = ∛t above (6/29)³, else t/(3 (6/29)²) + 4/29, and back.</summary>
internal static class LabKernel
{
    public const double Edge = 6.0 / 29;

    public static double Compress(double t) => t > Edge * Edge * Edge ? Math.Pow(t, 1.0 / 3) : (t / (3 * Edge * Edge)) + (4.0 / 29);

    public static double Inverse(double f) => f > Edge ? f * f * f : 3 * Edge * Edge * (f - (4.0 / 29));

    public static Expression Compress(Expression t) => t.Evaluate() > Edge * Edge * Edge
        ? Expression.Power(t, Expression.Number(1) / 3)
        : (t / (3 * Expression.Square(Expression.Number(6) / 29))) + (Expression.Number(4) / 29);
}

namespace Refinish.Colours;

/// <summary>CIE 1976: f(t) = ∛t above (6/29)³, else t/(3 (6/29)²) + 4/29, and back.</summary>
internal static class LabKernel
{
    private const double Edge = 6.0 / 29;

    public static Num Compress(Num x, Trace? t = null) => x.Value > Edge * Edge * Edge
        ? Num.Power(x, t.Number(1) / 3)
        : (x / (3 * Num.Square(t.Number(6) / 29))) + (t.Number(4) / 29);

    public static double Inverse(double f) => f > Edge ? f * f * f : 3 * Edge * Edge * (f - (4.0 / 29));
}

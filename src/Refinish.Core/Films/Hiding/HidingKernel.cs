namespace Refinish.Films;

/// <summary>
/// Kubelka–Munk. Symbols: K absorption and S scattering (1/m), X film (m), a = 1 + K/S, b = √(a² − 1), R_g what lies below, R what is seen,
/// R_∞ the film without end. Written with T = tanh(b S X)/b, which is S X for a film that does not absorb, so that no form divides by zero.
/// </summary>
internal static class HidingKernel
{
    /// <summary>√(a² − 1) from K/S, without the loss of digits near a = 1.</summary>
    public static Num B(Num ratio) => Num.Sqrt(ratio * (ratio + 2));

    public static Num Depth(Num b, Num power) => b.Value == 0 ? power : Num.Tanh(b * power) / b;

    public static Num Over(Num a, Num depth, Num below) => (((1 - (below * a)) * depth) + below) / (((a - below) * depth) + 1);

    public static Num Reflectivity(Num a, Num b) => 1 / (a + b);

    /// <summary>K/S = (1 − R_∞)²/(2 R_∞).</summary>
    public static Num Ratio(Num reflectivity) => (1 - reflectivity) * (1 - reflectivity) / (2 * reflectivity);

    /// <summary>What is seen against the full reflectance, the smaller per the larger.</summary>
    public static Num Share(Num seen, Num full) => Num.Min(seen, full) / Num.Max(seen, full);

    /// <summary>artanh(b/z)/b, which is 1/z at b = 0.</summary>
    public static Num PowerOf(Num b, Num z) => b.Value == 0 ? 1 / z : Artanh(b / z) / b;

    /// <summary>Below 0.01 as a series, for the logarithm would lose digits.</summary>
    public static Num Artanh(Num x) => x.Value < 0.01
        ? x * (1 + (Num.Square(x) / 3) + (Num.Power(x, 4) / 5) + (Num.Power(x, 6) / 7) + (Num.Power(x, 8) / 9))
        : Num.Ln((1 + x) / (1 - x)) / 2;
}

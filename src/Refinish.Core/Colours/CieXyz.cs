using System;

namespace Refinish.Colours;

/// <summary>A colour in CIE 1931 or 1964 tristimulus values, Y = 100 for the perfect white.</summary>
/// <remarks>CIE 15: L* = 116 f(Y/Yn) − 16, a* = 500 (f(X/Xn) − f(Y/Yn)), b* = 200 (f(Y/Yn) − f(Z/Zn)), with the straight line near black. Values belong to one illuminant and observer: take the <see cref="WhitePoint"/> of the same pair.</remarks>
/// <example><code>
/// CieLab colour = new CieXyz(20.654008, 12.197225, 5.136952).ToLab(WhitePoint.D65);    // L* 41.53
/// </code></example>
public readonly record struct CieXyz
{
    private static readonly Bounds Values = Bounds.NotNegative(Measure.Number, 120);
    private static readonly Source Cie = Source.Published("CIE 15", "CIE 1976 (L*a*b*) colour space (clause from memory)");

    /// <summary>Makes a colour.</summary>
    /// <param name="x">X, 0 to 120.</param>
    /// <param name="y">Y, 0 to 120; 100 is the perfect white.</param>
    /// <param name="z">Z, 0 to 120.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public CieXyz(double x, double y, double z)
    {
        X = Guard.Within(x, Values, nameof(x));
        Y = Guard.Within(y, Values, nameof(y));
        Z = Guard.Within(z, Values, nameof(z));
    }

    /// <summary>X.</summary>
    public double X { get; }

    /// <summary>Y, the luminance factor in per cent.</summary>
    public double Y { get; }

    /// <summary>Z.</summary>
    public double Z { get; }

    /// <summary>The colour in L*a*b*.</summary>
    /// <param name="white">White of the same illuminant and observer.</param>
    /// <returns>The colour.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Y is above the white's: brighter than white has no place in L* up to 100.</exception>
    public CieLab ToLab(WhitePoint white)
    {
        Guard.NotNull(white, nameof(white));
        Guard.Rule(Y <= white.Y, nameof(Y), Y, Measure.Number, "at most that of the white, 100");
        double fy = LabKernel.Compress(Y / white.Y);

        // Black comes out at 116 × 4/29 − 16, which rounds to a hair below zero.
        return new CieLab(
            Math.Min(100, Math.Max(0, (116 * fy) - 16)), 500 * (LabKernel.Compress(X / white.X) - fy), 200 * (fy - LabKernel.Compress(Z / white.Z)));
    }

    /// <summary>How L*a*b* follows.</summary>
    /// <param name="white">White of the same illuminant and observer.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Y is above the white's.</exception>
    public Workings Workings(WhitePoint white)
    {
        CieLab lab = ToLab(white);
        WorkingStep fx = Compressed("f_X", "X", X, white.X);
        WorkingStep fy = Compressed("f_Y", "Y", Y, white.Y);
        WorkingStep fz = Compressed("f_Z", "Z", Z, white.Z);
        return new Workings(
            "Tristimulus values to L*a*b*",
            [
                fx, fy, fz,
                new("lightness", "L*", Expression.Max(0, (116 * fy.Result()) - 16), lab.L, Measure.Number, Cie),
                new("green to red", "a*", 500 * (fx.Result() - fy.Result()), lab.A, Measure.Number, Cie),
                new("blue to yellow", "b*", 200 * (fy.Result() - fz.Result()), lab.B, Measure.Number, Cie),
            ]);
    }

    /// <summary>The three values in one line.</summary>
    /// <returns>Text such as <c>X 25, Y 40, Z 10</c>.</returns>
    public override string ToString() => "X " + Figures.Significant(X) + ", Y " + Figures.Significant(Y) + ", Z " + Figures.Significant(Z);

    internal static bool Holds(double value) => Values.Contains(value);

    private static WorkingStep Compressed(string symbol, string of, double value, double white) => new(
        "compressed " + of,
        symbol,
        LabKernel.Compress(Expression.Quantity(of, value, Measure.Number) / Expression.Quantity(of + "_n", white, Measure.Number)),
        LabKernel.Compress(value / white),
        Measure.Number,
        Cie);
}

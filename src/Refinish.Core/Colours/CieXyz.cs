using System;

namespace Refinish.Colours;

/// <summary>A colour in CIE 1931 or 1964 tristimulus values, Y = 100 for the perfect white.</summary>
/// <remarks>
/// CIE 15: L* = 116 f(Y/Yn) − 16, a* = 500 (f(X/Xn) − f(Y/Yn)), b* = 200 (f(Y/Yn) − f(Z/Zn)), with the straight line near black. Values
/// belong to one illuminant and observer: take the <see cref="WhitePoint"/> of the same pair.
/// </remarks>
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
        X = Guard.Within(x, Values);
        Y = Guard.Within(y, Values);
        Z = Guard.Within(z, Values);
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
        (Num l, Num a, Num b) = Coordinates(white);
        return new CieLab(Math.Min(100, l.Value), a.Value, b.Value);
    }

    /// <summary>How L*a*b* follows.</summary>
    /// <param name="white">White of the same illuminant and observer.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Y is above the white's.</exception>
    public Workings Workings(WhitePoint white)
    {
        Trace t = new();
        Coordinates(white, t);
        return t.Workings("Tristimulus values to L*a*b*");
    }

    /// <summary>The three values in one line.</summary>
    /// <returns>Text such as <c>X 25, Y 40, Z 10</c>.</returns>
    public override string ToString() => "X " + Figures.Significant(X) + ", Y " + Figures.Significant(Y) + ", Z " + Figures.Significant(Z);

    internal static bool Holds(double value) => Values.Contains(value);

    private (Num L, Num A, Num B) Coordinates(WhitePoint white, Trace? t = null)
    {
        Guard.NotNull(white);
        Guard.Rule(Y <= white.Y, nameof(Y), Y, Measure.Number, "at most that of the white, 100");
        Num x = Step("compressed X", "f_X",
            LabKernel.Compress(t.Given("X", X, Measure.Number) / t.Given("X_n", white.X, Measure.Number), t));
        Num y = Step("compressed Y", "f_Y",
            LabKernel.Compress(t.Given("Y", Y, Measure.Number) / t.Given("Y_n", white.Y, Measure.Number), t));
        Num z = Step("compressed Z", "f_Z",
            LabKernel.Compress(t.Given("Z", Z, Measure.Number) / t.Given("Z_n", white.Z, Measure.Number), t));

        // Black comes out at 116 × 4/29 − 16, which rounds to a hair below zero.
        return (
            Step("lightness", "L*", Num.Max(0, (116 * y) - 16)),
            Step("green to red", "a*", 500 * (x - y)),
            Step("blue to yellow", "b*", 200 * (y - z)));

        Num Step(string name, string symbol, Num formula) => t.Step(name, symbol, Measure.Number, Cie, formula);
    }
}

using System;
using UnitsNet;

namespace Refinish.Colours;

/// <summary>
/// A colour in CIE 1976 L*a*b* as a colorimeter shows it, for the illuminant and observer that both colours of a comparison share.
/// </summary>
/// <remarks>C*ab = √(a*² + b*²), hab = arctan(b*/a*); CIE 15. The default value is black, L* = a* = b* = 0.</remarks>
/// <example><code>
/// CieLab white = new(94.2, -0.6, 1.8);
/// double chroma = white.Chroma;             // 1.897
/// </code></example>
public readonly record struct CieLab
{
    internal static readonly Source Polar = Source.Published("CIE 15", "CIE 1976 (L*a*b*) chroma and hue angle (clause from memory)");

    private static readonly Bounds Opponent = Bounds.Between(-500, 500, Measure.Number);

    /// <summary>Makes a colour.</summary>
    /// <param name="lightness">L*, 0 (black) to 100 (white).</param>
    /// <param name="a">a*, green (negative) to red (positive), −500 to 500.</param>
    /// <param name="b">b*, blue (negative) to yellow (positive), −500 to 500.</param>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is outside its range.</exception>
    public CieLab(double lightness, double a, double b)
    {
        L = Guard.Within(lightness, Bounds.Between(0, 100, Measure.Number));
        A = Guard.Within(a, Opponent);
        B = Guard.Within(b, Opponent);
    }

    /// <summary>L*, 0 (black) to 100 (white).</summary>
    public double L { get; }

    /// <summary>a*, green (negative) to red (positive).</summary>
    public double A { get; }

    /// <summary>b*, blue (negative) to yellow (positive).</summary>
    public double B { get; }

    /// <summary>C*ab, the distance from grey.</summary>
    public double Chroma => ChromaOf().Value;

    /// <summary>hab, from 0 (red) over 90° (yellow) to below 360°; 0 for a grey, which has none.</summary>
    public Angle Hue => Angle.FromRadians(HueOf().Value);

    /// <summary>The colour in lightness, chroma and hue.</summary>
    /// <returns>The colour in polar form.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The chroma is above 500.</exception>
    public CieLch ToLch() => new(L, Chroma, Hue);

    /// <summary>How chroma and hue follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Chroma and hue", ChromaOf, HueOf);

    /// <summary>The three coordinates in one line.</summary>
    /// <returns>Text such as <c>L* 94.2, a* -0.6, b* 1.8</c>.</returns>
    public override string ToString() => "L* " + Figures.Significant(L) + ", a* " + Figures.Significant(A) + ", b* " + Figures.Significant(B);

    private Num ChromaOf(Trace? t = null) =>
        t.Step("chroma", "C*", Measure.Number, Polar, Num.Sqrt(Num.Square(GivenA(t)) + Num.Square(GivenB(t))));

    private Num HueOf(Trace? t = null) => t.Step("hue angle", "h", Measure.Angle, Polar, ColourKernel.Hue(GivenA(t), GivenB(t), t));

    private Num GivenA(Trace? t) => t.Given("a*", A, Measure.Number);

    private Num GivenB(Trace? t) => t.Given("b*", B, Measure.Number);
}

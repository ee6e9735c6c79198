using System;
using UnitsNet;

namespace Refinish.Colours;

/// <summary>A colour in CIE 1976 lightness, chroma and hue: L*a*b* in polar form.</summary>
/// <example><code>
/// CieLch colour = new CieLab(50, 3, 4).ToLch();          // L* 50, C* 5, h 53.13°
/// CieLab back = colour.ToLab();
/// </code></example>
public readonly record struct CieLch
{
    /// <summary>Makes a colour.</summary>
    /// <param name="lightness">L*, 0 (black) to 100 (white).</param>
    /// <param name="chroma">C*ab, 0 (grey) to 500.</param>
    /// <param name="hue">hab, 0 to 360°.</param>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is outside its range.</exception>
    public CieLch(double lightness, double chroma, Angle hue)
    {
        L = Guard.Within(lightness, Bounds.Between(0, 100, Measure.Number));
        Chroma = Guard.Within(chroma, Bounds.Between(0, 500, Measure.Number));
        Hue = Guard.Checked(hue, Bounds.Between(0, 2 * Math.PI, Measure.Angle));
    }

    /// <summary>L*, 0 (black) to 100 (white).</summary>
    public double L { get; }

    /// <summary>C*ab, the distance from grey.</summary>
    public double Chroma { get; }

    /// <summary>hab, from 0 (red) over 90° (yellow).</summary>
    public Angle Hue { get; }

    /// <summary>The colour in rectangular form.</summary>
    /// <returns>The colour in L*a*b*.</returns>
    public CieLab ToLab() => new(L, Red().Value, Yellow().Value);

    /// <summary>How a* and b* follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Chroma and hue to a* and b*", Red, Yellow);

    /// <summary>The three coordinates in one line.</summary>
    /// <returns>Text such as <c>L* 50, C* 5, h 53.13°</c>.</returns>
    public override string ToString() =>
        "L* " + Figures.Significant(L) + ", C* " + Figures.Significant(Chroma) + ", h "
            + Measure.Angle.Format(Hue.Radians, DisplayUnits.Si, 4);

    private Num Red(Trace? t = null) => t.Step("green to red", "a*", Measure.Number, CieLab.Polar, GivenChroma(t) * Num.Cos(GivenHue(t)));

    private Num Yellow(Trace? t = null) =>
        t.Step("blue to yellow", "b*", Measure.Number, CieLab.Polar, GivenChroma(t) * Num.Sin(GivenHue(t)));

    private Num GivenChroma(Trace? t) => t.Given("C*", Chroma, Measure.Number);

    private Num GivenHue(Trace? t) => t.Given("h", Hue.Radians, Measure.Angle);
}

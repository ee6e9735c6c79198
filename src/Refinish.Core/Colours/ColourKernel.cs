using System;

namespace Refinish.Colours;

/// <summary>
/// CIEDE2000 in the order and symbols of Sharma, Wu and Dalal (2005); angles in radians. Index 1 is the reference, 2 the sample.
/// </summary>
internal static class ColourKernel
{
    public const double Degree = Math.PI / 180;

    private static readonly Source Paper = Source.Published(
        "Sharma, Wu and Dalal, The CIEDE2000 color-difference formula, Color Research and Application 30(1), 2005", "eqs. 2 to 22");

    public static Num Ciede2000(CieLab reference, CieLab sample, Trace? t = null)
    {
        Num b1 = Given("b*_1", reference.B);
        Num b2 = Given("b*_2", sample.B);
        Num l1 = Given("L*_1", reference.L);
        Num l2 = Given("L*_2", sample.L);
        Num meanAb = Step("mean chroma", "C_m", (Given("C*_1", reference.Chroma) + Given("C*_2", sample.Chroma)) / 2);
        Num g = Step("chroma-dependent stretch of a*", "G", 0.5 * (1 - Num.Sqrt(Saturating(meanAb))));
        Num a1 = Step("stretched a* of the reference", "a′_1", (1 + g) * Given("a*_1", reference.A));
        Num a2 = Step("stretched a* of the sample", "a′_2", (1 + g) * Given("a*_2", sample.A));
        Num c1 = Step("chroma of the reference", "C′_1", Num.Sqrt(Num.Square(a1) + Num.Square(b1)));
        Num c2 = Step("chroma of the sample", "C′_2", Num.Sqrt(Num.Square(a2) + Num.Square(b2)));
        Num h1 = Angle("hue of the reference", "h′_1", Hue(a1, b1, t));
        Num h2 = Angle("hue of the sample", "h′_2", Hue(a2, b2, t));
        Num deltaL = Step("lightness difference", "ΔL′", l2 - l1);
        Num deltaC = Step("chroma difference", "ΔC′", c2 - c1);

        // One of the two may have no hue. Exactly opposite hues are 180° apart: rounding must not decide that, for the formula jumps there.
        bool isGrey = c1.Value * c2.Value == 0;
        double apart = h2.Value - h1.Value;
        bool isTurned = Math.Abs(apart) > Math.PI + 1e-12;
        Num turned = isTurned ? Turned(h2 - h1, apart < 0, "360°", 2 * Math.PI) : h2 - h1;
        Num deltaHue = Angle("hue angle difference", "Δh′", isGrey ? 0 : turned);
        Num deltaH = Step("hue difference", "ΔH′", 2 * Num.Sqrt(c1 * c2) * Num.Sin(deltaHue / 2));
        Num meanL = Step("mean lightness", "L′_m", (l1 + l2) / 2);
        Num meanC = Step("mean chroma", "C′_m", (c1 + c2) / 2);
        Num middle = isTurned ? Turned((h1 + h2) / 2, h1.Value + h2.Value < 2 * Math.PI, "180°", Math.PI) : (h1 + h2) / 2;
        Num hue = Angle("mean hue angle", "h′_m", isGrey ? h1 + h2 : middle);
        Num weighting = Step(
            "hue weighting",
            "T",
            1 - (0.17 * Num.Cos(hue - Degrees("30°", 30))) + (0.24 * Num.Cos(2 * hue)) + (0.32 * Num.Cos((3 * hue) + Degrees("6°", 6)))
                - (0.20 * Num.Cos((4 * hue) - Degrees("63°", 63))));
        Num fromBlue = (hue - Degrees("275°", 275)) / Degrees("25°", 25);
        Num theta = Angle("rotation in the blue", "Δθ", Degrees("30°", 30) * Num.Exp(-Num.Square(fromBlue)));
        Num rc = Step("chroma of the rotation", "R_C", 2 * Num.Sqrt(Saturating(meanC)));
        Num fromMiddle = Num.Square(meanL - 50);
        Num sl = Step("lightness weight", "S_L", 1 + (0.015 * fromMiddle / Num.Sqrt(20 + fromMiddle)));
        Num sc = Step("chroma weight", "S_C", 1 + (0.045 * meanC));
        Num sh = Step("hue weight", "S_H", 1 + (0.015 * meanC * weighting));
        Num rt = Step("rotation term", "R_T", -(Num.Sin(2 * theta) * rc));
        Num c = deltaC / sc;
        Num h = deltaH / sh;
        return Step("CIEDE2000 colour difference", "ΔE_00",
            Num.Sqrt(Num.Square(deltaL / sl) + Num.Square(c) + Num.Square(h) + (rt * c * h)));

        Num Given(string symbol, double value) => t.Given(symbol, value, Measure.Number);

        Num Degrees(string symbol, double degrees) => t.Given(symbol, degrees * Degree, Measure.Angle);

        Num Step(string name, string symbol, Num formula) => t.Step(name, symbol, Measure.Number, Paper, formula);

        Num Angle(string name, string symbol, Num formula) => t.Step(name, symbol, Measure.Angle, Paper, formula);

        Num Turned(Num angle, bool onwards, string symbol, double turn) =>
            onwards ? angle + t.Given(symbol, turn, Measure.Angle) : angle - t.Given(symbol, turn, Measure.Angle);

        Num Saturating(Num chroma)
        {
            Num seventh = Num.Power(chroma, 7);
            return seventh / (seventh + Num.Power(t.Number(25), 7));
        }
    }

    /// <summary>The hue angle 0 to 360° by the quadrant of a and b, and 0 where there is no hue.</summary>
    public static Num Hue(Num a, Num b, Trace? t = null)
    {
        if (a.Value == 0)
        {
            return b.Value == 0 ? 0
                : b.Value > 0 ? t.Given("90°", Math.PI / 2, Measure.Angle)
                : t.Given("270°", 1.5 * Math.PI, Measure.Angle);
        }

        Num angle = Num.Arctan(b / a);
        return a.Value < 0 ? t.Given("180°", Math.PI, Measure.Angle) + angle
            : b.Value < 0 ? t.Given("360°", 2 * Math.PI, Measure.Angle) + angle
            : angle;
    }
}

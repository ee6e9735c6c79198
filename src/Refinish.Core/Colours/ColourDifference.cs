using System;

namespace Refinish.Colours;

/// <summary>How far a sample is from a reference colour, by the formulas in use, and in which direction.</summary>
/// <remarks>
/// <para>ΔE*ab = √(ΔL*² + Δa*² + Δb*²), CIE 1976. ΔE*94 with the weights of the graphic arts (1, 0.045, 0.015), chroma weights from the
/// reference, so it is not the same both ways; the textile weights are kL = 2, 0.048 and 0.014. CMC l:c (BS 6923, AATCC 173; from
/// memory) weights by the reference too, with 2:1 for acceptance and 1:1 for perceptibility. ΔE00: Sharma, Wu and Dalal (2005), Color
/// Research and Application 30(1), with kL = kC = kH = 1.</para>
/// <para>Both colours have to be for one illuminant and observer. A small difference under one lamp may be a plain one under another
/// (metamerism), and white coatings yellow: the number holds for these readings.</para>
/// </remarks>
/// <example><code>
/// ColourDifference difference = new(new CieLab(50, 2.6772, -79.7751), new CieLab(50, 0, -82.7485));
/// double e = difference.Ciede2000;          // 2.0425
/// </code></example>
public sealed record ColourDifference
{
    private static readonly Source Cie1976 = Source.Published("CIE 15", "CIE 1976 (L*a*b*) colour difference (clause from memory)");
    private static readonly Source Seve = Source.FromMemory("Sève, Color Research and Application 16, 1991: the hue difference without loss of digits");
    private static readonly Source Cie1994 = Source.Published("CIE 116", "CIE 1994 colour difference (clause from memory)");

    /// <summary>Takes the two colours.</summary>
    /// <param name="reference">The colour to be matched.</param>
    /// <param name="sample">The colour that is judged.</param>
    public ColourDifference(CieLab reference, CieLab sample)
    {
        Reference = reference;
        Sample = sample;
    }

    /// <summary>The colour to be matched.</summary>
    public CieLab Reference { get; }

    /// <summary>The colour that is judged.</summary>
    public CieLab Sample { get; }

    /// <summary>ΔL*: positive when the sample is lighter.</summary>
    public double DeltaL => Lightness().Value;

    /// <summary>Δa*: positive when the sample is redder, negative when greener.</summary>
    public double DeltaA => Red().Value;

    /// <summary>Δb*: positive when the sample is yellower, negative when bluer.</summary>
    public double DeltaB => Yellow().Value;

    /// <summary>ΔC*ab: positive when the sample is more vivid.</summary>
    public double DeltaChroma => Chroma().Value;

    /// <summary>
    /// ΔH*ab, the part of the difference that is neither lightness nor chroma: positive when the sample's hue angle is the greater.
    /// </summary>
    public double DeltaHue => Hue().Value;

    /// <summary>ΔE*ab of 1976.</summary>
    public double Cie76 => E76().Value;

    /// <summary>ΔE*94 with the weights of the graphic arts.</summary>
    public double Cie94 => E94().Value;

    /// <summary>ΔE*94 with the weights of textiles: kL = 2, K₁ = 0.048, K₂ = 0.014.</summary>
    public double Cie94Textile => Textile().Value;

    /// <summary>ΔE CMC(2:1), as tolerances of acceptance are written.</summary>
    public double Cmc21 => Cmc(2, 1);

    /// <summary>ΔE CMC(1:1), as differences are perceived.</summary>
    public double Cmc11 => Cmc(1, 1);

    /// <summary>ΔE00.</summary>
    public double Ciede2000 => ColourKernel.Ciede2000(Reference, Sample).Value;

    /// <summary>ΔE CMC(l:c).</summary>
    /// <param name="lightness">l, 0.1 to 10.</param>
    /// <param name="chroma">c, 0.1 to 10.</param>
    /// <returns>The difference.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A weight is outside its range.</exception>
    public double Cmc(double lightness, double chroma)
    {
        Bounds weights = Bounds.Between(0.1, 10, Measure.Number);
        return CmcKernel.Difference(this, Guard.Within(lightness, weights), Guard.Within(chroma, weights)).Value;
    }

    /// <summary>How the differences follow, step by step.</summary>
    /// <returns>The derivation; CMC and CIEDE2000 are its parts.</returns>
    public Workings Workings() => Trace.Of(
        "Colour difference",
        [
            Trace.Of(
                "CMC",
                t => Number("CMC(2:1) colour difference", "ΔE_CMC21", CmcKernel.Cmc1984, CmcKernel.Difference(this, 2, 1, t), t),
                t => Number("CMC(1:1) colour difference", "ΔE_CMC11", CmcKernel.Cmc1984, CmcKernel.Difference(this, 1, 1, t), t)),
            Trace.Of("CIEDE2000", t => ColourKernel.Ciede2000(Reference, Sample, t)),
        ],
        Lightness, Red, Yellow, Chroma, E76, ChromaWeight, HueWeight, Hue, E94, Textile);

    /// <summary>The CIEDE2000 and the CIE 1976 difference in one line.</summary>
    /// <returns>Text such as <c>ΔE00 2.0425, ΔE*ab 4.0011</c>.</returns>
    public override string ToString() => "ΔE00 " + Figures.Significant(Ciede2000, 5) + ", ΔE*ab " + Figures.Significant(Cie76, 5);

    private Num Lightness(Trace? t = null) =>
        Number("lightness difference", "ΔL*", Cie1976, Given("L*_2", Sample.L, t) - Given("L*_1", Reference.L, t), t);

    private Num Red(Trace? t = null) =>
        Number("red–green difference", "Δa*", Cie1976, Given("a*_2", Sample.A, t) - Given("a*_1", Reference.A, t), t);

    private Num Yellow(Trace? t = null) =>
        Number("yellow–blue difference", "Δb*", Cie1976, Given("b*_2", Sample.B, t) - Given("b*_1", Reference.B, t), t);

    private Num Chroma(Trace? t = null) => Number("chroma difference", "ΔC*", Cie1976, Given("C*_2", Sample.Chroma, t) - OwnChroma(t), t);

    private Num E76(Trace? t = null) => Number("CIE 1976 colour difference", "ΔE*_ab", Cie1976,
        Num.Sqrt(Num.Square(Lightness(t)) + Num.Square(Red(t)) + Num.Square(Yellow(t))), t);

    private Num ChromaWeight(Trace? t = null) => Number("chroma weight", "S_C", Cie1994, 1 + (0.045 * OwnChroma(t)), t);

    private Num HueWeight(Trace? t = null) => Number("hue weight", "S_H", Cie1994, 1 + (0.015 * OwnChroma(t)), t);

    private Num Hue(Trace? t = null)
    {
        Num a1 = Given("a*_1", Reference.A, t);
        Num a2 = Given("a*_2", Sample.A, t);
        Num b1 = Given("b*_1", Reference.B, t);
        Num b2 = Given("b*_2", Sample.B, t);
        Num product = OwnChroma(t) * Given("C*_2", Sample.Chroma, t);
        Num along = product + (a1 * a2) + (b1 * b2);
        Num across = (a1 * b2) - (b1 * a2);

        // Opposite hues leave no digits in the divisor of Sève's form; the older form has them all there.
        Num formula = along.Value > product.Value
            ? across / Num.Sqrt(0.5 * along)
            : (across.Value < 0 ? -1 : 1) * Num.Sqrt(2 * (product - (a1 * a2) - (b1 * b2)));
        return Number("hue difference", "ΔH*", Seve, formula, t);
    }

    private Num E94(Trace? t = null) => Number("CIE 1994 colour difference, graphic arts", "ΔE*_94", Cie1994, Num.Sqrt(
        Num.Square(Lightness(t)) + Num.Square(Chroma(t) / ChromaWeight(t)) + Num.Square(Hue(t) / HueWeight(t))), t);

    private Num Textile(Trace? t = null) => Number("CIE 1994 colour difference, textiles", "ΔE*_94t", Cie1994, Num.Sqrt(
        Num.Square(Lightness(t) / 2) + Num.Square(Chroma(t) / (1 + (0.048 * OwnChroma(t))))
        + Num.Square(Hue(t) / (1 + (0.014 * OwnChroma(t))))), t);

    private Num OwnChroma(Trace? t) => Given("C*_1", Reference.Chroma, t);

    private static Num Given(string symbol, double value, Trace? t) => t.Given(symbol, value, Measure.Number);

    private static Num Number(string name, string symbol, Source source, Num formula, Trace? t) =>
        t.Step(name, symbol, Measure.Number, source, formula);
}

using System;

namespace Refinish.Colours;

/// <summary>How far a sample is from a reference colour, by the formulas in use, and in which direction.</summary>
/// <remarks>
/// <para>ΔE*ab = √(ΔL*² + Δa*² + Δb*²), CIE 1976. ΔE*94 with the weights of the graphic arts (1, 0.045, 0.015), chroma weights from the reference,
/// so it is not the same both ways; the textile weights are kL = 2, 0.048 and 0.014. CMC l:c (BS 6923, AATCC 173; from memory) weights by the reference too, with 2:1 for acceptance and 1:1 for perceptibility. ΔE00: Sharma, Wu and Dalal (2005), Color Research and Application 30(1), with kL = kC = kH = 1.</para>
/// <para>Both colours have to be for one illuminant and observer. A small difference under one lamp may be a plain one under another (metamerism), and
/// white coatings yellow: the number holds for these readings.</para>
/// </remarks>
/// <example><code>
/// ColourDifference difference = new(new CieLab(50, 2.6772, -79.7751), new CieLab(50, 0, -82.7485));
/// double e = difference.Ciede2000;          // 2.0425
/// </code></example>
public sealed record ColourDifference
{
    private static readonly Source Cie1976 = Source.Published("CIE 15", "CIE 1976 (L*a*b*) colour difference (clause from memory)");
    private static readonly Source Seve = Source.FromMemory("Sève, Color Research and Application 16, 1991: the hue difference without loss of digits");
    private static readonly Source Cmc1984 = Source.FromMemory("Clarke, McDonald and Rigg, Journal of the Society of Dyers and Colourists 100, 1984; BS 6923");
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
    public double DeltaL => Sample.L - Reference.L;

    /// <summary>Δa*: positive when the sample is redder, negative when greener.</summary>
    public double DeltaA => Sample.A - Reference.A;

    /// <summary>Δb*: positive when the sample is yellower, negative when bluer.</summary>
    public double DeltaB => Sample.B - Reference.B;

    /// <summary>ΔC*ab: positive when the sample is more vivid.</summary>
    public double DeltaChroma => Sample.Chroma - Reference.Chroma;

    /// <summary>ΔH*ab, the part of the difference that is neither lightness nor chroma: positive when the sample's hue angle is the greater.</summary>
    public double DeltaHue => IsAcute
        ? Across / Math.Sqrt(0.5 * Along)
        : (Across < 0 ? -1 : 1) * Math.Sqrt(2 * ((Reference.Chroma * Sample.Chroma) - (Reference.A * Sample.A) - (Reference.B * Sample.B)));

    /// <summary>ΔE*ab of 1976.</summary>
    public double Cie76 => Math.Sqrt((DeltaL * DeltaL) + (DeltaA * DeltaA) + (DeltaB * DeltaB));

    /// <summary>ΔE*94 with the weights of the graphic arts.</summary>
    public double Cie94
    {
        get
        {
            double c = DeltaChroma / ChromaWeight;
            double h = DeltaHue / HueWeight;
            return Math.Sqrt((DeltaL * DeltaL) + (c * c) + (h * h));
        }
    }

    /// <summary>ΔE*94 with the weights of textiles: kL = 2, K₁ = 0.048, K₂ = 0.014.</summary>
    public double Cie94Textile
    {
        get
        {
            double l = DeltaL / 2;
            double c = DeltaChroma / (1 + (0.048 * Reference.Chroma));
            double h = DeltaHue / (1 + (0.014 * Reference.Chroma));
            return Math.Sqrt((l * l) + (c * c) + (h * h));
        }
    }

    /// <summary>ΔE CMC(2:1), as tolerances of acceptance are written.</summary>
    public double Cmc21 => Cmc(2, 1);

    /// <summary>ΔE CMC(1:1), as differences are perceived.</summary>
    public double Cmc11 => Cmc(1, 1);

    /// <summary>ΔE00.</summary>
    public double Ciede2000 => new ColourKernel(Reference, Sample).Difference;

    private double ChromaWeight => 1 + (0.045 * Reference.Chroma);

    private double HueWeight => 1 + (0.015 * Reference.Chroma);

    // Opposite hues leave no digits in the divisor of Sève's form; the older form has them all there.
    private bool IsAcute => Along > Reference.Chroma * Sample.Chroma;

    private double Along => (Reference.Chroma * Sample.Chroma) + (Reference.A * Sample.A) + (Reference.B * Sample.B);

    private double Across => (Reference.A * Sample.B) - (Reference.B * Sample.A);

    /// <summary>ΔE CMC(l:c).</summary>
    /// <param name="lightness">l, 0.1 to 10.</param>
    /// <param name="chroma">c, 0.1 to 10.</param>
    /// <returns>The difference.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A weight is outside its range.</exception>
    public double Cmc(double lightness, double chroma)
    {
        Bounds weights = Bounds.Between(0.1, 10, Measure.Number);
        CmcKernel weight = new(Reference);
        double l = DeltaL / (Guard.Within(lightness, weights, nameof(lightness)) * weight.SL);
        double c = DeltaChroma / (Guard.Within(chroma, weights, nameof(chroma)) * weight.SC);
        double h = DeltaHue / weight.SH;
        return Math.Sqrt((l * l) + (c * c) + (h * h));
    }

    /// <summary>How the differences follow, step by step.</summary>
    /// <returns>The derivation; CMC and CIEDE2000 are its parts.</returns>
    public Workings Workings()
    {
        WorkingStep deltaL = Difference("lightness difference", "ΔL*", "L*", Sample.L, Reference.L, DeltaL);
        WorkingStep deltaA = Difference("red–green difference", "Δa*", "a*", Sample.A, Reference.A, DeltaA);
        WorkingStep deltaB = Difference("yellow–blue difference", "Δb*", "b*", Sample.B, Reference.B, DeltaB);
        WorkingStep deltaC = Difference("chroma difference", "ΔC*", "C*", Sample.Chroma, Reference.Chroma, DeltaChroma);
        WorkingStep e76 = new(
            "CIE 1976 colour difference",
            "ΔE*_ab",
            Expression.Sqrt(Expression.Square(deltaL.Result()) + Expression.Square(deltaA.Result()) + Expression.Square(deltaB.Result())),
            Cie76,
            Measure.Number,
            Cie1976);
        Expression chroma = Expression.Quantity("C*_1", Reference.Chroma, Measure.Number);
        Expression other = Expression.Quantity("C*_2", Sample.Chroma, Measure.Number);
        WorkingStep sc = new("chroma weight", "S_C", 1 + (0.045 * chroma), ChromaWeight, Measure.Number, Cie1994);
        WorkingStep sh = new("hue weight", "S_H", 1 + (0.015 * chroma), HueWeight, Measure.Number, Cie1994);
        WorkingStep hue = new("hue difference", "ΔH*", HueFormula(chroma * other), DeltaHue, Measure.Number, Seve);
        WorkingStep e94 = new(
            "CIE 1994 colour difference, graphic arts",
            "ΔE*_94",
            Expression.Sqrt(Expression.Square(deltaL.Result()) + Expression.Square(deltaC.Result() / sc.Result()) + Expression.Square(hue.Result() / sh.Result())),
            Cie94,
            Measure.Number,
            Cie1994);
        WorkingStep textile = new(
            "CIE 1994 colour difference, textiles",
            "ΔE*_94t",
            Expression.Sqrt(Expression.Square(deltaL.Result() / 2) + Expression.Square(deltaC.Result() / (1 + (0.048 * chroma))) + Expression.Square(hue.Result() / (1 + (0.014 * chroma)))),
            Cie94Textile,
            Measure.Number,
            Cie1994);
        WorkingStep[] weights = new CmcKernel(Reference).Steps(Reference, chroma, Cmc1984);
        Workings cmc = new(
            "CMC",
            [
                .. weights,
                CmcStep("CMC(2:1) colour difference", "ΔE_CMC21", 2, Cmc21),
                CmcStep("CMC(1:1) colour difference", "ΔE_CMC11", 1, Cmc11),
            ]);
        Workings ciede = new("CIEDE2000", ColourFormulas.Ciede2000(Reference, Sample, new ColourKernel(Reference, Sample)));
        return new Workings("Colour difference", [deltaL, deltaA, deltaB, deltaC, e76, sc, sh, hue, e94, textile], [cmc, ciede]);

        WorkingStep CmcStep(string name, string symbol, double l, double value) => new(
            name,
            symbol,
            Expression.Sqrt(
                Expression.Square(deltaL.Result() / (l * weights[0].Result())) + Expression.Square(deltaC.Result() / weights[1].Result())
                    + Expression.Square(hue.Result() / weights[4].Result())),
            value,
            Measure.Number,
            Cmc1984);
    }

    /// <summary>The CIEDE2000 and the CIE 1976 difference in one line.</summary>
    /// <returns>Text such as <c>ΔE00 2.0425, ΔE*ab 4.0011</c>.</returns>
    public override string ToString() => "ΔE00 " + Figures.Significant(Ciede2000, 5) + ", ΔE*ab " + Figures.Significant(Cie76, 5);

    private static WorkingStep Difference(string name, string symbol, string of, double sample, double reference, double value) => new(
        name,
        symbol,
        Expression.Quantity(of + "_2", sample, Measure.Number) - Expression.Quantity(of + "_1", reference, Measure.Number),
        value,
        Measure.Number,
        Cie1976);

    private Expression HueFormula(Expression product)
    {
        Expression a1 = Expression.Quantity("a*_1", Reference.A, Measure.Number);
        Expression a2 = Expression.Quantity("a*_2", Sample.A, Measure.Number);
        Expression b1 = Expression.Quantity("b*_1", Reference.B, Measure.Number);
        Expression b2 = Expression.Quantity("b*_2", Sample.B, Measure.Number);
        return IsAcute
            ? ((a1 * b2) - (b1 * a2)) / Expression.Sqrt(0.5 * (product + (a1 * a2) + (b1 * b2)))
            : (Across < 0 ? -1 : 1) * Expression.Sqrt(2 * (product - (a1 * a2) - (b1 * b2)));
    }
}

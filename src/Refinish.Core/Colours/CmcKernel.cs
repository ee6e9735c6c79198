namespace Refinish.Colours;

/// <summary>CMC(l:c), weighted by the reference colour.</summary>
internal static class CmcKernel
{
    public static readonly Source Cmc1984 =
        Source.FromMemory("Clarke, McDonald and Rigg, Journal of the Society of Dyers and Colourists 100, 1984; BS 6923");

    public static Num Difference(ColourDifference colours, double lightness, double chroma, Trace? t = null)
    {
        CieLab reference = colours.Reference;
        Num c = t.Given("C*_1", reference.Chroma, Measure.Number);
        Num l = t.Given("L*_1", reference.L, Measure.Number);
        Num h = t.Given("h_1", reference.Hue.Radians, Measure.Angle);
        Num fourth = Num.Power(c, 4);

        // Hues from 164 to 345° have their own weight.
        bool isBlue = h.Value >= 164 * ColourKernel.Degree && h.Value <= 345 * ColourKernel.Degree;
        Num wave = isBlue
            ? 0.2 * Num.Cos(h + t.Given("168°", 168 * ColourKernel.Degree, Measure.Angle))
            : 0.4 * Num.Cos(h + t.Given("35°", 35 * ColourKernel.Degree, Measure.Angle));
        Num sl = Step("CMC lightness weight", "S_L", reference.L < 16 ? 0.511 : 0.040975 * l / (1 + (0.01765 * l)));
        Num sc = Step("CMC chroma weight", "S_C", (0.0638 * c / (1 + (0.0131 * c))) + 0.638);
        Num f = Step("CMC chroma share", "F", Num.Sqrt(fourth / (fourth + 1900)));
        Num turn = Step("CMC hue term", "T", (isBlue ? 0.56 : 0.36) + Num.Max(wave, -wave));
        Num sh = Step("CMC hue weight", "S_H", sc * ((f * turn) + 1 - f));
        return Num.Sqrt(
            Num.Square(t.Given("ΔL*", colours.DeltaL, Measure.Number) / (lightness * sl))
            + Num.Square(t.Given("ΔC*", colours.DeltaChroma, Measure.Number) / (chroma == 1 ? sc : chroma * sc))
            + Num.Square(t.Given("ΔH*", colours.DeltaHue, Measure.Number) / sh));

        Num Step(string name, string symbol, Num formula) => t.Step(name, symbol, Measure.Number, Cmc1984, formula);
    }
}

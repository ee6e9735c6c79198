using System;

namespace Refinish.Colours;

/// <summary>
/// CIEDE2000 with every intermediate, in the order and symbols of Sharma, Wu and Dalal (2005), eqs. 2 to 22; angles in radians.
/// Index 1 is the reference, 2 the sample.
/// </summary>
internal readonly struct ColourKernel
{
    /// <summary>25 to the seventh.</summary>
    public const double Pow25To7 = 6103515625;

    public const double Degree = Math.PI / 180;

    public ColourKernel(CieLab reference, CieLab sample)
    {
        MeanChromaAb = (reference.Chroma + sample.Chroma) / 2;
        double seventh = Math.Pow(MeanChromaAb, 7);
        G = 0.5 * (1 - Math.Sqrt(seventh / (seventh + Pow25To7)));
        A1 = (1 + G) * reference.A;
        A2 = (1 + G) * sample.A;
        C1 = Math.Sqrt((A1 * A1) + (reference.B * reference.B));
        C2 = Math.Sqrt((A2 * A2) + (sample.B * sample.B));
        H1 = Hue(A1, reference.B);
        H2 = Hue(A2, sample.B);
        IsGrey = C1 * C2 == 0;
        DeltaL = sample.L - reference.L;
        DeltaC = C2 - C1;
        Turn = IsGrey ? 0 : WholeTurn(H2 - H1);
        DeltaHue = IsGrey ? 0 : H2 - H1 + Turn;
        DeltaH = 2 * Math.Sqrt(C1 * C2) * Math.Sin(DeltaHue / 2);
        MeanL = (reference.L + sample.L) / 2;
        MeanC = (C1 + C2) / 2;
        MeanTurn = IsGrey || Turn == 0 ? 0 : H1 + H2 < 2 * Math.PI ? Math.PI : -Math.PI;
        MeanHue = IsGrey ? H1 + H2 : ((H1 + H2) / 2) + MeanTurn;
        T = 1 - (0.17 * Math.Cos(MeanHue - (30 * Degree))) + (0.24 * Math.Cos(2 * MeanHue)) + (0.32 * Math.Cos((3 * MeanHue) + (6 * Degree)))
            - (0.20 * Math.Cos((4 * MeanHue) - (63 * Degree)));
        double fromBlue = (MeanHue - (275 * Degree)) / (25 * Degree);
        DeltaTheta = 30 * Degree * Math.Exp(-(fromBlue * fromBlue));
        double mean = Math.Pow(MeanC, 7);
        RC = 2 * Math.Sqrt(mean / (mean + Pow25To7));
        double fromMiddle = (MeanL - 50) * (MeanL - 50);
        SL = 1 + (0.015 * fromMiddle / Math.Sqrt(20 + fromMiddle));
        SC = 1 + (0.045 * MeanC);
        SH = 1 + (0.015 * MeanC * T);
        RT = -Math.Sin(2 * DeltaTheta) * RC;
        double l = DeltaL / SL;
        double c = DeltaC / SC;
        double h = DeltaH / SH;
        Difference = Math.Sqrt((l * l) + (c * c) + (h * h) + (RT * c * h));
    }

    public double MeanChromaAb { get; }

    public double G { get; }

    public double A1 { get; }

    public double A2 { get; }

    public double C1 { get; }

    public double C2 { get; }

    public double H1 { get; }

    public double H2 { get; }

    /// <summary>One of the two has no hue.</summary>
    public bool IsGrey { get; }

    public double DeltaL { get; }

    public double DeltaC { get; }

    /// <summary>−360°, 0 or 360°: what brings the hue difference into −180° … 180°.</summary>
    public double Turn { get; }

    public double DeltaHue { get; }

    public double DeltaH { get; }

    public double MeanL { get; }

    public double MeanC { get; }

    /// <summary>−180°, 0 or 180°: what brings the mean hue to the shorter arc.</summary>
    public double MeanTurn { get; }

    public double MeanHue { get; }

    public double T { get; }

    public double DeltaTheta { get; }

    public double RC { get; }

    public double SL { get; }

    public double SC { get; }

    public double SH { get; }

    public double RT { get; }

    public double Difference { get; }

    /// <summary>0 to 360°, and 0 where there is no hue.</summary>
    public static double Hue(double a, double b)
    {
        if (a == 0 && b == 0)
        {
            return 0;
        }

        double angle = Math.Atan2(b, a);
        return angle < 0 ? angle + (2 * Math.PI) : angle;
    }

    // Exactly opposite hues count as 180° apart and no more. Rounding must not decide that, for the formula jumps there.
    private static double WholeTurn(double difference) =>
        Math.Abs(difference) <= Math.PI + 1e-12 ? 0 : difference > 0 ? -2 * Math.PI : 2 * Math.PI;
}

using System;

namespace Refinish.Colours;

/// <summary>The weights of CMC(l:c) from the reference colour; angles in radians.</summary>
internal readonly struct CmcKernel
{
    private const double Degree = ColourKernel.Degree;

    public CmcKernel(CieLab reference)
    {
        double c = reference.Chroma;
        double h = ColourKernel.Hue(reference.A, reference.B);
        SL = reference.L < 16 ? 0.511 : 0.040975 * reference.L / (1 + (0.01765 * reference.L));
        SC = (0.0638 * c / (1 + (0.0131 * c))) + 0.638;
        double fourth = c * c * c * c;
        F = Math.Sqrt(fourth / (fourth + 1900));
        IsBlue = h >= 164 * Degree && h <= 345 * Degree;
        T = IsBlue ? 0.56 + Math.Abs(0.2 * Math.Cos(h + (168 * Degree))) : 0.36 + Math.Abs(0.4 * Math.Cos(h + (35 * Degree)));
        SH = SC * ((F * T) + 1 - F);
    }

    public double SL { get; }

    public double SC { get; }

    public double F { get; }

    public double T { get; }

    public double SH { get; }

    /// <summary>Hues from 164 to 345° have their own weight.</summary>
    private bool IsBlue { get; }

    public WorkingStep[] Steps(CieLab reference, Expression chroma, Source source)
    {
        Expression l = Expression.Quantity("L*_1", reference.L, Measure.Number);
        Expression h = Expression.Quantity("h_1", ColourKernel.Hue(reference.A, reference.B), Measure.Angle);
        Expression fourth = Expression.Power(chroma, 4);
        Expression wave = IsBlue ? 0.2 * Expression.Cos(h + Degrees(168)) : 0.4 * Expression.Cos(h + Degrees(35));
        WorkingStep sl = new("CMC lightness weight", "S_L", reference.L < 16 ? Expression.Number(0.511) : 0.040975 * l / (1 + (0.01765 * l)), SL, Measure.Number, source);
        WorkingStep sc = new("CMC chroma weight", "S_C", (0.0638 * chroma / (1 + (0.0131 * chroma))) + 0.638, SC, Measure.Number, source);
        WorkingStep f = new("CMC chroma share", "F", Expression.Sqrt(fourth / (fourth + 1900)), F, Measure.Number, source);
        WorkingStep t = new("CMC hue term", "T", (IsBlue ? 0.56 : 0.36) + Expression.Max(wave, -wave), T, Measure.Number, source);
        WorkingStep sh = new("CMC hue weight", "S_H", sc.Result() * ((f.Result() * t.Result()) + 1 - f.Result()), SH, Measure.Number, source);
        return [sl, sc, f, t, sh];
    }

    private static Expression Degrees(double degrees) => Expression.Quantity(Figures.Significant(degrees) + "°", degrees * Degree, Measure.Angle);
}

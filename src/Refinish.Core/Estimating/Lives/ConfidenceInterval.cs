namespace Refinish.Estimating;

/// <summary>Two ends between which a number lies with a stated confidence.</summary>
/// <param name="Lower">Lower end.</param>
/// <param name="Upper">Upper end.</param>
public readonly record struct ConfidenceInterval(double Lower, double Upper)
{
    /// <summary>Both ends.</summary>
    /// <returns>Text such as <c>0.97 to 3.05</c>.</returns>
    public override string ToString() => Figures.Significant(Lower, 4) + " to " + Figures.Significant(Upper, 4);
}

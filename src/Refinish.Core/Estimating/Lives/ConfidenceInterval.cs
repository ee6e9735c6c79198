namespace Refinish.Estimating;

/// <summary>Two ends between which a number lies with a stated confidence.</summary>
public readonly record struct ConfidenceInterval
{
    internal ConfidenceInterval(double lower, double upper)
    {
        Lower = lower;
        Upper = upper;
    }

    /// <summary>Lower end.</summary>
    public double Lower { get; }

    /// <summary>Upper end.</summary>
    public double Upper { get; }

    /// <summary>Both ends.</summary>
    /// <returns>Text such as <c>0.97 to 3.05</c>.</returns>
    public override string ToString() => Figures.Significant(Lower, 4) + " to " + Figures.Significant(Upper, 4);
}

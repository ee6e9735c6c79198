namespace Refinish;

/// <summary>Student's t.</summary>
internal static class StudentT
{
    /// <summary>Two-sided quantile.</summary>
    public static double Quantile(double confidence, int freedom) =>
        MathNet.Numerics.Distributions.StudentT.InvCDF(0, 1, freedom, 0.5 + (confidence / 2));
}

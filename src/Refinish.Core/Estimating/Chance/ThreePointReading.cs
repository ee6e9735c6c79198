namespace Refinish.Estimating;

/// <summary>
/// How a least, a most likely and a greatest value are read as a distribution. They differ in spread: see <see cref="ThreePoint"/>.
/// </summary>
public enum ThreePointReading
{
    /// <summary>The beta distribution with mean (a + 4m + b)/6; variance (µ − a)(b − µ)/7.</summary>
    Pert,

    /// <summary>The triangular distribution; mean (a + m + b)/3.</summary>
    Triangular,

    /// <summary>
    /// A lognormal distribution with the PERT mean and the variance of the beta distribution; it can go beyond the greatest value.
    /// </summary>
    LognormalBetaPert,

    /// <summary>
    /// A lognormal distribution with the PERT mean and the classic variance ((b − a)/6)²; it can go beyond the greatest value.
    /// </summary>
    LognormalClassicPert,

    /// <summary>
    /// A normal distribution with the PERT mean and the classic variance ((b − a)/6)², as network planning takes it; it can go beyond
    /// both ends.
    /// </summary>
    NormalClassicPert,
}

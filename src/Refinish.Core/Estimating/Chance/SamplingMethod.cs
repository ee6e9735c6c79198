namespace Refinish.Estimating;

/// <summary>How a simulation spreads its trials over what can happen.</summary>
public enum SamplingMethod
{
    /// <summary>Each trial by itself, at random.</summary>
    Random,

    /// <summary>
    /// Each input is drawn once from each of as many equally likely slices as there are trials, in an order of its own
    /// (McKay, Beckman and Conover, Technometrics 21, 1979).
    /// </summary>
    LatinHypercube,

    /// <summary>
    /// A Sobol sequence with the direction numbers of Joe and Kuo (SIAM Journal on Scientific Computing 30, 2008), shifted at random by
    /// the seed. It has 64 dimensions; inputs beyond those are drawn at random.
    /// </summary>
    QuasiRandom,
}

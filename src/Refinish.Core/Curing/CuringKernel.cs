namespace Refinish.Curing;

/// <summary>Rates of reaction against temperature. T and T_ref in kelvins, E in J/mol.</summary>
internal static class CuringKernel
{
    /// <summary>J/(mol K), exact since the SI of 2019.</summary>
    public const double GasConstant = 8.31446261815324;

    /// <summary>exp(E/R (1/T_ref − 1/T)).</summary>
    public static Num Arrhenius(Num activationEnergy, Num t, Num reference, Trace? trace = null) =>
        Num.Exp(activationEnergy / trace.Given("R", GasConstant, Measure.MolarEntropy) * ((1 / reference) - (1 / t)));
}

using System;

namespace Refinish.Curing;

/// <summary>Rates of reaction against temperature. T and T_ref in kelvins, E in J/mol.</summary>
internal static class CuringKernel
{
    /// <summary>J/(mol K), exact since the SI of 2019.</summary>
    public const double GasConstant = 8.31446261815324;

    /// <summary>Q^((T − T_ref) / 10 K).</summary>
    public static double PowerLaw(double ratePerTenKelvin, double t, double reference) => Math.Pow(ratePerTenKelvin, (t - reference) / 10);

    /// <summary>exp(E/R (1/T_ref − 1/T)).</summary>
    public static double Arrhenius(double activationEnergy, double t, double reference) =>
        Math.Exp(activationEnergy / GasConstant * ((1 / reference) - (1 / t)));
}

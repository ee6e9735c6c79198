using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// Vapour pressures of the trade's solvents as data. Where two fits of a substance cover a temperature, the first in the list counts;
/// where none does, nothing is said. A caller adds others.
/// </summary>
/// <remarks>
/// Antoine coefficients: Poling, Prausnitz and O'Connell, The Properties of Gases and Liquids, 5th ed., Appendix A. DIPPR 101
/// coefficients: Perry's Chemical Engineers' Handbook, 8th ed., Table 2-8. Both as read in the data tables of the open library
/// CalebBell/chemicals. Several Antoine ranges begin above room temperature; there the second fit serves. Mixed xylene is given as its
/// most volatile isomer, an upper bound.
/// </remarks>
public static class VapourPressures
{
    private const string Data = "; as read in the data tables of the library CalebBell/chemicals";

    private static readonly Source Poling = Source.Published("Poling, Prausnitz, O'Connell, The Properties of Gases and Liquids, 5th ed.", "Appendix A, Antoine coefficients" + Data);
    private static readonly Source Perry = Source.Published("Perry's Chemical Engineers' Handbook, 8th ed.", "Table 2-8" + Data);
    private static readonly Source MostVolatilePoling = Source.Published("Poling, Prausnitz, O'Connell, The Properties of Gases and Liquids, 5th ed.", "Appendix A, p-xylene, the most volatile isomer" + Data);
    private static readonly Source MostVolatilePerry = Source.Published("Perry's Chemical Engineers' Handbook, 8th ed.", "Table 2-8, p-xylene, the most volatile isomer" + Data);
    private static readonly Source NextVolatilePerry = Source.Published("Perry's Chemical Engineers' Handbook, 8th ed.", "Table 2-8, m-xylene, for the cold in which p-xylene freezes" + Data);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<VapourPressureFit> All { get; } = new ValueList<VapourPressureFit>(
    [
        Antoine(Solvents.Acetone, 9.2184, 1197.01, -45.09, 247.38, 350.65, Poling),
        Dippr(Solvents.Acetone, 69.006, -5599.6, -7.0985, 6.2237e-6, 2, 178.45, 508.2, Perry),
        Antoine(Solvents.Butanone, 9.1386, 1232.63, -54.46, 265.62, 375.66, Poling),
        Dippr(Solvents.Butanone, 72.698, -6143.6, -7.5779, 5.6476e-6, 2, 186.48, 535.5, Perry),
        Antoine(Solvents.Toluene, 9.05043, 1327.62, -55.525, 286.44, 409.61, Poling),
        Dippr(Solvents.Toluene, 76.945, -6729.8, -8.179, 5.3017e-6, 2, 178.18, 591.75, Perry),
        Antoine(Solvents.Xylene, 9.10494, 1446.832, -58.523, 307.81, 438.88, MostVolatilePoling),
        Dippr(Solvents.Xylene, 88.72, -7741.2, -9.8693, 6.077e-6, 2, 286.41, 616.2, MostVolatilePerry),
        Dippr(Solvents.Xylene, 85.099, -7615.9, -9.3072, 5.5643e-6, 2, 225.3, 617, NextVolatilePerry),
        Antoine(new("95-47-6", "o-xylene"), 9.09789, 1458.706, -61.109, 312.75, 445.3, Poling),
        Dippr(new("95-47-6", "o-xylene"), 90.405, -7955.2, -10.086, 5.9594e-6, 2, 247.98, 630.3, Perry),
        Antoine(new("108-38-3", "m-xylene"), 9.14051, 1468.703, -57.03, 308.54, 439.56, Poling),
        Dippr(new("108-38-3", "m-xylene"), 85.099, -7615.9, -9.3072, 5.5643e-6, 2, 225.3, 617, Perry),
        Antoine(new("106-42-3", "p-xylene"), 9.10494, 1446.832, -58.523, 307.81, 438.88, Poling),
        Dippr(new("106-42-3", "p-xylene"), 88.72, -7741.2, -9.8693, 6.077e-6, 2, 286.41, 616.2, Perry),
        Antoine(Solvents.Ethylbenzene, 9.06861, 1415.77, -60.85, 306.32, 436.63, Poling),
        Antoine(Solvents.ButylAcetate, 9.5, 1596.7, -43.85, 301, 424.11, Poling),
        Dippr(Solvents.ButylAcetate, 122.82, -9253.2, -14.99, 1.047e-5, 2, 199.65, 575.4, Perry),
        Antoine(Solvents.EthylAcetate, 9.13361, 1195.13, -60.68, 265.5, 372.51, Poling),
        Dippr(Solvents.EthylAcetate, 66.824, -6227.6, -6.41, 1.7914e-17, 6, 189.6, 523.3, Perry),
        Antoine(Solvents.MethyleneChloride, 9.07622, 1070.07, -49.91, 235.2, 333.36, Poling),
        Dippr(Solvents.MethyleneChloride, 101.6, -6541.6, -12.247, 1.2311e-5, 2, 178.01, 510, Perry),
        Antoine(Solvents.Isopropanol, 10.24268, 1580.92, -53.54, 281.28, 373.46, Poling),
        Dippr(Solvents.Isopropanol, 96.094, -8575.4, -10.292, 1.6665e-17, 6, 185.26, 508.3, Perry),
        Antoine(new("64-17-5", "ethanol"), 10.33675, 1648.22, -42.232, 276.5, 369.54, Poling),
        Antoine(new("108-10-1", "methyl isobutyl ketone"), 8.8222, 1190.6904, -77.7, 293.4, 415.85, Poling),
        Dippr(new("108-10-1", "methyl isobutyl ketone"), 80.503, -7421.8, -8.379, 1.8114e-17, 6, 189.15, 574.6, Perry),
        Dippr(Solvents.MethylAmylKetone, 75.494, -7896.5, -7.5047, 8.913e-18, 6, 238.15, 611.4, Perry),
        Antoine(Solvents.Water, 10.11564, 1687.537, -42.98, 273.2, 473.2, Poling),
        Dippr(Solvents.Water, 73.649, -7258.2, -7.3037, 4.1653e-6, 2, 273.16, 647.096, Perry),
        VapourPressureFit.TwoPoints(
            Solvents.MethoxypropylAcetate.CasNumber, Solvents.MethoxypropylAcetate.Name, Temperature.FromDegreesCelsius(20),
            Pressure.FromPascals(4 * 133.322387415), Temperature.FromDegreesCelsius(145.8), Pressure.FromPascals(101325),
            Standing.SecondHand,
            Source.Published("a chemical data page", "4 mmHg and boiling point 145.8 °C; that the 4 mmHg are at 20 °C is from memory")),
    ]);

    /// <summary>The fits for one substance.</summary>
    /// <param name="casNumber">Chemical Abstracts Service registry number.</param>
    /// <returns>Those known here; empty when none is.</returns>
    /// <exception cref="ArgumentException"><paramref name="casNumber"/> is empty.</exception>
    public static IReadOnlyList<VapourPressureFit> For(string casNumber)
    {
        Guard.Named(casNumber);
        return new ValueList<VapourPressureFit>(All.Where(fit => string.Equals(fit.CasNumber, casNumber, StringComparison.Ordinal)));
    }

    private static VapourPressureFit Antoine(Registered of, double a, double b, double c, double from, double to, Source source) =>
        VapourPressureFit.Antoine(of.CasNumber, of.Name, a, b, c, Temperature.FromKelvins(from), Temperature.FromKelvins(to), Standing.SecondHand, source);

    private static VapourPressureFit Dippr(Registered of, double c1, double c2, double c3, double c4, double c5, double from, double to, Source source) =>
        VapourPressureFit.Dippr101(of.CasNumber, of.Name, c1, c2, c3, c4, c5, Temperature.FromKelvins(from), Temperature.FromKelvins(to), Standing.SecondHand, source);
}

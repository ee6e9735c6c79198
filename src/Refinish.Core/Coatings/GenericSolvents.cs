using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>The usual solvents of epoxy primers and acrylic urethanes, as data. A caller adds others from a product's safety data sheet.</summary>
/// <remarks>
/// Molar masses are IUPAC atomic weights added up. Lower flammable limits are those of the NIOSH documentation for immediately
/// dangerous concentrations and pocket guide, lowest isomer for xylene. Densities near 20 °C are from memory, unverified. Vapour pressures
/// at 20 °C: acetone 180 and isopropanol 33 mmHg read in federal documents; the others from memory (butanone is printed as 71 and 78 in two public documents;
/// xylene is the middle of 7 for the ortho isomer and 9 for meta and para; the acetate 4 mmHg on a chemical data page).
/// </remarks>
public static class GenericSolvents
{
    /// <summary>Acetone. Lower flammable limit 2.5 %.</summary>
    public static Solvent Acetone { get; } = Make("acetone", "67-64-1", 58.08, 0.791, 2.5, 180, "NIOSH Pocket Guide to Chemical Hazards", "acetone; its immediately dangerous 2500 ppm is 10 % of this limit; density from memory");

    /// <summary>2-Butanone (methyl ethyl ketone). Lower flammable limit 1.4 % (at 93 °C).</summary>
    public static Solvent Butanone { get; } = Make("2-butanone", "78-93-3", 72.11, 0.805, 1.4, 78, "NIOSH IDLH documentation", "78-93-3; density from memory");

    /// <summary>Ethyl acetate. Lower flammable limit 2.0 %.</summary>
    public static Solvent EthylAcetate { get; } = Make("ethyl acetate", "141-78-6", 88.11, 0.900, 2.0, 73, "NIOSH IDLH documentation", "141-78-6; density from memory");

    /// <summary>n-Butyl acetate. Lower flammable limit 1.7 %.</summary>
    public static Solvent ButylAcetate { get; } = Make("n-butyl acetate", "123-86-4", 116.16, 0.882, 1.7, 10, "NIOSH IDLH documentation", "123-86-4; density from memory");

    /// <summary>Xylene, mixed isomers. Lower flammable limit 0.9 % (o-xylene, the lowest isomer).</summary>
    public static Solvent Xylene { get; } = Make("xylene, mixed isomers", "1330-20-7", 106.17, 0.864, 0.9, 8, "NIOSH IDLH documentation", "95-47-6, o-, m- and p-xylene; density from memory");

    /// <summary>Toluene. Lower flammable limit 1.1 %.</summary>
    public static Solvent Toluene { get; } = Make("toluene", "108-88-3", 92.14, 0.867, 1.1, 21, "NIOSH IDLH documentation", "108-88-3; density from memory");

    /// <summary>Isopropanol. Lower flammable limit 2.0 %; vapour pressure 33 mmHg.</summary>
    public static Solvent Isopropanol { get; } = Make("isopropanol", "67-63-0", 60.10, 0.785, 2.0, 33, "NIOSH Pocket Guide to Chemical Hazards", "isopropyl alcohol; density from memory");

    /// <summary>1-Methoxy-2-propyl acetate. Lower flammable limit 1.5 %, from memory, unverified.</summary>
    public static Solvent MethoxypropylAcetate { get; } = new()
    {
        Name = "1-methoxy-2-propyl acetate",
        CasNumber = "108-65-6",
        MolarMass = MolarMass.FromGramsPerMole(132.16),
        Density = Density.FromGramsPerMilliliter(0.968),
        LowerFlammableLimit = Ratio.FromPercent(1.5),
        VapourPressure = Pressure.FromMillimetersOfMercury(4),
        Source = Source.FromMemory("lower flammable limit 1.5 % by volume; molar mass and density from a chemical data page"),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Solvent> All { get; } =
        new ValueList<Solvent>([Acetone, Butanone, EthylAcetate, ButylAcetate, Xylene, Toluene, Isopropanol, MethoxypropylAcetate]);

    private static Solvent Make(string name, string cas, double gramsPerMole, double gramsPerMilliliter, double lflPercent, double millimetresOfMercury, string document, string section) => new()
    {
        Name = name,
        CasNumber = cas,
        MolarMass = MolarMass.FromGramsPerMole(gramsPerMole),
        Density = Density.FromGramsPerMilliliter(gramsPerMilliliter),
        LowerFlammableLimit = Ratio.FromPercent(lflPercent),
        VapourPressure = Pressure.FromMillimetersOfMercury(millimetresOfMercury),
        Source = Source.Published(document, section),
    };
}

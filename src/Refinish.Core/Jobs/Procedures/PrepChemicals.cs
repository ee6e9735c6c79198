using System;
using System.Collections.Generic;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// A generic, invented set of chemicals for the preparation, to be replaced by a shop's own products and their data sheets.
/// </summary>
public static class PrepChemicals
{
    private static readonly Source Made = Source.Invented(
        "composition, amount and times of a kind of product as memory has it; the data sheets of the real product go first");

    /// <summary>
    /// A digester for silicone with citrus solvent, a stripper of benzyl alcohol in a gel (no chlorinated solvent), an acid descaler and
    /// a waterborne alkaline degreaser,
    /// neither with solvent, and a wipe of isopropanol and water before the promoter. Items: <c>silicone-remover</c>, <c>stripper</c>,
    /// <c>descaler</c>,
    /// <c>degreaser</c>, <c>alcohol-wipe</c>.
    /// </summary>
    public static IReadOnlyList<PrepChemical> Generic { get; } = new ValueList<PrepChemical>(
    [
        new()
        {
            Id = "silicone-remover",
            Name = "silicone remover",
            For = WorkKind.RemoveSilicone,
            Each = Volume.FromMilliliters(20),
            PerMeterOfJoint = Volume.FromMilliliters(50),
            Density = Density.FromGramsPerMilliliter(0.86),
            VolatileFraction = Ratio.FromPercent(90),
            Solvents = [new SolventShare(Solvents.Limonene, Ratio.FromPercent(100))],
            TimeConstant = TimeSpan.FromHours(4),
            Dwell = TimeSpan.FromMinutes(30),
            Cautions = [Cautions.IgnitionSources, Cautions.Rags],
            Source = Made,
        },
        new()
        {
            Id = "stripper",
            Name = "stripper",
            For = WorkKind.LayOnStripper,
            Coverage = SpreadingRate.FromSquareFeetPerUsGallon(100 / 1.5),
            Density = Density.FromGramsPerMilliliter(1.05),
            VolatileFraction = Ratio.FromPercent(45),
            Solvents = [new SolventShare(Solvents.BenzylAlcohol, Ratio.FromPercent(100))],
            TimeConstant = TimeSpan.FromHours(48),
            Dwell = TimeSpan.FromHours(4),
            Cautions = [Cautions.Strippers],
            Source = Made,
        },
        new()
        {
            Id = "descaler",
            Name = "acid descaler",
            For = WorkKind.Descale,
            Surfaces =
            [
                FixtureMaterial.EnamelledCastIron, FixtureMaterial.EnamelledSteel, FixtureMaterial.VitreousChina, FixtureMaterial.CeramicTile,
            ],
            Coverage = SpreadingRate.FromSquareMetersPerLiter(5),
            Density = Density.FromGramsPerMilliliter(1.05),
            VolatileFraction = Ratio.Zero,
            Cautions = [Cautions.AcidCleaner],
            Source = Made,
        },
        new()
        {
            Id = "degreaser",
            Name = "alkaline degreaser",
            For = WorkKind.Degrease,
            Coverage = SpreadingRate.FromSquareMetersPerLiter(5),
            Density = Density.FromGramsPerMilliliter(1.04),
            VolatileFraction = Ratio.Zero,
            Cautions = [Cautions.CausticCleaner],
            Source = Made,
        },
        new()
        {
            Id = "alcohol-wipe",
            Name = "wipe of isopropanol and water",
            For = WorkKind.Tack,
            Coverage = SpreadingRate.FromSquareMetersPerLiter(30),
            Density = Density.FromGramsPerMilliliter(0.93),
            VolatileFraction = Ratio.FromPercent(35),
            Solvents = [new SolventShare(Solvents.Isopropanol, Ratio.FromPercent(100))],
            Cautions = [Cautions.IgnitionSources, Cautions.Rags],
            Source = Made,
        },
    ]);
}

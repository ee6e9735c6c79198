using System;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>The high-solids products of the generic catalogue, every figure invented: more solids in the cans and little reducer.</summary>
internal static class HighSolids
{
    public static CoatingProduct Primer { get; } = GenericCatalogue.EpoxyPrimer with
    {
        Id = "high-solids-primer",
        Name = "two-part high-solids epoxy primer",
        Parts =
        [
            new(
                GenericCatalogue.Can("high-solids-primer-base", "high-solids primer base", 1.50,
                    massSolids: 78.9, volumeSolids: 64, viscosity: 700, flashPoint: 5, days: 180)
                    with { EpoxideEquivalent = MolarMass.FromGramsPerMole(720) },
                2),
            new(
                GenericCatalogue.Can("high-solids-primer-hardener", "high-solids primer hardener", 0.99,
                    massSolids: 62.8, volumeSolids: 58, viscosity: 250, flashPoint: 5, days: 90)
                    with { AmineHydrogenEquivalent = MolarMass.FromGramsPerMole(264) },
                1),
        ],
        VolumeSolids = Ratio.FromPercent(62),
        MaximumReducer = Ratio.FromPercent(5),
        MinimumDryFilm = Length.FromMicrometers(25),
        MaximumDryFilm = Length.FromMicrometers(60),
    };

    public static CoatingProduct Topcoat { get; } = GenericCatalogue.AcrylicUrethaneTopcoat with
    {
        Id = "high-solids-topcoat",
        Name = "two-part high-solids acrylic urethane topcoat",
        Parts =
        [
            new(
                GenericCatalogue.Can("high-solids-topcoat-base", "high-solids topcoat base", 1.28,
                    massSolids: 70.1, volumeSolids: 57, viscosity: 700, flashPoint: 24, days: 180)
                    with { HydroxylNumber = 43 },
                4),
            new(GenericCatalogue.IsocyanateHardener, 1),
        ],
        VolumeSolids = Ratio.FromPercent(59.7),
        MaximumReducer = Ratio.FromPercent(5),
        MinimumDryFilm = Length.FromMicrometers(30),
        MaximumDryFilm = Length.FromMicrometers(60),
        IsocyanateFraction = Ratio.FromPercent(12.8),
    };

    public static CoatingSystem System { get; } = new(
        "high-solids",
        "high-solids epoxy primer under high-solids acrylic urethane",
        [
            SystemStep.Wipe(GenericCatalogue.SilanePromoter),
            SystemStep.Wipe(GenericCatalogue.PlasticPromoter),
            SystemStep.Coat(new CoatingLayer(Primer, Length.FromMicrometers(35), 1, Ratio.FromPercent(5))),
            SystemStep.Coat(new CoatingLayer(Topcoat, Length.FromMicrometers(45), 2, Ratio.FromPercent(5))),
        ],
        Length.FromMicrometers(200),
        GenericCatalogue.EpoxyUrethaneSystem.Source);
}

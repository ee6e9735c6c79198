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
                new CoatingComponent("high-solids-primer-base", "high-solids primer base", Density.FromGramsPerMilliliter(1.50))
                {
                    MassSolids = Ratio.FromPercent(78.9),
                    VolumeSolids = Ratio.FromPercent(64),
                    EpoxideEquivalent = MolarMass.FromGramsPerMole(720),
                    Viscosity = DynamicViscosity.FromMillipascalSeconds(700),
                    FlashPoint = Temperature.FromDegreesCelsius(5),
                    ShelfLifeOpened = TimeSpan.FromDays(180),
                },
                2),
            new(
                new CoatingComponent("high-solids-primer-hardener", "high-solids primer hardener", Density.FromGramsPerMilliliter(0.99))
                {
                    MassSolids = Ratio.FromPercent(62.8),
                    VolumeSolids = Ratio.FromPercent(58),
                    AmineHydrogenEquivalent = MolarMass.FromGramsPerMole(264),
                    Viscosity = DynamicViscosity.FromMillipascalSeconds(250),
                    FlashPoint = Temperature.FromDegreesCelsius(5),
                    ShelfLifeOpened = TimeSpan.FromDays(90),
                },
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
                new CoatingComponent("high-solids-topcoat-base", "high-solids topcoat base", Density.FromGramsPerMilliliter(1.28))
                {
                    MassSolids = Ratio.FromPercent(70.1),
                    VolumeSolids = Ratio.FromPercent(57),
                    HydroxylNumber = 43,
                    Viscosity = DynamicViscosity.FromMillipascalSeconds(700),
                    FlashPoint = Temperature.FromDegreesCelsius(24),
                    ShelfLifeOpened = TimeSpan.FromDays(180),
                },
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

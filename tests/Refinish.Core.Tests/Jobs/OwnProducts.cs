using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Fixtures;
using Refinish.Jobs;
using UnitsNet;

namespace Refinish.Tests.Jobs;

/// <summary>One product of each kind that a shop may bring, and the invented house with it on the tub. Every figure is invented.</summary>
internal static class OwnProducts
{
    private static readonly Source Sheet = Source.Invented("a data sheet for the tests");

    private static readonly FixtureMaterial[] Everything =
    [
        FixtureMaterial.EnamelledCastIron, FixtureMaterial.EnamelledSteel, FixtureMaterial.VitreousChina, FixtureMaterial.CeramicTile,
        FixtureMaterial.Acrylic, FixtureMaterial.Gelcoat, FixtureMaterial.OldCoating,
    ];

    /// <summary>Resin, hardener and flexibiliser, 100 : 25 : 10 by weight; a urethane of 52 % solids by volume.</summary>
    public static CoatingProduct ThreePart { get; } = GenericCatalogue.AcrylicUrethaneTopcoat with
    {
        Id = "three-part-topcoat",
        Name = "three-part urethane topcoat (invented)",
        Parts = MixPart.ByMass(
        [
            new(new CoatingComponent
            {
                Id = "three-part-resin", Name = "resin", Density = Density.FromGramsPerMilliliter(1.25),
                MassSolids = Ratio.FromPercent(62), HydroxylNumber = 52, ShelfLifeOpened = TimeSpan.FromDays(180),
            }, 100),
            new(new CoatingComponent
            {
                Id = "three-part-hardener", Name = "hardener", Density = Density.FromGramsPerMilliliter(1.05),
                MassSolids = Ratio.FromPercent(75), IsocyanateContent = Ratio.FromPercent(16.5), ShelfLifeOpened = TimeSpan.FromDays(30),
            }, 25),
            new(new CoatingComponent
            {
                Id = "three-part-flexibiliser", Name = "flexibiliser", Density = Density.FromGramsPerMilliliter(1.00),
                MassSolids = Ratio.FromPercent(60), ShelfLifeOpened = TimeSpan.FromDays(90),
            }, 10),
        ]),
        // What the solids by mass of the cans leave: 1 − (48.25 g / 113.81 mL) / 0.889 g/mL, by hand.
        VolumeSolids = Ratio.FromPercent(52.3),
        IsocyanateFraction = Ratio.FromPercent(13.9),
        Source = Sheet,
    };

    /// <summary>One part, 40 % solids, 54 % water and 6 % solvent by mass; it may be reduced with water.</summary>
    public static CoatingProduct Waterborne { get; } = GenericCatalogue.AcrylicUrethaneTopcoat with
    {
        Id = "waterborne-topcoat",
        Name = "one-part waterborne topcoat (invented)",
        Parts =
        [
            new(new CoatingComponent
            {
                Id = "waterborne-can", Name = "waterborne topcoat", Density = Density.FromGramsPerMilliliter(1.10),
                MassSolids = Ratio.FromPercent(40), Water = Ratio.FromPercent(54), ShelfLifeOpened = TimeSpan.FromDays(180),
            }, 1),
        ],
        Reducer = new CoatingComponent
        {
            Id = "tap-water", Name = "water", Density = Density.FromKilogramsPerCubicMeter(998.15),
            MassSolids = Ratio.Zero, Water = Ratio.FromPercent(100), ShippingSizes = [Volume.FromMilliliters(500)],
        },
        MaximumReducer = Ratio.FromPercent(5),
        RatioTolerance = null,
        VolumeSolids = Ratio.FromPercent(33.7),
        Solvents = [new(Solvents.MethoxypropylAcetate, Ratio.FromPercent(100))],
        IsocyanateFraction = Ratio.Zero,
        Cure = GenericCatalogue.AcrylicUrethaneTopcoat.Cure with { PotLife = null },
        Source = Sheet,
    };

    /// <summary>One part, nothing but solids, hardened by a pass of a lamp within the hour.</summary>
    public static CoatingProduct LampCured { get; } = GenericCatalogue.AcrylicUrethaneTopcoat with
    {
        Id = "lamp-topcoat",
        Name = "lamp-cured acrylate topcoat (invented)",
        Parts =
        [
            new(new CoatingComponent
            {
                Id = "lamp-can", Name = "acrylate topcoat", Density = Density.FromGramsPerMilliliter(1.12),
                MassSolids = Ratio.FromPercent(100), ShelfLifeOpened = TimeSpan.FromDays(180),
            }, 1),
        ],
        Reducer = null,
        MaximumReducer = Ratio.Zero,
        RatioTolerance = null,
        VolumeSolids = Ratio.FromPercent(100),
        Solvents = [],
        IsocyanateFraction = Ratio.Zero,
        Cure = GenericCatalogue.AcrylicUrethaneTopcoat.Cure with
        {
            PotLife = null, TouchDry = TimeSpan.Zero, RecoatOpens = TimeSpan.Zero, RecoatCloses = TimeSpan.FromHours(4),
            WaterService = TimeSpan.FromHours(1), FullCure = TimeSpan.FromHours(24),
        },
        Cautions = [Cautions.Acrylates],
        Operations = [Lamp],
        Source = Sheet,
    };

    /// <summary>Ten minutes and four for each square metre, five minutes after the stroke, in air of 30 to 70 %.</summary>
    public static CoatOperation Lamp => new()
    {
        Id = "lamp", Name = "cure under the lamp",
        Instruction = "pass the lamp over every part of the coat at the distance that its maker states",
        SetUp = TimeSpan.FromMinutes(10), PerSquareMeter = TimeSpan.FromMinutes(4),
        Wait = TimeSpan.FromMinutes(5), Within = TimeSpan.FromHours(1),
        Cures = true, Tools = ["uv-lamp"], Cautions = [Cautions.UltravioletLight, Cautions.LampIgnites],
        Conditions = GenericCatalogue.AcrylicUrethaneTopcoat.SprayLimits with
        {
            MinimumRelativeHumidity = Ratio.FromPercent(30), MaximumRelativeHumidity = Ratio.FromPercent(70),
        },
        Source = Sheet,
    };

    /// <summary>The generic primer as a powder.</summary>
    public static CoatingProduct Powder { get; } = GenericCatalogue.EpoxyPrimer with
    {
        Id = "powder-primer", Name = "epoxy powder (invented)", Form = CoatingForm.Powder,
        VolumeSolids = Ratio.FromPercent(100), Solvents = [],
        Parts =
        [
            new(new CoatingComponent { Id = "powder", Name = "powder", Density = Density.FromGramsPerMilliliter(1.5), MassSolids = Ratio.FromPercent(100) }, 1),
        ],
        Reducer = null, MaximumReducer = Ratio.Zero, RatioTolerance = null,
    };

    /// <summary>The occupied house with two coats of a product over the generic primer on its tub, its kits and prices invented.</summary>
    public static Job With(CoatingProduct topcoat, int coats, Ratio reducer = default) => With(topcoat, new CoatingSystem(
        "own",
        "own system (invented)",
        [
            SystemStep.Wipe(GenericCatalogue.SilanePromoter),
            SystemStep.Wipe(GenericCatalogue.PlasticPromoter),
            SystemStep.Coat(new CoatingLayer(GenericCatalogue.EpoxyPrimer, Length.FromMicrometers(30), 1, Ratio.FromPercent(10))),
            SystemStep.Coat(new CoatingLayer(topcoat, Length.FromMicrometers(30), coats, reducer)),
        ],
        Length.FromMicrometers(300),
        Sheet));

    /// <summary>The same house with a system of the caller's.</summary>
    public static Job With(CoatingProduct product, CoatingSystem system)
    {
        Job house = InventedJobs.OccupiedHouse();
        Refinish.Estimating.PriceBook prices = house.Shop.Prices;
        return house with
        {
            Shop = house.Shop with
            {
                System = system,
                Prices = prices with
                {
                    Materials =
                    [
                        .. prices.Materials,
                        .. product.KitSizes.Select(size => new Refinish.Estimating.MaterialPrice(product.Id, size, 95m)),
                        .. product.Reducer is CoatingComponent reducer && !prices.Materials.Any(price => price.Item == reducer.Id)
                            ? new[] { new Refinish.Estimating.MaterialPrice(reducer.Id, Volume.FromMilliliters(500), 2m) } : [],
                    ],
                },
            },
        };
    }
}

using System;
using System.Collections.Generic;
using Refinish.Climate;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// Generic products and systems to start from. Every figure is invented from the ranges that are typical of such products, and describes no
/// product on sale: replace it with the data sheets of what is in the van before anything is mixed. Scattering, colour and flow are left
/// out, because nobody measured them: hiding, sag and levelling of these products cannot be judged.
/// </summary>
public static class GenericCatalogue
{
    private static readonly Source Generic = Source.Invented("typical of its kind, no product on sale; replace with the product's data sheet");

    private static readonly Source Rinsing = Source.CommonPractice("rinsing after etching or abrading");

    private static readonly FixtureMaterial[] Glassy =
    [
        FixtureMaterial.EnamelledCastIron, FixtureMaterial.EnamelledSteel, FixtureMaterial.VitreousChina, FixtureMaterial.CeramicTile,
    ];

    private static readonly FixtureMaterial[] Plastic =
    [
        FixtureMaterial.Gelcoat, FixtureMaterial.Acrylic, FixtureMaterial.CulturedMarble, FixtureMaterial.SolidSurface, FixtureMaterial.Laminate,
    ];

    internal static readonly CoatingComponent IsocyanateHardener =
        Can("isocyanate-hardener", "isocyanate hardener", 1.05,
            massSolids: 75, volumeSolids: 70.5, viscosity: 150, flashPoint: 30, days: 30)
        with { IsocyanateContent = Ratio.FromPercent(16.5) };

    private static readonly CoatingComponent UrethaneReducer =
        Can("urethane-reducer", "urethane reducer", 0.88, massSolids: 0, volumeSolids: null, viscosity: 0.8, flashPoint: 24, days: 365)
        with { Water = Ratio.FromPercent(0.05), ShippingSizes = [Volume.FromMilliliters(500)] };

    private static readonly SprayLimits Window = new()
    {
        MinimumTemperature = Temperature.FromDegreesCelsius(16),
        MaximumTemperature = Temperature.FromDegreesCelsius(32),
        MaximumRelativeHumidity = Ratio.FromPercent(80),
        Source = Generic,
    };

    /// <summary>
    /// Silane wipe for enamel, china and tile: 100 m²/L with cloth losses, 15 min to dry, first coat within 2 h, to be used within 24 h
    /// of mixing; carried by isopropanol.
    /// </summary>
    public static AdhesionPromoter SilanePromoter { get; } = new()
    {
        Id = "silane-promoter",
        Name = "silane adhesion promoter",
        SpreadingRate = SpreadingRate.FromSquareMetersPerLiter(100),
        Flash = TimeSpan.FromMinutes(15),
        OpenTime = TimeSpan.FromHours(2),
        MixedLife = TimeSpan.FromHours(24),
        Solvents = [new SolventShare(Solvents.Isopropanol, Ratio.FromPercent(100))],
        Materials = Glassy,
        Source = Generic,
    };

    /// <summary>
    /// Solvent wipe for gelcoat, acrylic, cultured marble, solid surface and laminate: 60 m²/L, 10 min to dry, first coat within 1 h;
    /// carried by xylene and butyl acetate.
    /// </summary>
    public static AdhesionPromoter PlasticPromoter { get; } = new()
    {
        Id = "plastic-promoter",
        Name = "plastic adhesion promoter",
        SpreadingRate = SpreadingRate.FromSquareMetersPerLiter(60),
        Flash = TimeSpan.FromMinutes(10),
        OpenTime = TimeSpan.FromHours(1),
        Solvents =
        [
            new SolventShare(Solvents.Xylene, Ratio.FromPercent(60)),
            new SolventShare(Solvents.ButylAcetate, Ratio.FromPercent(40)),
        ],
        Materials = Plastic,
        Source = Generic,
    };

    /// <summary>Two-part epoxy primer, 2 : 1 by volume, 45 % volume solids, 20 to 50 µm dry a coat.</summary>
    public static CoatingProduct EpoxyPrimer { get; } = new()
    {
        Id = "epoxy-primer",
        Name = "two-part epoxy primer",
        Role = CoatingRole.Primer,
        Parts =
        [
            new(
                Can("epoxy-primer-base", "primer base", 1.40, massSolids: 66.8, volumeSolids: 47, viscosity: 900, flashPoint: 5, days: 180)
                    with { EpoxideEquivalent = MolarMass.FromGramsPerMole(900) },
                2),
            new(
                Can("epoxy-primer-hardener", "primer hardener", 0.98,
                    massSolids: 47.2, volumeSolids: 41, viscosity: 300, flashPoint: 5, days: 90)
                    with { AmineHydrogenEquivalent = MolarMass.FromGramsPerMole(350) },
                1),
        ],
        Reducer = Can("epoxy-reducer", "epoxy reducer", 0.86, massSolids: 0, volumeSolids: null, viscosity: 0.7, flashPoint: 5, days: 365)
            with { ShippingSizes = [Volume.FromMilliliters(500)] },
        RatioTolerance = Ratio.FromPercent(5),
        GoesOver = [CoatingRole.Filler, CoatingRole.Primer],
        VolumeSolids = Ratio.FromPercent(45),
        MaximumReducer = Ratio.FromPercent(20),
        MinimumDryFilm = Length.FromMicrometers(20),
        MaximumDryFilm = Length.FromMicrometers(50),
        Solvents =
        [
            new SolventShare(Solvents.Xylene, Ratio.FromPercent(35)),
            new SolventShare(Solvents.MethoxypropylAcetate, Ratio.FromPercent(35)),
            new SolventShare(Solvents.Butanone, Ratio.FromPercent(30)),
        ],
        IsocyanateFraction = Ratio.Zero,
        Cure = new CureTimes
        {
            ReferenceTemperature = Temperature.FromDegreesCelsius(25),
            MinimumTemperature = Temperature.FromDegreesCelsius(13),
            MaximumTemperature = Temperature.FromDegreesCelsius(35),
            Induction = TimeSpan.FromMinutes(15),
            PotLife = TimeSpan.FromHours(4),
            TouchDry = TimeSpan.FromMinutes(45),
            RecoatOpens = TimeSpan.FromHours(1),
            RecoatCloses = TimeSpan.FromHours(24),
            WaterService = TimeSpan.FromHours(24),
            FullCure = TimeSpan.FromDays(7),
            Source = Generic,
        },
        SprayLimits = Window,
        Materials = [.. Glassy, .. Plastic, FixtureMaterial.OldCoating],
        KitSizes = [Volume.FromMilliliters(750), Volume.FromMilliliters(3000)],
        Source = Generic,
    };

    /// <summary>
    /// Two-part acrylic urethane topcoat, 4 : 1 by volume, 48 % volume solids, 25 to 45 µm dry a coat. Its hardener is an isocyanate.
    /// </summary>
    public static CoatingProduct AcrylicUrethaneTopcoat { get; } = new()
    {
        Id = "acrylic-urethane-topcoat",
        Name = "two-part acrylic urethane topcoat",
        Role = CoatingRole.Topcoat,
        Parts =
        [
            new(
                Can("acrylic-urethane-topcoat-base", "topcoat base", 1.20,
                    massSolids: 57.3, volumeSolids: 42.4, viscosity: 600, flashPoint: 24, days: 180)
                    with { HydroxylNumber = 46 },
                4),
            new(IsocyanateHardener, 1),
        ],
        Reducer = UrethaneReducer,
        RatioTolerance = Ratio.FromPercent(5),
        GoesOver = [CoatingRole.Primer, CoatingRole.Topcoat],
        VolumeSolids = Ratio.FromPercent(48),
        MaximumReducer = Ratio.FromPercent(15),
        MinimumDryFilm = Length.FromMicrometers(25),
        MaximumDryFilm = Length.FromMicrometers(45),
        Solvents =
        [
            new SolventShare(Solvents.ButylAcetate, Ratio.FromPercent(60)),
            new SolventShare(Solvents.Xylene, Ratio.FromPercent(25)),
            new SolventShare(Solvents.MethoxypropylAcetate, Ratio.FromPercent(15)),
        ],
        IsocyanateFraction = Ratio.FromPercent(13.5),
        Cure = new CureTimes
        {
            ReferenceTemperature = Temperature.FromDegreesCelsius(25),
            MinimumTemperature = Temperature.FromDegreesCelsius(13),
            MaximumTemperature = Temperature.FromDegreesCelsius(35),
            PotLife = TimeSpan.FromHours(2.5),
            TouchDry = TimeSpan.FromHours(1),
            RecoatOpens = TimeSpan.FromMinutes(20),
            RecoatCloses = TimeSpan.FromHours(16),
            WaterService = TimeSpan.FromHours(24),
            FullCure = TimeSpan.FromDays(7),
            Source = Generic,
        },
        SprayLimits = Window,
        Materials = [],
        KitSizes = [Volume.FromMilliliters(1250), Volume.FromMilliliters(5000)],
        Source = Generic,
    };

    /// <summary>
    /// Promoter wipe, one coat of epoxy primer (30 µm), three coats of acrylic urethane (30 µm each, 10 % reducer). The preparation is left
    /// to the survey.
    /// </summary>
    /// <remarks>
    /// Beyond the 420 g/L that the library remembers for tub and tile refinish coatings (<see cref="VocLimits"/>), as applied and at the
    /// greatest reducer: where such a limit holds, take <see cref="HighSolidsSystem"/>. <see cref="CoatingSystem.Voc"/> compares.
    /// </remarks>
    public static CoatingSystem EpoxyUrethaneSystem { get; } = new(
        "epoxy-urethane",
        "epoxy primer under acrylic urethane",
        [
            SystemStep.Wipe(SilanePromoter),
            SystemStep.Wipe(PlasticPromoter),
            SystemStep.Coat(new CoatingLayer(EpoxyPrimer, Length.FromMicrometers(30), 1, Ratio.FromPercent(10))),
            SystemStep.Coat(new CoatingLayer(AcrylicUrethaneTopcoat, Length.FromMicrometers(30), 3, Ratio.FromPercent(10))),
        ],
        Length.FromMicrometers(200),
        Generic);

    /// <summary>
    /// Two-part high-solids epoxy primer, 2 : 1 by volume, 62 % volume solids, 25 to 60 µm dry a coat, at most 5 % reducer: within 420
    /// g/L of volatile organic compounds.
    /// </summary>
    public static CoatingProduct HighSolidsPrimer => HighSolids.Primer;

    /// <summary>
    /// Two-part high-solids acrylic urethane topcoat, 4 : 1 by volume, 59.7 % volume solids, 30 to 60 µm dry a coat, at most 5 %
    /// reducer: within 420 g/L of volatile organic compounds. Its hardener is an isocyanate.
    /// </summary>
    public static CoatingProduct HighSolidsTopcoat => HighSolids.Topcoat;

    /// <summary>
    /// Promoter wipe, one coat of high-solids epoxy primer (35 µm), two coats of high-solids acrylic urethane (45 µm each, 5 %
    /// reducer). The preparation is left to the survey. Every product stays within 420 g/L of volatile organic compounds at its
    /// greatest reducer (<see cref="VocLimits"/>); whether that is the limit where you work, your air district says.
    /// </summary>
    public static CoatingSystem HighSolidsSystem => HighSolids.System;

    /// <summary>Every system of this catalogue.</summary>
    public static IReadOnlyList<CoatingSystem> Systems => new ValueList<CoatingSystem>([HighSolidsSystem, EpoxyUrethaneSystem, SlipResistantTub, ClearedPlastic]);

    /// <summary>
    /// Two-part acrylic urethane clear, 4 : 1 by volume, 46 % volume solids, with the topcoat's hardener, reducer and times.
    /// </summary>
    public static CoatingProduct AcrylicUrethaneClear { get; } = AcrylicUrethaneTopcoat with
    {
        Id = "acrylic-urethane-clear",
        Name = "two-part acrylic urethane clear",
        Role = CoatingRole.ClearCoat,
        Parts =
        [
            new(
                Can("acrylic-urethane-clear-base", "clear base", 0.99,
                    massSolids: 46.1, volumeSolids: 40, viscosity: 200, flashPoint: 24, days: 180)
                    with { HydroxylNumber = 56 },
                4),
            new(IsocyanateHardener, 1),
        ],
        VolumeSolids = Ratio.FromPercent(46.1),
        IsocyanateFraction = Ratio.FromPercent(15.7),
        GoesOver = [CoatingRole.Topcoat],
        KitSizes = [Volume.FromMilliliters(1250)],
    };

    /// <summary>Polymer beads of 100 µm, 1.2 g/mL, for a slip-resistant floor.</summary>
    public static SlipAdditive PolymerBeads { get; } =
        new("polymer-beads", "polymer beads", Length.FromMicrometers(100), Density.FromGramsPerMilliliter(1.2), Generic);

    /// <summary>
    /// A tub with a slip-resistant floor: clean, etch, rinse, filler, silane, primer, one finish coat, beads at 20 g/m², two finish coats
    /// over them.
    /// </summary>
    /// <remarks>
    /// Beyond the 420 g/L that the library remembers for tub and tile refinish coatings (<see cref="VocLimits"/>), as applied and at the
    /// greatest reducer: where such a limit holds, take <see cref="HighSolidsSystem"/>. <see cref="CoatingSystem.Voc"/> compares.
    /// </remarks>
    public static CoatingSystem SlipResistantTub { get; } = new(
        "slip-resistant-tub",
        "slip-resistant tub floor",
        [
            SystemStep.Preparation(SystemStepKind.Clean, "clean, rinse, clean again", [], Source.CommonPractice("two cleaning steps")),
            SystemStep.Preparation(SystemStepKind.Etch, "etch the glaze", Glassy, Source.CommonPractice("etching of glassy surfaces")),
            SystemStep.Preparation(SystemStepKind.RinseAndDry, "neutralise and rinse off the etchant, dry", [], Rinsing),
            SystemStep.Preparation(SystemStepKind.Filler, "fill chips and sand", [], Source.CommonPractice("two-part filler in chips")),
            SystemStep.Wipe(SilanePromoter),
            SystemStep.Coat(new CoatingLayer(EpoxyPrimer, Length.FromMicrometers(30), 1, Ratio.FromPercent(10))),
            SystemStep.Coat(new CoatingLayer(AcrylicUrethaneTopcoat, Length.FromMicrometers(30), 1, Ratio.FromPercent(10))),
            SystemStep.Broadcast(PolymerBeads, AreaDensity.FromGramsPerSquareMeter(20)),
            SystemStep.Coat(new CoatingLayer(AcrylicUrethaneTopcoat, Length.FromMicrometers(30), 2, Ratio.FromPercent(10))),
        ],
        Length.FromMicrometers(200),
        Generic);

    /// <summary>
    /// A plastic fixture: clean, abrade, rinse, plastic wipe, primer, two finish coats, one clear coat. It also goes on an old coating that
    /// is kept.
    /// </summary>
    /// <remarks>
    /// Beyond the 420 g/L that the library remembers for tub and tile refinish coatings (<see cref="VocLimits"/>), as applied and at the
    /// greatest reducer: where such a limit holds, take <see cref="HighSolidsSystem"/>. <see cref="CoatingSystem.Voc"/> compares.
    /// </remarks>
    public static CoatingSystem ClearedPlastic { get; } = new(
        "cleared-plastic",
        "acrylic urethane with clear on plastic",
        [
            SystemStep.Preparation(SystemStepKind.Clean, "clean, rinse, clean again", [], Source.CommonPractice("two cleaning steps")),
            SystemStep.Preparation(
                SystemStepKind.Abrade, "abrade dull, P320 to P400", [.. Plastic, FixtureMaterial.OldCoating],
                Source.CommonPractice("abrading of plastics and old coatings")),
            SystemStep.Preparation(SystemStepKind.RinseAndDry, "rinse off the dust and dry", [], Rinsing),
            SystemStep.Wipe(PlasticPromoter),
            SystemStep.Coat(new CoatingLayer(EpoxyPrimer, Length.FromMicrometers(30), 1, Ratio.FromPercent(10))),
            SystemStep.Coat(new CoatingLayer(AcrylicUrethaneTopcoat, Length.FromMicrometers(30), 2, Ratio.FromPercent(10))),
            SystemStep.Coat(new CoatingLayer(AcrylicUrethaneClear, Length.FromMicrometers(35), 1, Ratio.FromPercent(10))),
        ],
        Length.FromMicrometers(200),
        Generic);

    /// <summary>Every figure of this catalogue with what it rests on.</summary>
    /// <returns>One entry a figure.</returns>
    public static IReadOnlyList<ValueStanding> Standings() => CatalogueStandings.All();

    internal static CoatingComponent Can(
        string id, string name, double gramsPerMilliliter, double massSolids, double? volumeSolids, double viscosity, double flashPoint,
        double days) => new()
    {
        Id = id,
        Name = name,
        Density = Density.FromGramsPerMilliliter(gramsPerMilliliter),
        MassSolids = Ratio.FromPercent(massSolids),
        VolumeSolids = volumeSolids is double percent ? Ratio.FromPercent(percent) : null,
        Viscosity = DynamicViscosity.FromMillipascalSeconds(viscosity),
        FlashPoint = Temperature.FromDegreesCelsius(flashPoint),
        ShelfLifeOpened = TimeSpan.FromDays(days),
    };
}

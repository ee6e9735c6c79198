using System.Collections.Generic;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Samples.EstimatorBridge;

/// <summary>The refinishing shop behind the bridge: system, losses, hours and prices, all invented. Replace them by data sheets, time sheets and price lists.</summary>
internal static class Shop
{
    private static readonly Source Invented = Source.Invented("hours of the demonstration's shop");

    // The shop works through a property with open drums, so coating is charged by ten millilitres drawn and not by the kit.
    private static readonly Volume Draw = Volume.FromMilliliters(10);

    public static CoatingSystem System { get; } = GenericCatalogue.EpoxyUrethaneSystem;

    public static ApplicationLosses Losses { get; } = new() { TransferEfficiency = Ratio.FromPercent(60), Residue = Ratio.FromPercent(8) };

    public static FillerPolicy Filler { get; } = FillerPolicy.Generic with { TotalDryFilm = System.TotalDryFilm };

    public static SurveyPolicy Policy { get; } = new SurveyPolicy() with { Filler = Filler };

    public static LabourStandard Prepare { get; } = new()
    {
        Code = "L-PREP", Description = "mask; clean; etch or abrade", Unit = "fixture", PerUnit = new(1.2, 1.6, 2.6), PerSquareMeter = new(0.5, 0.65, 1.1), Source = Invented,
    };

    public static LabourStandard Spray { get; } = new()
    {
        Code = "L-SPRAY", Description = "spray one primer and three topcoats", PerSquareMeter = new(0.5, 0.62, 0.8), Source = Invented,
    };

    public static LabourStandard Return { get; } = new()
    {
        Code = "L-RETURN", Description = "demask; caulk; refit; inspect", Unit = "fixture", PerUnit = new(0.8, 1.0, 1.3), Source = Invented,
    };

    public static IReadOnlyList<DefectMaterial> DefectMaterials { get; } = Refinish.Estimating.DefectMaterials.Generic;

    /// <summary>Codes under which the contractor's program files materials; the library numbers them within one estimate.</summary>
    public static IReadOnlyDictionary<string, string> MaterialCodes { get; } = new Dictionary<string, string>
    {
        ["two-part epoxy primer"] = "M-PRIMER", ["epoxy reducer"] = "M-PRIMER-R", ["two-part acrylic urethane topcoat"] = "M-TOPCOAT", ["urethane reducer"] = "M-TOPCOAT-R",
        ["silane adhesion promoter"] = "M-SILANE", ["plastic adhesion promoter"] = "M-PLASTIC", [Filler.Product.Name] = "M-FILLER", ["spot primer"] = "M-SPOT",
        ["silicone remover"] = "M-SILICONE", ["grout"] = "M-GROUT",
    };

    public static PriceBook Prices { get; } = new()
    {
        Currency = "EUR",
        LabourRate = 26m,
        Burden = Ratio.FromPercent(32),
        OverheadPerHour = 9m,
        ConsumablesPerFixture = 34m,
        DisposalPerJob = 0m,
        Materials =
        [
            new("two-part epoxy primer", Draw, 0.55m),
            new("epoxy reducer", Draw, 0.16m),
            new("two-part acrylic urethane topcoat", Draw, 0.72m),
            new("urethane reducer", Draw, 0.20m),
            new("silane adhesion promoter", Draw, 1.40m),
            new("plastic adhesion promoter", Draw, 1.10m),
            new(Filler.Product.Name, Draw, 1.15m),
            new("spot primer", Draw, 1.20m),
            new("silicone remover", Draw, 0.60m),
            new("grout", Draw, 0.14m),
        ],
        Options =
        [
            new("X-SLIP", "slip-resistant floor", "each", 31m, 85m),
            new("X-DRAIN", "new drain and overflow trim", "set", 42m),
        ],
        TargetMargin = new Margin(Ratio.FromPercent(38)),
    };
}

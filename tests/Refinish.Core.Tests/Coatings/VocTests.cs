using System;
using System.Linq;
using FsCheck.Xunit;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Coatings;

public class VocTests
{
    private static readonly CoatingProduct Topcoat = GenericCatalogue.AcrylicUrethaneTopcoat;

    private static MassConcentration Pounds(double perGallon) => MassConcentration.FromPoundsPerUSGallon(perGallon);

    [Fact]
    [Evidence(Basis.Cited, "paint and coatings resource centre, March 2004: density 8.52 lb/gal, 53.0 % water and 20.8 % solids by weight, water 8.33 lb/gal; 2.23 lb/gal as it is, 4.87 less water")]
    public void Less_water_by_weight()
    {
        VocContent voc = new()
        {
            Volume = Volume.FromUsGallons(1),
            Volatiles = Mass.FromPounds(8.52 * (1 - 0.208)),
            Water = Mass.FromPounds(8.52 * 0.530),
            WaterVolume = Volume.FromUsGallons(8.52 * 0.530 / 8.33),
        };
        Numbers.Near(2.23, voc.Material.PoundsPerUSGallon, 0.005);

        // 4.87 is printed; 223.2/45.79 in its own intermediate figures is 4.8745.
        Numbers.Near(4.87, voc.Regulatory.PoundsPerUSGallon, 0.008);
        Numbers.CanBeWritten(voc.Workings());
    }

    [Fact]
    [Evidence(Basis.Cited, "coating maker's page on VOC: 33.20 lb of solvent and 62.40 gal of water in 100 gal are 0.332 lb/gal, 0.883 less water")]
    public void Less_water_by_volume()
    {
        VocContent voc = new()
        {
            Volume = Volume.FromUsGallons(100),
            Volatiles = Mass.FromPounds(33.20 + (62.40 * 8.33)),
            Water = Mass.FromPounds(62.40 * 8.33),
            WaterVolume = Volume.FromUsGallons(62.40),
        };
        Numbers.Near(0.332, voc.Material.PoundsPerUSGallon, 0.0005);
        Numbers.Near(0.883, voc.Regulatory.PoundsPerUSGallon, 0.0005);
    }

    [Fact]
    [Evidence(Basis.Independent, "closed form on made numbers in the form of 40 CFR 59.104(a)(1), whose equation is from memory: 350/0.8375 = 417.9 g/L")]
    public void Water_and_exempt_compounds()
    {
        VocContent voc = new()
        {
            Volume = Volume.FromLiters(1),
            Volatiles = Mass.FromGrams(500),
            Water = Mass.FromGrams(100),
            WaterVolume = Volume.FromMilliliters(100),
            Exempt = Mass.FromGrams(50),
            ExemptVolume = Volume.FromMilliliters(62.5),
        };
        Numbers.Near(417.9, voc.Regulatory.GramsPerLiter, 0.05);
        Numbers.Close(350, voc.Material.GramsPerLiter);
        Assert.Equal("350 g/L, 417.9 g/L less water and exempt compounds", voc.ToString());
    }

    [Property]
    [Evidence(Basis.Cited, "Fla. Admin. Code 62-296.500: z = y/(1 − x/d) for exempt solvent taken out; any numbers")]
    public void Exempt_solvent_taken_out(byte y, byte x)
    {
        double organic = y;
        double exempt = x * 2;
        const double Density = 790;
        VocContent voc = new()
        {
            Volume = Volume.FromLiters(1),
            Volatiles = Mass.FromGrams(organic + exempt),
            Exempt = Mass.FromGrams(exempt),
            ExemptVolume = Volume.FromLiters(exempt / Density),
        };
        Numbers.Near(organic / (1 - (exempt / Density)), voc.Regulatory.GramsPerLiter, 1e-9);
        Assert.True(voc.Regulatory >= voc.Material);
    }

    [Theory]
    [InlineData(3.0, 5.07, 0.01)]
    [Evidence(Basis.Cited, "Fla. Admin. Code 62-296.500, table 296.500-1, worked example: 3 lb/gal at 7.36 lb/gal is 5.07 lb/gal of solids; it rounds 0.408, 0.592 and 1.689 on the way, unrounded it is 5.064")]
    public void Per_volume_of_solids(double content, double solids, double tolerance) =>
        Numbers.Near(solids, VocContent.PerSolids(Pounds(content), Density.FromPoundsPerUSGallon(7.36)).PoundsPerUSGallon, tolerance);

    [Theory]
    [InlineData(1.9, 2.561)]
    [InlineData(2.8, 4.519)]
    [InlineData(3.5, 6.674)]
    [InlineData(4.3, 10.342)]
    [Evidence(Basis.Independent, "30 TAC 115.423(1), S = C/(1 − C/7.36), values recomputed outside the library")]
    public void The_rule_of_texas(double content, double solids)
    {
        MassConcentration result = VocContent.PerSolids(Pounds(content), Density.FromPoundsPerUSGallon(7.36));
        Numbers.Near(solids, result.PoundsPerUSGallon, 0.0005);
        Trace trace = new();
        VocContent.PerSolids(Pounds(content).KilogramsPerCubicMeter, Density.FromPoundsPerUSGallon(7.36).KilogramsPerCubicMeter, trace);
        Numbers.Close(result.KilogramsPerCubicMeter, trace.Workings("VOC").Steps[0].Formula.Value);
    }

    [Fact]
    [Evidence(Basis.Cited, "Metal Finishing guidebook 2013, appendix B, p. 813: 1 gal of 2.5 lb/gal and 0.25 gal of 6.8 lb/gal hold 4.2 lb in 1.25 gal, 3.36 lb/gal")]
    public void A_thinned_coating()
    {
        VocBlend blend = new([new("coating", Volume.FromUsGallons(1), Pounds(2.5)), new("thinner", Volume.FromUsGallons(0.25), Pounds(6.8))]);
        Numbers.Near(3.36, blend.Content.PoundsPerUSGallon, 0.005);
        Numbers.CanBeWritten(blend.Workings());

        // 0.303 gal to a gallon until 3.5 lb/gal: 1.0/3.3, derived.
        VocBlend neat = new([new("coating", Volume.FromUsGallons(1), Pounds(2.5))]);
        Volume room = neat.ThinnerUpTo(Pounds(6.8), Pounds(3.5))!.Value;
        Numbers.Near(0.303, room.UsGallons, 0.0005);
        Numbers.Close(3.5, new VocBlend([new("coating", Volume.FromUsGallons(1), Pounds(2.5)), new("thinner", room, Pounds(6.8))]).Content.PoundsPerUSGallon, 1e-10);
        Assert.Null(neat.ThinnerUpTo(Pounds(6.8), Pounds(2.4)));
    }

    [Fact]
    [Evidence(Basis.Cited, "the same guidebook, p. 817: 3 parts of 3.1 and 1 of 1.8 lb/gal with 7 of water left out are 11.1/4; the page prints 2.75 where it is 2.775, cut off after two decimals")]
    public void Water_in_a_mixture_is_left_out()
    {
        VocBlend blend = new(
        [
            new("A", Volume.FromLiters(3), Pounds(3.1)), new("B", Volume.FromLiters(1), Pounds(1.8)), new("water", Volume.FromLiters(7), Pounds(0), isIgnored: true),
        ]);
        Numbers.Near(2.775, blend.Content.PoundsPerUSGallon, 5e-10);
        Numbers.Near(2.75, blend.Content.PoundsPerUSGallon, 0.03);
    }

    [Fact]
    [Evidence(Basis.Cited, "NIST definitions of pound and US gallon: 1 lb/gal is 119.826 g/L; the guidebook rounds to 119.8")]
    public void Units_of_content() => Numbers.Near(119.826, Pounds(1).GramsPerLiter, 0.0005);

    [Fact]
    [Evidence(Basis.Independent, "by hand in grams for 5 L of mix and 0.5 L of reducer: 4 L × 1.20 + 1 L × 1.05 + 0.5 L × 0.88 = 6.29 kg; solids 4.8 × 0.573 + 1.05 × 0.75 = 3.5379 kg")]
    public void The_topcoat_as_applied()
    {
        MixedCoating coat = new(Topcoat, Ratio.FromPercent(10));
        Assert.True(coat.IsFromCans);
        Numbers.Close(6290.0 / 5.5, coat.Density.KilogramsPerCubicMeter, 1e-12);
        Numbers.Close(3.5379 / 6.29, coat.MassSolids.DecimalFractions, 1e-12);
        Numbers.Close(0.48 / 1.1, coat.VolumeSolids.DecimalFractions, 1e-12);
        double water = 440 * 0.0005;
        double organic = 6290 - 3537.9 - water;
        Numbers.Close(organic / (5.5 - (water / 998.15)), coat.Voc!.Regulatory.GramsPerLiter, 1e-12);
        Numbers.CanBeWritten(coat.Workings());
        Assert.Equal(ComparisonOutcome.Beyond, coat.Compare(VocLimits.SouthCoast1113).Outcome);
        Assert.Equal([Hazard.SolventVapour, Hazard.Isocyanate], coat.Cautions.Select(caution => caution.Hazard));
        Assert.Equal([Hazard.SolventVapour, Hazard.SkinAndEyes], new MixedCoating(GenericCatalogue.EpoxyPrimer, Ratio.Zero).Cautions.Select(caution => caution.Hazard));
        Assert.True(MixedCoating.AtMaximumReducer(Topcoat).Voc!.Regulatory > coat.Voc.Regulatory);
    }

    [Fact]
    [Evidence(Basis.Independent, "two routes to the solvent of the same product: from the cans' solids by mass, and from volume solids and the density of the blend, agree to 0.2 %")]
    public void Cans_and_product_agree()
    {
        CoatingProduct bare = Topcoat with
        {
            Parts =
            [
                new(new CoatingComponent { Id = "base", Name = "base", Density = Topcoat.Parts[0].Component.Density }, 4),
                new(new CoatingComponent { Id = "hardener", Name = "hardener", Density = Topcoat.Parts[1].Component.Density }, 1),
            ],
        };
        MixedCoating product = new(bare, Ratio.Zero);
        MixedCoating cans = new(Topcoat, Ratio.Zero);
        Assert.False(product.IsFromCans);
        Numbers.Close(cans.Voc!.Regulatory.GramsPerLiter, product.Voc!.Regulatory.GramsPerLiter, 2e-3);
        Numbers.CanBeWritten(product.Workings());
        Numbers.CanBeWritten(new MixedCoating(bare, Ratio.FromPercent(5)).Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "water is said once, as a share of the part that holds it")]
    public void Water_among_the_solvents_is_refused()
    {
        SolventShare[] blend = [new(Solvents.Water, Ratio.FromPercent(80)), new(Solvents.Isopropanol, Ratio.FromPercent(20))];
        ArgumentException refused = Assert.Throws<ArgumentException>(() => _ = Topcoat with { Solvents = blend });
        Assert.Equal("Solvents", refused.ParamName);
        Assert.Contains("CoatingComponent.Water", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => _ = Topcoat.Parts[0].Component with { Solvents = blend });
    }

    [Property]
    [Evidence(Basis.Identity, "thinner never raises solids, by volume or by mass, and never lowers VOC below that of the lighter of the two; mass is that of the parts")]
    public void Thinner_never_raises_solids(byte less, byte more)
    {
        double small = Math.Min(less, more) / 255.0 * 15;
        double large = Math.Max(less, more) / 255.0 * 15;
        MixedCoating a = new(Topcoat, Ratio.FromPercent(small));
        MixedCoating b = new(Topcoat, Ratio.FromPercent(large));
        Assert.True(b.VolumeSolids.DecimalFractions <= a.VolumeSolids.DecimalFractions + 1e-15);
        Assert.True(b.MassSolids.DecimalFractions <= a.MassSolids.DecimalFractions + 1e-15);
        Assert.True(b.Voc!.Regulatory.KilogramsPerCubicMeter >= a.Voc!.Regulatory.KilogramsPerCubicMeter - 1e-9);
        double grams = 5 * (Topcoat.MixedDensity.GramsPerMilliliter + (b.Reducer.DecimalFractions * 0.88));
        Numbers.Close(grams, 5 * (1 + b.Reducer.DecimalFractions) * b.Density.GramsPerMilliliter, 1e-12);
        Numbers.CanBeWritten(b.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "a missing figure is not judged; limits are data that say they are remembered")]
    public void What_is_missing_is_not_judged()
    {
        CoatingProduct exempt = Topcoat with { Reducer = new CoatingComponent { Id = "exempt reducer", Name = "exempt reducer", Density = Density.FromGramsPerMilliliter(0.79), MassSolids = Ratio.Zero, ExemptCompounds = Ratio.FromPercent(100) } };
        MixedCoating unknown = new(exempt, Ratio.FromPercent(10));
        Assert.Null(unknown.Voc);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, unknown.Compare(VocLimits.SouthCoast1113).Outcome);
        MixedCoating known = new(exempt with { Reducer = exempt.Reducer! with { ExemptDensity = Density.FromGramsPerMilliliter(0.79) } }, Ratio.FromPercent(10));
        Numbers.Close(new MixedCoating(exempt, Ratio.Zero).Voc!.Regulatory.GramsPerLiter, known.Voc!.Regulatory.GramsPerLiter, 1e-12);
        Assert.All(VocLimits.All, limit => Assert.Equal(SourceKind.FromMemory, limit.Source.Kind));
        Assert.All(VocLimits.All, limit => Assert.Equal(420, limit.Limit.GramsPerLiter));
        VocLimit own = new()
        {
            Jurisdiction = "our county", Rule = "as printed", Category = "tub and tile refinish", EffectiveFrom = "2025-01-01",
            Limit = MassConcentration.FromGramsPerLiter(700), Source = Source.Supplied("county code"),
        };
        Assert.Equal(ComparisonOutcome.Within, new MixedCoating(Topcoat, Ratio.Zero).Compare(own).Outcome);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 1 L with 500 g volatiles, 100 g water in 0.1 L, 50 g exempt in 0.0625 L: 350 g/L ready to use, 350/0.8375 = 417.9 g/L less water and exempt compounds")]
    public void A_limit_says_what_it_counts()
    {
        VocContent content = new()
        {
            Volume = Volume.FromLiters(1), Volatiles = Mass.FromGrams(500), Water = Mass.FromGrams(100), WaterVolume = Volume.FromMilliliters(100),
            Exempt = Mass.FromGrams(50), ExemptVolume = Volume.FromMilliliters(62.5),
        };
        VocLimit ready = VocLimits.EuropeanTwoPack with { Limit = MassConcentration.FromGramsPerLiter(400) };
        Numbers.Close(350, ready.Compare(content).Value!.Value.Si, 1e-12);
        Assert.Equal(ComparisonOutcome.Within, ready.Compare(content).Outcome);
        LimitComparison less = (ready with { Basis = VocBasis.LessWaterAndExempt }).Compare(content);
        Numbers.Close(350 / 0.8375, less.Value!.Value.Si, 1e-12);
        Assert.Equal(ComparisonOutcome.Beyond, less.Outcome);
        Assert.Contains("2004/42/EC", less.Whose!, StringComparison.Ordinal);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, ready.Compare(null).Outcome);
        Numbers.Refuses("Basis", () => _ = ready with { Basis = (VocBasis)9 });
    }

    [Fact]
    [Evidence(Basis.Contract, "contents that cannot be are refused")]
    public void Refuses_what_cannot_be()
    {
        VocContent all = new() { Volume = Volume.FromLiters(1), Volatiles = Mass.FromGrams(100), Water = Mass.FromGrams(200), WaterVolume = Volume.FromLiters(1) };
        Numbers.Refuses("Volatiles", () => _ = all.Material);
        Numbers.Refuses("Volume", () => _ = (all with { Volatiles = Mass.FromGrams(300) }).Regulatory);
        Numbers.Refuses("Volume", () => _ = all with { Volume = Volume.Zero });
        Numbers.Refuses("content", () => VocContent.PerSolids(Pounds(7.36), Density.FromPoundsPerUSGallon(7.36)));
        Numbers.Refuses("content", () => _ = new VocPart("water", Volume.FromLiters(1), Pounds(1), isIgnored: true));
        Numbers.Refuses("reducer", () => _ = new MixedCoating(Topcoat, Ratio.FromPercent(16)));
        Numbers.Refuses("thinner", () => new VocBlend([new("coating", Volume.FromLiters(1), Pounds(2))]).ThinnerUpTo(Pounds(3), Pounds(3.5)));
        Assert.Throws<ArgumentException>(() => new VocBlend([new("water", Volume.FromLiters(1), Pounds(0), isIgnored: true)]));
        Assert.Equal(4, VocLimits.All.Select(limit => limit.ToString()).Distinct().Count());
    }
}

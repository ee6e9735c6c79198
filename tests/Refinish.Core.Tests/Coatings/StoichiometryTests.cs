using System;
using FsCheck.Xunit;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Coatings;

public class StoichiometryTests
{
    private static MolarMass Grams(double grams) => MolarMass.FromGramsPerMole(grams);

    [Theory]
    [InlineData(103, 5, 200, 10.3, 0.05)]
    [Evidence(Basis.Cited, "resin consultant's page (kraska.biz): DETA, molar mass 103 and five hydrogens, on a resin of 200 g/eq takes 10.3 phr")]
    public void Amine_on_epoxy(double molarMass, int hydrogens, double resin, double phr, double tolerance) =>
        Numbers.Near(phr, new EpoxyAmine(Grams(resin), EquivalentWeights.OfMolecule(Grams(molarMass), hydrogens)).PartsPerHundred, tolerance);

    [Fact]
    [Evidence(Basis.Cited, "materials questions and answers (faqs.tips): MDA of 49.5 g/eq on 5 g of resin of 200 g/eq takes 0.025 eq, 1.24 g (24.8 phr)")]
    public void Five_grams_of_resin()
    {
        EpoxyAmine mix = new(Grams(200), Grams(49.5));
        Numbers.Near(24.8, mix.PartsPerHundred, 0.0501);
        Numbers.Near(1.24, mix.PartsPerHundred / 100 * 5, 0.005);
    }

    [Theory]
    [InlineData(146.2, 6, 189, 13)]
    [InlineData(146.2, 6, 190, 13)]
    [Evidence(Basis.Cited, "study of TETA on DGEBA (iasj.net 116078), abstract: the stoichiometric 13 phr, whole number; equivalent of the resin, 189 or 190, is from memory")]
    public void The_ratio_of_a_study(double molarMass, int hydrogens, double resin, double phr) =>
        Numbers.Near(phr, new EpoxyAmine(Grams(resin), EquivalentWeights.OfMolecule(Grams(molarMass), hydrogens)).PartsPerHundred, 0.5);

    [Fact]
    [Evidence(Basis.Cited, "calculation sheet for the equivalent weight of epoxy mixtures: 80 of 189, 10 of 183, 10 of filler is 209 g/eq; an amine of 43 g/eq then takes 20.6 phr")]
    public void A_blend_with_filler()
    {
        ReactiveBlend resin = Filled();
        Numbers.Near(209, resin.EquivalentWeight.GramsPerMole, 0.5);

        // By hand: 100 / (80/189 + 10/183), and 43 of it to a hundred.
        Numbers.Near(209.24, resin.EquivalentWeight.GramsPerMole, 0.005);
        Numbers.Near(20.55, 4300 / resin.EquivalentWeight.GramsPerMole, 0.005);
        EpoxyAmine mix = new(resin, new ReactiveBlend([new("polyamine", Mass.FromGrams(1), Grams(43))]));
        Numbers.Near(20.6, mix.PartsPerHundred, 0.05);
        Numbers.CanBeWritten(resin.Workings());
        Numbers.CanBeWritten(mix.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 100 × 115/475 = 24.21; 21.8 of it is 0.9004 hydrogens an epoxide; no published source")]
    public void Another_ratio_is_an_index()
    {
        EpoxyAmine mix = new(Grams(475), Grams(115));
        Numbers.Near(24.2105, mix.PartsPerHundred, 5e-5);
        Numbers.Near(0.9004, mix.IndexAt(21.8), 5e-5);
        Assert.Equal("24.211 of hardener to 100 of resin by weight", mix.ToString());
    }

    [Theory]
    [InlineData(31.0, 136, 0.5)]
    [InlineData(23.0, 183, 0.5)]
    [Evidence(Basis.Cited, "guide to urethane calculations (2001): 31.0 % NCO is 136 g/eq; resin maker's sample calculation: 183 g/eq is 23 % NCO")]
    public void Isocyanate_equivalents(double percent, double grams, double tolerance) =>
        Numbers.Near(grams, EquivalentWeights.OfIsocyanate(Ratio.FromPercent(percent)).GramsPerMole, tolerance);

    [Theory]
    [InlineData(1810, 31.0, 0.05)]
    [InlineData(122, 460, 0.5)]
    [Evidence(Basis.Cited, "guide to urethane calculations (2001): ethylene glycol, hydroxyl number 1810, is 31.0 g/eq; resin maker's sample calculation: 460 g/eq is a hydroxyl number of 122")]
    public void Hydroxyl_equivalents(double number, double grams, double tolerance) =>
        Numbers.Near(grams, EquivalentWeights.OfHydroxyl(number).GramsPerMole, tolerance);

    [Theory]
    [InlineData(136, 31.0, 0.15)]
    [InlineData(183, 23, 0.5)]
    [Evidence(Basis.Cited, "the same two sources the other way; the tolerance is half a gram of the printed equivalent, or half a per cent")]
    public void Isocyanate_contents(double grams, double percent, double tolerance) =>
        Numbers.Near(percent, EquivalentWeights.IsocyanateContentOf(Grams(grams)).Percent, tolerance);

    [Theory]
    [InlineData(31.0, 1810, 3)]
    [InlineData(460, 122, 0.5)]
    [Evidence(Basis.Cited, "the same two sources the other way; 31.0 g/eq is printed to 0.05, which is 3 mg KOH/g")]
    public void Hydroxyl_numbers(double grams, double number, double tolerance) =>
        Numbers.Near(number, EquivalentWeights.HydroxylNumberOf(Grams(grams)), tolerance);

    [Fact]
    [Evidence(Basis.Cited, "USP 32, Oleic Acid: C18H34O2 of 282.46 g/mol, one carboxyl; acid value between 196 and 204")]
    public void The_acid_number_of_a_fatty_acid()
    {
        MolarMass oleic = EquivalentWeights.OfMolecule(Grams(282.46), 1);
        Assert.InRange(EquivalentWeights.AcidNumberOf(oleic), 196, 204);
        Assert.InRange(282.46, EquivalentWeights.OfAcid(204).GramsPerMole, EquivalentWeights.OfAcid(196).GramsPerMole);
    }

    [Theory]
    [InlineData(30, 1870)]
    [InlineData(56.1, 1000)]
    [Evidence(Basis.Independent, "by hand: 56 100 over the acid number, with the molar mass of potassium hydroxide of 56.1 g/mol")]
    public void Acid_equivalents(double number, double grams)
    {
        Numbers.Close(grams, EquivalentWeights.OfAcid(number).GramsPerMole);
        Numbers.Close(number, EquivalentWeights.AcidNumberOf(Grams(grams)));
    }

    [Property]
    [Evidence(Basis.Identity, "a number turned into an equivalent weight and back is itself")]
    public void Numbers_round_trip(byte tenths)
    {
        double number = 3 + (tenths / 10.0);
        Numbers.Close(number, EquivalentWeights.AcidNumberOf(EquivalentWeights.OfAcid(number)));
        Numbers.Close(number, EquivalentWeights.HydroxylNumberOf(EquivalentWeights.OfHydroxyl(number)));
        Numbers.Close(number, EquivalentWeights.IsocyanateContentOf(EquivalentWeights.OfIsocyanate(Ratio.FromPercent(number))).Percent);
    }

    [Fact]
    [Evidence(Basis.Cited, "isocyanate maker's nomograph: hydroxyl number 80 and 23.1 % NCO at an index of 1 take 26 parts to 100 (exact 25.94)")]
    public void Parts_of_a_nomograph()
    {
        UrethaneIndex mix = Mix(100, 80, 26, 23.1);
        Numbers.Near(26, mix.IsocyanateFor(1).Grams, 0.5);
        Numbers.Near(25.94, mix.IsocyanateFor(1).Grams, 0.005);
    }

    [Theory]
    [InlineData(1.00, 37.90)]
    [InlineData(1.05, 39.79)]
    [Evidence(Basis.Cited, "resin maker's sample calculation for polyurethane formulations: 95.26 g of resin, 460 g/eq, with an isocyanate of 183 g/eq takes 37.90 g, and 39.79 g at 1.05")]
    public void Parts_of_a_sample_calculation(double index, double grams)
    {
        // The figures are in equivalent weights; they are turned into the two numbers of a data sheet with the sheet's own constants.
        UrethaneIndex mix = Mix(95.26, 56100.0 / 460, 1, 4202.0 / 183);
        Numbers.Near(grams, mix.IsocyanateFor(index).Grams, 0.01);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 25 g at 16.5 % with 100 g of hydroxyl number 60 is 0.918; no published source")]
    public void Index_by_hand()
    {
        UrethaneIndex mix = Mix(100, 60, 25, 16.5);
        Numbers.Near(0.918, mix.Index, 0.0005);
        Numbers.Close(mix.Index, mix.IndexAfterReducer);
        Numbers.CanBeWritten(mix.Workings());
    }

    [Fact]
    [Evidence(Basis.Cited, "cure terms glossary: water takes two equivalents; 1 g of water then uses up 21.4 g of a product of 21.8 % NCO (recomputed from the rule)")]
    public void Water_eats_isocyanate()
    {
        UrethaneIndex dry = Mix(100, 60, 25, 21.8);
        UrethaneIndex wet = dry with { Water = Mass.FromGrams(1) };
        Numbers.Near(21.4, (wet.IsocyanateFor(1) - dry.IsocyanateFor(1)).Grams, 0.05);
        Assert.True(wet.IndexAfterReducer < dry.Index);
        Numbers.Close(dry.Index, wet.Index);
        Numbers.CanBeWritten(wet.Workings());
    }

    [Property]
    [Evidence(Basis.Identity, "mixing what IsocyanateFor asks for gives the index asked for, whatever water and alcohol there is")]
    public void Index_round_trips(byte number, byte content, byte water, byte alcohol, byte aim)
    {
        double index = 0.5 + (aim / 200.0);
        UrethaneIndex mix = Mix(100, 20 + number, 10, 5 + (content % 40)) with
        {
            Water = Mass.FromGrams(water / 1000.0),
            AlcoholHydroxyl = AmountOfSubstance.FromMoles(alcohol / 1e4),
        };
        UrethaneIndex made = mix with { Isocyanate = mix.IsocyanateFor(index) };
        Numbers.Close(index, made.IndexAfterReducer, 1e-11);
        Numbers.CanBeWritten(made.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand from the generic cans: 21.875 g at 16.5 % against 100 g of hydroxyl number 46 is 1.0476; reducer of 0.05 % water in 10 % takes a little of it")]
    public void Index_of_a_product()
    {
        UrethaneIndex? mix = UrethaneIndex.Of(GenericCatalogue.AcrylicUrethaneTopcoat, Ratio.FromPercent(10));
        Assert.NotNull(mix);
        Numbers.Near(21.875 * 0.165 / 42.02 / (100 * 46 / 56100.0), mix!.Index, 1e-12);
        double water = 0.1 * 0.88 * 0.0005 * 2 / 18.015;
        double hydroxyl = 0.8 * 1.20 * 46 / 56100;
        Numbers.Close(water / hydroxyl, mix.Index - mix.IndexAfterReducer, 1e-9);
        Assert.Null(UrethaneIndex.Of(GenericCatalogue.EpoxyPrimer, Ratio.Zero));
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 100 mL of hardener to 400 mL is the stated ratio, 110 mL is 10 % too much, 95 mL 5 % short; the index moves alike")]
    public void Off_ratio_is_compared_with_the_data_sheet()
    {
        CoatingProduct topcoat = GenericCatalogue.AcrylicUrethaneTopcoat;
        OffRatio much = Poured(topcoat, 400, 110);
        Numbers.Near(10, much.Deviation.Percent, 1e-9);
        Assert.Equal(ComparisonOutcome.Beyond, much.Comparison.Outcome);
        Assert.Contains("moisture", much.Meaning, StringComparison.Ordinal);
        Numbers.Close(1.1, much.PouredIndex!.Value / much.StatedIndex!.Value);
        Numbers.Close(UrethaneIndex.Of(topcoat, Ratio.Zero)!.Index, much.StatedIndex.Value);
        Numbers.CanBeWritten(much.Workings());
        OffRatio small = Poured(topcoat, 400, 96);
        Assert.Equal(ComparisonOutcome.Within, small.Comparison.Outcome);
        OffRatio unknown = Poured(topcoat with { RatioTolerance = null }, 400, 96);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, unknown.Comparison.Outcome);
        OffRatio epoxy = Poured(GenericCatalogue.EpoxyPrimer, 200, 90);
        Assert.Contains("epoxide", epoxy.Meaning, StringComparison.Ordinal);
        Numbers.Near(0.9, epoxy.StatedIndex!.Value, 1e-12);
        Assert.All(much.Cautions, caution => Assert.DoesNotContain(" safe ", caution.Sentence, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    [Evidence(Basis.Contract, "figures that cannot be are refused, blends of nothing too")]
    public void Refuses_what_cannot_be()
    {
        Numbers.Refuses("epoxideEquivalent", () => _ = new EpoxyAmine(Grams(1), Grams(43)));
        Numbers.Refuses("isocyanateContent", () => EquivalentWeights.OfIsocyanate(Ratio.FromPercent(61)));
        Numbers.Refuses("hydroxylNumber", () => EquivalentWeights.OfHydroxyl(0));
        Numbers.Refuses("acidNumber", () => EquivalentWeights.OfAcid(0));
        Numbers.Refuses("acidNumber", () => EquivalentWeights.OfAcid(2001));
        Numbers.Refuses("equivalentWeight", () => EquivalentWeights.AcidNumberOf(Grams(28)));
        Numbers.Refuses("equivalentWeight", () => EquivalentWeights.HydroxylNumberOf(Grams(20001)));
        Numbers.Refuses("equivalentWeight", () => EquivalentWeights.IsocyanateContentOf(Grams(70)));
        Numbers.Refuses("activeSites", () => EquivalentWeights.OfMolecule(Grams(100), 0));
        Numbers.Refuses("HydroxylNumber", () => Mix(100, double.NaN, 25, 16.5));
        Numbers.Refuses("index", () => Mix(100, 60, 25, 16.5).IsocyanateFor(0));
        Numbers.Refuses("mass", () => _ = new ReactivePart("nothing", Mass.Zero, null));
        Assert.Throws<ArgumentException>(() => new ReactiveBlend([new("filler", Mass.FromGrams(10), null)]));
        Assert.Throws<ArgumentException>(() => new OffRatio(
            GenericCatalogue.EpoxyPrimer with { Parts = [GenericCatalogue.EpoxyPrimer.Parts[0]] }, [new("epoxy-primer-base", Volume.FromLiters(1))]));
        Assert.Throws<ArgumentException>(() => new OffRatio(GenericCatalogue.EpoxyPrimer, [new("epoxy-primer-base", Volume.FromLiters(1))]));
        Assert.Throws<ArgumentException>(() => Poured(GenericCatalogue.EpoxyPrimer, 1, 1, "isocyanate-hardener"));
        Assert.Equal(Filled(), Filled());
    }

    private static OffRatio Poured(CoatingProduct product, double a, double b, string? hardener = null) => new(
        product,
        [
            new(product.Parts[0].Component.Id, Volume.FromMilliliters(a)),
            new(hardener ?? product.Parts[1].Component.Id, Volume.FromMilliliters(b)),
        ]);

    private static ReactiveBlend Filled() => new(
    [
        new("liquid resin", Mass.FromGrams(80), Grams(189)),
        new("diluent", Mass.FromGrams(10), Grams(183)),
        new("filler", Mass.FromGrams(10), null),
    ]);

    private static UrethaneIndex Mix(double resin, double number, double isocyanate, double percent) => new()
    {
        Resin = Mass.FromGrams(resin),
        HydroxylNumber = number,
        Isocyanate = Mass.FromGrams(isocyanate),
        IsocyanateContent = Ratio.FromPercent(percent),
    };
}

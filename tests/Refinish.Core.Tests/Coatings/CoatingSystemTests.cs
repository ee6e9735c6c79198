using System;
using System.Linq;
using Refinish.Coatings;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Coatings;

public class CoatingSystemTests
{
    private static readonly SystemStep Clean = SystemStep.Preparation(SystemStepKind.Clean, "clean", [], Source.Invented("for this test"));
    private static readonly SystemStep Primer = SystemStep.Coat(new CoatingLayer(GenericCatalogue.EpoxyPrimer, Length.FromMicrometers(30), 1));
    private static readonly SystemStep Topcoat = SystemStep.Coat(new CoatingLayer(GenericCatalogue.AcrylicUrethaneTopcoat, Length.FromMicrometers(30), 2));
    private static readonly SystemStep Clear = SystemStep.Coat(new CoatingLayer(GenericCatalogue.AcrylicUrethaneClear, Length.FromMicrometers(30), 1));
    private static readonly SystemStep Beads = SystemStep.Broadcast(GenericCatalogue.PolymerBeads, AreaDensity.FromGramsPerSquareMeter(20));

    [Fact]
    [Evidence(Basis.Contract, "the generic systems suit the materials they are for, and say why they do not suit others")]
    public void Generic_systems_suit_their_materials()
    {
        Assert.Empty(GenericCatalogue.SlipResistantTub.ObjectionsFor(FixtureMaterial.EnamelledCastIron));
        Assert.Empty(GenericCatalogue.ClearedPlastic.ObjectionsFor(FixtureMaterial.Acrylic));
        Assert.Contains("etch the glaze is not stated for acrylic sheet.", GenericCatalogue.SlipResistantTub.ObjectionsFor(FixtureMaterial.Acrylic));
        Assert.Contains(
            "No adhesion promoter of this system is meant for acrylic sheet.",
            GenericCatalogue.SlipResistantTub.ObjectionsFor(FixtureMaterial.Acrylic));
        Numbers.Close(120, GenericCatalogue.SlipResistantTub.TotalDryFilm.Micrometers);
        Assert.Equal(ComparisonOutcome.Within, GenericCatalogue.SlipResistantTub.TotalFilm.Outcome);
        Assert.Equal([Hazard.Acid, Hazard.Slip], GenericCatalogue.SlipResistantTub.Cautions.Select(caution => caution.Hazard));
        Assert.Equal([Hazard.Dust], GenericCatalogue.ClearedPlastic.Cautions.Select(caution => caution.Hazard));
        CoatingSystem tub = GenericCatalogue.SlipResistantTub;
        Assert.Equal(3, tub.Layers.Count);
        Assert.Equal([GenericCatalogue.SilanePromoter], tub.Promoters);
        Assert.Empty(tub.ObjectionsFor(FixtureMaterial.VitreousChina));
    }

    [Fact]
    [Evidence(Basis.Contract, "trade order: clean, etch or abrade, rinse, fill and sand, promoter, primer, finish, clear; each step out of it is named")]
    public void Steps_come_in_the_order_of_the_trade()
    {
        SystemStep etch = Prepare(SystemStepKind.Etch, "etch");
        SystemStep rinse = Prepare(SystemStepKind.RinseAndDry, "rinse");
        SystemStep fill = Prepare(SystemStepKind.Filler, "fill");
        SystemStep wipe = SystemStep.Wipe(GenericCatalogue.SilanePromoter);
        SystemStep[] right = [Clean, etch, rinse, fill, wipe, Primer, Topcoat, Clear];
        Assert.Empty(Objections(right));
        for (int i = 1; i + 1 < right.Length; i++)
        {
            SystemStep[] swapped = [.. right];
            (swapped[i], swapped[i + 1]) = (swapped[i + 1], swapped[i]);
            Assert.Contains(swapped[i + 1].Name + " comes after " + swapped[i].Name + ", which goes on later.", Objections(swapped));
        }

        SystemStep grainy = SystemStep.CoatWithGrains(Clear.Layer!, GenericCatalogue.PolymerBeads);
        Assert.Contains(
            "two-part acrylic urethane topcoat comes after two-part acrylic urethane clear with polymer beads, which goes on later.",
            Objections(Clean, Primer, Topcoat, grainy, Topcoat));
    }

    [Fact]
    [Evidence(Basis.Contract, "on a kept old coat no promoter is asked for, the first product has to be stated for it; steps for glass or plastic only are objected to")]
    public void A_kept_old_coat_is_primed_without_a_promoter()
    {
        FixtureMaterial Old = FixtureMaterial.OldCoating;
        Assert.Null(GenericCatalogue.EpoxyUrethaneSystem.PromoterFor(Old));
        Assert.Empty(GenericCatalogue.EpoxyUrethaneSystem.ObjectionsFor(Old));
        Assert.Empty(GenericCatalogue.ClearedPlastic.ObjectionsFor(Old));
        Assert.Equal(
            ["etch the glaze is not stated for an old coating that is kept."],
            GenericCatalogue.SlipResistantTub.ObjectionsFor(Old));
        CoatingSystem bare = new("bare", "bare", [Topcoat], null, Source.Invented("for this test"));
        Assert.Equal(["two-part acrylic urethane topcoat is not stated for an old coating that is kept."], bare.ObjectionsFor(Old));
    }

    [Fact]
    [Evidence(Basis.Contract, "a system without preparation leaves it to the survey; one that lists some starts with cleaning")]
    public void Preparation_is_listed_whole_or_not_at_all()
    {
        Assert.Empty(Objections(Primer, Topcoat));
        Assert.Contains("The first step is not cleaning: abrade.", Objections(Prepare(SystemStepKind.Abrade, "abrade"), Primer, Topcoat));
    }

    [Fact]
    [Evidence(Basis.Contract, "systems are joined by identity: one identity stands for one product and one promoter")]
    public void One_identity_is_one_product()
    {
        CoatingProduct other = GenericCatalogue.AcrylicUrethaneTopcoat with { Name = "another", GoesOver = [] };
        SystemStep[] twins = [Primer, Topcoat, SystemStep.Coat(new CoatingLayer(other, Length.FromMicrometers(30), 1))];
        Assert.Throws<ArgumentException>(() => new CoatingSystem("twins", "twins", twins, null, Source.Invented("x")));
        AdhesionPromoter silane = GenericCatalogue.SilanePromoter;
        SystemStep[] wipes = [SystemStep.Wipe(silane), SystemStep.Wipe(silane with { Name = "another" }), Primer];
        Assert.Throws<ArgumentException>(() => new CoatingSystem("twins", "twins", wipes, null, Source.Invented("x")));
        Assert.Throws<ArgumentException>(() => new CoatingSystem("a/b", "slash", [Primer], null, Source.Invented("x")));
        Assert.Equal("slip-resistant tub floor", GenericCatalogue.SlipResistantTub.ToString());
    }

    [Fact]
    [Evidence(Basis.Contract, "order, what goes over what, grains without a coat, total film: each objection names its step")]
    public void Each_objection_names_its_step()
    {
        Assert.Contains("clean comes after two-part epoxy primer, which goes on later.", Objections(Primer, Clean, Topcoat));
        Assert.Contains("The first step is not cleaning: two-part epoxy primer.", Objections(Primer, Clean, Topcoat));
        Assert.Contains("two-part acrylic urethane clear is not stated to go over two-part epoxy primer.", Objections(Clean, Primer, Clear));
        Assert.Contains("polymer beads is not locked in: no coat follows it.", Objections(Clean, Primer, Topcoat, Beads));
        Assert.Contains("polymer beads has no wet coat to fall into: it follows clean.", Objections(Clean, Beads, Primer));
        Assert.Contains("two-part acrylic urethane topcoat is not stated for enamelled cast iron.", Objections(Clean, Topcoat));
        Assert.Empty(Objections(Clean, Primer, Topcoat, Beads, Topcoat, Clear));
        CoatingSystem thick = new("thick", "thick", [Clean, Primer, Topcoat], Length.FromMicrometers(80), Source.Invented("for this test"));
        Assert.Contains(
            thick.ObjectionsFor(FixtureMaterial.EnamelledCastIron),
            objection => objection.StartsWith("dry film of the whole system: 90 µm; limit at most 80 µm", StringComparison.Ordinal));
        CoatingSystem unknown = new("thick", "thick", [Clean, Primer, Topcoat], null, Source.Invented("for this test"));
        Assert.Equal(ComparisonOutcome.CannotBeJudged, unknown.TotalFilm.Outcome);
        SystemStep twice = SystemStep.Coat(new CoatingLayer(GenericCatalogue.AcrylicUrethaneClear, Length.FromMicrometers(30), 2));
        Assert.Contains("two-part acrylic urethane clear is not stated to go over itself, yet it has 2 coats.", Objections(Clean, Primer, Topcoat, twice));
        Assert.Equal(SystemStepKind.SlipResistantAdditive, SystemStep.CoatWithGrains(Topcoat.Layer!, GenericCatalogue.PolymerBeads).Kind);
    }

    [Fact]
    [Evidence(Basis.Contract, "a caution about floors names method and criterion and promises nothing")]
    public void The_slip_caution_names_method_and_criterion()
    {
        Caution slip = GenericCatalogue.SlipResistantTub.Cautions.Single(caution => caution.Hazard == Hazard.Slip);
        Assert.DoesNotContain("non-slip", slip.Sentence, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("slip-proof", slip.Sentence, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("method and the criterion", slip.Sentence, StringComparison.Ordinal);
        Assert.Contains("A326.3", slip.Source.Document, StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "steps that lack what their sort needs cannot be made")]
    public void Refuses_steps_that_cannot_be()
    {
        Assert.Throws<ArgumentException>(() => SystemStep.Preparation(SystemStepKind.Topcoat, "paint", [], Source.Invented("x")));
        Numbers.Refuses("rate", () => SystemStep.Broadcast(GenericCatalogue.PolymerBeads, AreaDensity.Zero));
        Numbers.Refuses("diameter", () => _ = GrainsOf(Length.FromMicrometers(1)));
        Assert.Throws<ArgumentException>(() => new CoatingSystem("id", "nothing", [Clean], null, Source.Invented("x")));
        Numbers.Refuses(
            "maximumTotalDryFilm",
            () => _ = new CoatingSystem("id", "flat", [Clean, Primer], Length.Zero, Source.Invented("x")));
    }

    [Fact]
    [Evidence(Basis.Contract, "a wipe that is too old, too wet or too late is compared with its own data; an unknown life is not judged")]
    public void The_age_of_a_wipe_is_compared()
    {
        AdhesionPromoter silane = GenericCatalogue.SilanePromoter;
        Assert.Equal(ComparisonOutcome.Within, silane.CompareAge(TimeSpan.FromHours(20)).Outcome);
        Assert.Equal(ComparisonOutcome.Beyond, silane.CompareAge(TimeSpan.FromHours(25)).Outcome);
        Assert.Equal(ComparisonOutcome.CannotBeJudged, GenericCatalogue.PlasticPromoter.CompareAge(TimeSpan.FromHours(1)).Outcome);
        Assert.Equal([ComparisonOutcome.Beyond, ComparisonOutcome.Within], silane.CompareWindow(TimeSpan.FromMinutes(5)).Select(one => one.Outcome));
        Assert.Equal([ComparisonOutcome.Within, ComparisonOutcome.Within], silane.CompareWindow(TimeSpan.FromMinutes(60)).Select(one => one.Outcome));
        Assert.Equal([ComparisonOutcome.Within, ComparisonOutcome.Beyond], silane.CompareWindow(TimeSpan.FromMinutes(121)).Select(one => one.Outcome));
        Numbers.Refuses("sinceMixing", () => silane.CompareAge(TimeSpan.FromHours(-1)));
    }

    private static SlipAdditive GrainsOf(Length diameter) =>
        new("dust", "dust", diameter, Density.FromGramsPerMilliliter(1), Source.Invented("for this test"));

    private static SystemStep Prepare(SystemStepKind kind, string name) =>
        SystemStep.Preparation(kind, name, [], Source.Invented("for this test"));

    private static System.Collections.Generic.IReadOnlyList<string> Objections(params SystemStep[] steps) =>
        new CoatingSystem("id", "test", steps, Length.FromMicrometers(250), Source.Invented("for this test"))
            .ObjectionsFor(FixtureMaterial.EnamelledCastIron);
}

using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Inspection;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>Materials of a caller's own through the whole plan. They are invented.</summary>
public class OwnMaterialTests
{
    private static readonly FixtureMaterial Panel = new()
    {
        Id = "pressed-panel", Name = "pressed resin panel", Surface = MaterialSurface.FilledPolymer,
        Source = Source.Invented("for these tests"),
    };

    private static Job With(FixtureMaterial material, CoatingSystem? system = null)
    {
        Job job = InventedJobs.OccupiedHouse();
        FixtureJob tub = job.Fixtures[0];
        return job with { Fixtures = [tub with { System = system, Survey = new Survey { Material = material, Defects = [], YearBuilt = 1995 } }] };
    }

    [Fact]
    [Evidence(Basis.Contract, "what no product names has no system: the plan says which product and promoter, and does not guess")]
    public void A_material_that_nothing_names_is_objected_to()
    {
        JobPlan plan = With(Panel).Plan();
        Assert.False(plan.Procedures[0].IsPlanned);
        Assert.Contains("two-part epoxy primer is not stated for pressed resin panel.", plan.Procedures[0].SystemObjections);
        Assert.Contains("No adhesion promoter of this system is meant for pressed resin panel.", plan.Procedures[0].SystemObjections);
        Assert.NotEmpty(plan.Objections);
    }

    [Fact]
    [Evidence(Basis.Contract, "a material that bonds like a listed one is planned under the condition of a test spot, abraded and not etched, with no doubt about what is made of it")]
    public void A_material_bonds_like_a_listed_one()
    {
        FixtureMaterial panel = Panel with { BondsLike = FixtureMaterial.SolidSurface };
        JobPlan plan = With(panel).Plan();
        Procedure procedure = Assert.Single(plan.Planned);
        Assert.Equal(GenericCatalogue.PlasticPromoter.Id, procedure.Promoter!.Id);
        PlanCondition condition = Assert.Single(plan.Conditions, one => one.Id == "tub/bonds-like");
        Assert.Equal(panel.Source, condition.Source);
        Assert.Contains("pressed resin panel is taken to bond like solid surface", condition.Sentence(DisplayUnits.Si), StringComparison.Ordinal);
        Refinish.Jobs.Operation key = Assert.Single(plan.Operations, operation => operation.Kind == WorkKind.Key);
        Assert.Contains("no acid", key.Instruction, StringComparison.Ordinal);
        Assert.DoesNotContain(key.Cautions, caution => caution.Code == "etchant-burns");
        Assert.DoesNotContain(plan.Doubts, doubt => doubt.Kind == DoubtKind.Material);
        Assert.StartsWith("pressed resin panel: ", procedure.Verdict.ToText(DisplayUnits.Si), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "bonding like enamel is no word about acid: an etch is asked for by name, and one on a material that may not be etched is objected to")]
    public void Acid_stays_off_what_nobody_said_it_may_touch()
    {
        FixtureMaterial soft = Panel with { BondsLike = FixtureMaterial.VitreousChina };
        Assert.Contains("etch the glaze is not stated for pressed resin panel.", GenericCatalogue.SlipResistantTub.ObjectionsFor(soft));
        SystemStep etch = SystemStep.Preparation(SystemStepKind.Etch, "acid wash", [Panel], Source.Invented("for this test"));
        SystemStep clean = SystemStep.Preparation(SystemStepKind.Clean, "clean", [], Source.Invented("for this test"));
        CoatingSystem system = new("acid", "acid", [clean, etch, .. GenericCatalogue.EpoxyUrethaneSystem.Steps], null, Source.Invented("for this test"));
        Assert.Contains("acid wash is an etch, and pressed resin panel may not be etched.", system.ObjectionsFor(Panel));
        Assert.DoesNotContain("acid wash is an etch, and pressed resin panel may not be etched.", system.ObjectionsFor(Panel with { MayBeEtched = true }));
    }

    [Fact]
    [Evidence(Basis.Contract, "data of the material decide: nothing bonds, metal that rusts, sheet that flexes, joints, own way of keying, gauge")]
    public void Data_decide_and_not_the_name()
    {
        FixtureMaterial waxy = Panel with { BondsInTheField = false };
        Assert.Equal(["S-02"], new Verdict(new Survey { Material = waxy, Defects = [], YearBuilt = 1995 }).Reasons.Select(reason => reason.RuleCode));
        Defect[] rust = [new RustSpot(Length.FromMillimeters(10)), new GroutFailure(Length.FromMeters(1))];
        Survey odd = new() { Material = Panel, Defects = rust, YearBuilt = 1995, AsbestosTest = AsbestosTest.Negative };
        Assert.Equal(2, new Verdict(odd).Reasons.Count(reason => reason.RuleCode == "S-31"));
        FixtureMaterial joined = Panel with { Metal = MetalBelow.SteelSheet, HasJoints = true };
        Assert.DoesNotContain(new Verdict(odd with { Material = joined }).Reasons, reason => reason.RuleCode == "S-31");
        Assert.True(new GaugeFit(GaugeKind.Magnetic, joined).IsUsable);
        Assert.True(new GaugeFit(GaugeKind.EddyCurrent, Panel with { Metal = MetalBelow.NotMagnetic }).IsUsable);

        FixtureMaterial sheet = Panel with
        {
            BondsLike = FixtureMaterial.Acrylic, IsFlexibleSheet = true, CrazesInSolvent = true,
            Keying = new MaterialKeying("scuff with a fine pad", 400, 600),
        };
        Job job = With(sheet);
        Crack crack = new(Length.FromMillimeters(200), Length.FromMillimeters(1), Length.FromMillimeters(2), movesUnderLoad: false);
        JobPlan plan = (job with { Fixtures = [job.Fixtures[0] with { Survey = job.Fixtures[0].Survey with { Defects = [crack] } }] }).Plan();
        Assert.Contains(plan.Operations, operation => operation.Kind == WorkKind.ReinforceCrack);
        FixtureInstruction scuffed = Assert.Single(plan.Operations.Single(operation => operation.Kind == WorkKind.Key).ByFixture);
        Assert.Equal((400, 600), (scuffed.CoarsestGrit, scuffed.FinestGrit));
        Assert.Contains(plan.Operations, operation => operation.Instruction.Contains("solvents craze it", StringComparison.Ordinal));
    }

    [Fact]
    [Evidence(Basis.Contract, "lists are searched by identifier: a ready material with data of one's own is still named by the products; lists of the ready are distinct")]
    public void A_ready_material_may_be_made_more_exact()
    {
        FixtureMaterial acrylic = FixtureMaterial.Acrylic with { Body = null };
        Assert.Empty(GenericCatalogue.EpoxyUrethaneSystem.ObjectionsFor(acrylic));
        Assert.NotEqual(FixtureMaterial.Acrylic, acrylic);
        Assert.Equal(FixtureMaterial.Acrylic, acrylic with { Body = FixtureMaterial.Acrylic.Body });
        Assert.Equal(FixtureMaterial.All.Count, FixtureMaterial.All.Select(material => material.Id).Distinct().Count());
        Assert.All(FixtureMaterial.All, material => Assert.Same(material, FixtureMaterial.TryFind(material.Id)));
        Assert.Null(FixtureMaterial.TryFind("pressed-panel"));
    }

    [Fact]
    [Evidence(Basis.Contract, "what contradicts itself or says nothing is refused")]
    public void Refuses_what_cannot_be()
    {
        Assert.Throws<ArgumentException>(() => Panel with { Id = "a/b" });
        Assert.Throws<ArgumentException>(() => Panel with { Name = " " });
        Assert.Throws<ArgumentException>(() => Panel with { BondsLike = FixtureMaterial.Unknown });
        Assert.Throws<ArgumentException>(() => Panel with { BondsLike = FixtureMaterial.OldCoating });
        Assert.Throws<ArgumentException>(() => Panel with { BondsLike = Panel with { BondsLike = FixtureMaterial.Acrylic } });
        Numbers.Refuses("Surface", () => _ = Panel with { Surface = (MaterialSurface)99 });
        Numbers.Refuses("Metal", () => _ = Panel with { Metal = (MetalBelow)9 });
        Numbers.Refuses("coarsestGrit", () => _ = new MaterialKeying("x", 8, 100));
        Numbers.Refuses("finestGrit", () => _ = new MaterialKeying("x", 220, 120));
    }
}

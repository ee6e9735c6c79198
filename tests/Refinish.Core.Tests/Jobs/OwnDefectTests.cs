using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>Defects of a caller's own, and liners, through verdict, procedure, hours, materials, schedule and price. All of it is invented.</summary>
public class OwnDefectTests
{
    private static readonly Source Invented = Source.Invented("for these tests");

    private static readonly OwnDefect Inlay = new()
    {
        Code = "loose-inlay",
        Name = "loose inlay",
        Effect = Suitability.SuitableWithConditions,
        Remedy = "bed it again",
        RepeatTest = "tap test",
        Source = Invented,
        Count = 3,
        Hollow = new Hollow(Volume.FromMilliliters(4), Length.FromMillimeters(3)),
    };

    private static readonly DefectWork Bedding = new()
    {
        Kind = WorkKind.Fill, Instruction = "bed the inlay in epoxy", Hours = new ThreePoint(0.2, 0.3, 0.5), RaisesDust = true, Source = Invented,
        Materials = [new MaterialNeed("bedding", "bedding epoxy", Volume.FromMilliliters(5))],
        Vapours = [new Evaporation { Name = "inlay wipe", Mass = Mass.FromGrams(6), Solvents = [new SolventShare(Solvents.Isopropanol, Ratio.FromPercent(100))] }],
    };

    private static readonly Caution Sharp = new("sharp-inlay", Hazard.SkinAndEyes, "Broken inlay cuts.", "the shop (invented)", Invented, Audience.Crew);

    private static Job With(params Defect[] defects)
    {
        Job job = InventedJobs.OccupiedHouse();
        FixtureJob tub = job.Fixtures[0];
        return job with { Fixtures = [tub with { Options = [], Survey = tub.Survey with { YearBuilt = 1995, Defects = defects } }] };
    }

    private static Job Priced(Job job, string item) => job with
    {
        Shop = job.Shop with
        {
            Prices = job.Shop.Prices with
            {
                Materials = [.. job.Shop.Prices.Materials, MaterialPrice.Loose(item, LineUnit.Millilitre, 0.5m)],
            },
        },
    };

    [Fact]
    [Evidence(Basis.Independent, "by hand for three: 3 · 0.3 = 0.9 h most likely; 3 · 5 mL = 15 mL of bedding; 3 · 4 mL · 1.25 / (1 − s) / 0.85 of filler with the shrinkage s of the shop's filler")]
    public void It_goes_through_hours_materials_air_and_price()
    {
        OwnDefect inlay = Inlay with { Work = Bedding, Cautions = [Sharp] };
        JobPlan plan = Priced(With(inlay), "bedding").Plan();
        Assert.Empty(plan.Objections);
        Refinish.Jobs.Operation mend = Assert.Single(plan.Operations, operation => operation.Id == "tub/defect/loose-inlay");
        Numbers.Close(0.9, Assert.Single(mend.Labour).Hours.Mode, 1e-9);
        Numbers.Close(15, Assert.Single(mend.Materials, need => need.Item == "bedding").Amount.In(LineUnit.Millilitre), 1e-9);
        FillerProduct filler = plan.Job.Shop.Filler.Product;
        Numbers.Close(12 * 1.25 / (1 - filler.Shrinkage.DecimalFractions) / 0.85,
            Assert.Single(mend.Materials, need => need.Item == filler.Id).Amount.In(LineUnit.Millilitre), 1e-9);
        Assert.Contains(Sharp, mend.Cautions);
        Assert.Contains(Sharp, plan.Procedures[0].Verdict.Cautions);
        Assert.Equal(6, mend.Vapours.Single().Mass.Grams, 9);
        Assert.Contains(plan.Conditions, condition => condition.Id == "tub/loose-inlay");
        Assert.Contains(plan.Costs!.Request.Labour.Lines, line => line.Task.Standard.Code == "defect-loose-inlay");
        Assert.True(plan.Costs.Price.Total > Priced(With(), "bedding").Plan().Costs!.Price.Total);
        Assert.Empty(plan.Costs.Price.Gaps);
        Assert.Contains("3 × loose inlay, each a hollow of 4 mL, 3 mm deep", plan.Procedures[0].Verdict.ToText(DisplayUnits.Si), StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "it stands in the place of its kind of work, and its filler hardens before it is sanded")]
    public void Its_filler_hardens()
    {
        JobPlan plan = Priced(With(Inlay with { Work = Bedding }), "bedding").Plan();
        List<string> ids = [.. plan.Operations.Select(operation => operation.Id)];
        int at = ids.IndexOf("tub/defect/loose-inlay");
        Assert.True(ids.IndexOf("bath/key") < at);
        Assert.True(at < ids.IndexOf("bath/sand-filler"));
        ScheduledOperation mended = plan.Schedule!.Operations.Single(operation => operation.Operation.Id == "tub/defect/loose-inlay");
        ScheduledOperation sanded = plan.Schedule.Operations.Single(operation => operation.Operation.Id == "bath/sand-filler");
        Assert.True(sanded.Start - mended.End >= TimeSpan.FromMinutes(30), (sanded.Start - mended.End).ToString());
    }

    [Fact]
    [Evidence(Basis.Contract, "hours given nowhere are an objection and no price, never zero; a standard of the shop for the own kind, or one that the work names, gives them")]
    public void Hours_come_from_the_shop_or_are_missing()
    {
        DefectWork silent = Bedding with { Hours = null };
        JobPlan plan = Priced(With(Inlay with { Work = silent }), "bedding").Plan();
        Assert.Contains(plan.Objections, objection => objection.Kind == ObjectionKind.Labour && objection.Id.Contains("loose-inlay"));
        Assert.Contains("There is no labour standard for a loose inlay", string.Join(" ", plan.Procedures[0].LabourGaps), StringComparison.Ordinal);

        LabourStandard own = new()
        {
            Code = "X-1", Description = "bed an inlay", PerUnit = ThreePoint.Exactly(0.25), Repairs = DefectKind.Own("loose-inlay"), Source = Invented,
        };
        Shop shop = Shop.Generic with { Labour = LabourStandards.GenericWith(own) };
        FixtureJob tub = With(Inlay with { Work = silent }).Fixtures[0];
        Numbers.Close(0.75, Mend(new Procedure(tub, shop)).Labour.Single().Hours.Mode, 1e-9);
        FixtureJob named = With(Inlay with { Work = silent with { LabourCode = "L-39" } }).Fixtures[0];
        Numbers.Close(0.75, Mend(new Procedure(named, shop)).Labour.Single().Hours.Mode, 1e-9);
        FixtureJob unknown = With(Inlay with { Work = silent with { LabourCode = "X-9" } }).Fixtures[0];
        Assert.Contains("no labour standard X-9", Assert.Single(new Procedure(unknown, shop).LabourGaps).ToString(), StringComparison.Ordinal);

        static Refinish.Jobs.Operation Mend(Procedure procedure) => procedure.Operations.Single(operation => operation.Id == "tub/defect/loose-inlay");
    }

    [Fact]
    [Evidence(Basis.Contract, "a hollow without work of its own is filled among the repairs, by the shop's standard; its material by the shop's list; without hollow and work it has its effect alone")]
    public void A_hollow_alone_is_filled_among_the_repairs()
    {
        LabourStandard own = new()
        {
            Code = "X-1", Description = "fill an inlay", PerUnit = ThreePoint.Exactly(0.25), Repairs = DefectKind.Own("loose-inlay"), Source = Invented,
        };
        DefectMaterial dye = new()
        {
            Repairs = DefectKind.Own("loose-inlay"), Item = "dye", Name = "dye", Each = Volume.FromMilliliters(2), Source = Invented,
        };
        Shop shop = Shop.Generic with { Labour = LabourStandards.GenericWith(own), DefectMaterials = [.. DefectMaterials.Generic, dye] };
        Procedure procedure = new(With(Inlay).Fixtures[0], shop);
        Refinish.Jobs.Operation fill = Assert.Single(procedure.Operations, operation => operation.Kind == WorkKind.Fill);
        Assert.Equal("tub/fill", fill.Id);
        Numbers.Close(0.75, fill.Labour.Single(task => task.Standard.Code == "X-1").Hours.Mode, 1e-9);
        Numbers.Close(6, fill.Materials.Single(need => need.Item == "dye").Amount.In(LineUnit.Millilitre), 1e-9);
        Assert.Contains(fill.Materials, need => need.Item == shop.Filler.Product.Id);
        Assert.NotEmpty(new Procedure(With(Inlay).Fixtures[0], Shop.Generic).LabourGaps);

        OwnDefect fatal = new() { Code = "sunk-frame", Name = "sunk frame", Effect = Suitability.NotSuitable, Remedy = "another trade", RepeatTest = "level", Source = Invented };
        Procedure other = new(With(fatal).Fixtures[0], Shop.Generic);
        Assert.False(other.Verdict.MayBePlanned);
        Assert.Equal("sunk-frame", other.Verdict.Reasons[0].RuleCode);
        Assert.Empty(other.LabourGaps);
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand for 2.4 m²: 0.5 + 2.4 · 0.8 = 2.42 h most likely; the liner is off before anything else is done to the fixture")]
    public void A_liner_comes_off_first()
    {
        Procedure procedure = new(With(new Liner(Area.FromSquareMeters(2.4), LinerState.Loose, comesOff: true)).Fixtures[0], Shop.Generic);
        Refinish.Jobs.Operation off = Assert.Single(procedure.Operations, operation => operation.Id == "tub/defect/Liner");
        Numbers.Close(2.42, Assert.Single(off.Labour).Hours.Mode, 1e-9);
        Assert.Equal(WorkKind.Clear, off.Kind);
        Assert.Equal(1, procedure.Operations.ToList().IndexOf(off));
        Assert.True(off.RaisesDust);
        Assert.True(procedure.Verdict.MayBePlanned);
        Procedure wet = new(With(new Liner(Area.FromSquareMeters(2.4), LinerState.WaterBehind, comesOff: true)).Fixtures[0], Shop.Generic);
        Assert.False(wet.Verdict.MayBePlanned);
        Assert.Contains(wet.Cautions, caution => caution.Code == Cautions.WaterBehind.Code);
        Procedure stays = new(With(new Liner(Area.FromSquareMeters(2.4), LinerState.Loose, comesOff: false)).Fixtures[0], Shop.Generic);
        Assert.False(stays.Verdict.MayBePlanned);
        Assert.DoesNotContain(stays.Operations, operation => operation.Id.Contains("/defect/"));
        Assert.Equal(0, LabourStandards.UnitsOf(new Liner(Area.FromSquareMeters(2.4), LinerState.Loose, comesOff: false)));
    }

    [Fact]
    [Evidence(Basis.Contract, "rust without any other repair takes its filler too")]
    public void Rust_alone_takes_its_filler()
    {
        Procedure procedure = new(With(new RustSpot(Length.FromMillimeters(20))).Fixtures[0], Shop.Generic);
        Refinish.Jobs.Operation rust = Assert.Single(procedure.Operations, operation => operation.Kind == WorkKind.GrindRust);
        Assert.Equal(procedure.Filler.Volume, rust.Materials.Single(need => need.Item == Shop.Generic.Filler.Product.Id).Amount.Volume);
        Assert.DoesNotContain(procedure.Operations, operation => operation.Kind == WorkKind.Fill);
    }

    [Fact]
    [Evidence(Basis.Contract, "a struck rule that protects people is said in every plan of the shop")]
    public void A_struck_rule_is_said_in_the_plan()
    {
        Job job = With();
        JobPlan plan = (job with { Shop = job.Shop with { Survey = new SurveyPolicy { RuleChanges = [RuleChange.Strike("S-33", Invented)] } } }).Plan();
        PlanCondition said = Assert.Single(plan.Conditions, condition => condition.Id == "occupied/rule-S-33");
        Assert.Equal(Invented, said.Source);
        Assert.Equal(Audience.Crew | Audience.Customer | Audience.Occupant, said.Concerns);
    }

    [Fact]
    [Evidence(Basis.Contract, "a hollow beyond its fixture is doubted: 30 L/m³ deep 3 mm is wider than the tub")]
    public void A_hollow_larger_than_its_fixture_is_doubted()
    {
        OwnDefect vast = Inlay with { Count = 1, Hollow = new Hollow(Volume.FromLiters(10), Length.FromMillimeters(1)) };
        Assert.Contains(With(vast).Plan().Doubts, doubt => doubt.Reading == "loose-inlay");
    }

    [Fact]
    [Evidence(Basis.Contract, "what contradicts itself or would be ignored is refused by name")]
    public void Refuses_what_cannot_be()
    {
        Assert.Throws<ArgumentException>(() => new OwnDefect { Code = "chip", Name = "x", Effect = Suitability.Suitable, Remedy = "x", RepeatTest = "x", Source = Invented });
        Assert.Throws<ArgumentException>(() => new OwnDefect { Code = "S-04", Name = "x", Effect = Suitability.Suitable, Remedy = "x", RepeatTest = "x", Source = Invented });
        Assert.Throws<ArgumentException>(() => new OwnDefect { Code = "x", Name = "x", Effect = Suitability.Suitable, Remedy = " ", RepeatTest = "x", Source = Invented });
        Numbers.Refuses("Effect", () => _ = new OwnDefect { Code = "x", Name = "x", Effect = (Suitability)7, Remedy = "x", RepeatTest = "x", Source = Invented });
        Numbers.Refuses("Count", () => _ = Inlay with { Count = 0 });
        Assert.Throws<ArgumentException>(() => Bedding with { LabourCode = "L-31" });
        Assert.Throws<ArgumentException>(() => Bedding with { Hours = null, LabourCode = "a/b" });
        Assert.Throws<ArgumentException>(() => Bedding with { Kind = WorkKind.Travel });
        Assert.Throws<ArgumentException>(() => Bedding with { Kind = WorkKind.Warm });
        Numbers.Refuses("Kind", () => _ = Bedding with { Kind = (WorkKind)99 });
        Assert.Throws<ArgumentException>(() => Inlay with { Work = Bedding with { Kind = WorkKind.Caulk } });
        Assert.Throws<ArgumentException>(() => With(Inlay, Inlay with { Work = Bedding }));
        DefectMaterial dye = new() { Repairs = DefectKind.Own("loose-inlay"), Item = "dye", Name = "dye", Source = Invented };
        Assert.Throws<ArgumentException>(() => Shop.Generic with { DefectMaterials = [dye with { Work = WorkKind.Fill }] });
        Assert.Throws<ArgumentException>(() => Shop.Generic with { DefectMaterials = [dye with { Coverage = SpreadingRate.FromSquareMetersPerLiter(5) }] });
        LabourStandard byArea = new()
        {
            Code = "X-1", Description = "x", PerSquareMeter = ThreePoint.Exactly(1), Repairs = DefectKind.Own("loose-inlay"), Source = Invented,
        };
        Assert.Throws<ArgumentException>(() => LabourStandards.GenericWith(byArea));
        Assert.Equal(Inlay with { Work = Bedding }, (Inlay with { Work = Bedding with { } }) with { });
    }
}

using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Fixtures;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

public class RepairTests
{
    private static readonly WorkKind[] Repairs =
        [WorkKind.GrindRust, WorkKind.SpotPrime, WorkKind.ReinforceCrack, WorkKind.Fill, WorkKind.SealCrazing, WorkKind.SandFiller];

    private static readonly Crack Crack = new(Length.FromMillimeters(400), Length.FromMillimeters(1.5), Length.FromMillimeters(2), movesUnderLoad: false);

    private static FixtureJob Panel(string id, string room, FixtureMaterial material, params Defect[] defects) => new()
    {
        Id = id, Room = room, Fixture = RandomJobs.Panel(1.5, 0.6), Survey = new Survey { Material = material, Defects = defects, YearBuilt = 1995 },
    };

    private static Procedure Of(FixtureMaterial material, params Defect[] defects) => new(Panel("pan", "bath", material, defects), Shop.Generic);

    [Theory]
    [InlineData("gelcoat")]
    [InlineData("acrylic")]
    [Evidence(Basis.Independent, "by hand for 0.4 m: 0.15 + 0.6 · 0.4 = 0.39 h to open and reinforce, 0.1 + 0.4 · 0.4 = 0.26 h to fill; "
        + "30 mL + 0.4 m · 0.1 m · 1.5 L/m² = 90 mL of resin; vee of 1/2 · 1.5 mm · 2 mm · 400 mm = 0.6 mL to fill before its losses")]
    public void A_crack_in_sheet_is_reinforced_before_it_is_filled(string material)
    {
        Procedure procedure = Of(FixtureMaterial.TryFind(material)!, Crack);
        Refinish.Jobs.Operation reinforce = Assert.Single(procedure.Operations, operation => operation.Kind == WorkKind.ReinforceCrack);
        Refinish.Jobs.Operation fill = Assert.Single(procedure.Operations, operation => operation.Kind == WorkKind.Fill);
        List<WorkKind> order = [.. procedure.Operations.Select(operation => operation.Kind)];
        Assert.True(order.IndexOf(WorkKind.Key) < order.IndexOf(WorkKind.ReinforceCrack));
        Assert.Equal(order.IndexOf(WorkKind.ReinforceCrack) + 1, order.IndexOf(WorkKind.Fill));
        Assert.Equal("pan/reinforce", reinforce.Id);
        Numbers.Close(0.39, Assert.Single(reinforce.Labour).Hours.Mode, 1e-9);
        Numbers.Close(0.26, Assert.Single(fill.Labour).Hours.Mode, 1e-9);
        MaterialNeed resin = Assert.Single(reinforce.Materials);
        Assert.Equal("laminating-resin", resin.Item);
        Numbers.Close(90, resin.Amount.In(LineUnit.Millilitre), 1e-9);
        Assert.Equal("epoxy-filler", Assert.Single(fill.Materials).Item);
        Assert.Contains(reinforce.Cautions, caution => caution.Hazard == Hazard.SkinAndEyes);
        Assert.True(reinforce.RaisesDust);
    }

    [Theory]
    [InlineData("enamelledCastIron")]
    [InlineData("vitreousChina")]
    [InlineData("ceramicTile")]
    [InlineData("culturedMarble")]
    [InlineData("solidSurface")]
    [Evidence(Basis.Contract, "a crack in something rigid is opened and filled, without fabric and without its hours")]
    public void A_crack_in_something_rigid_is_only_filled(string material)
    {
        Procedure procedure = Of(FixtureMaterial.TryFind(material)!, Crack);
        Assert.DoesNotContain(procedure.Operations, operation => operation.Kind == WorkKind.ReinforceCrack);
        Assert.Single(procedure.Operations, operation => operation.Kind == WorkKind.Fill);
        Assert.DoesNotContain(procedure.Operations.SelectMany(operation => operation.Materials), need => need.Item == "laminating-resin");
        Assert.Empty(procedure.LabourGaps);
    }

    [Fact]
    [Evidence(Basis.Contract, "the fabric hardens before the crack is filled, and resin and hours are in the price; a shop without a standard for it is told so")]
    public void Reinforcing_is_waited_for_and_priced()
    {
        Job job = InventedJobs.OccupiedHouse() with { Fixtures = [Panel("pan", "bath", FixtureMaterial.Gelcoat, Crack)] };
        JobPlan plan = job.Plan();
        Assert.Empty(plan.Objections);

        // Six hours at 25 °C or whatever the filler's sheet says, more on a surface of 20 °C.
        Assert.True(plan.Schedule!.TryFind("bath/fill")!.Start - plan.Schedule.TryFind("bath/reinforce")!.End >= job.Shop.Filler.Product.SandableAfter);
        Numbers.Close(90, Assert.Single(plan.Price!.Purchases, purchase => purchase.Item == "laminating-resin").Need.In(LineUnit.Millilitre), 1e-9);
        Assert.Contains(plan.Costs!.Request.Labour.Lines, line => line.Code == "L-46");
        Shop without = job.Shop with { Labour = [.. job.Shop.Labour.Where(standard => standard.Work != WorkKind.ReinforceCrack)] };
        Assert.Contains((job with { Shop = without }).Plan().Objections, objection => objection.Kind == ObjectionKind.Labour && objection.About == "pan");
    }

    [Fact]
    [Evidence(Basis.Contract, "a shop's own material for cracks is taken where they are filled, in any fixture")]
    public void Own_material_for_cracks_is_taken_where_they_are_filled()
    {
        DefectMaterial own = new() { Repairs = DefectKind.Crack, Item = "crack-wax", Name = "crack wax", Each = Volume.FromMilliliters(3), Source = Source.Invented("for this test") };
        Shop shop = Shop.Generic with { DefectMaterials = [own, .. Shop.Generic.DefectMaterials] };
        foreach (FixtureMaterial material in new[] { FixtureMaterial.Gelcoat, FixtureMaterial.EnamelledSteel })
        {
            Procedure procedure = new(Panel("pan", "bath", material, Crack), shop);
            Assert.Equal(WorkKind.Fill, Assert.Single(procedure.Operations, operation => operation.Materials.Any(need => need.Item == "crack-wax")).Kind);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "crazing is abraded and sealed under its own name, beside chips that are filled; alone it needs no set-up for filler")]
    public void Crazing_is_sealed_and_not_filled()
    {
        Procedure crazed = Of(FixtureMaterial.Acrylic, new Crazing(Ratio.FromPercent(10)));
        Refinish.Jobs.Operation seal = Assert.Single(crazed.Operations, operation => Repairs.Contains(operation.Kind));
        Assert.Equal((WorkKind.SealCrazing, "abrade and seal crazing"), (seal.Kind, seal.Name));
        Assert.Equal("sealing-primer", Assert.Single(seal.Materials).Item);
        Procedure both = Of(FixtureMaterial.Acrylic, new Crazing(Ratio.FromPercent(10)), new Chip(Length.FromMillimeters(20), Length.FromMillimeters(1)));
        Assert.Equal([WorkKind.Fill, WorkKind.SandFiller, WorkKind.SealCrazing], both.Operations.Select(operation => operation.Kind).Where(Repairs.Contains));
        Assert.Equal("fill repairs", both.Operations.Single(operation => operation.Kind == WorkKind.Fill).Name);
    }

    [Fact]
    [Evidence(Basis.Contract, "nothing to repair, no repair and no set-up for it; the repair stands in the room and on the fixture that has the damage")]
    public void Repairs_stand_where_the_damage_is()
    {
        Assert.DoesNotContain(Of(FixtureMaterial.EnamelledSteel).Operations, operation => Repairs.Contains(operation.Kind));
        Job job = InventedJobs.OccupiedHouse();
        job = job with
        {
            Premises = job.Premises with { Rooms = [InventedJobs.Bath("bath", 22, 20), InventedJobs.Bath("guest", 22, 20)] },
            Fixtures =
            [
                Panel("sound", "bath", FixtureMaterial.EnamelledSteel), Panel("silicone", "bath", FixtureMaterial.EnamelledSteel, new SiliconeResidue(Length.FromMeters(1))),
                Panel("whole", "guest", FixtureMaterial.EnamelledSteel),
                Panel("chipped", "guest", FixtureMaterial.EnamelledSteel, new Chip(Length.FromMillimeters(20), Length.FromMillimeters(1))),
            ],
        };
        JobPlan plan = job.Plan();
        Refinish.Jobs.Operation[] repairs = [.. plan.Operations.Where(operation => Repairs.Contains(operation.Kind))];
        Assert.Equal(["guest/fill", "guest/sand-filler"], repairs.Select(operation => operation.Id));
        Assert.All(repairs, operation => Assert.Equal(["chipped"], operation.Fixtures));
        LabourLine setUp = Assert.Single(plan.Costs!.Request.Labour.Lines, line => line.Code == "L-30");
        Assert.Equal(1, setUp.Task.Units);
    }

    [Fact]
    [Evidence(Basis.Contract, "each kind of fixture is cleared of what it has, and of nothing that it has not")]
    public void Each_kind_of_fixture_is_cleared_of_what_it_has()
    {
        HashSet<Type> seen = [];
        foreach (IFixture fixture in Tapes.Every().Where(fixture => fixture is not ComposedFixture))
        {
            Procedure procedure = new(new FixtureJob { Id = "one", Room = "bath", Fixture = fixture,
                Survey = new Survey { Material = FixtureMaterial.CulturedMarble, Defects = [], YearBuilt = 1995 } }, Shop.Generic);
            string clear = procedure.Operations.Single(operation => operation.Kind == WorkKind.Clear).Instruction;
            string back = procedure.Operations.Single(operation => operation.Kind == WorkKind.Caulk).Instruction;
            bool Says(string word) => clear.Contains(word, StringComparison.Ordinal);
            seen.Add(fixture.GetType());
            (bool drain, bool overflow) = fixture switch
            {
                RecessedBathtub tub => (tub.Measurements.DrainDiameter > Length.Zero, tub.Measurements.OverflowDiameter > Length.Zero),
                CornerTub tub => (tub.Measurements.DrainDiameter > Length.Zero, tub.Measurements.OverflowDiameter > Length.Zero),
                OvalTub tub => (tub.Measurements.DrainDiameter > Length.Zero, tub.Measurements.OverflowDiameter > Length.Zero),
                FreestandingTub tub => (tub.Measurements.DrainDiameter > Length.Zero, tub.Measurements.OverflowDiameter > Length.Zero),
                PedestalSink sink => (sink.Measurements.DrainDiameter > Length.Zero, sink.Measurements.OverflowDiameter > Length.Zero),
                CounterSink sink => (sink.Measurements.DrainDiameter > Length.Zero, sink.Measurements.OverflowDiameter > Length.Zero),
                ShowerPan pan => (pan.Measurements.DrainDiameter > Length.Zero, false),
                _ => (false, false),
            };
            Assert.Equal(drain, Says("drain"));
            Assert.Equal(overflow, Says("overflow"));
            Assert.Equal(fixture is not FreestandingTub, Says("caulk"));
            Assert.Equal(fixture is not FreestandingTub, back.Contains("caulk", StringComparison.Ordinal));
            Assert.Equal(fixture is TiledSurround, Says("spout"));
            Assert.Equal(fixture is PedestalSink, Says("faucet"));
            Assert.Equal(fixture is ShowerPan, Says("curb"));
            Assert.Equal(fixture is Countertop { Measurements.CutOuts.Count: > 0 } or FlatPanel { Measurements.CutOuts.Count: > 0 }, Says("cut-outs"));
        }

        Assert.Equal(FixtureKind.All.Count(kind => kind.FixtureType.GetProperty("Measurements") is not null), seen.Count);
    }

    [Theory]
    [InlineData(2, 3, true, true)]
    [InlineData(2, 0, true, false)]
    [InlineData(0, 3, false, true)]
    [InlineData(0, 0, false, false)]
    [Evidence(Basis.Contract, "a drain that is coated over and an overflow that is not there are not taken off")]
    public void A_tub_without_drain_or_overflow_is_not_cleared_of_them(double drain, double overflow, bool saysDrain, bool saysOverflow)
    {
        RecessedBathtub tub = new(Tapes.FiveFootTub() with { DrainDiameter = Length.FromInches(drain), OverflowDiameter = Length.FromInches(overflow) });
        Procedure procedure = new(new FixtureJob { Id = "one", Room = "bath", Fixture = tub,
            Survey = new Survey { Material = FixtureMaterial.Acrylic, Defects = [], YearBuilt = 1995 } }, Shop.Generic);
        string clear = procedure.Operations[0].Instruction;
        Assert.Equal(saysDrain, clear.Contains("drain", StringComparison.Ordinal));
        Assert.Equal(saysOverflow, clear.Contains("overflow", StringComparison.Ordinal));
    }
}

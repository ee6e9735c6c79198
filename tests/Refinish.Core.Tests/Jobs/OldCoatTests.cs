using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

public class OldCoatTests
{
    private static readonly AdhesionGrade?[] Grades = [null, .. Enum.GetValues<AdhesionGrade>().Select(grade => (AdhesionGrade?)grade)];

    private static Procedure Of(Survey survey, double length = 1.5, double width = 0.6) => new(
        new FixtureJob { Id = "tub", Room = "bath", Fixture = RandomJobs.Panel(length, width), Survey = survey }, Shop.Generic);

    private static Survey Tested(AdhesionGrade? beside, params Defect[] defects) => new()
    {
        Material = FixtureMaterial.EnamelledSteel, Defects = defects, PreviouslyRefinished = true, OldCoatAdhesion = beside, YearBuilt = 1995,
    };

    [Fact]
    [Evidence(Basis.Contract, "what the verdict demands is what is planned, for every grade of patch and coat: the whole is stripped where S-15 says so, and nowhere else")]
    public void A_strip_that_the_verdict_demands_is_planned()
    {
        foreach (AdhesionGrade? beside in Grades)
        {
            foreach (Defect[] patches in Grades.Select(grade => new Defect[] { new PeelingCoat(Area.FromSquareMeters(0.2), grade) }).Append([]))
            {
                Procedure procedure = Of(Tested(beside, patches));
                bool demanded = procedure.Verdict.Reasons.Any(reason => reason.RuleCode == "S-15");
                Assert.Equal(demanded, procedure.OldCoat.ComesOff);
                Assert.Equal(demanded ? FixtureMaterial.EnamelledSteel : FixtureMaterial.OldCoating, procedure.Surface);
                IEnumerable<Refinish.Jobs.Operation> strips = procedure.Operations.Where(operation => operation.Kind == WorkKind.Strip);
                if (demanded)
                {
                    Holds(Assert.Single(strips), 0.9);
                    Lays(Assert.Single(procedure.Operations, operation => operation.Kind == WorkKind.LayOnStripper), 0.9);
                }
                else if (patches.Length > 0)
                {
                    Holds(Assert.Single(strips), 0.2);
                }
                else
                {
                    Assert.Empty(strips);
                }

                Assert.Equal(demanded, procedure.Operations.Any(operation => operation.Kind == WorkKind.LayOnStripper));
            }
        }

        // By hand: stripper is a US gallon for 100 ft², taken one and a half times; loose patches come off without it.
        static void Lays(Refinish.Jobs.Operation lay, double squareMetres)
        {
            MaterialNeed stripper = Assert.Single(lay.Materials);
            Assert.Equal("stripper", stripper.Item);
            Numbers.Close(1.5 * 3.785411784 * squareMetres / (100 * 0.3048 * 0.3048), stripper.Amount.In(LineUnit.Litre), 1e-9);
            Assert.Contains(lay.Cautions, caution => caution.Hazard == Hazard.Stripper);
        }

        // By hand: hours are 0.4, 0.54 and 0.9 for a square metre.
        static void Holds(Refinish.Jobs.Operation strip, double squareMetres)
        {
            Assert.Empty(strip.Materials);
            LabourTask hours = Assert.Single(strip.Labour);
            Numbers.Close(0.54 * squareMetres, hours.Hours.Mode, 1e-9);
            Numbers.Close(0.9 * squareMetres, hours.Hours.Maximum, 1e-9);
            Assert.Contains(strip.Cautions, caution => caution.Hazard == Hazard.Stripper);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "a coat that fails its tape test without one peeling patch is stripped, waited for, priced and bought, by the whole plan")]
    public void A_strip_without_a_patch_is_priced()
    {
        Job job = InventedJobs.OccupiedHouse() with
        {
            Fixtures = [new FixtureJob { Id = "panel", Room = "bath", Fixture = RandomJobs.Panel(1.5, 0.6), Survey = Tested(AdhesionGrade.Grade1B) }],
        };
        JobPlan plan = job.Plan();
        JobPlan sound = (job with { Fixtures = [job.Fixtures[0] with { Survey = Tested(AdhesionGrade.Grade5B) }] }).Plan();
        Assert.Empty(plan.Objections);
        Assert.Equal("bath/strip", Assert.Single(plan.Operations, operation => operation.Kind == WorkKind.Strip).Id);
        KitPurchase bought = Assert.Single(plan.Price!.Purchases, purchase => purchase.Item == "stripper");
        Numbers.Close(0.550068, bought.Need.In(LineUnit.Litre), 1e-5);
        Assert.Contains(plan.Costs!.Request.Labour.Lines, line => line.Task.Standard.Repairs == DefectKind.PeelingCoat);
        Assert.DoesNotContain(sound.Price!.Purchases, purchase => purchase.Item == "stripper");
        Assert.True(plan.Price.Total > sound.Price.Total);
        ScheduledOperation laid = plan.Schedule!.TryFind("bath/lay-on-stripper")!;
        ScheduledOperation strip = plan.Schedule.TryFind("bath/strip")!;
        Assert.True(strip.Start - laid.End >= job.Shop.Chemicals.Single(chemical => chemical.Id == "stripper").Dwell);
    }

    [Fact]
    [Evidence(Basis.Contract, "a fixture larger than one defect may be is stripped all the same: walls of 60 m by 4 m in three parts of less than 100 m²")]
    public void A_large_surface_is_stripped_in_parts()
    {
        TiledSurround walls = new(new TiledWallMeasurements
        {
            Walls = [.. Enumerable.Repeat(new WallRun(Length.FromMeters(20), Length.FromMeters(4)), 3)],
            TileLength = Length.FromMeters(0.3), TileWidth = Length.FromMeters(0.3), JointWidth = Length.FromMillimeters(3), JointDepth = Length.Zero,
            JointProfile = JointProfile.Sharp, Openings = [],
        });
        Procedure procedure = new(
            new FixtureJob { Id = "walls", Room = "bath", Fixture = walls, Survey = Tested(AdhesionGrade.Grade1B) with { Material = FixtureMaterial.CeramicTile } }, Shop.Generic);
        Refinish.Jobs.Operation strip = procedure.Operations.Single(operation => operation.Kind == WorkKind.Strip);
        Assert.Equal(3, strip.Labour.Count);
        Numbers.Close(240, procedure.CoatedArea.SquareMeters, 1e-9);
        Numbers.Close(240 * 0.54, strip.Labour.Sum(task => task.Hours.Mode), 1e-9);
    }
}

using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

public class HandoverTests
{
    private static readonly Temperature Twenty = Temperature.FromDegreesCelsius(20);

    // Invented for the test.
    private static Job Job => InventedJobs.OccupiedHouse() with
    {
        Fixtures = [new FixtureJob { Id = "panel", Room = "bath", Fixture = RandomJobs.Panel(1.5, 0.6),
            Survey = new Survey { Material = FixtureMaterial.EnamelledSteel, Defects = [], YearBuilt = 1995 } }],
    };

    [Fact]
    [Evidence(Basis.Contract, "water waits for the slowest of coating, caulk and drain trim, each with its own wait")]
    public void Water_waits_for_the_slowest()
    {
        FixtureHandover plain = Only(Job);
        Assert.Equal(plain.CaulkReady, plain.DrainTrimReady);
        Job trimmed = Job with { Fixtures = [Job.Fixtures[0] with { Options = [FixtureOption.DrainTrim("drain-trim")] }] };
        JobPlan slow = (trimmed with { Shop = Job.Shop with { DrainTrimWait = TimeSpan.FromDays(6) } }).Plan();
        FixtureHandover trim = slow.Handover!.Fixtures[0];
        Assert.Equal(slow.Schedule!.TryFind("bath/fit-trim")!.End + TimeSpan.FromDays(6), trim.DrainTrimReady);
        Assert.Equal(trim.DrainTrimReady, trim.WaterFrom);
        FixtureHandover caulk = Only(Job with { Shop = Job.Shop with { DrainTrimWait = TimeSpan.Zero, CaulkWait = TimeSpan.FromDays(5) } });
        Assert.Equal(caulk.CaulkReady, caulk.WaterFrom);
        Numbers.CanBeWritten(trim.Workings());
        Numbers.CanBeWritten(plain.Workings());
        Numbers.Refuses("DrainTrimWait", () => _ = Job.Shop with { DrainTrimWait = TimeSpan.FromDays(15) });
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: each coat's end plus 24 h × √2 at 20 °C, full cure 7 d × √2, a part of a minute counted as a whole one; film of 4 × 30 µm at least and "
        + "of the sheets' 50 + 3 × 45 µm at most; five years of warranty from the end of the work")]
    public void Water_and_cure_come_out_as_by_hand()
    {
        JobPlan plan = Job.Plan();
        FixtureHandover handover = plan.Handover!.Fixtures[0];
        DateTimeOffset last = plan.Runs[^1].End;
        Numbers.Near(Math.Ceiling(24 * 60 * Math.Sqrt(2)) / 60, (handover.CoatingReady!.Value - last).TotalHours, 1e-6);
        Numbers.Near(Math.Ceiling(7 * 24 * 60 * Math.Sqrt(2)) / 60, (handover.FullCure!.Value - last).TotalHours, 1e-6);
        Assert.Equal(plan.Schedule!.TryFind("bath/caulk")!.End.AddHours(24), handover.CaulkReady);
        Assert.Equal(plan.Schedule.Operations[^1].End.AddYears(5), handover.WarrantyUntil);
        Numbers.Close(4 * 30, handover.Film.Minimum.Micrometers);
        Numbers.Close(50 + (3 * 45), handover.Film.Maximum.Micrometers);
        Assert.Equal(DayOfWeek.Wednesday, plan.Schedule.Operations[^1].Start.DayOfWeek);
    }

    [Fact]
    [Evidence(Basis.Contract, "a colder surface holds the water longer, and the sheet names the temperature it holds for, in the "
        + "reader's units")]
    public void The_hold_is_that_of_the_site()
    {
        JobPlan warm = Job.Plan();
        SiteRoom room = Job.Premises.Rooms[0];
        JobPlan cold = (Job with { Premises = Job.Premises with { Rooms = [room with { Climate = InventedJobs.Held(22, 18) }] } }).Plan();
        TimeSpan? longer = cold.Handover!.Fixtures[0].CoatingReady - cold.Runs[^1].End;
        Assert.True(longer > warm.Handover!.Fixtures[0].CoatingReady - warm.Runs[^1].End);
        string sheet = warm.Handover.ToText(DisplayUnits.Si);
        Assert.Contains("coating takes water, at 20 °C on the surface: from ", sheet, StringComparison.Ordinal);
        Assert.Contains("no water hotter than 60 °C on the surface", sheet, StringComparison.Ordinal);
        Assert.Contains("coating takes water, at 68 °F on the surface: from ", warm.Handover.ToText(DisplayUnits.UsCustomary), StringComparison.Ordinal);
        Assert.Contains("no water hotter than 140 °F on the surface", warm.Handover.ToText(DisplayUnits.UsCustomary),
            StringComparison.Ordinal);
        foreach (string line in (IEnumerable<string>)[.. warm.Handover.Covers, .. warm.Handover.Exclusions, .. warm.Handover.Record,
            .. warm.Handover.Cautions.Select(caution => caution.Sentence)])
        {
            Assert.Contains(line, sheet, StringComparison.Ordinal);
        }

        Assert.DoesNotContain("\r", sheet, StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "what kills fastest comes first; spraying, promoter, lead and slip each have their caution, and a mixture "
        + "index or a mist without figure is for protection to cover")]
    public void Cautions_and_protection_are_gathered()
    {
        JobPlan plan = InventedJobs.OccupiedHouse().Plan();
        Assert.Equal(Hazard.SolventVapour, plan.Cautions[0].Caution.Hazard);
        Assert.All(
            new[] { Hazard.FireAndExplosion, Hazard.SolventVapour, Hazard.Isocyanate, Hazard.Acid, Hazard.Dust, Hazard.Electricity,
                Hazard.SkinAndEyes, Hazard.Slip },
            hazard => Assert.Contains(plan.Cautions, planned => planned.Caution.Hazard == hazard));
        Assert.Equal(plan.Cautions.Count, plan.Cautions.Select(planned => planned.Caution.Code).Distinct().Count());
        Assert.Contains(plan.Protection, need => need.Comparison.Subject.StartsWith("polyisocyanate mist", StringComparison.Ordinal)
            && need.AsksForAir && need.Respirators.All(one => one.SuppliesAir));
        Assert.Contains(plan.Protection, need => need.Comparison.Equals(plan.Air[0].Study!.ShortTermLimit));
        foreach (Shop silent in new[] { Job.Shop with { AirborneFraction = null }, Job.Shop with { Limits = LimitSets.UnitedStates } })
        {
            JobPlan unknown = (Job with { Shop = silent }).Plan();
            Assert.Contains(unknown.Protection, need => need.Comparison.Subject.StartsWith("polyisocyanate mist", StringComparison.Ordinal)
                && need.Comparison.Outcome == ComparisonOutcome.CannotBeJudged);
            Assert.Contains(unknown.Cautions, planned => planned.Caution.Hazard == Hazard.Isocyanate);
        }

        AdhesionPromoter quiet = GenericCatalogue.SilanePromoter with { Solvents = [] };
        CoatingSystem system = new("quiet", "quiet", [SystemStep.Wipe(quiet), .. Job.Shop.System.Layers.Select(SystemStep.Coat)], null,
            Source.Invented("for this test"));
        JobPlan unsaid = (Job with { Shop = Job.Shop with { System = system } }).Plan();
        Assert.Contains(unsaid.Protection, need => need.Comparison.Subject.Contains("silane", StringComparison.Ordinal)
            && need.Comparison.Outcome == ComparisonOutcome.CannotBeJudged);
        Assert.DoesNotContain(unsaid.Air[0].Study!.Emissions, emission => emission.Name == quiet.Name);
    }

    [Fact]
    [Evidence(Basis.Contract, "what has to be met first stands on the plan, with the lead test when nobody has tested")]
    public void Conditions_are_gathered()
    {
        Job job = InventedJobs.OccupiedHouse();
        JobPlan tested = job.Plan();
        Assert.Contains(tested.Conditions, condition => condition.Id == "tub/S-27" && condition.Remedy.Contains("probe and tap for holes",
            StringComparison.Ordinal));
        FixtureJob untested = job.Fixtures[0] with { Survey = job.Fixtures[0].Survey with { LeadTest = LeadTest.NotTested } };
        JobPlan plan = (job with { Fixtures = [untested] }).Plan();
        Assert.Contains(plan.Conditions, condition => condition.Id == "tub/S-19");
        Assert.Equal(tested.Conditions.Count + 1, plan.Conditions.Count);
    }

    [Fact]
    [Evidence(Basis.Contract, "a complete record lacks nothing; each thing taken out is named")]
    public void A_record_says_what_it_lacks()
    {
        JobPlan plan = Job.Plan();
        WarrantyRecord record = Complete(plan);
        Assert.Empty(record.MissingFor(plan));
        string coat = plan.Runs[0].Run.Id;
        Assert.Contains(coat + ": wet film", (record with { Coats = [record.Coats[0] with { WetFilm = null },
            .. record.Coats.Skip(1)] }).MissingFor(plan));
        Assert.Contains(coat + ": what was weighed of primer hardener", (record with { Coats = [record.Coats[0] with { Weighed = [record.Coats[0].Weighed[0]] },
            .. record.Coats.Skip(1)] }).MissingFor(plan));
        Assert.Contains(coat + ": time, who, air, surface and what was weighed",
            (record with { Coats = [.. record.Coats.Skip(1)] }).MissingFor(plan));
        Assert.Contains(coat + ": an end after its start", (record with { Coats = [record.Coats[0] with { End = record.Coats[0].Start },
            .. record.Coats.Skip(1)] }).MissingFor(plan));
        Assert.Single((record with { Batches = [.. record.Batches.Skip(1)] }).MissingFor(plan));
        Assert.Single((record with { DryFilm = [.. record.DryFilm.Skip(1)] }).MissingFor(plan));
        Assert.Contains("gauge that measured the dry film", (record with { Gauge = null }).MissingFor(plan));
        Assert.Contains("photographs before and after", (record with { Photographs = [] }).MissingFor(plan));
        Assert.Contains("day of the handover and by whom", (record with { HandedOver = null }).MissingFor(plan));
        Assert.Single((record with { WaterFrom = null }).MissingFor(plan));
    }

    [Fact]
    [Evidence(Basis.Independent, "200 g of base and 50 g of hardener are 25 to 100; air of 22 °C and 50 % has its dew point at 11.1 °C "
        + "(any chart), so a surface of 20 °C is 8.9 K above it; two years of 365.25 days")]
    public void Numbers_of_a_record()
    {
        JobPlan plan = Job.Plan();
        WarrantyRecord record = Complete(plan);
        CoatRecord coat = record.Coats[0];
        Numbers.Close(25, coat.Per100OfFirst[1], 1e-12);
        Numbers.Near(8.9, coat.SurfaceAboveDewPoint.Kelvins, 0.05);
        Numbers.CanBeWritten(coat.Workings());
        LifeRecord life = record.AgeOn(record.HandedOver!.Value.AddDays(730.5), failed: true);
        Numbers.Close(2, life.AgeYears, 1e-12);
        Assert.True(life.Failed);
        Numbers.Refuses("day", () => record.AgeOn(record.HandedOver.Value, failed: true));
        Assert.Throws<InvalidOperationException>(() => (record with { HandedOver = null }).AgeOn(DateTimeOffset.MaxValue, failed: false));
        string text = record.ToText(DisplayUnits.Si);
        Assert.Contains("dew point 11.1 °C; surface 20 °C; weighed 200 g epoxy-primer-base, 50 g epoxy-primer-hardener; wet film 75 µm", text,
            StringComparison.Ordinal);
        Assert.Contains("handed over 2027-03-04 12:00 by the painter", text, StringComparison.Ordinal);
        Assert.Equal(record, Complete(plan));
        Assert.Equal("record 2027-014, " + plan.Runs.Count + " coats", record.ToString());
        Assert.Throws<ArgumentException>(() => coat with { Weighed = [] });
        Numbers.Refuses("mass", () => _ = new PartMass("epoxy-primer-base", Mass.Zero));
        Numbers.Refuses("DryFilm", () => _ = record with { DryFilm = [Length.FromMillimeters(6)] });
        Assert.Throws<ArgumentException>(() => new BatchNumber("a", "b", " "));
    }

    private static FixtureHandover Only(Job job) => job.Plan().Handover!.Fixtures.Single();

    private static CoatRecord Coat(ScheduledRun run, int day) => new()
    {
        Coat = run.Run.Id,
        Start = new DateTimeOffset(2027, 3, day, 9, 0, 0, TimeSpan.FromHours(1)),
        End = new DateTimeOffset(2027, 3, day, 9, 20, 0, TimeSpan.FromHours(1)),
        By = "the painter",
        Air = new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(50)),
        Surface = Twenty,
        Weighed = [.. run.Run.Layer.Product.Parts.Select((part, i) => new PartMass(part.Component.Id, Mass.FromGrams(i == 0 ? 200 : 50)))],
        WetFilm = Length.FromMicrometers(75),
    };

    private static WarrantyRecord Complete(JobPlan plan) => new()
    {
        Reference = "2027-014",
        Batches =
        [
            .. plan.Runs.Select(run => run.Run.Layer.Product).Distinct()
                .SelectMany(product => product.Parts.Select(part => part.Component).Concat([product.Reducer!]).Select(part =>
                    new BatchNumber(product.Id, part.Id, "B-1"))),
        ],
        Coats = [.. plan.Runs.Select((run, i) => Coat(run, i + 1))],
        DryFilm = [.. Enumerable.Repeat(Length.FromMicrometers(110), plan.Handover!.Spots)],
        Gauge = "magnetic",
        Photographs = ["before", "after"],
        HandedOver = new DateTimeOffset(2027, 3, 4, 12, 0, 0, TimeSpan.FromHours(1)),
        HandedOverBy = "the painter",
        WaterFrom = plan.Handover.WaterFrom,
    };
}

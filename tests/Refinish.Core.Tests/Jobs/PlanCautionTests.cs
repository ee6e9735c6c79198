using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>Which cautions stand in a plan, why, and for whom. What is expected was written from what each job does, by hand.</summary>
public class PlanCautionTests
{
    // Whether these stand depends on what the air study of the day finds; the studies have tests of their own.
    private static readonly string[] OfTheStudy =
        ["flammable-vapour", "near-flammable-vapour", "immediately-dangerous", "no-airflow", "beyond-saturation", "limit-unknown"];

    // Every job here opens solvents, sprays an epoxy primer and a two-part urethane, mixes in cups, cleans a gun and makes waste.
    private static readonly string[] AnySprayJob =
    [
        "ignition-sources", "explosion-proof-fan", "gas-meter", "gun-air", "bonding-and-grounding", "solvent-rags", "batch-heats-itself",
        "fire-extinguisher", "detectors-and-sprinklers",
        "never-alone", "breathing-zone", "make-up-air", "rescue", "confined-space", "hazard-communication",
        "supplied-air", "loose-hood", "breathing-air", "sensitised-do-not-spray", "medical-surveillance", "isocyanate-hardener",
        "wet-electricity", "occupants-out", "preparation-dust", "epoxy-hardener", "eye-wash", "noise",
        "not-down-the-drain", "reactive-waste", "waste-is-the-shops", "wet-sheeting", "caustic-cleaner", "relight-and-check",
    ];

    private static readonly string[] Etching = ["etchant-burns", "acid-and-bleach", "acid-cleaner", "rinse-water"];

    // The kinds of hazard from fastest to slowest, as a safety officer would tell a crew in one breath.
    private static readonly Hazard[] FastestFirst =
    [
        Hazard.SolventVapour, Hazard.Stripper, Hazard.FireAndExplosion, Hazard.Isocyanate, Hazard.Acid, Hazard.Electricity,
        Hazard.Occupants,
        Hazard.Structure, Hazard.Asbestos, Hazard.Lead, Hazard.Dust, Hazard.SkinAndEyes, Hazard.Waste, Hazard.Slip, Hazard.Noise,
    ];

    [Fact]
    [Evidence(Basis.Contract, "a chipped, rusty enamelled tub in a house of 1955, tested free of lead and not for asbestos, with a slip floor: the lists of crew, customer "
        + "and occupant, written by hand")]
    public void An_occupied_house()
    {
        JobPlan plan = InventedJobs.OccupiedHouse().Plan();
        Expect(plan, Audience.Crew, [.. AnySprayJob, .. Etching, "asbestos-untested", "new-coat-slip", "slip-grains"]);
        Expect(plan, Audience.Customer,
            ["detectors-and-sprinklers", "relight-and-check", "curing-vapour", "occupants-out", "asbestos-untested", "not-down-the-drain",
                "new-coat-slip", "slip-grains"]);
        Expect(plan, Audience.Occupant,
            ["ignition-sources", "detectors-and-sprinklers", "relight-and-check", "curing-vapour", "acid-and-bleach", "occupants-out", "asbestos-untested", "new-coat-slip"]);
    }

    [Fact]
    [Evidence(Basis.Contract, "a peeling tub that is stripped and warmed beside a tiled surround whose grout is raked out: the "
        + "lists, written by hand")]
    public void A_cold_house()
    {
        JobPlan plan = InventedJobs.ColdHouse().Plan();
        Expect(plan, Audience.Crew,
            [.. AnySprayJob, .. Etching, "stripper-vapour", "glowing-heaters", "unvented-heater", "overhead-work", "new-coat-slip"]);
        Expect(plan, Audience.Customer,
            ["detectors-and-sprinklers", "relight-and-check", "curing-vapour", "occupants-out", "not-down-the-drain", "new-coat-slip"]);
        Expect(plan, Audience.Occupant,
            ["ignition-sources", "detectors-and-sprinklers", "relight-and-check", "curing-vapour", "acid-and-bleach", "occupants-out", "unvented-heater",
                "new-coat-slip"]);
        PlannedCaution strippers = Only(plan, "stripper-vapour");
        Assert.Equal(["tub"], strippers.Fixtures);
        Assert.All(strippers.Operations, id => Assert.True(plan.Operations.Single(one => one.Id == id).Kind is WorkKind.LayOnStripper or WorkKind.Strip));
        Assert.Equal(["surround"], Only(plan, "overhead-work").Fixtures);
    }

    [Fact]
    [Evidence(Basis.Contract, "a laminate counter and a china sink, and a shower pan that is refused: the lists, written by hand; "
        + "acid belongs to the china alone")]
    public void A_rental()
    {
        JobPlan plan = InventedJobs.Rental().Plan();
        Expect(plan, Audience.Crew, [.. AnySprayJob, .. Etching, "fixture-gives-way"]);
        Expect(plan, Audience.Customer,
            ["detectors-and-sprinklers", "relight-and-check", "curing-vapour", "occupants-out", "fixture-gives-way", "not-down-the-drain"]);
        Expect(plan, Audience.Occupant,
            ["ignition-sources", "detectors-and-sprinklers", "relight-and-check", "curing-vapour", "acid-and-bleach", "occupants-out", "fixture-gives-way"]);
        PlannedCaution acid = Only(plan, "etchant-burns");
        Assert.Equal(["vessel"], acid.Fixtures);
        Assert.Equal(["bath"], acid.Rooms);
        PlannedCaution gives = Only(plan, "fixture-gives-way");
        Assert.Equal(["pan"], gives.Fixtures);
        Assert.Empty(gives.Operations);
    }

    [Fact]
    [Evidence(Basis.Contract, "a laminate counter alone gets no acid, no stripper, no lead and no slippery floor")]
    public void What_nothing_brings_does_not_stand_in_a_plan()
    {
        Job rental = InventedJobs.Rental();
        JobPlan counter = (rental with { Fixtures = [.. rental.Fixtures.Where(fixture => fixture.Id == "counter")] }).Plan();
        Assert.NotEmpty(counter.Operations);
        Assert.DoesNotContain(
            counter.Cautions, planned => planned.Caution.Hazard is Hazard.Acid or Hazard.Stripper or Hazard.Lead or Hazard.Asbestos);
        Assert.DoesNotContain("rinse-water", Codes(counter.Cautions));
        Assert.DoesNotContain("new-coat-slip", Codes(counter.Cautions));
        Assert.DoesNotContain("new-coat-slip", counter.Handover!.Cautions.Select(caution => caution.Code));

        JobPlan kept = With(fixture => fixture with
        {
            Survey = fixture.Survey with { PreviouslyRefinished = true, OldCoatAdhesion = AdhesionGrade.Grade5B, Defects = [] },
        });
        Assert.DoesNotContain(kept.Cautions, planned => planned.Caution.Hazard is Hazard.Acid or Hazard.Stripper);
        Assert.Contains("stripper-vapour", kept.Procedures[0].Verdict.Cautions.Select(caution => caution.Code));
    }

    [Fact]
    [Evidence(Basis.Contract, "a filler brings the cautions of its own chemistry: styrene and peroxide with polyester, tied to the "
        + "filling")]
    public void A_filler_brings_its_own()
    {
        Job house = InventedJobs.OccupiedHouse();
        Shop shop = house.Shop with { Filler = house.Shop.Filler with { Product = FillerProduct.GenericPolyester } };
        JobPlan plan = (house with { Shop = shop }).Plan();
        foreach (string code in new[] { "styrene-filler", "peroxide-hardener" })
        {
            Assert.Contains(plan.Operations, one => one.Kind == WorkKind.Fill && Only(plan, code).Operations.Contains(one.Id));
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "work on two fixtures at once is etching for the enamelled one only")]
    public void Shared_work_is_told_apart_by_fixture()
    {
        Job house = InventedJobs.OccupiedHouse();
        FixtureJob acrylic = house.Fixtures[0] with
        {
            Id = "acrylic", Fixture = InventedJobs.TubOf(0.9, 53, 44), Options = [], System = GenericCatalogue.ClearedPlastic,
            Survey = new Survey { Material = FixtureMaterial.Acrylic, Defects = [], YearBuilt = 1995 },
        };
        JobPlan plan = (house with { Fixtures = [house.Fixtures[0], acrylic] }).Plan();
        Assert.Contains(plan.Planned, procedure => procedure.Fixture.Id == "acrylic");
        Assert.Equal(["tub"], Only(plan, "etchant-burns").Fixtures);
        Assert.Equal(["acrylic", "tub"], Only(plan, "preparation-dust").Fixtures.OrderBy(id => id, StringComparer.Ordinal));
    }

    [Fact]
    [Evidence(Basis.Contract, "every coat with isocyanate, every etched surface and every stripped coat carries what keeps people "
        + "alive, tied to its operation")]
    public void Nothing_that_kills_is_lost()
    {
        string[] spray = ["ignition-sources", "explosion-proof-fan", "make-up-air", "never-alone", "rescue", "breathing-zone",
            "gas-meter", "occupants-out"];
        string[] isocyanate = ["supplied-air", "breathing-air", "loose-hood", "sensitised-do-not-spray", "medical-surveillance",
            "isocyanate-hardener"];
        string[] strip = ["stripper-vapour", "never-alone", "make-up-air", "rescue", "occupants-out"];
        int coats = 0;
        int strips = 0;
        int etches = 0;
        foreach (JobPlan plan in Plans())
        {
            foreach (CoatRun run in plan.Work!.Runs)
            {
                bool isUrethane = run.Layer.Product.IsocyanateFraction.DecimalFractions > 0;
                coats += isUrethane ? 1 : 0;
                Carries(plan, run.Id, isUrethane ? [.. spray, .. isocyanate] : [.. spray, "epoxy-hardener", "sensitised-do-not-spray"]);
            }

            foreach (Refinish.Jobs.Operation operation in plan.Operations.Where(operation => operation.Kind == WorkKind.Strip))
            {
                strips++;
                Carries(plan, operation.Id, strip);
            }

            foreach (Refinish.Jobs.Operation operation in plan.Operations.Where(operation => operation.Kind == WorkKind.Key
                && operation.Fixtures.Any(id => plan.Planned.Single(one => one.Fixture.Id == id).Surface.Id
                    is "enamelledSteel" or "enamelledCastIron" or "vitreousChina" or "ceramicTile")))
            {
                etches++;
                Carries(plan, operation.Id, ["etchant-burns", "acid-and-bleach", "eye-wash"]);
            }
        }

        Assert.True(coats >= 4 && strips >= 1 && etches >= 3, coats + " urethane coats, " + strips + " strips, " + etches + " etches");
    }

    [Fact]
    [Evidence(Basis.Contract, "work of a caller's own that states no caution gets those of its kind and of what it does to the room")]
    public void Work_of_the_callers_own_loses_nothing()
    {
        Refinish.Jobs.Operation strip = new()
        {
            Id = "own-strip", Kind = WorkKind.Strip, Instruction = "strip by our own way", Time = TimeSpan.FromHours(2),
        };
        Refinish.Jobs.Operation spray = new()
        {
            Id = "own-spray", Kind = WorkKind.Other, Instruction = "spray a patch", Time = TimeSpan.FromMinutes(20),
            Sprays = true, RaisesDust = true,
        };
        JobPlan plan = With(fixture => fixture with
        {
            Options = [FixtureOption.Work("a", strip, WorkKind.Descale), FixtureOption.Work("b", spray, WorkKind.Tack)],
        });
        Carries(plan, "own-strip", ["stripper-vapour", "never-alone", "make-up-air", "rescue", "occupants-out"]);
        Carries(plan, "own-spray", ["ignition-sources", "explosion-proof-fan", "make-up-air", "never-alone", "rescue", "preparation-dust"]);
    }

    [Fact]
    [Evidence(Basis.Contract, "lead stands by the survey, tied to the fixture and to the work that disturbs its surface")]
    public void Lead_follows_the_survey()
    {
        JobPlan open = With(fixture => fixture with { Survey = fixture.Survey with { LeadTest = LeadTest.NotTested } });
        PlannedCaution untested = Only(open, "lead-untested");
        Assert.Equal(["tub"], untested.Fixtures);
        Assert.Contains(open.Operations, one => one.Kind == WorkKind.Key && untested.Operations.Contains(one.Id));
        Assert.DoesNotContain(open.Operations, one => one.Kind is WorkKind.Mask or WorkKind.Caulk && untested.Operations.Contains(one.Id));
        Assert.Contains(open.CautionsFor(Audience.Customer), planned => planned.Caution.Code == "lead-untested");

        JobPlan found = With(fixture => fixture with
        {
            Survey = fixture.Survey with { LeadTest = LeadTest.Positive, CertifiedForLead = true },
        });
        foreach (Audience one in new[] { Audience.Crew, Audience.Customer, Audience.Occupant })
        {
            Assert.Contains(found.CautionsFor(one), planned => planned.Caution.Code == "lead-found");
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "people of a caution are those who do its operations by the schedule; a caution that is not for the "
        + "crew names nobody")]
    public void People_come_from_the_schedule()
    {
        JobPlan plan = InventedJobs.ColdHouse().Plan();
        foreach (PlannedCaution planned in plan.Cautions)
        {
            if (!planned.Caution.Concerns.HasFlag(Audience.Crew))
            {
                Assert.Empty(planned.Crew);
            }
            else if (planned.Operations.Count > 0)
            {
                IEnumerable<string> people = planned.Operations.SelectMany(id => plan.Schedule!.TryFind(id)!.People).Distinct();
                Assert.Equal(people.OrderBy(id => id, StringComparer.Ordinal), planned.Crew.OrderBy(id => id, StringComparer.Ordinal));
            }
        }

        Assert.NotEmpty(Only(plan, "supplied-air").Crew);
        Assert.Subset(new HashSet<string> { "ada", "ben" }, plan.Cautions.SelectMany(planned => planned.Crew).ToHashSet());
    }

    [Fact]
    [Evidence(Basis.Contract, "each list is in one order, says nothing twice and is a part of the whole; nobody and somebody "
        + "unnamed are refused")]
    public void Lists_are_ordered_and_say_nothing_twice()
    {
        foreach (JobPlan plan in Plans())
        {
            int[] places = [.. plan.Cautions.Select(planned => Array.IndexOf(FastestFirst, planned.Caution.Hazard))];
            Assert.Equal(places.OrderBy(place => place), places);
            Assert.Equal(plan.Cautions.Count, Codes(plan.Cautions).Distinct().Count());
            Assert.Equal(plan.Cautions, plan.CautionsFor(Audience.Crew | Audience.Customer | Audience.Occupant));
            HashSet<string> ids = [.. plan.Operations.Select(operation => operation.Id)];
            Assert.All(plan.Cautions, planned => Assert.Subset(ids, planned.Operations.ToHashSet()));
            for (int i = 0; i < plan.Cautions.Count; i++)
            {
                for (int j = 0; j < i; j++)
                {
                    (Caution one, Caution other) = (plan.Cautions[i].Caution, plan.Cautions[j].Caution);
                    Assert.False(CautionWords.SayTheSame(one, other), one.Code + " and " + other.Code);
                }
            }
        }

        JobPlan any = InventedJobs.OccupiedHouse().Plan();
        Numbers.Refuses("audience", () => any.CautionsFor(Audience.None));
        Numbers.Refuses("audience", () => any.CautionsFor((Audience)8));
    }

    /// <summary>One row a kind: what must not be missing, from the hazards of that work. A new kind has to get a row.</summary>
    [Fact]
    [Evidence(Basis.Contract, "each kind of work carries what can hurt in it on any surface, by a table written by hand")]
    public void Every_kind_of_work_has_its_cautions()
    {
        string[] wiping = ["ignition-sources", "explosion-proof-fan", "make-up-air", "never-alone", "solvent-rags"];
        string[] spraying = [.. wiping, "breathing-zone", "gun-air", "gas-meter", "bonding-and-grounding", "occupants-out",
            "fire-extinguisher", "rescue"];
        Dictionary<WorkKind, string[]> least = new()
        {
            [WorkKind.Notice] = ["occupants-out"],
            [WorkKind.Travel] = [],
            [WorkKind.SetUp] =
            [
                "ignition-sources", "explosion-proof-fan", "make-up-air", "fire-extinguisher", "detectors-and-sprinklers", "rescue",
                "confined-space",
                "hazard-communication", "eye-wash", "wet-electricity", "occupants-out",
            ],
            [WorkKind.Clear] = [],
            [WorkKind.RemoveSilicone] = wiping,
            [WorkKind.LayOnStripper] = ["stripper-vapour", "never-alone", "make-up-air", "rescue", "occupants-out", "eye-wash"],
            [WorkKind.Strip] = ["stripper-vapour", "never-alone", "make-up-air", "rescue", "occupants-out", "preparation-dust",
                "eye-wash", "rinse-water"],
            [WorkKind.Descale] = [],
            [WorkKind.Degrease] = wiping,
            [WorkKind.Regrout] = ["preparation-dust"],
            [WorkKind.GrindRust] = ["preparation-dust", "ignition-sources", "wet-electricity"],
            [WorkKind.Key] = ["preparation-dust", "wet-electricity"],
            [WorkKind.RinseAndDry] = ["wet-electricity", "wet-sheeting"],
            [WorkKind.SpotPrime] = wiping,
            [WorkKind.ReinforceCrack] = ["preparation-dust", "epoxy-hardener", "styrene-filler", "eye-wash"],
            [WorkKind.Fill] = [],
            [WorkKind.SealCrazing] = [.. wiping, "preparation-dust", "epoxy-hardener"],
            [WorkKind.SandFiller] = ["preparation-dust"],
            [WorkKind.Tack] = ["preparation-dust"],
            [WorkKind.Warm] = ["glowing-heaters", "unvented-heater", "wet-electricity"],
            [WorkKind.Mask] = [],
            [WorkKind.WipeAgain] = wiping,
            [WorkKind.Promote] = [],
            [WorkKind.SprayPrimer] = spraying,
            [WorkKind.SprayTopcoat] = spraying,
            [WorkKind.Broadcast] = ["slip-grains"],
            [WorkKind.CleanGun] = ["ignition-sources", "solvent-rags", "not-down-the-drain", "reactive-waste"],
            [WorkKind.StandBy] = ["never-alone", "rescue"],
            [WorkKind.Demask] = ["detectors-and-sprinklers", "solvent-rags"],
            [WorkKind.FitTrim] = [],
            [WorkKind.Caulk] = [],
            [WorkKind.Inspect] = ["curing-vapour", "relight-and-check"],
            [WorkKind.Other] = [],
        };
        foreach (WorkKind kind in Enum.GetValues<WorkKind>())
        {
            string[] brought = [.. WorkCautions.Of(kind).Select(caution => caution.Code)];
            Assert.True(least.ContainsKey(kind), kind + " has no row");
            Assert.Subset(brought.ToHashSet(), least[kind].ToHashSet());
            Assert.Equal(brought.Length, brought.Distinct().Count());
            Assert.Equal(least[kind].Length == 0, brought.Length == 0);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "broadcasting stands in the air of the coat just sprayed; cleaning a gun handles its hardener")]
    public void What_a_product_adds()
    {
        string[] broadcast = [.. WorkCautions.Of(WorkKind.Broadcast, GenericCatalogue.AcrylicUrethaneTopcoat, overhead: false)
            .Select(caution => caution.Code)];
        Assert.Subset(broadcast.ToHashSet(), new HashSet<string> { "supplied-air", "ignition-sources", "breathing-zone",
            "isocyanate-hardener", "slip-grains" });
        string[] gun = [.. WorkCautions.Of(WorkKind.CleanGun, GenericCatalogue.AcrylicUrethaneTopcoat, overhead: false)
            .Select(caution => caution.Code)];
        Assert.Subset(gun.ToHashSet(), new HashSet<string> { "isocyanate-hardener", "sensitised-do-not-spray", "reactive-waste" });
        Assert.DoesNotContain("supplied-air", gun);
        string[] primer = [.. WorkCautions.Of(WorkKind.SprayPrimer, GenericCatalogue.EpoxyPrimer, overhead: true)
            .Select(caution => caution.Code)];
        Assert.Subset(primer.ToHashSet(), new HashSet<string> { "epoxy-hardener", "sensitised-do-not-spray", "overhead-work" });
        Assert.DoesNotContain("supplied-air", primer);
    }

    private static IEnumerable<JobPlan> Plans() =>
        [InventedJobs.OccupiedHouse().Plan(), InventedJobs.ColdHouse().Plan(), InventedJobs.Rental().Plan()];

    private static JobPlan With(Func<FixtureJob, FixtureJob> change)
    {
        Job job = InventedJobs.OccupiedHouse();
        return (job with { Fixtures = [change(job.Fixtures[0])] }).Plan();
    }

    private static IEnumerable<string> Codes(IEnumerable<PlannedCaution> cautions) => cautions.Select(planned => planned.Caution.Code);

    private static PlannedCaution Only(JobPlan plan, string code) => Assert.Single(plan.Cautions, planned => planned.Caution.Code == code);

    private static void Carries(JobPlan plan, string operation, string[] codes) =>
        Assert.Subset(Codes(plan.Cautions.Where(planned => planned.Operations.Contains(operation))).ToHashSet(), codes.ToHashSet());

    private static void Expect(JobPlan plan, Audience audience, string[] codes) => Assert.Equal(
        codes.OrderBy(code => code, StringComparer.Ordinal),
        Codes(plan.CautionsFor(audience)).Except(OfTheStudy).OrderBy(code => code, StringComparer.Ordinal));
}

using System;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>One invented job under OSHA, under the European Union and under a set of the shop's own.</summary>
public class LimitsByPlaceTests
{
    private static readonly LimitSet Own = LimitSets.EuropeanUnion with
    {
        Id = "ours", Name = "our house rules (invented)", AsOf = "2027-01-15",
        Exposure = [.. LimitSets.EuropeanUnion.Exposure, Butyl(40)],
        Flammable = FlammableShare.Quarter with { Share = Ratio.FromPercent(20), Authority = "our insurer (invented)" },
        Voc = [VocLimits.EuropeanTwoPack with { Limit = MassConcentration.FromGramsPerLiter(900), Rule = "our house rule (invented)" }],
        Slip = [SlipClasses.Barefoot[1]],
        Noise = [NoiseLimits.NioshRecommended with { Authority = "our noise rule (invented)", CriterionLevel = Level.FromDecibels(80) }],
    };

    [Fact]
    [Evidence(Basis.Contract, "the same job under three sets: each index, each flammable line and each VOC comparison names its own, and the values of the air are the same")]
    public void Each_set_is_named_by_what_is_held_against_it()
    {
        JobPlan osha = Under(LimitSets.Osha);
        JobPlan union = Under(LimitSets.EuropeanUnion);
        JobPlan own = Under(Own);
        Assert.StartsWith("OSHA (", Air(osha).StrictestLimit.Whose!, StringComparison.Ordinal);
        Assert.StartsWith("European Union (", Air(union).StrictestLimit.Whose!, StringComparison.Ordinal);
        Assert.Equal("our house rules (invented) (European Union; 2027-01-15)", Air(own).StrictestLimit.Whose);
        Assert.Contains("our insurer (invented)", Air(own).FlammableLimit.Whose!, StringComparison.Ordinal);
        Assert.Contains("our insurer (invented)", own.Air[0].FlammableAirflow!.Whose!, StringComparison.Ordinal);
        Assert.Equal(Air(osha).PeakFlammableFraction, Air(union).PeakFlammableFraction);

        // n-butyl acetate: 150, 50 and 40 ppm for one and the same average.
        double[] limits = [.. new[] { osha, union, own }.Select(plan => Air(plan).Exposure
            .Where(one => one.Solvent.CasNumber == "123-86-4" && one.Limit!.Kind == ExposureLimitKind.Twa8h).Min(one => one.Comparison.Limit!.Value.Si * 1e6))];
        Assert.Equal([150.0, 50, 40], limits.Select(limit => Math.Round(limit, 9)));
        Assert.Contains(Air(own).Exposure, one => one.Comparison.Whose == "our rule (here; 2027)");
        Assert.All(osha.Exposure.SelectMany(day => day.Protection), need => Assert.NotNull(need.Comparison.Whose));
        Assert.All(own.Exposure.SelectMany(day => day.Exposure.Exposure), one => Assert.NotNull(one.Comparison.Whose));
    }

    [Fact]
    [Evidence(Basis.Contract, "VOC limits of the set stand in the way; without any, the remembered one is told and does not")]
    public void Only_a_limit_of_the_set_stands_in_the_way()
    {
        Assert.All(Under(LimitSets.Osha).Voc.Values, voc => Assert.Contains("California", voc.Whose!, StringComparison.Ordinal));
        Assert.DoesNotContain(Under(LimitSets.Osha).Objections, one => one.Kind == ObjectionKind.Voc);
        JobPlan union = Under(LimitSets.EuropeanUnion);
        Assert.All(union.Voc.Values, voc => Assert.StartsWith("VOC ready to use, European Union", voc.Subject, StringComparison.Ordinal));
        Assert.Equal(
            union.Voc.Where(voc => voc.Value.Outcome != ComparisonOutcome.Within).Select(voc => "Voc/" + voc.Key).OrderBy(id => id, StringComparer.Ordinal),
            union.Objections.Where(one => one.Kind == ObjectionKind.Voc).Select(one => one.Id).OrderBy(id => id, StringComparer.Ordinal));
        Assert.DoesNotContain(Under(Own).Objections, one => one.Kind == ObjectionKind.Voc);
        LimitSet two = Own with { Voc = [.. Own.Voc, VocLimits.EuropeanTwoPack with { Limit = MassConcentration.FromGramsPerLiter(10) }] };
        Assert.All(Under(two).Voc.Values, voc => Assert.Equal(10, voc.Limit?.Si));
    }

    [Fact]
    [Evidence(Basis.Contract, "a substance without a limit in the set is said to have none there; limits of others are told and not counted; filling the set takes the condition away")]
    public void A_gap_is_told_and_not_filled_in_silence()
    {
        JobPlan osha = Under(LimitSets.Osha);
        PlanCondition gap = osha.Conditions.Single(one => one.Id == "occupied/no-limit/108-65-6");
        Assert.Contains("in OSHA; known elsewhere, and not counted: ", gap.Sentence(DisplayUnits.Si), StringComparison.Ordinal);
        Assert.Contains("EU indicative limit (European Union; 2000) 50 ppm", gap.Sentence(DisplayUnits.Si), StringComparison.Ordinal);
        Assert.Contains(osha.Protection, need => need.Comparison.Subject.EndsWith("1-methoxy-2-propyl acetate, 8-hour average, no limit in OSHA", StringComparison.Ordinal));
        Assert.Equal(ComparisonOutcome.CannotBeJudged, Air(osha).Exposure.Single(one => one.Limit is null && one.Solvent.CasNumber == "108-65-6").Comparison.Outcome);
        Assert.DoesNotContain(Under(LimitSets.Osha.FilledFrom(LimitSets.EuropeanUnion)).Conditions, one => one.Id == "occupied/no-limit/108-65-6");
    }

    [Fact]
    [Evidence(Basis.Contract, "a floor that is to grip is told what it will be measured against, or that the set has nothing; a fixture without such a floor is not")]
    public void A_floor_that_is_to_grip_has_its_criterion()
    {
        Assert.Contains("DIN 51097 group B: 18° or more, wet (bare feet)", Slip(Own), StringComparison.Ordinal);
        Assert.Contains("ANSI A326.3 Interior, Wet: 0.42 or more, wet (shoes)", Slip(LimitSets.UnitedStates), StringComparison.Ordinal);
        Assert.Contains("European Union has no criterion", Slip(LimitSets.EuropeanUnion), StringComparison.Ordinal);
        Assert.Equal(Own.Slip, Handed(Under(Own)));
        Assert.Empty(Handed(new Job { Id = "plain", Shop = InventedJobs.Shop with { Limits = Own }, Premises = InventedJobs.OccupiedHouse().Premises, Start = InventedJobs.Monday, Fixtures = [.. InventedJobs.OccupiedHouse().Fixtures.Select(one => one with { Options = [] })] }.Plan()));

        static string Slip(LimitSet set) => Under(set).Conditions.Single(one => one.Id == "tub/slip").Sentence(DisplayUnits.Si);
        static System.Collections.Generic.IReadOnlyList<SlipClass> Handed(JobPlan plan) => new FixtureHandover(plan.Schedule!, plan.Planned[0]).SlipCriteria;
    }

    [Fact]
    [Evidence(Basis.Independent, "the dose of each day by hand from the schedule's own pieces: 100 Σ C/T, T = 8/2^((L − 90)/5), levels of the shop's list; only who sprays hears the gun")]
    public void The_dose_of_a_day_follows_from_the_schedule()
    {
        JobPlan plan = Under(LimitSets.Osha);
        Assert.NotEmpty(plan.Noise);
        foreach (DayNoise day in plan.Noise)
        {
            double dose = 0;
            bool known = true;
            foreach (ScheduledOperation one in plan.Schedule!.Operations.Where(one => one.Operation.Kind != WorkKind.StandBy))
            {
                WorkNoise? noise = plan.Job.Shop.Noise.FirstOrDefault(noise => noise.Work == one.Operation.Kind);
                bool hears = one.Operation.Sprays ? (one.People.Count > 0 && one.People[0] == day.Worker) : one.People.Contains(day.Worker);
                double hours = one.Pieces.Where(piece => piece.Start.Date == day.Day).Sum(piece => (piece.End - piece.Start).TotalHours);
                if (hears && hours > 0 && (noise is not null || one.Operation.IsLoud || one.Operation.Sprays))
                {
                    known &= noise is not null;
                    dose += noise is null ? 0 : hours / (8 / Math.Pow(2, (noise.Level.Decibels - 90) / 5));
                }
            }

            NoiseDose told = day.Doses.Single(one => one.Limit == NoiseLimits.OshaPermissible);
            Assert.Equal(known || dose > 1, told.Dose is not null);
            if (told.Dose is Ratio ratio)
            {
                Numbers.Close(dose, ratio.DecimalFractions, 1e-9);
            }
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "noise beyond a limit of the set is a condition with whose it is and what would help; louder work of one's own counts; without a noise limit nothing is said")]
    public void Noise_is_told_with_whose_limit_it_is()
    {
        JobPlan own = Under(Own);
        PlanCondition noise = own.Conditions.First(one => one.Id.EndsWith("/noise", StringComparison.Ordinal));
        Assert.Contains("dose by our noise rule (invented)", noise.Sentence(DisplayUnits.Si), StringComparison.Ordinal);
        Assert.NotEmpty(noise.Remedy);
        Assert.Equal(Audience.Crew, noise.Concerns);
        Assert.Contains(own.Cautions, one => one.Caution == Cautions.Noise);
        Assert.Empty(Under(Own with { Noise = [] }).Noise);

        Job silent = InventedJobs.OccupiedHouse() with { Shop = InventedJobs.Shop with { Limits = LimitSets.Osha, Noise = [] } };
        Assert.Contains(silent.Plan().Noise, day => day.Doses.Any(dose => dose.Comparison.Outcome == ComparisonOutcome.CannotBeJudged));
        Assert.Throws<ArgumentException>(() => _ = Shop.Generic with { Noise = [.. Shop.Generic.Noise, Shop.Generic.Noise[0]] });
        Numbers.Refuses("SoundLevel", () => _ = new Refinish.Jobs.Operation { Id = "a", Kind = WorkKind.Other, Instruction = "x", SoundLevel = Level.FromDecibels(20) });
        Numbers.Refuses("Limits", () => _ = Shop.Generic with { Limits = Own with { FlammableDesign = FlammableShare.Quarter } });
    }

    private static JobPlan Under(LimitSet limits) => (InventedJobs.OccupiedHouse() with { Shop = InventedJobs.Shop with { Limits = limits } }).Plan();

    private static AirStudy Air(JobPlan plan) => plan.Air[0].Study!;

    private static ExposureLimit Butyl(double ppm) => new()
    {
        CasNumber = "123-86-4", Substance = "n-butyl acetate", Authority = "our rule", Jurisdiction = "here", Kind = ExposureLimitKind.Twa8h,
        VolumeFraction = Ratio.FromPartsPerMillion(ppm), MassConcentration = null, AsOf = "2027", Standing = Standing.Supplied,
        Source = Source.Invented("a house rule for this test"),
    };
}

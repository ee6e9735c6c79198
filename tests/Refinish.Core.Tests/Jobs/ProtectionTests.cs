using System;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Jobs;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

public class ProtectionTests
{
    private static Job Job => InventedJobs.OccupiedHouse();

    // Every limit of immediate danger taken as a tenth of a ppm, so that the vapour of any coat passes it.
    private static Job Dangerous => Job with
    {
        Shop = Job.Shop with
        {
            Limits = LimitSets.UnitedStates with
            {
                Exposure =
                [
                    .. PublishedLimits.UnitedStates.Select(limit => limit.Kind == ExposureLimitKind.Idlh
                        ? limit with { VolumeFraction = Ratio.FromPartsPerMillion(0.1), MassConcentration = null }
                        : limit),
                ],
            },
        },
    };

    [Fact]
    [Evidence(Basis.Contract, "where isocyanates are sprayed nothing that only filters is named, for the room and for whoever is in it; each need says by how much common kinds fall short")]
    public void Isocyanates_are_not_left_to_a_filter()
    {
        JobPlan plan = Job.Plan();
        Assert.True(plan.Air[0].AsksForAir);
        Assert.NotEmpty(plan.Protection);
        Assert.All(plan.Protection, need =>
        {
            Assert.True(need.AsksForAir);
            Assert.All(need.Respirators, kind => Assert.True(kind.SuppliesAir && kind.AssignedProtectionFactor >= need.HazardRatio));
            Assert.All(need.Checks.Where(check => !check.Respirator.SuppliesAir), check => Assert.False(check.Reaches));
            Assert.All(need.Checks, check => Assert.Equal(need.HazardRatio / check.Respirator.AssignedProtectionFactor, check.InsideOverLimit));
        });
        ProtectionNeed worst = plan.Air[0].Hardest!;
        Assert.Equal(plan.Air[0].Protection.Max(need => need.Comparison.Outcome == ComparisonOutcome.Beyond ? need.HazardRatio : 0), worst.HazardRatio);
        Assert.Contains("nothing that only filters", worst.InWords(), StringComparison.Ordinal);
        foreach (RespiratorCheck check in worst.Checks.Where(check => check.Exclusion == RespiratorExclusion.None))
        {
            Assert.Contains(check.Respirator.ToString(), worst.InWords(), StringComparison.Ordinal);
        }

        Assert.DoesNotContain("safe", worst.InWords(), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    [Evidence(Basis.Contract, "without isocyanates filters come into question up to their factor")]
    public void Vapour_alone_may_be_filtered_up_to_the_factor()
    {
        CoatingSystem epoxy = new("epoxy", "epoxy alone", [.. Job.Shop.System.Layers.Where(layer => layer.Product.IsocyanateFraction.DecimalFractions == 0).Select(SystemStep.Coat)],
            null, Source.Invented("for this test"));
        JobPlan plan = (Job with { Shop = Job.Shop with { System = epoxy }, Fixtures = [Job.Fixtures[0] with { Options = [] }] }).Plan();
        Assert.False(plan.Air[0].AsksForAir);
        ProtectionNeed[] needs = [.. plan.Air[0].Protection.Where(need => need.HazardRatio is > 1 and <= 1000)];
        Assert.NotEmpty(needs);
        Assert.All(needs, need => Assert.Contains(need.Respirators, kind => !kind.SuppliesAir));
    }

    [Fact]
    [Evidence(Basis.Contract, "in immediately dangerous air only the two listed kinds are named, whatever the ratio, for the room and for whoever is in it")]
    public void Immediate_danger_leaves_only_the_listed_kinds()
    {
        JobPlan plan = Dangerous.Plan();
        Assert.False(Job.Plan().Air[0].IsImmediatelyDangerous);
        Assert.True(plan.Air[0].IsImmediatelyDangerous);
        Assert.Contains(plan.Cautions, caution => caution.Caution.Code == "immediately-dangerous");
        Assert.NotEmpty(plan.Exposure.SelectMany(day => day.Protection));
        Assert.All(plan.Protection, need =>
        {
            Assert.True(need.IsImmediatelyDangerous);
            Assert.All(need.Respirators, kind => Assert.NotNull(kind.ForImmediateDanger));
        });
        string words = plan.Air[0].Hardest!.InWords();
        Assert.Contains("immediately dangerous", words, StringComparison.Ordinal);
        Assert.DoesNotContain("hood", words, StringComparison.Ordinal);
    }

    [Fact]
    [Evidence(Basis.Contract, "an exposure that cannot be judged names no respirator and says what that means")]
    public void What_is_not_known_names_no_respirator()
    {
        JobPlan plan = (Job with { Shop = Job.Shop with { AirborneFraction = null } }).Plan();
        ProtectionNeed mist = plan.Protection.First(need => need.Comparison.Subject.StartsWith("polyisocyanate mist", StringComparison.Ordinal));
        Assert.Empty(mist.Respirators);
        Assert.All(mist.Checks, check => Assert.False(check.Reaches));
        Assert.Contains("immediately dangerous", mist.InWords(), StringComparison.Ordinal);
    }
}

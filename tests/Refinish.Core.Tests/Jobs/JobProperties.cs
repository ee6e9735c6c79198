using System;
using Refinish.Jobs;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>What holds for every whole job, over random jobs; a job that breaks a rule is made as small as it will go before it is
/// told.</summary>
public class JobProperties
{
    [Fact]
    [Evidence(Basis.Contract, "Plan() never throws for a job whose parts could be made: random jobs, sensible or not")]
    public void A_plan_never_throws() => Holds(120, RandomJobs.Wild, JobRules.Throws);

    [Fact]
    [Evidence(Basis.Contract, "what people breathe can be asked of every plan: random jobs, sensible or not")]
    public void Exposure_never_throws() => Holds(100, RandomJobs.Wild, JobRules.ThrowsForBreathing);

    [Fact]
    [Evidence(Basis.Identity, "ids of operations, runs, objections and lines are unique: random jobs")]
    public void Ids_are_unique() => Holds(100, RandomJobs.Wild, JobRules.RepeatsAnId);

    [Fact]
    [Evidence(Basis.Identity, "lines add up to net and total, fixtures to net, cups to coats, kits to needs: random jobs that a shop "
        + "would take on")]
    public void Everything_adds_up() => Holds(80, RandomJobs.Tame, JobRules.DoesNotAddUp);

    [Fact]
    [Evidence(Basis.Identity, "the same over random jobs, sensible or not: what is scheduled has cups")]
    public void Everything_adds_up_in_any_climate() => Holds(80, RandomJobs.Wild, JobRules.DoesNotAddUp);

    [Fact]
    [Evidence(Basis.Independent, "a verifier that shares no code with the search reads hours, rooms, dust, people, tools, waits, recoat "
        + "windows and open times: random jobs")]
    public void Every_rule_of_the_site_is_kept()
    {
        Holds(80, RandomJobs.Tame, JobRules.BreaksTheSite);
        Holds(80, RandomJobs.Wild, JobRules.BreaksTheSite);
    }

    [Fact]
    [Evidence(Basis.Independent, "no procedure breaks the order of the trade, written down here as pairs and read against the times: random surveys, systems and options")]
    public void Every_order_is_that_of_the_trade() => Holds(100, RandomJobs.Wild, JobRules.BreaksTheOrder);

    [Fact]
    [Evidence(Basis.Independent, "read from the timeline: one gun goes on to another product only after cleaning, what fills its hose is "
        + "mixed again after that, and mixed coating is out of it within its pot life: random jobs")]
    public void The_gun_is_clean_when_it_has_to_be() => Holds(60, RandomJobs.Tame, JobRules.LeavesTheGunDirty);

    internal static void Holds(int jobs, Func<int, Job> make, Func<Job, string?> breach)
    {
        for (int seed = 0; seed < jobs; seed++)
        {
            Job job = make(seed);
            if (breach(job) is string why)
            {
                Job smallest = Shrinking.Smallest(job, candidate => breach(candidate) is not null);
                Assert.Fail("seed " + seed + ": " + why + "\nsmallest: " + breach(smallest) + "\n" + Shrinking.Describe(smallest));
            }
        }
    }
}

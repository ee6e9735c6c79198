using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>What holds between two whole jobs that differ in one thing, over random jobs.</summary>
public class PairProperties
{
    [Fact]
    [Evidence(Basis.Identity, "striking a fixture or declining an option never raises the total beyond the rounding of hours: random jobs")]
    public void Less_never_costs_more() => JobProperties.Holds(25, RandomJobs.Tame, JobRules.CostsMoreWithLess);

    [Fact]
    [Evidence(Basis.Identity, "a fixture a fifth larger never takes less coating: random jobs")]
    public void More_area_never_takes_less_coating() => JobProperties.Holds(40, RandomJobs.Wild, JobRules.TakesLessForMore);

    [Fact]
    [Evidence(Basis.Identity, "a fixture a fifth larger never costs less beyond the rounding of hours: random jobs")]
    public void More_area_never_costs_less() => JobProperties.Holds(25, RandomJobs.Tame, JobRules.CostsLessForMore);

    [Fact]
    [Evidence(Basis.Identity, "1.5 K colder in held rooms, and no coat dries or cures sooner and no wait is shorter: random jobs")]
    public void Cold_never_cures_sooner()
    {
        JobProperties.Holds(60, RandomJobs.Tame, JobRules.CuresSoonerInTheCold);
        JobProperties.Holds(60, RandomJobs.Wild, JobRules.CuresSoonerInTheCold);
    }

    [Fact]
    [Evidence(Basis.Identity, "fixtures, rooms and price book listed the other way round give the same ids: random jobs")]
    public void Ids_do_not_depend_on_the_order() => JobProperties.Holds(60, RandomJobs.Wild, JobRules.DependsOnTheOrderOfIds);

    [Fact]
    [Evidence(Basis.Identity, "every schedule of a later start is one of an earlier start: a minute never adds a trip: random jobs")]
    public void A_minute_never_adds_a_trip()
    {
        JobProperties.Holds(60, RandomJobs.Tame, JobRules.AMinuteAddsATrip);
        JobProperties.Holds(60, RandomJobs.Wild, JobRules.AMinuteAddsATrip);
    }
}

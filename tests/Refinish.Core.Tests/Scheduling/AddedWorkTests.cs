using System;
using System.Linq;
using Refinish.Scheduling;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Scheduling;

public class AddedWorkTests
{
    [Fact]
    [Evidence(Basis.Identity, "random works to which a step after another is added: every rule is kept, read by code that shares nothing with the search, and what is said to be proved holds against a search of its own")]
    public void What_is_added_is_fitted_in_by_every_rule()
    {
        int fitted = 0;
        for (int seed = 0; seed < 300; seed++)
        {
            SiteWork small = SiteWorks.RandomSmall(seed);
            SiteSchedule earlier = small.Solve();
            if (!earlier.IsPossible)
            {
                continue;
            }

            SiteWork large = small with
            {
                Steps = [.. small.Steps, SiteWorks.Step("added", 0.2, null)],
                Lags = [.. small.Lags, new StepLag(small.Steps[seed % small.Steps.Count].Id, "added", TimeSpan.Zero, null, "cleaned after it")],
            };
            SiteSchedule after = large.SolveAfter(earlier, SearchEffort.Standard);
            SiteSchedule anew = large.Solve();
            Assert.Equal(anew.IsPossible, after.IsPossible);
            if (!after.IsPossible)
            {
                continue;
            }

            Assert.Empty(SiteVerifier.Breaches(after));
            if (after.IsFitted)
            {
                fitted++;
                Assert.True(after.Finish <= earlier.Finish && after.Visits.Count <= earlier.Visits.Count);
                Assert.True(anew.Visits.Count >= after.VisitsBound || anew.Finish > after.LatestEnd);
                Assert.True(anew.Finish >= after.FinishBound || (large.Prefers == SchedulePreference.FewestVisits && anew.Visits.Count > after.Visits.Count));
            }
        }

        Assert.InRange(fitted, 30, 300);
    }

    [Fact]
    [Evidence(Basis.Contract, "a proof is taken over only where every rule of the smaller work is one of the larger")]
    public void A_rule_less_is_no_addition()
    {
        SiteWork work = new()
        {
            Start = SiteWorks.Monday,
            Calendar = SiteWorks.Week,
            Steps = [SiteWorks.Step("prime", 1, "bath"), SiteWorks.Step("coat", 1, "bath")],
            Lags = [new StepLag("prime", "coat", TimeSpan.FromHours(2), TimeSpan.FromHours(24), "recoat")],
        };
        SiteWork With(StepLag lag) => work with { Lags = [lag] };
        Assert.True(AddedWork.IsAddedTo(work, work));
        Assert.True(AddedWork.IsAddedTo(work, With(new StepLag("prime", "coat", TimeSpan.FromHours(3), TimeSpan.FromHours(20), "stricter"))));
        Assert.False(AddedWork.IsAddedTo(work, With(new StepLag("prime", "coat", TimeSpan.FromHours(1), TimeSpan.FromHours(24), "sooner"))));
        Assert.False(AddedWork.IsAddedTo(work, With(new StepLag("prime", "coat", TimeSpan.FromHours(2), null, "open for ever"))));
        Assert.False(AddedWork.IsAddedTo(work, work with { Lags = [] }));
        Assert.False(AddedWork.IsAddedTo(work, work with { Crew = 2 }));
        Assert.False(AddedWork.IsAddedTo(work, work with { Steps = [work.Steps[0], work.Steps[1] with { Duration = TimeSpan.FromHours(2) }] }));
        Assert.True(AddedWork.IsAddedTo(work, work with { Steps = [.. work.Steps, SiteWorks.Step("tidy", 1, "bath")] }));
    }
}

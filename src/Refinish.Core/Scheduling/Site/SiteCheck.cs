using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>Refuses a work whose ids, lags, people or tools do not fit each other.</summary>
internal static class SiteCheck
{
    /// <summary>The number of each step by its id.</summary>
    /// <exception cref="ArgumentException">Something does not fit.</exception>
    public static Dictionary<string, int> Index(SiteWork work)
    {
        Dictionary<string, int> index = SiteStep.Indexed(work.Steps, nameof(work));
        foreach (SiteStep step in work.Steps)
        {
            if (step.People > work.Crew)
            {
                throw new ArgumentException(
                    "'" + step.Name + "' takes " + Figures.Fixed(step.People, 0) + " people; allowed: at most the crew, " + Figures.Fixed(work.Crew, 0) + ".", nameof(work));
            }
        }

        CheckLags(work, index);
        if (work.Tools.GroupBy(tool => tool.Name).FirstOrDefault(same => same.Count() > 1) is IGrouping<string, SiteTool> twice)
        {
            throw new ArgumentException("The tool '" + twice.Key + "' is listed twice.", nameof(work));
        }

        return index;
    }

    private static void CheckLags(SiteWork work, Dictionary<string, int> index)
    {
        for (int k = 0; k < work.Lags.Count; k++)
        {
            StepLag lag = work.Lags[k];
            lag.CheckEnds(index, nameof(work));
            SiteStep first = work.Steps[index[lag.Before]];
            if (lag.Maximum is not null && first.IsAttended && first.IsInterruptible)
            {
                throw new ArgumentException(
                    "The lag '" + lag.Reason + "' has a maximum after '" + first.Name + "', which may be interrupted; allowed: a maximum only after steps done in one go.", nameof(work));
            }
        }
    }
}

using System.Collections.Generic;
using System.Linq;
using Refinish.Jobs;

namespace Refinish.Pictures.Drawing;

/// <summary>What stands in the way of a plan, as lines that a picture shows before anything else.</summary>
internal static class Objections
{
    public static IReadOnlyList<string> Of(JobPlan? plan, DisplayUnits units, bool hasResult)
    {
        if (plan is null)
        {
            return [];
        }

        List<string> lines = [.. plan.Objections.Select(objection => objection.Sentence(units)).Distinct()];
        if (hasResult && lines.Count > 0)
        {
            lines.Insert(0, "Provisional: it holds only once what follows is removed.");
        }

        return lines;
    }
}

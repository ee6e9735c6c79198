using System.Collections.Generic;
using Refinish.Jobs;

namespace Refinish.Samples.BathroomJob;

/// <summary>
/// What can hurt people in this job, what kills fastest first, before anything is mixed: a list for the crew, with whom it concerns, and a short one each
/// for the customer and the occupants. The operations name these by their codes.
/// </summary>
internal static class CautionSheet
{
    public static void Write(Paper paper, JobPlan plan)
    {
        Write(paper, "Cautions for the crew", plan.CautionsFor(Audience.Crew));
        Write(paper, "Cautions for the customer", plan.CautionsFor(Audience.Customer));
        Write(paper, "Cautions for the occupants", plan.CautionsFor(Audience.Occupant));
    }

    private static void Write(Paper paper, string heading, IEnumerable<PlannedCaution> cautions)
    {
        paper.Heading(heading);
        foreach (PlannedCaution planned in cautions)
        {
            Caution caution = planned.Caution;
            string whom = planned.Crew.Count > 0 ? " [" + string.Join(", ", planned.Crew) + "]" : string.Empty;
            paper.Line(caution.Code + whom + ": " + caution.Sentence + " (Decided by: " + caution.DecidedBy + ".)", 0, "! ");
        }
    }
}

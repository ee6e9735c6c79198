using System;
using System.Collections.Generic;
using Refinish.Jobs;

namespace Refinish.Samples.BathroomJob;

/// <summary>
/// What can hurt people in this job, what kills fastest first, before anything is mixed: a list for the crew, with whom it concerns and
/// the codes by which the operations name them, and a short one each for the customer and the occupants.
/// </summary>
internal static class CautionSheet
{
    public static void Write(Paper paper, JobPlan plan)
    {
        Write(paper, "Cautions for the crew", plan.CautionsFor(Audience.Crew), WithCrew);
        Write(paper, "Cautions for the customer", plan.CautionsFor(Audience.Customer), InWords);
        Write(paper, "Cautions for the occupants", plan.CautionsFor(Audience.Occupant), InWords);
    }

    private static void Write(Paper paper, string heading, IEnumerable<PlannedCaution> cautions, Func<PlannedCaution, string> said)
    {
        paper.Heading(heading);
        foreach (PlannedCaution planned in cautions)
        {
            paper.Line(said(planned), 0, "! ");
        }
    }

    private static string WithCrew(PlannedCaution planned) => planned.Caution.Code
        + (planned.Crew.Count > 0 ? " [" + string.Join(", ", planned.Crew) + "]" : string.Empty) + ": " + InWords(planned);

    // Who lives there reads neither the codes of the operations nor the names of the crew.
    private static string InWords(PlannedCaution planned) =>
        planned.Caution.Sentence + " (Decided by: " + planned.Caution.DecidedBy + ".)";
}

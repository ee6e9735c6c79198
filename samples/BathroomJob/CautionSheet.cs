using Refinish.Jobs;

namespace Refinish.Samples.BathroomJob;

/// <summary>
/// What can hurt people in this job, what kills fastest first, before anything is mixed. The operations name these by their codes.
/// </summary>
internal static class CautionSheet
{
    public static void Write(Paper paper, JobPlan plan)
    {
        paper.Heading("Cautions");
        foreach (Caution caution in plan.Cautions)
        {
            paper.Line(caution.Code + ": " + caution.Sentence + " (Decided by: " + caution.DecidedBy + ".)", 0, "! ");
        }
    }
}

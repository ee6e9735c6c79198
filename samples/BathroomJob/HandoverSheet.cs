using System.Linq;
using Refinish.Jobs;

namespace Refinish.Samples.BathroomJob;

/// <summary>What the customer takes, what the shop files, and what the plan takes for granted.</summary>
internal static class HandoverSheet
{
    public static void Write(Paper paper, BathroomPlan plan)
    {
        paper.Heading("Handover");
        if (plan.Handover is not Handover handover)
        {
            paper.Line("Nothing can be promised while the job sheet says STOP.");
        }
        else
        {
            paper.Line("No water before " + Paper.Day(handover.WaterFrom) + " " + Paper.Clock(handover.WaterFrom) + " (coating " + Paper.Day(handover.CoatingReady) + " "
                + Paper.Clock(handover.CoatingReady) + " at " + paper.Show(Measure.Temperature, handover.HeldAt.Kelvins) + ", caulk " + Paper.Day(handover.CaulkReady) + " "
                + Paper.Clock(handover.CaulkReady) + ", drain trim " + Paper.Day(handover.DrainTrimReady) + " " + Paper.Clock(handover.DrainTrimReady) + ")");
            paper.Line("Full cure " + Paper.Day(handover.FullCure) + "; warranty until " + Paper.Day(handover.WarrantyUntil));
            foreach (string limit in handover.CareLimits.Concat(handover.Covers.Select(cover => "Covered: " + cover)).Concat(handover.Exclusions.Select(exclusion => "Not covered: " + exclusion)))
            {
                paper.Line(limit, 2, "· ");
            }

            paper.Line("Inspect: dry film " + paper.Show(Measure.Film, handover.Film.Minimum.Meters) + " to " + paper.Show(Measure.Film, handover.Film.Maximum.Meters)
                + " over what was there before, " + handover.Spots + " spots of three readings");
            foreach (string entry in handover.Record)
            {
                paper.Line(entry, 2, "[ ] ");
            }
        }

        paper.Heading("Taken for granted");
        foreach (string assumption in plan.Assumptions)
        {
            paper.Line(assumption, 0, "· ");
        }
    }
}

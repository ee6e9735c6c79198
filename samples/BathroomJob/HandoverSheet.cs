using System;
using System.Linq;
using Refinish.Jobs;

namespace Refinish.Samples.BathroomJob;

/// <summary>What the customer takes, what the shop files, and what the plan takes for granted.</summary>
internal static class HandoverSheet
{
    public static void Write(Paper paper, JobPlan plan)
    {
        paper.Heading("Handover");
        if (Of(plan) is not Handover handover)
        {
            paper.Line("Nothing can be promised while the job sheet says STOP.");
        }
        else
        {
            if (plan.Handover is null)
            {
                paper.Line("Provisional, for the fixtures that are planned; see STOP on the job sheet.");
            }

            Fixtures(paper, handover);
            foreach (string limit in handover.CareLimits.Concat(handover.Covers.Select(cover => "Covered: " + cover))
                .Concat(handover.Exclusions.Select(exclusion => "Not covered: " + exclusion)))
            {
                paper.Line(limit, 2, "· ");
            }

            foreach (Caution caution in handover.Cautions)
            {
                paper.Line(caution.ToString(), 0, "! ");
            }

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

    // A plan with any objection has no handover of its own. One that only leaves fixtures out has times that hold for the others, so the
    // stage is called alone.
    private static Handover? Of(JobPlan plan) => plan.Handover
        ?? (plan.Schedule is { IsPossible: true } schedule && plan.Objections.All(objection =>
            objection.Kind == ObjectionKind.FixtureLeftOut) ? new Handover(schedule) : null);

    private static void Fixtures(Paper paper, Handover handover)
    {
        foreach (FixtureHandover fixture in handover.Fixtures)
        {
            paper.Line(fixture.Procedure.Fixture.Name + ": water may run from " + At(fixture.WaterFrom)
                + ", when the last of these is ready: coating " + At(fixture.CoatingReady)
                + (fixture.Surface is { } surface ? " at " + paper.Show(Measure.Temperature, surface.Kelvins) + " on the surface"
                    : " by the room's own climate") + ", caulk " + At(fixture.CaulkReady)
                + (fixture.DrainTrimReady > fixture.CaulkReady ? ", drain trim " + At(fixture.DrainTrimReady) : string.Empty));
            paper.Line("Fully cured from " + At(fixture.FullCure) + "; warranty until " + Paper.Day(fixture.WarrantyUntil) + "; inspect "
                + fixture.Spots + " spots of three readings, dry film "
                + paper.Show(Measure.Film, fixture.Film.Minimum.Meters) + " to " + paper.Show(Measure.Film, fixture.Film.Maximum.Meters)
                    + " over what was there before", 2);
        }
    }

    private static string At(DateTimeOffset? instant) => instant is { } one ? Paper.Day(one) + " " + Paper.Clock(one)
        : "an hour that cannot be said";
}

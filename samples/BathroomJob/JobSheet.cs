using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;

namespace Refinish.Samples.BathroomJob;

/// <summary>
/// The first page: what stands in the way, what has to be done before the plan holds, and what was found on each fixture.
/// </summary>
internal static class JobSheet
{
    public static void Write(Paper paper, JobPlan plan)
    {
        paper.Line(plan.Job.Name);
        paper.Line("Invented demonstration. Rates, prices, findings and the generic products are invented: replace them with your own "
            + "and with your data sheets.");
        paper.Heading("Job sheet");
        Objections(paper, plan);
        foreach (PlanCondition condition in plan.Conditions)
        {
            paper.Line(condition.About + ": " + condition.Sentence(paper.System) + "; " + condition.Remedy, 0, "FIRST  ");
        }

        foreach (Doubt doubt in plan.Doubts)
        {
            paper.Line(doubt.About + ": " + doubt.Sentence(paper.System) + ". " + doubt.Remedy, 0, "DOUBT  ");
        }

        if (plan.Protection.Count > 0)
        {
            ProtectionNeed? worst = plan.Air.Select(room => room.Hardest).OfType<ProtectionNeed>()
                .OrderByDescending(need => need.HazardRatio ?? double.PositiveInfinity).FirstOrDefault();
            paper.Line(
                plan.Protection.Count + " exposure comparisons are beyond their limits or cannot be judged (page Air). The fan does not "
                + "answer them: nobody opens a can without the respiratory protection that the employer's programme names."
                + (worst is null ? string.Empty : " The worst, in " + worst.About + (worst.HazardRatio is double ratio
                    ? ", asks for a protection factor of " + paper.Show(Measure.Number, ratio, 2) + "; page Air says which kinds fall short."
                    : ", cannot be judged: no protection factor can be named (page Air).")),
                0, "BREATHING  ");
        }

        paper.Line();
        foreach (Procedure procedure in plan.Procedures)
        {
            WriteFixture(paper, procedure);
        }

        paper.Line("All planned fixtures: " + paper.Show(Measure.Area, plan.CoatedArea.SquareMeters));
    }

    // A fixture that is left out makes the plan provisional, though the others are planned; any other objection puts times and price in
    // doubt.
    private static void Objections(Paper paper, JobPlan plan)
    {
        if (plan.IsPossible)
        {
            paper.Line("Nothing was found that stands in the way. The conditions have to be met first.");
        }
        else
        {
            paper.Line(plan.Objections.All(objection => objection.Kind == ObjectionKind.FixtureLeftOut)
                ? "PROVISIONAL: a fixture is left out. Times, quantities and price below are for the others; they hold once the customer "
                    + "has agreed to that."
                : "PROVISIONAL: times, quantities and price below hold only once these objections are removed.");
        }

        foreach (PlanObjection objection in plan.Objections)
        {
            paper.Line(objection.Sentence(paper.System), 0, "STOP  ");
        }
    }

    private static void WriteFixture(Paper paper, Procedure procedure)
    {
        paper.Line(procedure.Fixture.Id + " · " + procedure.Fixture.Name + " · " + procedure.Fixture.Survey.Material.Name + " · "
            + procedure.OldCoat);
        paper.Line(procedure.Verdict.Suitability switch
        {
            Suitability.Suitable => "may be refinished; no rule objects",
            Suitability.SuitableWithConditions => "may be refinished once each condition below is met",
            _ => "not to be refinished as it stands",
        }, 2, "Verdict  ");
        foreach (VerdictReason reason in procedure.Verdict.Reasons)
        {
            paper.Line(reason.SentenceIn(paper.System) + ": " + reason.Remedy, 11, "· ");
        }

        foreach (string objection in procedure.SystemObjections.Concat(procedure.Refusals))
        {
            paper.Line(objection, 11, "· ");
        }

        if (procedure.IsPlanned)
        {
            WritePlanned(paper, procedure);
        }

        paper.Line();
    }

    private static void WritePlanned(Paper paper, Procedure procedure)
    {
        IFixture shape = procedure.Fixture.Fixture;
        List<string[]> zones = [.. shape.Zones.Select(zone => new[]
        {
            zone.Kind.ToString(),
            paper.Show(Measure.Area, zone.Area.SquareMeters),
            paper.Show(Measure.Angle, zone.SlopeFromHorizontal.Radians, 2) + " from level",
        })];
        zones.Add(["together", paper.Show(Measure.Area, procedure.CoatedArea.SquareMeters, 4), "tape "
            + paper.Show(Measure.Distance, shape.MaskedEdge.Meters)]);
        paper.Table(zones, "lrl", 11);
        if (shape.WaterCapacity is { } capacity)
        {
            paper.Line("It would hold " + paper.Show(Measure.Capacity, capacity.CubicMeters)
                + " to the rim: check that against what you know of it.", 11);
        }

        foreach (FillerVolume found in procedure.Filler.Items.Where(found => found.IsFilled))
        {
            string second = found.SinkAgainstFilm.Outcome == ComparisonOutcome.Within ? string.Empty
                : "; it sinks " + paper.Show(Measure.Film, found.Sink.Meters, 2) + " on curing, so fill a second time";
            paper.Line(found.Defect.Describe(paper.System) + ": " + paper.Show(Measure.Liquid, found.Mixed.CubicMeters, 2) + " of filler"
                + second, 2, "Filler   ");
        }

        paper.Line(procedure.System.Name + ", " + paper.Show(Measure.Film, procedure.System.TotalDryFilm.Meters) + " dry in all; "
            + (procedure.Promoter is { } wipe
            ? "on " + wipe.Name + ", dry after " + Paper.Span(wipe.Flash) + ", its open time " + Paper.Within(wipe.OpenTime)
                + " from the end of wiping to the last stroke of the first coat"
            : "no promoter for what lies under it"), 2, "System   ");
        if (procedure.ColourChange is { } change && procedure.Hiding is { } hiding)
        {
            paper.Line("from ΔE00 = " + change.Ciede2000.ToString("F1", global::System.Globalization.CultureInfo.InvariantCulture)
                + "; by the product's figures "
                + hiding + "; check it on a test patch before the last coat", 2, "Colour   ");
        }

        if (procedure.SlipFloor is { } floor)
        {
            paper.Line(paper.Show(Measure.Mass, floor.ToWeighOut.Kilograms) + " of " + floor.Additive.Name + " on "
                + paper.Show(Measure.Area, floor.Floor.SquareMeters)
                + " of floor; no figure of this plan says how well it grips", 2, "Grains   ");
        }
    }
}

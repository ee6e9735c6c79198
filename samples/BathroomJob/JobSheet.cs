using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;

namespace Refinish.Samples.BathroomJob;

/// <summary>The first page: what is there, what was found, what is done before the first coat.</summary>
internal static class JobSheet
{
    public static void Write(Paper paper, BathroomPlan plan)
    {
        paper.Line(plan.Job.Name);
        paper.Line("Invented demonstration. Rates, prices and the generic products are invented: replace them with your data sheets.");
        paper.Heading("Job sheet");
        foreach (string objection in plan.Objections)
        {
            paper.Line(objection, 0, "STOP  ");
        }

        foreach (FixturePlan fixture in plan.Fixtures)
        {
            WriteFixture(paper, fixture);
        }

        paper.Line("All planned fixtures: " + paper.Show(Measure.Area, plan.CoatedArea.SquareMeters));
        foreach (var wipe in plan.Promoters)
        {
            paper.Line("Wipe: " + paper.Show(Measure.Liquid, wipe.Volume.CubicMeters) + " of " + wipe.Promoter.Name + " on " + paper.Show(Measure.Area, wipe.Area.SquareMeters)
                + "; dry " + Paper.Span(wipe.Promoter.Flash) + ", coat within " + Paper.Span(wipe.Promoter.OpenTime));
        }
    }

    private static void WriteFixture(Paper paper, FixturePlan fixture)
    {
        IFixture shape = fixture.Job.Fixture;
        paper.Line(fixture.Job.Name + " · " + fixture.Job.Survey.Material.InWords());
        paper.Line(fixture.Verdict.Suitability switch
        {
            Suitability.Suitable => "may be refinished; no rule objects",
            Suitability.SuitableWithConditions => "may be refinished once each condition below is met",
            _ => "not to be refinished as it stands",
        }, 2, "Verdict  ");
        foreach (VerdictReason reason in fixture.Verdict.Reasons)
        {
            paper.Line(reason.SentenceIn(paper.System) + ": " + reason.Remedy, 11, "· ");
        }

        List<string[]> zones = [.. shape.Zones.Select(zone => new[]
        {
            zone.Kind.ToString(),
            paper.Show(Measure.Area, zone.Area.SquareMeters),
            paper.Show(Measure.Angle, zone.SlopeFromHorizontal.Radians, 2) + " from level",
        })];
        zones.Add(["together", paper.Show(Measure.Area, shape.CoatedArea.SquareMeters, 4), "tape " + paper.Show(Measure.Distance, shape.MaskedEdge.Meters)]);
        paper.Table(zones, "lrl", 11);
        if (shape.WaterCapacity is { } capacity)
        {
            paper.Line("It would hold " + paper.Show(Measure.Capacity, capacity.CubicMeters) + " to the rim: check that against what you know of it.", 11);
        }

        if (fixture.ColourChange is { } change)
        {
            paper.Line("Colour change ΔE00 = " + change.Ciede2000.ToString("F1", global::System.Globalization.CultureInfo.InvariantCulture)
                + ": check hiding on a test patch before the last coat.", 11);
        }

        if (fixture.Filler.Items.Count > 0)
        {
            paper.Line("Filler " + paper.Show(Measure.Liquid, fixture.Filler.Volume.CubicMeters) + " = " + paper.Show(Measure.Mass, fixture.Filler.ResinMass.Kilograms)
                + " resin + " + paper.Show(Measure.Mass, fixture.Filler.HardenerMass.Kilograms) + " hardener, in " + fixture.Filler.Lifts + (fixture.Filler.Lifts == 1 ? " lift" : " lifts"), 11);
        }

        foreach (PreparationStep step in fixture.Preparation.Steps)
        {
            paper.Line(step.Instruction, 2, "[ ] ");
        }

        paper.Line();
    }
}

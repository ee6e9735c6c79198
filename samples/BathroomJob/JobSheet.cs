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
        foreach (PlanObjection objection in plan.Objections)
        {
            paper.Line(objection.Sentence(paper.System), 0, "STOP  ");
        }

        if (plan.Protection.Count > 0)
        {
            paper.Line(plan.Protection.Count + " exposure comparisons are beyond their limits or cannot be judged (page Air). The fan does not answer them: nobody opens a can without the respiratory protection that the employer's programme names.", 0, "BREATHING  ");
        }

        paper.Line();

        foreach (FixturePlan fixture in plan.Fixtures)
        {
            WriteFixture(paper, fixture);
        }

        paper.Line("All planned fixtures: " + paper.Show(Measure.Area, plan.CoatedArea.SquareMeters));
        FixturePlan[] filled = [.. plan.Fixtures.Where(fixture => fixture.IsPlanned && fixture.Filler.Volume.CubicMeters > 0)];
        if (filled.Length > 0)
        {
            paper.Line("Filler, mixed together: " + paper.Show(Measure.Liquid, filled.Sum(fixture => fixture.Filler.Volume.CubicMeters)) + " of " + plan.Job.Filler.Product.Name
                + " = " + paper.Show(Measure.Mass, filled.Sum(fixture => fixture.Filler.ResinMass.Kilograms)) + " resin + "
                + paper.Show(Measure.Mass, filled.Sum(fixture => fixture.Filler.HardenerMass.Kilograms)) + " hardener, at most "
                + paper.Show(Measure.Length, plan.Job.Filler.Product.MaximumLift.Meters) + " a lift; pot life " + Paper.Span(plan.Job.Filler.Product.PotLife));
        }

        foreach (var wipe in plan.Promoters)
        {
            paper.Line("Wipe: " + paper.Show(Measure.Liquid, wipe.Volume.CubicMeters) + " of " + wipe.Promoter.Name + " on " + paper.Show(Measure.Area, wipe.Area.SquareMeters)
                + "; let it dry " + Paper.Span(wipe.Promoter.Flash) + "; the first coat has to be finished within " + Paper.Span(wipe.Promoter.OpenTime) + " of the first wipe");
        }
    }

    private static void WriteFixture(Paper paper, FixturePlan fixture)
    {
        IFixture shape = fixture.Job.Fixture;
        paper.Line(fixture.Job.Name + " · " + fixture.Job.Survey.Material.InWords());
        foreach (FillerVolume found in fixture.Filler.Items.Where(found => found.IsFilled))
        {
            string second = found.SinkAgainstFilm.Outcome == ComparisonOutcome.Within ? string.Empty
                : "; it sinks " + paper.Show(Measure.Film, found.Sink.Meters, 2) + " on curing, so fill a second time";
            paper.Line(found.Defect.Describe(paper.System) + ": " + paper.Show(Measure.Liquid, found.Mixed.CubicMeters, 2) + " of filler" + second, 2, "Found    ");
        }

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

        foreach (PreparationStep step in fixture.Preparation.Steps)
        {
            paper.Line(step.Instruction, 2, "[ ] ");
        }

        paper.Line();
    }
}

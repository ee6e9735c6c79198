using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Jobs;
using UnitsNet;

namespace Refinish.Samples.BathroomJob;

/// <summary>
/// The air room by room: what the vapour comes to, what the fan would have to move, what breathing protection has to cover.
/// Comparisons, no all-clear.
/// </summary>
internal static class AirSheet
{
    public static void Write(Paper paper, JobPlan plan)
    {
        paper.Heading("Air");
        if (plan.Air.Count == 0)
        {
            paper.Line("The air was not studied; see the job sheet.");
            return;
        }

        foreach (RoomAirPlan room in plan.Air)
        {
            paper.Line(room.Room.ToString());
            if (room.Study is AirStudy study)
            {
                Write(paper, room, study);
            }

            Needs(paper, room);
            paper.Line();
        }

        paper.Line("What each person would breathe without protection, through all rooms, as eight-hour averages");
        // Below a thousandth of the limits a day is not printed: films of days before give off a last trace.
        foreach (DayExposure day in plan.Exposure.Where(day => day.Exposure.StrictestLimit.Value?.Si is null or >= 0.001))
        {
            paper.Line(day.Day.ToString("ddd d MMM", global::System.Globalization.CultureInfo.InvariantCulture) + ": "
                + day.Exposure.StrictestLimit.Sentence(paper.System), 2);
        }

        paper.Line("Without an airflow for everyone's lungs, people at work are protected by their respirator programme, not by this "
            + "fan. Factors are those assigned by 29 CFR 1910.134, Table 1, and count only inside such a programme: "
            + "it decides, with the safety data sheet. "
            + "They are held against the well-mixed room; close to the gun and low in a tub there is more.");
    }

    private static void Write(Paper paper, RoomAirPlan room, AirStudy air)
    {
        double delivered = air.Exhaust.DeliveredFraction.DecimalFractions;
        paper.Line("Fan: " + Flow(paper, air.Exhaust.LabelFlow) + " on its label, " + Flow(paper, air.Exhaust.EffectiveFlow)
            + " really moved, "
            + Flow(paper, air.Exhaust.FreshAirFlow) + " of it counted as fresh after mixing", 2);
        Needed(paper, "To keep the vapour within its share of the lower flammable limit, as sprayed and dried here",
            air.AirflowForFlammableLimit, delivered);
        Needed(paper, "To bring the exposure indices below to one by air alone", air.AirflowForExposureIndex, delivered);
        foreach (LimitComparison comparison in new[] { room.FlammableAirflow!, air.FlammableLimit, air.FlammableDesignLine })
        {
            paper.Line(comparison.Sentence(paper.System), 2, "· ");
        }

        int open = air.Exposure.Count(exposure => exposure.Comparison.Outcome != ComparisonOutcome.Within);
        paper.Line(open + " of " + air.Exposure.Count + " comparisons of a solvent with a limit are beyond it or cannot be judged, each solvent "
            + "for itself; what they add up to, and mist of isocyanates, come on top.", 2, "· ");
        // The air over the work, where the sprayer stands: a box on the rim, air moving at 0.2 m/s; both invented for the demonstration.
        NearFieldStudy near = new(air, NearField.Box(Length.FromMeters(1.5), Length.FromMeters(0.75), Length.FromMeters(0.8),
            Speed.FromMetersPerSecond(0.2)));
        if (air.ShortTermIndex is double mixed && near.ShortTermIndex is double close)
        {
            paper.Line("Over the work the worst fifteen minutes come to " + paper.Show(Measure.Number, close)
                + " times the short-term limits, in the room to "
                + paper.Show(Measure.Number, mixed) + ".", 2, "· ");
        }

        MakeUpOpening opening = new(air.Exhaust.EffectiveFlow, AirSpeedGuide.MakeUpOpening.Most!.Value);
        paper.Line("Opening for the air that has to come in: at least " + paper.Show(Measure.Area, opening.Needed.SquareMeters)
            + " free, across the room from the fan.", 2, "· ");
        paper.Line("When others may come back is not for this model to say: the safety data sheets of the coatings decide, at least overnight. "
            + "Smell does not tell.", 2, "· ");
    }

    // Each number against its limit, then in one line what the worst of them asks of a respirator.
    private static void Needs(Paper paper, RoomAirPlan room)
    {
        foreach (ProtectionNeed need in room.Protection.DistinctBy(need => need.Comparison.Sentence(paper.System)))
        {
            paper.Line(need.Comparison.Sentence(paper.System) + (need.HazardRatio is double ratio and >= 1.5
                ? "; " + paper.Show(Measure.Number, ratio, 2) + " times"
                : string.Empty), 2, "! ");
        }

        if (room.Hardest is ProtectionNeed worst)
        {
            paper.Line("Breathing protection in " + room.Room.Name + ": " + worst.InWords(), 2, "! ");
        }
    }

    private static string Flow(Paper paper, VolumeFlow flow) => paper.Show(Measure.Airflow, flow.CubicMetersPerSecond);

    // What has to be moved is not what a label says: both, side by side.
    private static void Needed(Paper paper, string purpose, VolumeFlow? moved, double delivered) =>
        paper.Line(moved is { } flow
            ? purpose + ": at least " + Flow(paper, flow) + " really moved, which is "
                + Flow(paper, VolumeFlow.FromCubicMetersPerSecond(flow.CubicMetersPerSecond / delivered)) + " on a label"
            : purpose + ": cannot be judged, a limit is not known", 2, "· ");
}

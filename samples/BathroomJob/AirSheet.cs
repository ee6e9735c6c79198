using System.Linq;
using Refinish.Air;
using Refinish.Jobs;
using UnitsNet;

namespace Refinish.Samples.BathroomJob;

/// <summary>The air: whether coats may go on, what the vapour comes to, what the fan would have to move. Comparisons, no all-clear.</summary>
internal static class AirSheet
{
    public static void Write(Paper paper, BathroomPlan plan)
    {
        paper.Heading("Air");
        foreach (var window in plan.Coats.Select(coat => coat.Window).Distinct())
        {
            paper.Line("Dew point " + paper.Show(Measure.Temperature, window.Air.DewPoint.Kelvins) + ". Measure again before each coat, at the coldest spot.");
            foreach (LimitComparison check in window.Checks)
            {
                paper.Line(check.Sentence(paper.System), 2, "· ");
            }
        }

        if (plan.Air is not AirStudy air)
        {
            paper.Line("The air was not studied; see the job sheet.");
            return;
        }

        double delivered = air.Exhaust.DeliveredFraction.DecimalFractions;
        paper.Line("Fan: " + Flow(paper, air.Exhaust.LabelFlow) + " on its label, " + Flow(paper, air.Exhaust.EffectiveFlow) + " really moved, "
            + Flow(paper, air.Exhaust.FreshAirFlow) + " of it counted as fresh after mixing");
        Needed(paper, "To keep the vapour at a quarter of its lower flammable limit, as sprayed and dried here", air.AirflowForFlammableLimit, delivered);
        Needed(paper, "The same if all of a coat's solvent came off while it is sprayed", air.SteadyAirflowForFlammableLimit, delivered);
        Needed(paper, "To bring the exposure indices below to one by air alone", air.AirflowForExposureIndex, delivered);
        if (plan.FlammableAirflow is { } bound)
        {
            paper.Line(bound.Sentence(paper.System), 2, "· ");
        }

        foreach (LimitComparison comparison in new[] { air.FlammableLimit, air.FlammableDesignLine, air.AdditiveLimit, air.StrictestLimit, air.ShortTermLimit })
        {
            paper.Line(comparison.Sentence(paper.System), 2, "· ");
        }

        paper.Line();
        paper.Table(
            [["", "substance", "averaging", "limit of", "value", "limit", "how far off"], .. air.Exposure.OrderBy(exposure => exposure.Comparison.Outcome == ComparisonOutcome.Beyond ? 0 : 1).Select(exposure => Row(paper, exposure))],
            "llllrrr");
        paper.Line("Limits as of the dates given with them; the current text of each authority stands above this table.");
        // The air over the tub, where the person works: a box on the rim, air moving at 0.2 m/s; both invented for the demonstration.
        NearFieldStudy overTheTub = new(air, NearField.Box(Length.FromMeters(1.5), Length.FromMeters(0.75), Length.FromMeters(0.8), Speed.FromMetersPerSecond(0.2)));
        if (air.ShortTermIndex is double room && overTheTub.ShortTermIndex is double near)
        {
            paper.Line("Over the tub the worst fifteen minutes come to " + paper.Show(Measure.Number, near) + " times the short-term limits, in the room to " + paper.Show(Measure.Number, room) + ".");
        }

        MakeUpOpening opening = new(air.Exhaust.EffectiveFlow, AirSpeedGuide.MakeUpOpening.Most!.Value);
        paper.Line("Opening for the air that has to come in: at least " + paper.Show(Measure.Area, opening.Needed.SquareMeters) + " free, across the room from the fan.");
        foreach (LimitComparison saturation in air.Saturation.Where(comparison => comparison.Outcome != ComparisonOutcome.Within))
        {
            paper.Line(saturation.Sentence(paper.System), 2, "· ");
        }

        foreach (IsocyanateScreen screen in plan.IsocyanateScreens.Take(1))
        {
            paper.Line(screen.Comparison.Sentence(paper.System), 2, "· ");
        }

        paper.Line(air.TimeToReEntry() is { } wait
            ? "By this model the mixture index is down to a tenth (an invented criterion) " + Paper.Span(wait) + " after the last coat. A film gives off its last solvent more slowly: nobody but workers comes in before the safety data sheets allow it, at least overnight. Smell does not tell."
            : "When others may come back cannot be judged here: the safety data sheets decide, at least overnight. Smell does not tell.");
        paper.Line("Without an airflow for everyone's lungs, people at work are protected by their respirator programme, not by this fan.");
    }

    private static string Flow(Paper paper, VolumeFlow flow) => paper.Show(Measure.Airflow, flow.CubicMetersPerSecond);

    // What has to be moved is not what a label says: both, side by side.
    private static void Needed(Paper paper, string purpose, VolumeFlow? moved, double delivered) =>
        paper.Line(moved is { } flow
            ? purpose + ": at least " + Flow(paper, flow) + " really moved, which is " + Flow(paper, VolumeFlow.FromCubicMetersPerSecond(flow.CubicMetersPerSecond / delivered)) + " on a label"
            : purpose + ": cannot be judged, a limit is not known", 2, "· ");

    private static string[] Row(Paper paper, ExposureComparison exposure)
    {
        LimitComparison comparison = exposure.Comparison;
        string averaging = exposure.Limit?.Kind switch
        {
            ExposureLimitKind.Twa8h or null => "8 h",
            ExposureLimitKind.Stel15min => "15 min",
            ExposureLimitKind.Ceiling => "ceiling",
            ExposureLimitKind.BriefPeak => "brief peak",
            _ => "at any time",
        };
        return
        [
            comparison.Outcome == ComparisonOutcome.Within ? string.Empty : "!",
            exposure.Solvent.Name,
            averaging,
            exposure.Limit?.Authority ?? "none known",
            comparison.Value is double value ? paper.Show(comparison.Measure, value) : "not known",
            comparison.Limit is double limit ? paper.Show(comparison.Measure, limit) : "none",
            comparison.Margin switch
            {
                null => "cannot be judged",
                < 0 and double beyond => paper.Show(comparison.Measure, -beyond) + " beyond",
                double within => paper.Show(comparison.Measure, within) + " within",
            },
        ];
    }
}

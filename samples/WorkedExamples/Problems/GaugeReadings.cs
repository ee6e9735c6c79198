using System.Linq;
using Refinish.Inspection;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class GaugeReadings : Problem
{
    public override string Floor => "Inspection";

    public override string Title => "Does the film pass?";

    public override string Question =>
        "A specification asks for 8 to 12 mil. Five spots read 9, 10, 11, 8.5 and 6.2 mil. Does the area pass?";

    public override Backing Backing => Backing.Published;

    public override string Origin =>
        "SSPC-PA 2 training material: for 8 to 12 mil no spot below 6.4 or above 14.4 mil. The readings are invented; their mean by hand is 44.7/5 = 8.94.";

    public override DisplayUnits Units => DisplayUnits.UsCustomary;

    protected override Solution Work(Given given)
    {
        // shown
        Length minimum = Length.FromMils(8);
        Length maximum = Length.FromMils(12);
        Length thinnest = Length.FromMils(6.2);
        // given
        given.Take(ref minimum, "least film of the specification");
        given.Take(ref maximum, "greatest film of the specification");
        given.Take(ref thinnest, "the thinnest of five spots");
        // shown
        FilmJudgement film = new(
            FilmAcceptanceRules.SpotsWithinAFifth,
            new FilmSpecification(minimum, maximum, Source.Supplied("job specification")),
            [Length.FromMils(9), Length.FromMils(10), Length.FromMils(11), Length.FromMils(8.5), thinnest]);
        bool passes = film.IsAccepted;
        // end
        return new(film.Workings(),
        [
            new("mean of the spots", Measure.Film, film.Statistics.Mean.Meters, "8.94", DisplayUnits.UsCustomary),
            new("least that a spot may read", Measure.Film, film.Comparisons[2].Limit!.Value.Si, "6.4", DisplayUnits.UsCustomary),
            new("most that a spot may read", Measure.Film, film.Comparisons[3].Limit!.Value.Si, "14.4", DisplayUnits.UsCustomary),
            new("comparisons beyond their limit (none: it passes)", Measure.Number, passes ? 0 : film.Comparisons.Count(one => one.Outcome != ComparisonOutcome.Within), "1"),
        ]);
    }
}

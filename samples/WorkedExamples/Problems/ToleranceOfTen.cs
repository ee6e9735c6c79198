using System.Linq;
using Refinish.Inspection;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class ToleranceOfTen : Problem
{
    public override string Floor => "Inspection";

    public override string Title => "What do ten readings say about the film between them?";

    public override string Question =>
        "Ten readings of a film were taken. Between which films do 95 % of the whole film lie, with a confidence of 95 %?";

    public override Backing Backing => Backing.Published;

    public override string Origin =>
        "Berthouex and Brown, Statistics for Environmental Engineers, Table 21.1: factor 3.39 for ten readings, two decimals. Its last digit is not always rounded, hence the tolerance. Readings invented.";

    protected override Solution Work(Given given)
    {
        // shown
        Ratio coverage = Ratio.FromPercent(95);
        Ratio confidence = Ratio.FromPercent(95);
        Length last = Length.FromMicrometers(86);
        // given
        given.Take(ref coverage, "part of the film to be covered");
        given.Take(ref confidence, "confidence");
        given.Take(ref last, "the last of ten readings");
        // shown
        double[] micrometers = [71, 84, 92, 77, 80, 88, 75, 83, 79];
        FilmTolerance film = new(
            new FilmSpecification(Length.FromMicrometers(60), Length.FromMicrometers(120), Source.Supplied("job specification")),
            [.. micrometers.Select(reading => Length.FromMicrometers(reading)), last],
            coverage, confidence, ToleranceSide.Both);
        double? factor = film.Factor;
        // end
        return new(film.Workings(),
        [
            new("factor on the standard deviation", Measure.Number, factor!.Value, "3.39", Within: 0.0101),
            new("from", Measure.Film, film.Lower!.Value.Meters),
            new("to", Measure.Film, film.Upper!.Value.Meters),
        ]);
    }
}

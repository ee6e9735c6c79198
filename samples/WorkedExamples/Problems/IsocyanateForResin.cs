using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class IsocyanateForResin : Problem
{
    public override string Floor => "Coatings";

    public override string Title => "How much isocyanate does a urethane resin take?";

    public override string Question =>
        "A resin of hydroxyl number 80 is to be cured with an isocyanate of 23.1 % NCO at an index of 1. How much goes to 100 g of resin?";

    public override Backing Backing => Backing.Published;

    public override string Origin =>
        "Isocyanate maker's nomograph (duranate.com): 26 parts to 100.";

    protected override Solution Work(Given given)
    {
        // shown
        double hydroxylNumber = 80;
        Ratio isocyanateContent = Ratio.FromPercent(23.1);
        double index = 1;
        // given
        given.Take(ref hydroxylNumber, "mg of potassium hydroxide to a gram of resin");
        given.Take(ref isocyanateContent, "NCO groups in the isocyanate, by weight");
        given.Take(ref index, "NCO groups to each OH group");
        // shown
        UrethaneIndex mix = new()
        {
            Resin = Mass.FromGrams(100), HydroxylNumber = hydroxylNumber,
            Isocyanate = Mass.FromGrams(26), IsocyanateContent = isocyanateContent,
        };
        Mass isocyanate = mix.IsocyanateFor(index);
        // end
        return new(mix.Workings(),
        [
            new("isocyanate to 100 g of resin", Measure.Mass, isocyanate.Kilograms, "26"),
            new("index of 26 g to 100 g", Measure.Number, mix.Index),
        ])
        {
            Cautions = mix.Cautions,
        };
    }
}

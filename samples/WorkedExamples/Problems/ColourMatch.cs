using Refinish.Colours;

namespace Refinish.Samples.WorkedExamples;

internal sealed class ColourMatch : Problem
{
    public override string Floor => "Colours";

    public override string Title => "Does the touch-up match?";

    public override string Question =>
        "A colorimeter reads two blues. How far apart are they by CIEDE2000?";

    public override Backing Backing => Backing.Published;

    public override string Origin =>
        "Sharma, Wu and Dalal (2005), Color Research and Application 30(1), Table 1, pair 1; four decimals.";

    protected override Solution Work(Given given)
    {
        // shown
        double l1 = 50, a1 = 2.6772, b1 = -79.7751;
        double l2 = 50, a2 = 0, b2 = -82.7485;
        // given
        given.Take(ref l1, "lightness L* of the old colour");
        given.Take(ref a1, "its a*");
        given.Take(ref b1, "its b*");
        given.Take(ref l2, "lightness L* of the touch-up");
        given.Take(ref a2, "its a*");
        given.Take(ref b2, "its b*");
        // shown
        ColourDifference match = new(new CieLab(l1, a1, b1), new CieLab(l2, a2, b2));
        double apart = match.Ciede2000;
        // end
        return new(match.Workings(), [new("ΔE00", Measure.Number, apart, "2.0425")]);
    }
}

using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class CounterArea : Problem
{
    public override string Floor => "Fixtures";

    public override string Title => "How large is a countertop?";

    public override string Question =>
        "A straight countertop is 96 in long and 25 1/2 in from the wall to the front edge. The edge is 1 1/2 in high, the splash 4 in high and 3/4 in thick. What gets coated?";

    public override Backing Backing => Backing.WorkedApart;

    public override string Origin =>
        "By hand: 96 · (25.5 − 0.75) + 96 · 1.5 + 96 · (4 + 0.75) = 2976 in² = 20.67 ft². The splash covers a strip of the top and shows its own top edge instead; where the tape met the face of the splash, add its thickness first. Measurements invented.";

    public override DisplayUnits Units => DisplayUnits.UsCustomary;

    protected override Solution Work(Given given)
    {
        // shown
        Length length = Length.FromInches(96);
        Length width = Length.FromInches(25.5);
        Length edgeHeight = Length.FromInches(1.5);
        Length backsplashHeight = Length.FromInches(4);
        // given
        given.Take(ref length, "length along the wall");
        given.Take(ref width, "from the wall to the front edge");
        given.Take(ref edgeHeight, "height of the front edge");
        given.Take(ref backsplashHeight, "height of the backsplash");
        // shown
        FlatPanel counter = new(new FlatPanelMeasurements
        {
            Length = length, Width = width,
            ExposedEdge = length, EdgeHeight = edgeHeight,
            BacksplashLength = length, BacksplashHeight = backsplashHeight, BacksplashThickness = Length.FromInches(0.75),
            CutOuts = [],
        });
        Area coated = counter.CoatedArea;
        // end
        return new(counter.Workings(),
        [
            new("coated area", Measure.Area, coated.SquareMeters, "20.67", DisplayUnits.UsCustomary),
            new("edge to tape", Measure.Distance, counter.MaskedEdge.Meters),
        ]);
    }
}

using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class TubFromTape : Problem
{
    public override string Floor => "Fixtures";

    public override string Title => "How large is a bathtub inside, and how much does it hold?";

    public override string Question =>
        "A five-foot recessed tub with a sloped head, rounded corners, an apron, a drain and an overflow was taped. What gets coated, and what does it hold up to the overflow, 3 in below the rim?";

    public override Backing Backing => Backing.WorkedApart;

    public override string Origin =>
        "Area and capacity: worked apart, wall by wall in closed form and again on a mesh that converges. Capacity: Alliance for Water Efficiency, residential bath use, prints 40 to 50 US gal for a standard tub filled to the overflow. Measurements invented.";

    public override DisplayUnits Units => DisplayUnits.UsCustomary;

    protected override Solution Work(Given given)
    {
        // shown
        Length depth = Length.FromInches(13.25);
        Length rimLength = Length.FromInches(53);
        Length rimWidth = Length.FromInches(23.5);
        Length coveRadius = Length.FromInches(2.5);
        // given
        given.Take(ref depth, "from rim to floor");
        given.Take(ref rimLength, "length of the opening at the rim");
        given.Take(ref rimWidth, "width of the opening at the rim");
        given.Take(ref coveRadius, "radius where wall and floor meet");
        // shown
        RecessedBathtub tub = new(new RecessedBathtubMeasurements
        {
            RimLength = rimLength, RimWidth = rimWidth, RimCornerRadius = Length.FromInches(6),
            FloorLength = Length.FromInches(44), FloorWidth = Length.FromInches(19.5), FloorCornerRadius = Length.FromInches(5),
            Depth = depth, HeadRun = Length.FromInches(7), FootRun = rimLength - Length.FromInches(51), CoveRadius = coveRadius,
            OverallLength = Length.FromInches(60), OverallWidth = Length.FromInches(30), ApronHeight = Length.FromInches(14.5),
            DrainDiameter = Length.FromInches(2), OverflowDiameter = Length.FromInches(3),
        });
        Area coated = tub.CoatedArea;
        Volume toOverflow = tub.CapacityBelowRim(Length.FromInches(3));
        // end
        return new(tub.Workings(),
        [
            new("coated area", Measure.Area, coated.SquareMeters, "27.690", DisplayUnits.UsCustomary),
            new("walls", Measure.Area, tub.WallArea.SquareMeters),
            new("capacity to the overflow", Measure.Capacity, toOverflow.CubicMeters, "42.89", DisplayUnits.UsCustomary),
            new("the same, against the published 40 to 50", Measure.Capacity, toOverflow.CubicMeters, "45", DisplayUnits.UsCustomary, 5),
        ]);
    }
}

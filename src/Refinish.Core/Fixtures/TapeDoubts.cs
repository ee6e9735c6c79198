using System.Collections.Generic;
using System.Globalization;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>A practitioner's second look at the tape: what lies outside the usual, said and not corrected.</summary>
/// <remarks>
/// Compared, as far as they apply: the coated area and the capacity of tubs with the bands of common practice, the capacity with the label's (15 % either way),
/// a cove with a third of the depth, cut-outs with 40 % of the top. Every limit carries its source; most are common practice or invented defaults.
/// A fixture that breaks none of them may still be measured wrongly.
/// </remarks>
/// <example><code>
/// RecessedBathtub tub = new(tape);                           // the tub of RecessedBathtubMeasurements
/// TapeDoubts doubts = new(tub, Volume.FromUsGallons(42), tub.CapacityBelowRim(Length.FromInches(3)));
/// bool measureAgain = doubts.Doubts.Count > 0;               // false
/// </code></example>
public sealed record TapeDoubts
{
    private const double SquareFoot = 0.3048 * 0.3048;
    private const double UsGallon = 231 * 0.0254 * 0.0254 * 0.0254;
    private const double Foot = 0.3048;

    private static readonly Source FiveFoot = Source.CommonPractice("a five-foot recessed tub with deck and apron coats 25 to 35 ft² and holds 40 to 60 US gal to the rim");
    private static readonly Source AnyTub = Source.Invented("band in which the inside, deck, roll or apron of a tub is expected: 10 to 60 ft²");
    private static readonly Source Label = Source.Invented("a label and a tape that agree within 15 % are taken to speak of the same tub");
    private static readonly Source CoveLimit = Source.Invented("a cove of more than a third of the depth is rare");
    private static readonly Source CutOutLimit = Source.Invented("cut-outs of more than 40 % of a top are rare");

    /// <summary>Looks at a fixture.</summary>
    /// <param name="fixture">The fixture.</param>
    /// <param name="labelledCapacity">The capacity on the label or in the maker's sheet; <see langword="null"/> when there is none.</param>
    /// <param name="measuredCapacity">The capacity from the tape to the level that the label means, usually the overflow; <see langword="null"/> to take the fixture's own to the rim.</param>
    /// <exception cref="System.ArgumentNullException"><paramref name="fixture"/> is missing.</exception>
    /// <exception cref="System.ArgumentOutOfRangeException">A capacity is not positive.</exception>
    public TapeDoubts(IFixture fixture, Volume? labelledCapacity, Volume? measuredCapacity)
    {
        fixture = RoughFixture.Behind(Guard.NotNull(fixture, nameof(fixture)));
        Bounds positive = Bounds.Positive(Measure.Capacity, 10);
        double? label = labelledCapacity is Volume l ? Guard.Within(l, positive, nameof(labelledCapacity)) : null;
        double? water = measuredCapacity is Volume m ? Guard.Within(m, positive, nameof(measuredCapacity)) : fixture.WaterCapacity?.CubicMeters;
        List<LimitComparison> comparisons = [];
        double area = fixture.CoatedArea.SquareMeters;
        bool tub = fixture is RecessedBathtub or FreestandingTub or OvalTub or CornerTub;
        (double Low, double High) band = (10 * SquareFoot, 60 * SquareFoot);
        if (tub)
        {
            bool five = fixture is RecessedBathtub recessed && IsFiveFoot(recessed);
            band = five ? (25 * SquareFoot, 35 * SquareFoot) : band;
            Source source = five ? FiveFoot : AnyTub;
            comparisons.Add(new("coated area", area, band.Low, LimitSense.AtLeast, Measure.Area, source, "measure length, width and depth again"));
            comparisons.Add(new("coated area", area, band.High, LimitSense.AtMost, Measure.Area, source, "measure length, width and depth again"));
            if (five)
            {
                comparisons.Add(new("capacity to the rim", fixture.WaterCapacity?.CubicMeters, 40 * UsGallon, LimitSense.AtLeast, Measure.Capacity, FiveFoot, "measure the floor and the runs again"));
                comparisons.Add(new("capacity to the rim", fixture.WaterCapacity?.CubicMeters, 60 * UsGallon, LimitSense.AtMost, Measure.Capacity, FiveFoot, "measure the floor and the runs again"));
            }
        }

        if (label is double promised)
        {
            comparisons.Add(new("capacity from the tape beside the label", water, 0.85 * promised, LimitSense.AtLeast, Measure.Capacity, Label, "ask to which level the label counts, then measure again"));
            comparisons.Add(new("capacity from the tape beside the label", water, 1.15 * promised, LimitSense.AtMost, Measure.Capacity, Label, "ask to which level the label counts, then measure again"));
        }

        AddShape(fixture, comparisons);
        Comparisons = new ValueList<LimitComparison>(comparisons);
        Doubts = new ValueList<LimitComparison>(comparisons.FindAll(static comparison => comparison.Outcome == ComparisonOutcome.Beyond));
        MixUp = tub ? Suspect(area, band) : UnitMixUp.NotSuspected;
    }

    /// <summary>Everything that was compared.</summary>
    public IReadOnlyList<LimitComparison> Comparisons { get; }

    /// <summary>The comparisons that went beyond their limit.</summary>
    public IReadOnlyList<LimitComparison> Doubts { get; }

    /// <summary>Whether a tub outside its band would lie inside it if all lengths were 2.54 times larger or smaller.</summary>
    public UnitMixUp MixUp { get; }

    /// <summary>The doubts in one line, in metric units.</summary>
    /// <returns>Text such as <c>no doubts among 4 comparisons</c>.</returns>
    public override string ToString() => Doubts.Count == 0
        ? string.Format(CultureInfo.InvariantCulture, "no doubts among {0} comparisons", Comparisons.Count)
        : string.Join("; ", Doubts);

    private static bool IsFiveFoot(RecessedBathtub tub) =>
        tub.Measurements.OverallLength.Meters is > 4.75 * Foot and < 5.25 * Foot && tub.Measurements.ApronHeight.Meters > 0;

    private static UnitMixUp Suspect(double area, (double Low, double High) band)
    {
        const double Square = 2.54 * 2.54;
        return area < band.Low && area * Square >= band.Low && area * Square <= band.High ? UnitMixUp.InchesEnteredAsCentimetres
            : area > band.High && area / Square >= band.Low && area / Square <= band.High ? UnitMixUp.CentimetresEnteredAsInches
            : UnitMixUp.NotSuspected;
    }

    private static void AddShape(IFixture fixture, List<LimitComparison> comparisons)
    {
        switch (fixture)
        {
            case RecessedBathtub tub:
                comparisons.Add(new("radius of the cove", tub.Measurements.CoveRadius.Meters, tub.Measurements.Depth.Meters / 3, LimitSense.AtMost, Measure.Length, CoveLimit, "measure the cove with a radius gauge"));
                break;
            case FreestandingTub tub:
                comparisons.Add(new("radius of the cove", tub.Measurements.CoveRadius.Meters, tub.Measurements.Depth.Meters / 3, LimitSense.AtMost, Measure.Length, CoveLimit, "measure the cove with a radius gauge"));
                break;
            case FlatPanel panel:
                comparisons.Add(new("cut-outs", panel.OpeningArea.SquareMeters, 0.4 * (panel.TopArea.SquareMeters + panel.OpeningArea.SquareMeters), LimitSense.AtMost, Measure.Area, CutOutLimit, "measure the cut-outs again"));
                break;
            case Countertop counter:
                comparisons.Add(new("cut-outs", counter.OpeningArea.SquareMeters, 0.4 * counter.TopArea.SquareMeters, LimitSense.AtMost, Measure.Area, CutOutLimit, "measure the cut-outs again"));
                break;
        }
    }
}

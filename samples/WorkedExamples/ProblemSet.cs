using System.Collections.Generic;

namespace Refinish.Samples.WorkedExamples;

/// <summary>The problems in the order of the library's floors; a problem's number is its place here.</summary>
internal static class ProblemSet
{
    public static IReadOnlyList<Problem> All { get; } =
    [
        new WetBulb(), new SprayWindowOpen(), new ColourMatch(), new CounterArea(), new HardenerForEpoxy(), new IsocyanateForResin(), new TubFromTape(),
        new VocLessWater(), new VocThinned(), new FordCup(), new GallonCovers(), new OrangePeel(), new ColdPotLife(),
        new PrimerForTub(), new RoughSteel(), new ClearTheRoom(), new OneCoatInBathroom(), new GaugeReadings(), new ToleranceOfTen(),
        new ThreePointTask(), new EightTubsAlike(), new CheapestKits(), new RefinishOrReplaceTub(), new HowLongFinishesLast(), new WhatHoldsTheJobUp(),
    ];
}

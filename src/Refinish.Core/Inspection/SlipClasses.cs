using System.Collections.Generic;

namespace Refinish.Inspection;

/// <summary>Published classes of hard floors by dynamic friction. None is a criterion for bathtubs.</summary>
public static class SlipClasses
{
    private static readonly Source Standard = Source.Published("ANSI A326.3-2021 (published 2 February 2022)", "product use classes (second-hand, from two trade summaries and a specifiers' forum)");
    private static readonly Source Declared = Source.Published(
        "ANSI A326.3-2021 (published 2 February 2022)", "product use classes: declared by the maker, the figure holds where nothing is declared (second-hand)");

    /// <summary>The five classes of ANSI A326.3: level floors walked on with shoes, slightly soapy water.</summary>
    public static IReadOnlyList<SlipClass> HardFloors { get; } = new ValueList<SlipClass>(
    [
        new("Interior, Dry", 0.42, false, Standard),
        new("Interior, Wet", 0.42, true, Standard),
        new("Interior, Wet Plus", 0.50, true, Declared),
        new("Exterior, Wet", 0.55, true, Declared),
        new("Oils/Greases", 0.55, true, Declared),
    ]);
}

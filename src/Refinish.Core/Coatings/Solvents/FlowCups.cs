using System;
using System.Collections.Generic;

namespace Refinish.Coatings;

/// <summary>The standard flow cups with their published equations and ranges of seconds, at 25 °C.</summary>
/// <remarks>
/// Zahn, Shell and Ford: table of a cup maker, constants and ranges read there; the time ranges of Ford 2 to 5 are those of ASTM D1200.
/// ISO 2431 and DIN 53211: equations and ranges read in a public conversion program that names the standards, not in the standards. For
/// 23 °C, ISO's own temperature, the equations are used as they stand.
/// </remarks>
public static class FlowCups
{
    private static readonly Source Maker = Source.Published("table of flow cups by a maker of viscometers (Zahn, Shell, Ford)", "equation and range for each cup");
    private static readonly Source FordFew = Source.Published("table of flow cups by a maker of viscometers", "equation; range of seconds ASTM D1200, second-hand");
    private static readonly Source Program = Source.Published("public flow-cup conversion program naming ISO 2431 and DIN 53211", "equation and range, second-hand");

    /// <summary>Zahn 1: ν = 1.1 (t − 29), 35 to 80 s.</summary>
    public static FlowCup Zahn1 { get; } = Linear("Zahn 1", 1.1, 29, 35, 80, Maker);

    /// <summary>Zahn 2: ν = 3.5 (t − 14), 20 to 80 s.</summary>
    public static FlowCup Zahn2 { get; } = Linear("Zahn 2", 3.5, 14, 20, 80, Maker);

    /// <summary>Zahn 3: ν = 11.7 (t − 7.5), 20 to 80 s.</summary>
    public static FlowCup Zahn3 { get; } = Linear("Zahn 3", 11.7, 7.5, 20, 80, Maker);

    /// <summary>Zahn 4: ν = 14.8 (t − 5), 20 to 80 s.</summary>
    public static FlowCup Zahn4 { get; } = Linear("Zahn 4", 14.8, 5, 20, 80, Maker);

    /// <summary>Zahn 5: ν = 23 t, 20 to 80 s.</summary>
    public static FlowCup Zahn5 { get; } = Linear("Zahn 5", 23, 0, 20, 80, Maker);

    /// <summary>Shell 1: ν = 0.226 (t − 13), 20 to 80 s.</summary>
    public static FlowCup Shell1 { get; } = Linear("Shell 1", 0.226, 13, 20, 80, Maker);

    /// <summary>Shell 2: ν = 0.576 (t − 5), 20 to 80 s.</summary>
    public static FlowCup Shell2 { get; } = Linear("Shell 2", 0.576, 5, 20, 80, Maker);

    /// <summary>Shell 2½: ν = 0.925 (t − 3), 20 to 80 s.</summary>
    public static FlowCup Shell2Half { get; } = Linear("Shell 2.5", 0.925, 3, 20, 80, Maker);

    /// <summary>Shell 3: ν = 1.51 (t − 2), 20 to 80 s.</summary>
    public static FlowCup Shell3 { get; } = Linear("Shell 3", 1.51, 2, 20, 80, Maker);

    /// <summary>Shell 3½: ν = 2.17 (t − 1.5), 20 to 80 s.</summary>
    public static FlowCup Shell3Half { get; } = Linear("Shell 3.5", 2.17, 1.5, 20, 80, Maker);

    /// <summary>Shell 4: ν = 3.45 (t − 1), 20 to 80 s.</summary>
    public static FlowCup Shell4 { get; } = Linear("Shell 4", 3.45, 1, 20, 80, Maker);

    /// <summary>Shell 5: ν = 6.5 (t − 1), 20 to 80 s.</summary>
    public static FlowCup Shell5 { get; } = Linear("Shell 5", 6.5, 1, 20, 80, Maker);

    /// <summary>Shell 6: ν = 16.2 (t − 0.5), 20 to 80 s.</summary>
    public static FlowCup Shell6 { get; } = Linear("Shell 6", 16.2, 0.5, 20, 80, Maker);

    /// <summary>Ford 1: ν = 0.49 (t − 35), 55 to 100 s.</summary>
    public static FlowCup Ford1 { get; } = Linear("Ford 1", 0.49, 35, 55, 100, Maker);

    /// <summary>Ford 2: ν = 1.44 (t − 18), 40 to 100 s.</summary>
    public static FlowCup Ford2 { get; } = Linear("Ford 2", 1.44, 18, 40, 100, FordFew);

    /// <summary>Ford 3: ν = 2.31 (t − 6.58), 20 to 100 s.</summary>
    public static FlowCup Ford3 { get; } = Linear("Ford 3", 2.31, 6.58, 20, 100, FordFew);

    /// <summary>Ford 4: ν = 3.85 (t − 4.49), 20 to 100 s.</summary>
    public static FlowCup Ford4 { get; } = Linear("Ford 4", 3.85, 4.49, 20, 100, FordFew);

    /// <summary>Ford 5: ν = 12.1 (t − 2), 20 to 100 s.</summary>
    public static FlowCup Ford5 { get; } = Linear("Ford 5", 12.1, 2, 20, 100, FordFew);

    /// <summary>ISO 2431, 3 mm: ν = 0.443 t − 200/t, 30 to 100 s.</summary>
    public static FlowCup Iso3 { get; } = Hyperbolic("ISO 2431, 3 mm", 0.443, 200, 30, 100);

    /// <summary>ISO 2431, 4 mm: ν = 1.37 t − 200/t, 30 to 100 s.</summary>
    public static FlowCup Iso4 { get; } = Hyperbolic("ISO 2431, 4 mm", 1.37, 200, 30, 100);

    /// <summary>ISO 2431, 5 mm: ν = 3.28 t − 220/t, 30 to 100 s.</summary>
    public static FlowCup Iso5 { get; } = Hyperbolic("ISO 2431, 5 mm", 3.28, 220, 30, 100);

    /// <summary>ISO 2431, 6 mm: ν = 6.90 t − 570/t, 30 to 100 s.</summary>
    public static FlowCup Iso6 { get; } = Hyperbolic("ISO 2431, 6 mm", 6.90, 570, 30, 100);

    /// <summary>DIN 53211, 4 mm (withdrawn): ν = 4.57 t − 452/t, 25 to 150 s.</summary>
    public static FlowCup Din4 { get; } = Hyperbolic("DIN 53211, 4 mm", 4.57, 452, 25, 150);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<FlowCup> All { get; } = new ValueList<FlowCup>(
    [
        Zahn1, Zahn2, Zahn3, Zahn4, Zahn5, Shell1, Shell2, Shell2Half, Shell3, Shell3Half, Shell4, Shell5, Shell6,
        Ford1, Ford2, Ford3, Ford4, Ford5, Iso3, Iso4, Iso5, Iso6, Din4,
    ]);

    private static FlowCup Linear(string name, double slope, double start, double shortest, double longest, Source source) =>
        new(name, slope, slope * start, 0, TimeSpan.FromSeconds(shortest), TimeSpan.FromSeconds(longest), source);

    private static FlowCup Hyperbolic(string name, double slope, double hyperbola, double shortest, double longest) =>
        new(name, slope, 0, hyperbola, TimeSpan.FromSeconds(shortest), TimeSpan.FromSeconds(longest), Program);
}

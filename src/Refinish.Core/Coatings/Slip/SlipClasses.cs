using System.Collections.Generic;

namespace Refinish.Coatings;

/// <summary>
/// Published classes and criteria of floors by slip tests. None is a test of a bathtub: tubs have none since ASTM F462 was withdrawn in
/// July 2016. Those for bare feet are written for floors about pools and showers.
/// </summary>
public static class SlipClasses
{
    private const string States = "United States";
    private const string February2022 = "A326.3-2021, published 2 February 2022";

    private static readonly Source Standard = Source.Published(
        "ANSI A326.3-2021 (published 2 February 2022)",
            "product use classes (second-hand, from two trade summaries and a specifiers' forum)");
    private static readonly Source Declared = Source.Published(
        "ANSI A326.3-2021 (published 2 February 2022)",
            "product use classes: declared by the maker, the figure holds where nothing is declared (second-hand)");

    private static readonly Source Ramp = Source.Published(
        "DIN 51097", "least angles of groups A, B and C as quoted from GUV-Information of 1999 on a merchant's page; showers are in group B there");

    private static readonly Source Executive = Source.Published(
        "Health and Safety Executive, bands of pendulum values",
            "36 and more called low slip potential, 25 to 35 moderate, below high (second-hand, from two testers' pages)");

    /// <summary>The five classes of ANSI A326.3: level floors walked on with shoes, slightly soapy water.</summary>
    public static IReadOnlyList<SlipClass> HardFloors { get; } = new ValueList<SlipClass>(
    [
        new("ANSI A326.3 Interior, Dry", SlipScale.DynamicFriction, 0.42, false, false, States, February2022, Standard),
        new("ANSI A326.3 Interior, Wet", SlipScale.DynamicFriction, 0.42, true, false, States, February2022, Standard),
        new("ANSI A326.3 Interior, Wet Plus", SlipScale.DynamicFriction, 0.50, true, false, States, February2022, Declared),
        new("ANSI A326.3 Exterior, Wet", SlipScale.DynamicFriction, 0.55, true, false, States, February2022, Declared),
        new("ANSI A326.3 Oils/Greases", SlipScale.DynamicFriction, 0.55, true, false, States, February2022, Declared),
    ]);

    /// <summary>The three groups of DIN 51097 for wet barefoot areas, least first: A 12°, B 18° (showers), C 24°.</summary>
    public static IReadOnlyList<SlipClass> Barefoot { get; } = new ValueList<SlipClass>([Group("A", 12), Group("B", 18), Group("C", 24)]);

    /// <summary>
    /// The British band of low slip potential: a pendulum value of 36 or more, wet; the slider says whether shoes or bare feet are meant.
    /// </summary>
    public static SlipClass PendulumLow { get; } = new(
        "HSE, low slip potential", SlipScale.PendulumValue, 36, true, false, "United Kingdom", "web pages, edition not stated", Executive);

    private static SlipClass Group(string name, double degrees) => new(
        "DIN 51097 group " + name, SlipScale.RampAngle, degrees, true, true, "Germany",
        "as quoted in 1999; EN 16165 has taken the test over (from memory)", Ramp);
}

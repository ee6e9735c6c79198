using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Inspection;

/// <summary>
/// Published rules of acceptance for dry films, as data, with their plans of how much to measure. All were written for steel: on a bathroom
/// fixture they are borrowed, and the contract has to say so.
/// </summary>
public static class FilmAcceptanceRules
{
    private static readonly Ratio Whole = Ratio.FromPercent(100);

    private static readonly Source SpotPlan = Source.Published(
        "SSPC-PA 2 (2004 and later)",
        "number of measurements, second-hand, from training material: each 10 m² (100 ft²) up to 30 m² (300 ft²), three such areas up to 100 m² "
            + "(1000 ft²), three and one more for each further 100 m² (1000 ft²); five spots an area");

    /// <summary>
    /// SSPC-PA 2, the commonly used restriction: the mean of the spots between least and most, no spot below 80 % of the least or above
    /// 120 % of the most; single readings are free.
    /// </summary>
    /// <remarks>
    /// A spot is the mean of at least three gauge readings within a circle of 4 cm, five spots an area of 10 m². The mean is that of
    /// one area: judge each area by itself. Written for metal: on tile, plastic and vitreous china an ultrasonic gauge or a witness
    /// panel takes the magnetic gauge's place. Enamel under the coating reads as coating on a magnetic gauge: measure the bare enamel
    /// first and take it off.
    /// </remarks>
    public static FilmAcceptanceRule SpotsWithinAFifth { get; } = new()
    {
        Name = "spots within a fifth (80/120)",
        Sample = FilmSample.Spot,
        MeanAtLeast = Whole,
        MeanAtMost = Whole,
        EachAtLeast = Ratio.FromPercent(80),
        EachAtMost = Ratio.FromPercent(120),
        Plan = Steps(SpotPlan, 1, 100, 5, (10, 5), (20, 10), (100, 15)),
        Source = Source.Published("SSPC-PA 2 (2004 and later)", "spots; 80 % and 120 % second-hand, from training material"),
    };

    /// <summary>
    /// The 90/10 rule: nine readings in ten at or above the least, and none below 90 % of it. Its plan of readings was not found: none is
    /// given here.
    /// </summary>
    public static FilmAcceptanceRule NineInTen { get; } = new()
    {
        Name = "nine in ten (90/10)",
        Sample = FilmSample.Reading,
        EachAtLeast = Ratio.FromPercent(90),
        ShareAtLeast = Ratio.FromPercent(90),
        Source = Source.Published("IMO resolution MSC.215(82)", "90/10 rule (second-hand, from a page of ship formulas)"),
    };

    /// <summary>
    /// ISO 19840: the mean at or above the nominal film, no reading below 80 % of it, at most a fifth of the readings below it; the
    /// most as specified (three times the nominal film where nothing is agreed).
    /// </summary>
    public static FilmAcceptanceRule NominalWithFifthBelow { get; } = new()
    {
        Name = "nominal film, a fifth may be below (80/20)",
        Sample = FilmSample.Reading,
        MeanAtLeast = Whole,
        EachAtLeast = Ratio.FromPercent(80),
        EachAtMost = Whole,
        ShareAtLeast = Ratio.FromPercent(80),
        Plan = Steps(Source.FromMemory("ISO 19840, Table 1: readings by area"), 1, 100, 10, (1, 5), (3, 10), (10, 15), (30, 20), (100, 30)),
        Source = Source.Published("ISO 19840:2004 and 2012", "criteria second-hand, from a painters' association that says \"less than 20 %\" below where here 20 % passes"),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<FilmAcceptanceRule> All { get; } = new ValueList<FilmAcceptanceRule>([SpotsWithinAFifth, NineInTen, NominalWithFifthBelow]);

    /// <summary>
    /// The spots of SSPC-PA 2 where a job is measured in square feet. The document uses the two systems side by side and not as exact
    /// equivalents: 100 ft² are 9.29 m².
    /// </summary>
    public static FilmSamplingPlan SpotsInSquareFeet { get; } = Steps(SpotPlan, 0.3048 * 0.3048, 1000, 5, (100, 5), (200, 10), (1000, 15));

    private static FilmSamplingPlan Steps(Source source, double unit, double further, int count,
        params (double Area, int Count)[] steps) => new(
        steps.Select(step => new KeyValuePair<Area, int>(Area.FromSquareMeters(step.Area * unit), step.Count)),
        Area.FromSquareMeters(further * unit),
        count,
        source);
}

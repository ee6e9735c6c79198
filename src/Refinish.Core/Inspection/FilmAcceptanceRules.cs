using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Inspection;

/// <summary>Published rules of acceptance for dry films, as data. All were written for steel: on a bathroom fixture they are borrowed, and the contract has to say so.</summary>
public static class FilmAcceptanceRules
{
    private static readonly Ratio Whole = Ratio.FromPercent(100);

    // Largest area in m² and the readings it takes; ISO 19840 Table 1.
    private static readonly (double Area, int Readings)[] Steps = [(1, 5), (3, 10), (10, 15), (30, 20), (100, 30)];

    /// <summary>SSPC-PA 2, the commonly used restriction: the mean of the spots between least and most, no spot below 80 % of the least or above 120 % of the most; single readings are free.</summary>
    public static FilmAcceptanceRule SpotsWithinAFifth { get; } = new()
    {
        Name = "spots within a fifth (80/120)",
        Sample = FilmSample.Spot,
        MeanAtLeast = Whole,
        MeanAtMost = Whole,
        EachAtLeast = Ratio.FromPercent(80),
        EachAtMost = Ratio.FromPercent(120),
        Source = Source.Published("SSPC-PA 2 (2004 and later)", "spots; 80 % and 120 % second-hand, from training material"),
    };

    /// <summary>The 90/10 rule: nine readings in ten at or above the least, and none below 90 % of it.</summary>
    public static FilmAcceptanceRule NineInTen { get; } = new()
    {
        Name = "nine in ten (90/10)",
        Sample = FilmSample.Reading,
        EachAtLeast = Ratio.FromPercent(90),
        ShareAtLeast = Ratio.FromPercent(90),
        Source = Source.Published("IMO resolution MSC.215(82)", "90/10 rule (second-hand, from a page of ship formulas)"),
    };

    /// <summary>ISO 19840: the mean at or above the nominal film, no reading below 80 % of it, at most a fifth of the readings below it; the most as specified (three times the nominal film where nothing is agreed).</summary>
    public static FilmAcceptanceRule NominalWithFifthBelow { get; } = new()
    {
        Name = "nominal film, a fifth may be below (80/20)",
        Sample = FilmSample.Reading,
        MeanAtLeast = Whole,
        EachAtLeast = Ratio.FromPercent(80),
        EachAtMost = Whole,
        ShareAtLeast = Ratio.FromPercent(80),
        Source = Source.Published("ISO 19840:2004 and 2012", "criteria second-hand, from a painters' association that says \"less than 20 %\" below where here 20 % passes"),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<FilmAcceptanceRule> All { get; } = new ValueList<FilmAcceptanceRule>([SpotsWithinAFifth, NineInTen, NominalWithFifthBelow]);

    /// <summary>How many single readings an area takes: 5 up to 1 m², 10 up to 3, 15 up to 10, 20 up to 30, 30 up to 100, and 10 more for each further 100 m² or part of it (ISO 19840, Table 1, from memory, unverified). Spots: <see cref="FilmAcceptance.SpotsFor"/>.</summary>
    /// <param name="area">Coated area, more than 0 and at most 1000 m².</param>
    /// <returns>The number of readings.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public static int ReadingsFor(Area area)
    {
        double size = Guard.Within(area, Bounds.Positive(Measure.Area, 1000), nameof(area));
        return Steps.Where(step => size <= step.Area).Select(step => (int?)step.Readings).FirstOrDefault() ?? 30 + (10 * (int)System.Math.Ceiling((size - 100) / 100));
    }
}

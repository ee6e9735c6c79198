using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Air;

/// <summary>Published limits and action values on daily noise, as data.</summary>
public static class NoiseLimits
{
    private const string States = "United States";
    private const string Copy = "web copy of the regulation, edition not stated";

    // Ten times the decimal logarithm of two: equal energy.
    private static readonly Level EqualEnergy = Level.FromDecibels(10 * Math.Log10(2));

    private static readonly Source AppendixA = Source.Published(
        "29 CFR 1910.95", "Appendix A, T = 8/2^((L − 90)/5), read; Table G-16 begins at 90 dB, so that only noise from 90 dB on counts (the threshold from memory)");

    private static readonly Source Directive = Source.Published(
        "Directive 2003/10/EC", "Article 3(1); daily noise exposure level by ISO 1999 (Article 2)");

    /// <summary>OSHA's permissible level: 90 dB over eight hours, 5 dB for half the time, noise from 90 dB on.</summary>
    public static NoiseLimit OshaPermissible { get; } = Osha(
        "OSHA PEL", 90, 90, "quieter tools or less time where feasible, and hearing protection until then", AppendixA);

    /// <summary>OSHA's action level: half of that dose, 85 dB over eight hours, noise from 80 dB on.</summary>
    public static NoiseLimit OshaAction { get; } = Osha(
        "OSHA action level", 85, 80, "a hearing conservation programme: monitoring, hearing tests, hearing protection offered, training",
        Source.Published(
            "29 CFR 1910.95", "(c)(1), 85 dB or a dose of 50 %, and (d)(2)(i), noise from 80 dB on: paragraphs from memory; formulas of Appendix A read"));

    /// <summary>NIOSH's recommended level: 85 dB over eight hours, 3 dB for half the time, noise from 80 dB on.</summary>
    public static NoiseLimit NioshRecommended { get; } = Of(
        "NIOSH REL", States, 85, Level.FromDecibels(3), 80,
        "quieter tools, less time, hearing protection and a hearing loss prevention programme", "1998",
        Source.Published(
            "NIOSH, Criteria for a recommended standard, occupational noise exposure, 98-126",
            "85 dB over 8 h and 3 dB, as told on the institute's page of noise; noise from 80 dB on: from memory"));

    /// <summary>The European lower action value, 80 dB over eight hours by equal energy.</summary>
    public static NoiseLimit EuropeanLowerAction { get; } = European(
        "EU lower action value", 80, "hearing protection offered, information and training (Articles 6 and 8, second-hand)");

    /// <summary>The European upper action value, 85 dB.</summary>
    public static NoiseLimit EuropeanUpperAction { get; } = European(
        "EU upper action value", 85,
            "hearing protection worn, a programme to lower the noise, the place marked (Articles 5 and 6, second-hand)");

    /// <summary>
    /// The European limit, 87 dB under the hearing protection that is worn; here held against the bare ear, which is stricter.
    /// </summary>
    public static NoiseLimit EuropeanLimit { get; } = European(
        "EU limit value", 87, "work that stops until the noise under the protection is below it (Article 7, from memory)");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<NoiseLimit> All { get; } = new ValueList<NoiseLimit>(
        [OshaPermissible, OshaAction, NioshRecommended, EuropeanLowerAction, EuropeanUpperAction, EuropeanLimit]);

    private static NoiseLimit Osha(string whose, double criterion, double threshold, string asksFor, Source source) =>
        Of(whose, States, criterion, Level.FromDecibels(5), threshold, asksFor, Copy, source);

    private static NoiseLimit European(string whose, double criterion, string asksFor) =>
        Of(whose, "European Union", criterion, EqualEnergy, null, asksFor, "6 February 2003", Directive);

    private static NoiseLimit Of(
        string whose, string where, double criterion, Level exchange, double? threshold, string asksFor, string asOf, Source source) => new()
    {
        Authority = whose,
        Jurisdiction = where,
        CriterionLevel = Level.FromDecibels(criterion),
        ExchangeRate = exchange,
        Threshold = threshold is double least ? Level.FromDecibels(least) : null,
        AsksFor = asksFor,
        AsOf = asOf,
        Source = source,
    };
}

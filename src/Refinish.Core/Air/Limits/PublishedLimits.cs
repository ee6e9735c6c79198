using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;

namespace Refinish.Air;

/// <summary>
/// Public occupational limits for what this trade puts into the air, as data with date, place, source and how well each was looked up.
/// Limits change and differ from place to place: check the current text. Sets to choose from are in <see cref="LimitSets"/>, and a set of
/// one's own takes what applies.
/// </summary>
/// <remarks>
/// There is no OSHA limit for 1-methoxy-2-propyl acetate, trimethylbenzene, benzyl alcohol, d-limonene or hexamethylene diisocyanate. That
/// a substance is missing here means that nothing can be judged, not that it is harmless.
/// </remarks>
public static class PublishedLimits
{
    private const string Federal = "United States";

    private static readonly Source TableZ1 = Source.Published("29 CFR 1910.1000", "Table Z-1, as printed in OSHA chemical sampling information and NIOSH IDLH documentation");
    private static readonly Source TableZ2 = Source.Published("29 CFR 1910.1000", "Table Z-2, as printed on OSHA's page of toluene limits and in its chemical data");
    private static readonly Source Sampling = Source.Published("OSHA chemical sampling information", "acetone: PEL, REL and IDLH");
    private static readonly Source Guide = Source.Published("NIOSH Pocket Guide to Chemical Hazards, DHHS (NIOSH) 2005-151", "hexamethylene diisocyanate");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<ExposureLimit> All { get; } = new ValueList<ExposureLimit>(
    [
        .. EuropeanLimits.Union,
        .. EuropeanLimits.UnitedKingdom,
        .. States(Solvents.Acetone, osha: (1000, 2400), niosh: (250, 590), brief: null, danger: 2500, Sampling),
        .. States(Solvents.Butanone, osha: (200, 590), niosh: (200, 590), brief: (300, 885), danger: 3000, Idlh("78-93-3")),
        .. States(Solvents.EthylAcetate, osha: (400, 1400), niosh: (400, 1400), brief: null, danger: 2000, Idlh("141-78-6")),
        .. States(Solvents.ButylAcetate, osha: (150, 710), niosh: (150, 710), brief: (200, 950), danger: 1700, Idlh("123-86-4")),
        .. States(Solvents.Xylene, osha: (100, 435), niosh: (100, 435), brief: (150, 655), danger: 900, Idlh("95-47-6 and isomers")),
        .. States(Solvents.Ethylbenzene, osha: (100, 435), niosh: (100, 435), brief: (125, 545), danger: 800, Idlh("100-41-4")),
        .. States(Solvents.MethylAmylKetone, osha: (100, 465), niosh: (100, 465), brief: null, danger: 800, Idlh("110-43-0")),
        .. States(Solvents.Isopropanol, osha: (400, 980), niosh: (400, 980), brief: (500, 1225), danger: 2000, Idlh("67-63-0")),
        Osha(Solvents.Toluene, ExposureLimitKind.Twa8h, 200, 750, Standing.Seen, TableZ2),
        Osha(Solvents.Toluene, ExposureLimitKind.Ceiling, 300, null, Standing.Seen, TableZ2),
        Osha(Solvents.Toluene, ExposureLimitKind.BriefPeak, 500, null, Standing.Seen, TableZ2) with { Period = TimeSpan.FromMinutes(10) },
        Niosh(Solvents.Toluene, ExposureLimitKind.Twa8h, 100, 375, Standing.Seen, Idlh("108-88-3")),
        Niosh(Solvents.Toluene, ExposureLimitKind.Stel15min, 150, 560, Standing.Seen, Idlh("108-88-3")),
        NioshIdlh(Solvents.Toluene, 500, null, Standing.Seen, Idlh("108-88-3")),
        Niosh(Solvents.Trimethylbenzene, ExposureLimitKind.Twa8h, 25, 125, Standing.SecondHand, Source.Published("NIOSH Pocket Guide to Chemical Hazards", "1,2,4-trimethylbenzene, as quoted on a chemical data page")),
        German(Solvents.BenzylAlcohol, 5, null, Source.Published("MAK Commission, re-evaluation of benzyl alcohol, 8 October 2015", "abstract: MAK value of 5 ml/m³; also absorbed through the skin")),
        German(Solvents.Limonene, 5, 28, Source.Published("TRGS 900", "d-limonene, quoted in a lexicon of building materials; excursion factor 4")),
        Niosh(new("822-06-0", "hexamethylene diisocyanate"), ExposureLimitKind.Twa8h, 0.005, 0.035, Standing.Seen, Guide),
        Niosh(new("822-06-0", "hexamethylene diisocyanate"), ExposureLimitKind.Ceiling, 0.020, 0.140, Standing.Seen, Guide) with { Period = TimeSpan.FromMinutes(10) },
        Oregon(ExposureLimitKind.Twa8h, 0.5),
        Oregon(ExposureLimitKind.Ceiling, 1),
        Osha(new("7664-39-3", "hydrogen fluoride, as F"), ExposureLimitKind.Twa8h, 3, null, Standing.Seen, TableZ2),
        Niosh(new("7664-39-3", "hydrogen fluoride, as F"), ExposureLimitKind.Twa8h, 3, 2.5, Standing.Seen, HydrogenFluoride),
        Niosh(new("7664-39-3", "hydrogen fluoride, as F"), ExposureLimitKind.Ceiling, 6, 5, Standing.Seen, HydrogenFluoride) with { Period = TimeSpan.FromMinutes(15) },
        NioshIdlh(new("7664-39-3", "hydrogen fluoride, as F"), 30, null, Standing.Seen, HydrogenFluoride),
        Osha(Solvents.MethyleneChloride, ExposureLimitKind.Twa8h, 25, null, Standing.SecondHand, Source.Published("29 CFR 1910.1052", "(c)(1); seen in Oregon OSHA A-221")),
        Osha(Solvents.MethyleneChloride, ExposureLimitKind.Stel15min, 125, null, Standing.SecondHand, Source.Published("29 CFR 1910.1052", "(c)(2); seen in Oregon OSHA A-221")),
        Epa(ExposureLimitKind.Twa8h, 2),
        Epa(ExposureLimitKind.Stel15min, 16),
        NioshIdlh(Solvents.MethyleneChloride, 2300, null, Standing.FromMemory, Source.FromMemory("NIOSH IDLH, methylene chloride")),
        Osha(new("7439-92-1", "lead"), ExposureLimitKind.Twa8h, null, 0.05, Standing.Seen, Source.Published("29 CFR 1926.62", "(c)(1); for shifts over 8 h 400 µg/m³ divided by the hours, (c)(2)")),
        Niosh(new("7439-92-1", "lead"), ExposureLimitKind.Twa8h, null, 0.05, Standing.FromMemory, Source.FromMemory("NIOSH REL, lead")),
        NioshIdlh(new("7439-92-1", "lead"), null, 100, Standing.FromMemory, Source.FromMemory("NIOSH IDLH, lead")),
        Osha(new("14808-60-7", "respirable crystalline silica, quartz"), ExposureLimitKind.Twa8h, null, 0.05, Standing.SecondHand, Source.Published("29 CFR 1926.1153", "(d)(1), quoted by a university safety page; action level 25 µg/m³ in (b)")),
        Niosh(new("14808-60-7", "respirable crystalline silica, quartz"), ExposureLimitKind.Twa8h, null, 0.05, Standing.FromMemory, Source.FromMemory("NIOSH REL, crystalline silica")),
    ]);

    /// <summary>Those of the federal authorities of the United States (OSHA, NIOSH, EPA); a state may have its own beside them.</summary>
    public static IReadOnlyList<ExposureLimit> UnitedStates { get; } =
        new ValueList<ExposureLimit>(All.Where(limit => string.Equals(limit.Jurisdiction, Federal, StringComparison.Ordinal)));

    // A property, because static fields are set in the order of the text and the list above needs it.
    private static Source HydrogenFluoride => Source.Published("OSHA chemical sampling information", "hydrogen fluoride: PEL, REL and IDLH; the ceiling is a 15-minute one");

    /// <summary>The limits for one substance.</summary>
    /// <param name="casNumber">Chemical Abstracts Service registry number.</param>
    /// <returns>Those known here; empty when none is, which is not a finding of no harm.</returns>
    /// <exception cref="ArgumentException"><paramref name="casNumber"/> is empty.</exception>
    public static IReadOnlyList<ExposureLimit> For(string casNumber)
    {
        Guard.Named(casNumber);
        return new ValueList<ExposureLimit>(All.Where(limit => string.Equals(limit.CasNumber, casNumber, StringComparison.Ordinal)));
    }

    private static IEnumerable<ExposureLimit> States(
        Registered of, (double Ppm, double Milligrams) osha, (double Ppm, double Milligrams) niosh,
        (double Ppm, double Milligrams)? brief, double danger, Source source)
    {
        yield return Osha(of, ExposureLimitKind.Twa8h, osha.Ppm, osha.Milligrams, Standing.Seen, TableZ1);
        yield return Niosh(of, ExposureLimitKind.Twa8h, niosh.Ppm, niosh.Milligrams, Standing.Seen, source);
        if (brief is (double ppm, double milligrams))
        {
            yield return Niosh(of, ExposureLimitKind.Stel15min, ppm, milligrams, Standing.Seen, source);
        }

        yield return NioshIdlh(of, danger, null, Standing.Seen, source);
    }

    private static Source Idlh(string cas) => Source.Published("NIOSH IDLH documentation", cas + ", with PEL and REL; 29 CFR 1910.1000 and NIOSH limits as listed there");

    private static ExposureLimit Osha(Registered of, ExposureLimitKind kind, double? ppm, double? milligrams, Standing standing, Source source) =>
        ExposureLimit.Listed(of, "OSHA PEL", Federal, kind, ppm, milligrams, "web copy of the regulation, edition not stated",
            standing, source);

    private static ExposureLimit Niosh(Registered of, ExposureLimitKind kind, double? ppm, double? milligrams, Standing standing, Source source) =>
        ExposureLimit.Listed(of, "NIOSH REL", Federal, kind, ppm, milligrams, ReferenceEquals(source, Guide)
            ? "2005" : "web copy, edition not stated", standing, source);

    private static ExposureLimit NioshIdlh(Registered of, double? ppm, double? milligrams, Standing standing, Source source) =>
        ExposureLimit.Listed(of, "NIOSH IDLH", Federal, ExposureLimitKind.Idlh, ppm, milligrams, "web copy, edition not stated", standing, source);

    private static ExposureLimit German(Registered of, double ppm, double? milligrams, Source source) =>
        ExposureLimit.Listed(of, "MAK value", "Germany", ExposureLimitKind.Twa8h, ppm, milligrams, "web copy, edition not stated",
            Standing.SecondHand, source);

    private static ExposureLimit Oregon(ExposureLimitKind kind, double milligrams) =>
        ExposureLimit.Listed(new("28182-81-2", "hexamethylene diisocyanate polymers"), "Oregon OSHA PEL", "Oregon, United States", kind, null,
            milligrams, "web copy, edition not stated", Standing.SecondHand,
            Source.Published("Oregon OSHA, rules for air contaminants",
            "polyisocyanates of hexamethylene diisocyanate; registry number from memory"));

    private static ExposureLimit Epa(ExposureLimitKind kind, double ppm) =>
        ExposureLimit.Listed(Solvents.MethyleneChloride, kind == ExposureLimitKind.Twa8h
            ? "EPA ECEL" : "EPA STEL", Federal, kind, ppm, null, "8 July 2024", Standing.SecondHand,
            Source.Published("40 CFR 751.109, 89 FR 39254 (8 May 2024)", "quoted by the industrial-hygiene association, 18 July 2024"));
}

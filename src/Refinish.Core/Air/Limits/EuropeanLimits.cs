using System.Collections.Generic;

namespace Refinish.Air;

/// <summary>
/// Limits of the European Union and of the United Kingdom, by substance: eight hours and fifteen minutes, by volume and by mass.
/// </summary>
internal static class EuropeanLimits
{
    private const string First = "2000/39/EC";
    private const string Second = "2006/15/EC";
    private const string Fourth = "2017/164";
    private const string Fifth = "2019/1831";

    /// <summary>Those of the European Union; indicative unless the source says that they bind.</summary>
    public static IReadOnlyList<ExposureLimit> Union { get; } = new ValueList<ExposureLimit>(
    [
        .. Indicative("67-64-1", "acetone", 500, 1210, null, null, First),
        .. Indicative("78-93-3", "2-butanone", 200, 600, 300, 900, First, Standing.SecondHand, "quoted in a safety data sheet"),
        .. Indicative("141-78-6", "ethyl acetate", 200, 734, 400, 1468, Fourth),
        .. Indicative("123-86-4", "n-butyl acetate", 50, 241, 150, 723, Fifth, Standing.Seen, "annex"),
        .. Indicative("1330-20-7", "xylene, mixed isomers", 50, 221, 100, 442, First),
        .. Indicative("100-41-4", "ethylbenzene", 100, 442, 200, 884, First),
        .. Indicative("110-43-0", "methyl n-amyl ketone", 50, 238, 100, 475, First),
        .. Indicative("108-88-3", "toluene", 50, 192, 100, 384, Second),
        .. Indicative("95-63-6", "1,2,4-trimethylbenzene", 20, 100, null, null, First),
        .. Indicative("108-65-6", "1-methoxy-2-propyl acetate", 50, 275, 100, 550, First, Standing.SecondHand,
            "annex, quoted by the glycol-ether producers' association; also absorbed through the skin"),
        .. Indicative("75-09-2", "methylene chloride", 100, 353, 200, 706, Fourth),
        .. Indicative("7664-39-3", "hydrogen fluoride, as F", 1.8, 1.5, 3, 2.5, First),
        Binding("14808-60-7", "respirable crystalline silica, quartz", 0.1, "2017", Standing.SecondHand,
            Source.Published("Directive 2004/37/EC",
                "annex III, respirable crystalline silica dust, seen in an unofficial consolidated text")),
        Binding("7439-92-1", "lead", 0.03, "from 9 April 2026", Standing.SecondHand,
            Source.Published("Directive (EU) 2024/869",
                "lead and its inorganic compounds, 0.03 mg/m³ from 9 April 2026, quoted on two pages")),
    ]);

    /// <summary>Those of EH40/2005, fourth edition, from memory.</summary>
    public static IReadOnlyList<ExposureLimit> UnitedKingdom { get; } = new ValueList<ExposureLimit>(
    [
        .. Workplace("67-64-1", "acetone", 500, 1500),
        .. Workplace("78-93-3", "2-butanone", 200, 300),
        .. Workplace("141-78-6", "ethyl acetate", 200, 400),
        .. Workplace("123-86-4", "n-butyl acetate", 150, 200),
        .. Workplace("1330-20-7", "xylene, mixed isomers", 50, 100),
        .. Workplace("100-41-4", "ethylbenzene", 100, 125),
        .. Workplace("110-43-0", "methyl n-amyl ketone", 50, 100),
        .. Workplace("67-63-0", "isopropanol", 400, 500),
        .. Workplace("108-88-3", "toluene", 50, 100),
        .. Workplace("95-63-6", "1,2,4-trimethylbenzene", 25, null),
        .. Workplace("108-65-6", "1-methoxy-2-propyl acetate", 50, 100),
        .. Workplace("75-09-2", "methylene chloride", 100, 200),
        .. Workplace("7664-39-3", "hydrogen fluoride, as F", 1.8, 3),
    ]);

    private static IEnumerable<ExposureLimit> Indicative(
        string cas, string name, double ppm, double milligrams, double? brief, double? briefMilligrams, string directive,
        Standing standing = Standing.FromMemory, string? how = null)
    {
        string title = "Directive " + (directive.EndsWith("EC", System.StringComparison.Ordinal) ? directive : "(EU) " + directive);
        Source source = how is null ? Source.FromMemory(title + ", annex, " + name) : Source.Published(title, how);
        string year = directive.Substring(0, 4);
        yield return Of(ExposureLimitKind.Twa8h, ppm, milligrams);
        if (brief is double fraction)
        {
            yield return Of(ExposureLimitKind.Stel15min, fraction, briefMilligrams);
        }

        ExposureLimit Of(ExposureLimitKind kind, double fraction, double? mass) =>
            ExposureLimit.Listed(cas, name, "EU indicative limit", "European Union", kind, fraction, mass, year, standing, source);
    }

    private static ExposureLimit Binding(string cas, string name, double milligrams, string asOf, Standing standing, Source source) =>
        ExposureLimit.Listed(cas, name, "EU binding limit", "European Union", ExposureLimitKind.Twa8h, null, milligrams, asOf, standing,
            source);

    private static IEnumerable<ExposureLimit> Workplace(string cas, string name, double ppm, double? brief)
    {
        Source source = Source.FromMemory("EH40/2005, fourth edition (2020), table 1, " + name);
        yield return Of(ExposureLimitKind.Twa8h, ppm);
        if (brief is double fraction)
        {
            yield return Of(ExposureLimitKind.Stel15min, fraction);
        }

        ExposureLimit Of(ExposureLimitKind kind, double fraction) => ExposureLimit.Listed(
            cas, name, "UK workplace exposure limit", "United Kingdom", kind, fraction, null, "2020, from memory", Standing.FromMemory,
                source);
    }
}

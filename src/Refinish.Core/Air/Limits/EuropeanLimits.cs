using System.Collections.Generic;
using Refinish.Coatings;

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
        .. Indicative(Solvents.Acetone, 500, 1210, null, null, First),
        .. Indicative(Solvents.Butanone, 200, 600, 300, 900, First, Standing.SecondHand, "quoted in a safety data sheet"),
        .. Indicative(Solvents.EthylAcetate, 200, 734, 400, 1468, Fourth),
        .. Indicative(Solvents.ButylAcetate, 50, 241, 150, 723, Fifth, Standing.Seen, "annex"),
        .. Indicative(Solvents.Xylene, 50, 221, 100, 442, First),
        .. Indicative(Solvents.Ethylbenzene, 100, 442, 200, 884, First),
        .. Indicative(Solvents.MethylAmylKetone, 50, 238, 100, 475, First),
        .. Indicative(Solvents.Toluene, 50, 192, 100, 384, Second),
        .. Indicative(Solvents.Trimethylbenzene, 20, 100, null, null, First),
        .. Indicative(Solvents.MethoxypropylAcetate, 50, 275, 100, 550, First, Standing.SecondHand,
            "annex, quoted by the glycol-ether producers' association; also absorbed through the skin"),
        .. Indicative(Solvents.MethyleneChloride, 100, 353, 200, 706, Fourth),
        .. Indicative(new("7664-39-3", "hydrogen fluoride, as F"), 1.8, 1.5, 3, 2.5, First),
        Binding(new("14808-60-7", "respirable crystalline silica, quartz"), 0.1, "2017", Standing.SecondHand,
            Source.Published("Directive 2004/37/EC",
                "annex III, respirable crystalline silica dust, seen in an unofficial consolidated text")),
        Binding(new("7439-92-1", "lead"), 0.03, "from 9 April 2026", Standing.SecondHand,
            Source.Published("Directive (EU) 2024/869",
                "lead and its inorganic compounds, 0.03 mg/m³ from 9 April 2026, quoted on two pages")),
    ]);

    /// <summary>Those of EH40/2005, fourth edition, from memory.</summary>
    public static IReadOnlyList<ExposureLimit> UnitedKingdom { get; } = new ValueList<ExposureLimit>(
    [
        .. Workplace(Solvents.Acetone, 500, 1500),
        .. Workplace(Solvents.Butanone, 200, 300),
        .. Workplace(Solvents.EthylAcetate, 200, 400),
        .. Workplace(Solvents.ButylAcetate, 150, 200),
        .. Workplace(Solvents.Xylene, 50, 100),
        .. Workplace(Solvents.Ethylbenzene, 100, 125),
        .. Workplace(Solvents.MethylAmylKetone, 50, 100),
        .. Workplace(Solvents.Isopropanol, 400, 500),
        .. Workplace(Solvents.Toluene, 50, 100),
        .. Workplace(Solvents.Trimethylbenzene, 25, null),
        .. Workplace(Solvents.MethoxypropylAcetate, 50, 100),
        .. Workplace(Solvents.MethyleneChloride, 100, 200),
        .. Workplace(new("7664-39-3", "hydrogen fluoride, as F"), 1.8, 3),
    ]);

    private static IEnumerable<ExposureLimit> Indicative(
        Registered of, double ppm, double milligrams, double? brief, double? briefMilligrams, string directive,
        Standing standing = Standing.FromMemory, string? how = null)
    {
        string title = "Directive " + (directive.EndsWith("EC", System.StringComparison.Ordinal) ? directive : "(EU) " + directive);
        Source source = how is null ? Source.FromMemory(title + ", annex, " + of.Name) : Source.Published(title, how);
        string year = directive.Substring(0, 4);
        yield return Of(ExposureLimitKind.Twa8h, ppm, milligrams);
        if (brief is double fraction)
        {
            yield return Of(ExposureLimitKind.Stel15min, fraction, briefMilligrams);
        }

        ExposureLimit Of(ExposureLimitKind kind, double fraction, double? mass) =>
            ExposureLimit.Listed(of, "EU indicative limit", "European Union", kind, fraction, mass, year, standing, source);
    }

    private static ExposureLimit Binding(Registered of, double milligrams, string asOf, Standing standing, Source source) =>
        ExposureLimit.Listed(of, "EU binding limit", "European Union", ExposureLimitKind.Twa8h, null, milligrams, asOf, standing,
            source);

    private static IEnumerable<ExposureLimit> Workplace(Registered of, double ppm, double? brief)
    {
        Source source = Source.FromMemory("EH40/2005, fourth edition (2020), table 1, " + of.Name);
        yield return Of(ExposureLimitKind.Twa8h, ppm);
        if (brief is double fraction)
        {
            yield return Of(ExposureLimitKind.Stel15min, fraction);
        }

        ExposureLimit Of(ExposureLimitKind kind, double fraction) => ExposureLimit.Listed(
            of, "UK workplace exposure limit", "United Kingdom", kind, fraction, null, "2020, from memory", Standing.FromMemory,
                source);
    }
}

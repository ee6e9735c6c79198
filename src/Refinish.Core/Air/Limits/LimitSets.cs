using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// Sets of limits to choose from, made of <see cref="PublishedLimits"/>, <see cref="FlammableShare"/>, <see cref="VocLimits"/>,
/// <see cref="SlipClasses"/> and <see cref="NoiseLimits"/>. Each is what was found, not all that there is: look at the standing of each
/// limit, and add what is missing.
/// </summary>
public static class LimitSets
{
    private const string States = "United States";
    private const string Gathered = "gathered 2026-11-30 from stored copies; each limit has its own date";

    /// <summary>
    /// OSHA: permissible exposure limits, a quarter of the lower flammable limit, permissible and action level of noise. No slip, no VOC.
    /// </summary>
    public static LimitSet Osha { get; } = Of("osha", "OSHA", States) with
    {
        Exposure = By("OSHA PEL"),
        Flammable = new FlammableShare
        {
            Share = Ratio.FromPercent(25),
            Authority = "OSHA",
            Jurisdiction = States,
            AsOf = "from memory",
            Source = Source.FromMemory(
                "29 CFR 1910.94(c)(6)(ii) and Table G-11: spray vapour diluted to 25 % of the lower explosive limit; for construction 1926.57(h)"),
        },
        Noise = [NoiseLimits.OshaPermissible, NoiseLimits.OshaAction],
    };

    /// <summary>NIOSH: recommended exposure limits, immediately dangerous concentrations, recommended level of noise.</summary>
    public static LimitSet Niosh { get; } = Of("niosh", "NIOSH", States) with
    {
        Exposure = By("NIOSH REL", "NIOSH IDLH"),
        Noise = [NoiseLimits.NioshRecommended],
    };

    /// <summary>
    /// The federal authorities of the United States together (OSHA, NIOSH, EPA), the International Mechanical Code and ANSI A326.3 for wet
    /// floors. States and air districts have their own beside them; VOC is theirs.
    /// </summary>
    public static LimitSet UnitedStates { get; } = Of("us", States, States) with
    {
        Exposure = PublishedLimits.UnitedStates,
        Flammable = FlammableShare.Quarter,
        FlammableDesign = FlammableShare.Tenth,
        Slip = [SlipClasses.HardFloors[1]],
        Noise = [NoiseLimits.OshaPermissible, NoiseLimits.OshaAction, NoiseLimits.NioshRecommended],
    };

    /// <summary>
    /// The European Union's limits (indicative, and binding ones where they are), its noise values and its limit for two-pack coatings.
    /// Member states set their own, which may be lower, and slip classes are theirs. Only some were seen: look at each standing.
    /// </summary>
    public static LimitSet EuropeanUnion { get; } = Of("eu", "European Union", "European Union") with
    {
        Exposure = In("European Union"),
        Voc = [VocLimits.EuropeanTwoPack],
        Noise = [NoiseLimits.EuropeanLowerAction, NoiseLimits.EuropeanUpperAction, NoiseLimits.EuropeanLimit],
    };

    /// <summary>
    /// What is known of the United Kingdom: workplace exposure limits of EH40/2005 from memory, pendulum value 36, and noise as in the
    /// European directive, which its regulations of 2005 took over (from memory).
    /// </summary>
    public static LimitSet UnitedKingdom { get; } = Of("uk", "United Kingdom", "United Kingdom") with
    {
        Exposure = In("United Kingdom"),
        Slip = [SlipClasses.PendulumLow],
        Noise = [.. EuropeanUnion.Noise.Select(British)],
    };

    /// <summary>
    /// What a study or a shop compares with unless it chooses: <see cref="UnitedStates"/>, and where it has no limit for a substance one
    /// from elsewhere, by name: of the European Union, of Germany, of Oregon.
    /// </summary>
    public static LimitSet Default { get; } = UnitedStates.FilledFrom(Of("elsewhere", "elsewhere", "European Union, Germany, Oregon") with
    {
        Exposure = [.. In("European Union"), .. In("Germany"), .. In("Oregon, United States")],
    });

    /// <summary>All of them, each once.</summary>
    public static IReadOnlyList<LimitSet> All { get; } =
        new ValueList<LimitSet>([Osha, Niosh, UnitedStates, EuropeanUnion, UnitedKingdom, Default]);

    private static LimitSet Of(string id, string name, string where) =>
        new() { Id = id, Name = name, Jurisdiction = where, AsOf = Gathered };

    private static ValueList<ExposureLimit> By(params string[] authorities) =>
        new(PublishedLimits.All.Where(limit => Array.IndexOf(authorities, limit.Authority) >= 0));

    private static ValueList<ExposureLimit> In(string jurisdiction) =>
        new(PublishedLimits.All.Where(limit => string.Equals(limit.Jurisdiction, jurisdiction, StringComparison.Ordinal)));

    private static NoiseLimit British(NoiseLimit european) => european with
    {
        Authority = european.Authority.Replace("EU ", "UK "),
        Jurisdiction = "United Kingdom",
        AsOf = "2005, from memory",
        Source = Source.FromMemory("Control of Noise at Work Regulations 2005, the values of Directive 2003/10/EC"),
    };
}

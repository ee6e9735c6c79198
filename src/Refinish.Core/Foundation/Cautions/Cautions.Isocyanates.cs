using System.Collections.Generic;

namespace Refinish;

/// <content>What isocyanates do to lungs and skin.</content>
public static partial class Cautions
{
    /// <summary>Supplied air where isocyanates are sprayed.</summary>
    public static Caution SuppliedAir { get; } = new(
        "supplied-air",
        Hazard.Isocyanate,
        "Two-part urethanes release isocyanates when sprayed: use supplied air, which is all that NIOSH lists for hexamethylene diisocyanate, in a programme with fit test and medical clearance. A cartridge gives no warning when it is spent, and one exposure too many can bring lifelong asthma.",
        Respirators,
        Source.Published("NIOSH Pocket Guide, hexamethylene diisocyanate; NIOSH Alert 96-111 (1996)", "respirator recommendations; case reports. That cartridges give no warning is from memory"),
        Audience.Crew);

    /// <summary>The supplied air itself has to be fit to breathe.</summary>
    public static Caution BreathingAir { get; } = new(
        "breathing-air",
        Hazard.Isocyanate,
        "Supplied air is only as good as its intake: the pump or compressor stands in fresh air, away from the fan's outlet, from engines and from flues; carbon monoxide and air quality are watched as the programme says, and there is a way out when it fails.",
        Respirators,
        Source.Published("29 CFR 1910.134", "(i): quality of breathing air; paragraph from memory"),
        Audience.Crew);

    /// <summary>Isocyanates sensitise, through the skin too.</summary>
    public static Caution IsocyanateHardener { get; } = new(
        "isocyanate-hardener",
        Hazard.Isocyanate,
        "The hardener holds isocyanates, which sensitise skin and lungs: no skin contact while mixing, and supplied air when it is sprayed.",
        "the safety data sheet and the employer's respiratory protection programme",
        Source.Published("NIOSH Alert 96-111 (1996)", "isocyanates; that skin contact sensitises too is from memory"),
        Audience.Crew);

    /// <summary>A can of isocyanate that took up water is under pressure.</summary>
    public static Caution SwollenCan { get; } = new(
        "swollen-can",
        Hazard.Isocyanate,
        "An opened can of isocyanate takes up moisture and makes gas: do not open one that bulges, and do not use what is cloudy, thick or has a skin, whatever its age.",
        SafetyDataSheet,
        Source.CommonPractice("opened isocyanate hardeners"),
        Audience.Crew);

    private static IEnumerable<Caution> Isocyanates => [SuppliedAir, BreathingAir, IsocyanateHardener, SwollenCan];
}

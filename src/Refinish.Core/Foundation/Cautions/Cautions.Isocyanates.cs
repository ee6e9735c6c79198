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
        Source.Published("NIOSH Pocket Guide, hexamethylene diisocyanate; NIOSH Alert 96-111 (1996)", "respirator recommendations; case reports of asthma and deaths. That cartridges give no warning is from memory. Construction: 29 CFR 1926.103, the same as 29 CFR 1910.134 (63 FR 1297, 8 January 1998)"),
        Audience.Crew);

    /// <summary>The supplied air itself has to be fit to breathe.</summary>
    public static Caution BreathingAir { get; } = new(
        "breathing-air",
        Hazard.Isocyanate,
        "Supplied air is only as good as its intake: the pump or compressor stands in fresh air, away from the fan's outlet, from engines and from flues; carbon monoxide and air quality are watched as the programme says, and there is a way out when it fails.",
        Respirators,
        Source.Published("29 CFR 1910.134", "(i): quality of breathing air; paragraph from memory; for construction through 29 CFR 1926.103 (63 FR 1297, 8 January 1998)"),
        Audience.Crew);

    /// <summary>Isocyanates sensitise, through the skin too.</summary>
    public static Caution IsocyanateHardener { get; } = new(
        "isocyanate-hardener",
        Hazard.Isocyanate,
        "The hardener holds isocyanates, which sensitise skin and lungs: no skin contact while mixing, and supplied air when it is sprayed.",
        "the safety data sheet and the employer's respiratory protection programme",
        Source.Published("NIOSH Alert 96-111 (1996)", "exposure also through the skin while handling; that skin contact sensitises the lungs too is from memory"),
        Audience.Crew);

    /// <summary>A can of isocyanate that took up water is under pressure.</summary>
    public static Caution SwollenCan { get; } = new(
        "swollen-can",
        Hazard.Isocyanate,
        "An opened can of isocyanate takes up moisture and makes gas: do not open one that bulges, and do not use what is cloudy, thick or has a skin, whatever its age.",
        SafetyDataSheet,
        Source.CommonPractice("opened isocyanate hardeners"),
        Audience.Crew);

    /// <summary>A loose hood protects less than a tight facepiece.</summary>
    public static Caution LooseHood { get; } = new(
        "loose-hood",
        Hazard.Isocyanate,
        "A loose-fitting facepiece has a far smaller assigned protection factor than a tight full facepiece, and so has a hood whose maker cannot show tests: hold the factor of the one on your head against what the air asks for. A tight facepiece needs a fit test and a shaved face; without the programme no factor holds.",
        Respirators,
        Source.Published("29 CFR 1910.134", "(d)(3)(i)(A), Table 1 with its notes 2 and 4, final rule 71 FR 50122 (24 August 2006), for construction too; table read on a code publisher's page, first page of the rule's text from memory"),
        Audience.Crew);

    /// <summary>Who has asthma or is sensitised stays away.</summary>
    public static Caution Sensitised { get; } = new(
        "sensitised-do-not-spray",
        Hazard.Isocyanate,
        "Nobody who has asthma, or whom isocyanates or epoxy hardeners ever made sensitive, mixes, sprays, cleans the gun or stands by: a trace can bring on an attack that kills. Cough, wheeze, a tight chest or a rash, also at night after work, stops the work: out into fresh air, to a physician, and not back before the physician agrees.",
        "an occupational physician and the employer's respiratory protection programme",
        Source.Published("NIOSH Alert 96-111 (1996)", "workers exposed to diisocyanates develop serious or fatal respiratory disease, case reports; NIOSH Respiratory Diseases Research Program, evidence package 2006–2007, 4.1b: exposure after the onset of asthma makes it worse. Who stays away and that symptoms stop the work: common practice"),
        Audience.Crew);

    /// <summary>A physician watches over who sprays isocyanates.</summary>
    public static Caution MedicalSurveillance { get; } = new(
        "medical-surveillance",
        Hazard.Isocyanate,
        "Whoever mixes or sprays isocyanates is seen by a physician who knows of it, with questions and a breathing test before the first job and again at intervals: sensitisation shows there before it shows on a job. Clearance for a respirator is a separate question.",
        "an occupational physician; 29 CFR 1910.134(e) for the respirator",
        Source.CommonPractice("medical surveillance of isocyanate workers, as NIOSH Alert 96-111 (1996) recommends, its wording from memory; OSHA's emphasis programme CPL 03-00-017, 20 June 2013, inspects for isocyanates and sets no such duty that was read"),
        Audience.Crew);

    private static IEnumerable<Caution> Isocyanates =>
        [SuppliedAir, LooseHood, BreathingAir, Sensitised, MedicalSurveillance, IsocyanateHardener, SwollenCan];
}

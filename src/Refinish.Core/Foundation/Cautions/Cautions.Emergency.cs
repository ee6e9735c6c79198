using System.Collections.Generic;

namespace Refinish;

/// <content>What has to be ready before anything goes wrong.</content>
public static partial class Cautions
{
    /// <summary>An extinguisher for burning liquids.</summary>
    public static Caution FireExtinguisher { get; } = new(
        "fire-extinguisher",
        Hazard.FireAndExplosion,
        "A charged extinguisher for burning liquids (class B) hangs outside the room on the way out, and everybody has been shown it. It is for a small fire with the way out behind you: otherwise leave, shut the door and call the fire department.",
        FireCode + "; the employer's fire protection programme",
        Source.Published("29 CFR 1926.150", "(a)(1), (c)(1): programme; 2A in each building, 10B within 50 ft of more than 5 gal of flammable liquid in use, as quoted second-hand. Less than that in use and where it hangs: common practice. General industry: 29 CFR 1910.157"),
        Audience.Crew);

    /// <summary>Detectors and sprinklers.</summary>
    public static Caution DetectorsAndSprinklers { get; } = new(
        "detectors-and-sprinklers",
        Hazard.FireAndExplosion,
        "A smoke or gas detector is covered only while dust or spray flies, with somebody on watch, and is uncovered and tested before anybody sleeps there: whoever covers it writes down that it was restored. A sprinkler is never covered, painted or shut off without the owner's and the fire authority's leave.",
        "the owner and the fire authority; the alarm company where one listens in",
        Source.Published("NFPA 72 (2010)", "17.7.1.11: detectors in a room under work are protected from dust, cleaned and verified, as quoted second-hand; NFPA 25, 5.4, second-hand: sprinklers are not painted or covered. Watch, record and test on the same day: common practice"),
        Audience.Crew | Audience.Customer | Audience.Occupant);

    /// <summary>Who calls and who does not go in.</summary>
    public static Caution Rescue { get; } = new(
        "rescue",
        Hazard.SolventVapour,
        "Agree before the can is opened who calls the emergency number and with which address. Whoever finds somebody down leaves the fan running, calls, and stays out: nobody enters without supplied air of their own, or the second person falls beside the first. Where the air may be immediately dangerous, whoever stands by has such a set at hand and a way to pull the first one out.",
        "the employer's emergency plan under 29 CFR 1926.35 and 1926.23; the fire department",
        Source.Published("OSHA/NIOSH hazard alert, January 2013", "workers found dead or collapsed over the tub, alone. Who calls and who stays out: common practice; 29 CFR 1926.35, read, binds where another rule asks for a plan (58 FR 35083, 30 June 1993); 1926.23, for general industry 29 CFR 1910.38, and 29 CFR 1910.134(g)(3) on people standing by from memory"),
        Audience.Crew);

    /// <summary>What a bathroom is in the language of the confined-space rule.</summary>
    public static Caution ConfinedSpace { get; } = new(
        "confined-space",
        Hazard.SolventVapour,
        "A bathroom that one walks into through a door is as a rule no confined space in the sense of the law, which asks for all three: large enough to enter, limited means of entry and exit, not designed for continuous occupancy. A competent person decides that before work begins; a crawl space or a shaft behind the tub may be one. A tub in a shut alcove kills all the same: not being a confined space takes nothing away from the other cautions.",
        "the employer's competent person under 29 CFR 1926.1203(a)",
        Source.Published("29 CFR 1926.1202", "definitions of confined space and permit space, as quoted in OSHA's memorandum of 24 May 2016 on residential construction; general industry: 29 CFR 1910.146. That a bathroom with a door is none is our reading, in no text that was read"),
        Audience.Crew);

    /// <summary>Data sheets at hand.</summary>
    public static Caution HazardCommunication { get; } = new(
        "hazard-communication",
        Hazard.SolventVapour,
        "The safety data sheet of every product on the van is on site and in reach of everybody in the shift; every cup, bottle and can says what is in it; everybody was taught what the sheets say. Other trades and the owner are told what is brought in.",
        "the employer's hazard communication programme under 29 CFR 1910.1200, which 29 CFR 1926.59 carries into construction",
        Source.Published("29 CFR 1910.1200; 29 CFR 1926.59", "sheets at hand, labels, training, other employers on site; final rule of 9 February 1994, 59 FR 6126, its page from memory, amended since; read in summaries"),
        Audience.Crew);

    /// <summary>Water for the eyes.</summary>
    public static Caution EyeWash { get; } = new(
        "eye-wash",
        Hazard.SkinAndEyes,
        "Water to drench eyes and skin is ready at the work before anything corrosive is opened: running water that stays running, or a portable eye wash within reach of somebody who cannot see. A tub that is taped off is neither. Rinse for as long as the safety data sheet says, and go to a physician.",
        SafetyDataSheet + " and 29 CFR 1926.50(g) or the local equivalent",
        Source.Published("29 CFR 1926.50(g); OSHA letter of 26 July 1994", "quick drenching of eyes and body where corrosives are used; a portable device of at least one gallon only where the exposure is very low; general industry: 29 CFR 1910.151(c)"),
        Audience.Crew);

    /// <summary>Work above the head.</summary>
    public static Caution OverheadWork { get; } = new(
        "overhead-work",
        Hazard.Slip,
        "Ceilings, undersides and walls above the shoulder drip, and dust and mist come back into the face: closed goggles, covered neck and arms, and breathing protection whose fit was checked with the head tilted back. Stand so near that nobody works with stretched arms, on a platform or a ladder that is made for it and never on the rim of a tub; let the hose hang so that it pulls nobody down, and change over often: arms held up and a bent neck hurt.",
        "the employer's safety programme, with the rules for eye protection, scaffolds and ladders: 29 CFR 1926.102 and subparts L and X or the local equivalent",
        Source.Published("CPWR, Construction Solutions, Overhead work",
            "applying coats overhead: shoulder tendonitis and tension neck; the rest, and 29 CFR 1926.102, 1926.451 and 1926.1053, from memory, unverified"),
        Audience.Crew);

    private static IEnumerable<Caution> Emergencies =>
        [FireExtinguisher, DetectorsAndSprinklers, ConfinedSpace, HazardCommunication, EyeWash, OverheadWork];
}

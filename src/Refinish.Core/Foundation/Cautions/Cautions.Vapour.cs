using System.Collections.Generic;

namespace Refinish;

/// <content>What solvents do to who breathes them.</content>
public static partial class Cautions
{
    /// <summary>Never alone.</summary>
    public static Caution NeverAlone { get; } = new(
        "never-alone",
        Hazard.SolventVapour,
        "Never work alone with solvents in a bathroom: a second person outside it, who can see or hear the first and who does not go in without supplied air.",
        "the employer's emergency plan",
        Source.Published("OSHA/NIOSH hazard alert, January 2013", "common to the deaths: alone, in small, windowless, badly ventilated bathrooms, without proper respirator; bathroom fans and open windows are not enough. The second person outside: common practice, no source"),
        Audience.Crew);

    /// <summary>What the box model leaves out: the breathing zone.</summary>
    public static Caution BreathingZone { get; } = new(
        "breathing-zone",
        Hazard.SolventVapour,
        "The numbers are for a well-mixed room. Close to the gun and low in a tub the vapour is denser than that: they are a screening, not a measurement of what a person breathes.",
        "air sampling by an industrial hygienist; " + Respirators,
        Source.Published("S. Arnold, Y. Shao, G. Ramachandran, Evaluating well-mixed room and near-field–far-field model performance under highly controlled conditions, Journal of Occupational and Environmental Hygiene", "abstract: in a chamber with known inputs the room model met its criteria for 88 to 97 % of the pairs, the near field for 67 to 84 %"),
        Audience.Crew);

    /// <summary>Air has to come in before it can go out.</summary>
    public static Caution MakeUpAir { get; } = new(
        "make-up-air",
        Hazard.SolventVapour,
        "As much clean air has to come in as the fan takes out, across the room from it. Without an opening the fan moves next to nothing, and it can draw flue gas back out of a water heater: shut gas appliances off and check their draught afterwards.",
        "the local mechanical and fuel-gas code",
        Source.Published("29 CFR 1910.94", "(c)(7)(i): clean fresh air in the quantity of what is exhausted; construction: 29 CFR 1926.57(a) to (d), exhaust that carries vapour away from people and runs on after the work; back-draught is common practice"),
        Audience.Crew);

    /// <summary>A peak at what is immediately dangerous to life or health.</summary>
    public static Caution ImmediatelyDangerous { get; } = new(
        "immediately-dangerous",
        Hazard.SolventVapour,
        "A peak is at or above what NIOSH lists as immediately dangerous to life or health. Do not enter; at such a level only full-facepiece pressure-demand self-contained or supplied air with an escape bottle is listed. Change the job: less at a time, more air, another product.",
        Respirators,
        Source.Published("29 CFR 1910.134", "(d)(2): atmospheres immediately dangerous to life or health; paragraph from memory; for construction through 29 CFR 1926.103 (63 FR 1297, 8 January 1998)"),
        Audience.Crew);

    /// <summary>A study without a fan.</summary>
    public static Caution NoAirflow { get; } = new(
        "no-airflow",
        Hazard.SolventVapour,
        "No fan: nothing leaves the room in this study. No time to clear and no re-entry can be judged.",
        "the local code; 29 CFR 1910.94(c) where it applies",
        Source.Derived("no airflow, so no removal"),
        Audience.Crew);

    /// <summary>More vapour than air can hold.</summary>
    public static Caution BeyondSaturation { get; } = new(
        "beyond-saturation",
        Hazard.SolventVapour,
        "The room model gives more vapour than air can hold at this temperature: its numbers do not hold there. The real air is then close to saturated, which is far above every limit.",
        "air sampling by an industrial hygienist",
        Source.Derived("a vapour cannot exceed its saturation pressure"),
        Audience.Crew);

    /// <summary>A limit that is not known here.</summary>
    public static Caution LimitUnknown { get; } = new(
        "limit-unknown",
        Hazard.SolventVapour,
        "For a substance of this study a limit is not known here, so part of it cannot be judged. Not known does not mean harmless: ask the safety data sheet, section 8.",
        "the safety data sheet",
        Source.Derived("missing data"),
        Audience.Crew);

    /// <summary>A reading is of one place and time.</summary>
    public static Caution ReadingIsAMoment { get; } = new(
        "reading-is-a-moment",
        Hazard.SolventVapour,
        "A reading speaks for the place, the minutes and the work at which it was taken, and for what the instrument can see. Within limits is no finding of no harm: limits are for healthy workers, not for children, the sick or people who live there.",
        "an industrial hygienist, the employer's air sampling and the local authority; " + Respirators,
        Source.CommonPractice("a sample of the air stands for its place and time; limits are set for workers"),
        Audience.Crew);

    /// <summary>Purging counts what is in the air, not what still comes.</summary>
    public static Caution ClearingCountsNoSource { get; } = new(
        "clearing-counts-no-source",
        Hazard.SolventVapour,
        "Air changes and times to clear count only what is in the air when the release has ended, in a room that is mixed. A wet film goes on giving off vapour, and corners and the tub itself clear later: measure before anybody goes in unprotected or a flame is lit.",
        "air sampling by an industrial hygienist; the product's safety data sheet",
        Source.Published("MMWR 43(RR-13), 28 October 1994",
            "Table S3-1, notes: the times assume perfect mixing, which usually does not occur; the factor can be as high as 10. That a film goes on: derived"),
        Audience.Crew);

    /// <summary>A vapour that does not burn.</summary>
    public static Caution NonBurningVapour { get; } = new(
        "non-burning-vapour",
        Hazard.SolventVapour,
        "A vapour here is said not to burn and is left out of the flammable limit. It is breathed like any other, displaces air low in the fixture, and breaks down at flames and glowing surfaces, chlorinated solvents into hydrogen chloride and phosgene: put those out all the same.",
        "the safety data sheet, sections 8 to 10; " + Respirators,
        Source.Published("62 FR 1494 (10 January 1997)",
            "IV: a chlorinated solvent gives off phosgene, hydrogen chloride and carbon monoxide in a fire; for other solvents common practice, no source"),
        Audience.Crew);

    /// <summary>A liquid that is not volatile.</summary>
    public static Caution StaysInFilm { get; } = new(
        "stays-in-film",
        Hazard.SolventVapour,
        "What is said not to be volatile stays in the film, and its vapour is not counted here. It keeps the film soft for longer and leaves it over weeks and months: air the room, and ask the maker what the cured film gives off. As mist it is breathed while spraying.",
        "the safety data sheet and the maker of the product",
        Source.CommonPractice("liquids that boil above 250 °C leave a film slowly"),
        Audience.Crew | Audience.Customer);

    /// <summary>Overspray stays in the air.</summary>
    public static Caution Overspray { get; } = new(
        "overspray-in-air",
        Hazard.SolventVapour,
        "What does not land stays in the air of the room as mist and vapour: a film map says nothing about whether it may be breathed. Two-part urethanes call for supplied air whatever the overspray.",
        "the safety data sheet, the employer's respirator programme and the local code",
        Source.CommonPractice("overspray is judged with the air of the room"),
        Audience.Crew);

    /// <summary>A content of the can is not a concentration in the room.</summary>
    public static Caution ContentIsNotAir { get; } = new(
        "content-is-not-air",
        Hazard.SolventVapour,
        "A content within a limit says what a coating may hold, not what the air in the room holds: in a small bathroom a coating within every limit can still fill the air with more vapour than a person or a flame may meet.",
        "the safety data sheet, air sampling, and the local fire code; the air district for the limit",
        Source.Derived("content of a coating against concentration in air"),
        Audience.Crew);

    /// <summary>Reducer goes in step by step.</summary>
    public static Caution ReduceInSteps { get; } = new(
        "reduce-in-steps",
        Hazard.SolventVapour,
        "Put in half of this reducer, stir, measure again, and go on in small steps: the rule is a first guess. More reducer is more vapour in the room and less film from a pass.",
        "the product's data sheet for how much reducer it takes, its safety data sheet for the vapour",
        Source.CommonPractice("thinning in steps against a cup"),
        Audience.Crew);

    /// <summary>A solvent rub to tell materials apart.</summary>
    public static Caution SolventRub { get; } = new(
        "solvent-rub",
        Hazard.SolventVapour,
        "A solvent rub is a drop on a cloth, where it does not show, with the window open and no flame: it crazes stressed acrylic and dulls an old coat.",
        "the solvent's safety data sheet",
        Source.CommonPractice("solvents craze stressed acrylic"),
        Audience.Crew);

    /// <summary>A new coat gives off vapour while it cures.</summary>
    public static Caution CuringVapour { get; } = new(
        "curing-vapour",
        Hazard.SolventVapour,
        "The coating gives off vapour while it cures: air the room, and keep children, pregnant women, animals and people with asthma out for as long as its safety data sheet says, at least overnight. Smell does not tell when it is over.",
        "the coating's safety data sheet",
        Source.CommonPractice("solvent and unreacted hardener leave a film for days"),
        Audience.Customer | Audience.Occupant);

    private static IEnumerable<Caution> Vapours =>
    [
        ImmediatelyDangerous, NeverAlone, Rescue, NoAirflow, BeyondSaturation, MakeUpAir, BreathingZone, LimitUnknown, ReadingIsAMoment,
            ClearingCountsNoSource, NonBurningVapour, StaysInFilm,
        Overspray, ContentIsNotAir, ReduceInSteps, SolventRub, CuringVapour,
    ];
}

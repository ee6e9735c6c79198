using System.Collections.Generic;

namespace Refinish;

/// <content>Power, occupants, what carries the fixture, skin and eyes.</content>
public static partial class Cautions
{
    /// <summary>Electric tools in a wet room.</summary>
    public static Caution WetElectricity { get; } = new(
        "wet-electricity",
        Hazard.Electricity,
        "Lamps, sanders, heaters, fans and dehumidifiers in a wet room run from a GFCI (residual-current device) on dry cords, and everything that can spark is out of it before solvent is opened.",
        "the local electrical code and the equipment's marking",
        Source.Published("29 CFR 1926.404(b)(1)", "ground-fault circuit interrupters, or an assured equipment grounding conductor programme, on construction sites; quoted in a state's notice and OSHA's letter of 7 February 2005. General industry: 29 CFR 1910.304, receptacles in bathrooms, second-hand. Nothing that sparks: common practice"),
        Audience.Crew);

    /// <summary>Everybody else out.</summary>
    public static Caution Occupants { get; } = new(
        "occupants-out",
        Hazard.Occupants,
        "The coating and its vapour can set off an asthma attack, also in people who never had one. Occupants and animals, birds above all, leave the dwelling before the first can is opened and stay away over the nights between the days of work, for as long as the safety data sheet of the coating says; ask for it. Neighbours who share air, shafts or a corridor are told. Children, pregnant women and people with asthma stay away longest. Smell does not tell when to come back.",
        "the owner or landlord together with the product's safety data sheet; a physician for the vulnerable",
        Source.Published("US Environmental Protection Agency, Vacate and safe re-entry time for spray polyurethane foam application", "occupants vacate while isocyanates are sprayed in a building and until it is cured and aired, children considered; foam is not a coating, the likeness is ours. Animals, neighbours and smell: common practice, no source"),
        Audience.Crew | Audience.Customer | Audience.Occupant);

    /// <summary>Gas appliances after the work.</summary>
    public static Caution Relight { get; } = new(
        "relight-and-check",
        Hazard.Occupants,
        "Water heater, boiler and pilot lights that were shut off for the work are lit again by somebody qualified, who checks that the flue draws. A working carbon monoxide alarm hangs in the dwelling before anybody sleeps there.",
        "the local fuel-gas code and a licensed fitter",
        Source.CommonPractice("a fan can draw flue gas back, and a pilot that is out lets gas escape"),
        Audience.Crew | Audience.Customer | Audience.Occupant);

    /// <summary>A heater without a flue.</summary>
    public static Caution UnventedHeater { get; } = new(
        "unvented-heater",
        Hazard.Occupants,
        "An unvented gas or kerosene heater puts its water and carbon monoxide into the room: the dew point rises while it runs, which is not reckoned here.",
        "the heater's instructions and local codes",
        Source.Derived("a hydrocarbon burns to carbon dioxide and water; carbon monoxide when air is short"),
        Audience.Crew | Audience.Occupant);

    /// <summary>What carries the fixture may give way.</summary>
    public static Caution FixtureGivesWay { get; } = new(
        "fixture-gives-way",
        Hazard.Structure,
        "The fixture or what carries it may give way, and a coating only hides that: repair first.",
        "a licensed contractor and the building code",
        Source.CommonPractice("a coating carries no load"),
        Audience.Crew | Audience.Customer | Audience.Occupant);

    /// <summary>Water behind the surface.</summary>
    public static Caution WaterBehind { get; } = new(
        "water-behind",
        Hazard.Structure,
        "Water behind the surface rots what carries it and lifts the coating: find its way first.",
        "a licensed plumber or contractor",
        Source.CommonPractice("a coating does not stop water from behind"),
        Audience.Crew | Audience.Customer);

    /// <summary>Sun and condensation at a window.</summary>
    public static Caution SunAndCondensation { get; } = new(
        "sun-and-condensation",
        Hazard.Structure,
        "Sun yellows and chalks a coat that is not made for daylight, and condensation that stands at the frame gets behind its edge: ask whether the product may be used at a window. A sill carries nobody: nobody stands on it, for work or later, and an open window behind it is a fall.",
        "the coating's data sheet and the employer's safety programme",
        Source.CommonPractice("sills are wetted from the glass and lit by the sun; coatings of bathrooms are seldom rated for daylight"),
        Audience.Crew | Audience.Customer | Audience.Occupant);

    /// <summary>A toilet, urinal or bidet is soiled.</summary>
    public static Caution SoiledFixture { get; } = new(
        "soiled-fixture",
        Hazard.SkinAndEyes,
        "Toilets, urinals and bidets carry germs, and sanding or blowing throws them into the air: flush, clean and disinfect before anything else, wear waterproof gloves and closed goggles, wash hands before eating, and keep tools for it apart. Vitreous china that breaks cuts to the bone.",
        "the disinfectant's label, the employer's safety programme and local health rules",
        Source.CommonPractice("hygiene and sharp edges at sanitary ware"),
        Audience.Crew);

    /// <summary>Epoxies and their hardeners burn and sensitise.</summary>
    public static Caution EpoxyHardener { get; } = new(
        "epoxy-hardener",
        Hazard.SkinAndEyes,
        "Epoxy resins and amine hardeners burn skin and eyes and can make skin and lungs allergic for life: gloves and closed goggles while mixing and sanding, and nobody breathes the mist when it is sprayed.",
        "the product's safety data sheet and the employer's respiratory protection programme",
        Source.CommonPractice("epoxies cured with amines"),
        Audience.Crew);

    /// <summary>The peroxide of polyester filler.</summary>
    public static Caution Peroxide { get; } = new(
        "peroxide-hardener",
        Hazard.SkinAndEyes,
        "Polyester filler is hardened with a peroxide that can blind: gloves and closed goggles while mixing.",
        SafetyDataSheet + " and local rules",
        Source.CommonPractice("peroxide hardeners"),
        Audience.Crew);

    /// <summary>A mix off its ratio stays reactive for longer.</summary>
    public static Caution OffRatioMix { get; } = new(
        "off-ratio-mix",
        Hazard.SkinAndEyes,
        "A mix that is off its ratio keeps unreacted epoxide, amine or isocyanate in it for longer: gloves and eye protection stay on until it has hardened, and it is not sanded before that.",
        SafetyDataSheet,
        Source.CommonPractice("what is left over when one side is short"),
        Audience.Crew);

    /// <summary>A jet under pressure goes through skin.</summary>
    public static Caution InjectionInjury { get; } = new(
        "injection-injury",
        Hazard.SkinAndEyes,
        "Never point a gun at a person or reach before the nozzle: a jet under high pressure drives coating under the skin without much pain at first. That is an emergency for a surgeon.",
        "the maker of the equipment and emergency medicine",
        Source.CommonPractice("injection injury by airless guns"),
        Audience.Crew);

    /// <summary>Noise takes hearing for life.</summary>
    public static Caution Noise { get; } = new(
        "noise",
        Hazard.Noise,
        "Sanders, grinders, fans and spray guns take hearing for life and without pain, and a tiled bathroom makes them louder: quieter tools, less time, and hearing protection that fits, worn from the first minute; no protector keeps somebody from being called, so agree on signs with whoever stands by.",
        "the employer's hearing conservation programme, and a level measured at the ear",
        Source.Published("29 CFR 1910.95",
            "daily noise; for construction 29 CFR 1926.52 and 1926.101, from memory. Louder in small hard rooms, and signs: common practice, no source"),
        Audience.Crew);

    private static IEnumerable<Caution> Working =>
    [
        WetElectricity, Occupants, Relight, UnventedHeater, FixtureGivesWay, WaterBehind, SunAndCondensation, SoiledFixture, EpoxyHardener,
        Peroxide, OffRatioMix, InjectionInjury, Noise,
    ];
}

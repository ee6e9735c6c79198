using System.Collections.Generic;

namespace Refinish;

/// <content>What the work leaves behind.</content>
public static partial class Cautions
{
    /// <summary>Not down the drain.</summary>
    public static Caution Drains { get; } = new(
        "not-down-the-drain",
        Hazard.Waste,
        "Stripper, solvent, coating, hardener, gun cleaner and their sludge go down no drain, toilet, storm inlet or septic tank, nor onto the ground: they burn in the pipe, stop a septic tank from working and come back in somebody's well. Whether there is a septic tank is asked before work begins.",
        "the owner of the sewer, the health department for a septic tank, and the state's waste programme",
        Source.Published("40 CFR 403.5(b)", "(1) nothing that burns or explodes, flash point below 60 °C (140 °F), (2) nothing with a pH below 5.0; as quoted second-hand. EPA 570-9-91-UIC1, June 1991: wastes through a septic drain field endanger ground water"),
        Audience.Crew | Audience.Customer);

    /// <summary>Rinse water of etching, stripping and leaded surfaces.</summary>
    public static Caution RinseWater { get; } = new(
        "rinse-water",
        Hazard.Waste,
        "Rinse water of etchant or stripper, and of a surface that holds lead or was not tested, is caught, neutralised as the sheet says and kept by itself until it is known what is in it. It goes into a sewer only with its owner's leave, and never into a septic tank.",
        "the owner of the sewer and the state's waste programme; for lead also 40 CFR 745.85",
        Source.Published("40 CFR 403.5(b); 40 CFR 745.85", "pH below 5.0 is refused by a public sewer; waste of a lead renovation is contained; both quoted second-hand. Catching rinse water: common practice"),
        Audience.Crew);

    /// <summary>Residues that make gas or vapour.</summary>
    public static Caution ReactiveWaste { get; } = new(
        "reactive-waste",
        Hazard.Waste,
        "Isocyanate residues make carbon dioxide with moisture and burst a tight can: they stay loosely covered in the open air until they have reacted, and are never mixed with water in a closed vessel. Solvent waste stands apart from them, in a closed, labelled metal can that can vent.",
        SafetyDataSheet + ", section 13, and the carrier of the waste",
        Source.CommonPractice("drums of isocyanate stand unsealed while they react, since carbon dioxide builds up pressure; read on a system supplier's page on drum disposal"),
        Audience.Crew);

    /// <summary>Whose waste it is.</summary>
    public static Caution WasteOwner { get; } = new(
        "waste-is-the-shops",
        Hazard.Waste,
        "Whoever makes the waste answers for it: the shop finds out whether it is hazardous and counts it month by month; up to 100 kg (220 lb) a month the federal rules for very small generators are lighter, those of a state may not be. Do not count on the household exclusion for what a trade brings into a house, and leave nothing in the customer's bin.",
        "the state's hazardous waste programme; in the United States 40 CFR 262.11 and 262.14",
        Source.Published("40 CFR 262.11, 262.14; 40 CFR 261.4(b)(1)", "determination; conditions of a very small quantity generator, 100 kg a month, read in a state's copy and an EPA leaflet; EPA's answers of March 1990 and 31 July 2000 on contractors' household waste disagree on renovation, and speak of lead paint, not of strippers and etchants"),
        Audience.Crew);

    private static IEnumerable<Caution> Wastes => [Drains, RinseWater, ReactiveWaste, WasteOwner];
}

namespace Refinish.Jobs;

/// <summary>Warnings of the whole job that belong to no single calculation.</summary>
internal static class JobCautions
{
    public static readonly Caution Slip = new(
        "new-coat-slip",
        Hazard.Slip,
        "A newly coated tub or shower floor is slicker than the worn one, most of all with soap: tell the customer, offer a slip-resistant floor, and never call any floor non-slip. During preparation wet sheeting and a wet tub floor are slippery too.",
        "the local building code and the test method it names; the customer, once told",
        Source.CommonPractice("slipping in bathtubs; ASTM F462 for tub floors was withdrawn in July 2016"));

    public static readonly Caution AcidAndBleach = new(
        "acid-and-bleach",
        Hazard.Acid,
        "Never let an acid cleaner or etchant meet bleach or a bleach-based cleaner: chlorine gas comes off at once. Rinse one away before the other is opened, with the fan on.",
        "the safety data sheets of both",
        Source.CommonPractice("acid on hypochlorite frees chlorine"));

    public static readonly Caution WetElectricity = new(
        "wet-electricity",
        Hazard.Electricity,
        "Lamps, sanders and heaters in a wet room run from a residual-current device, and everything that can spark is out of it before solvent is opened.",
        "the local electrical code",
        Source.CommonPractice("residual-current protection of portable tools in wet rooms"));

    public static readonly Caution CuringVapour = new(
        "curing-vapour",
        Hazard.SolventVapour,
        "The coating gives off vapour while it cures: air the room, and keep children, pregnant women, animals and people with asthma out for as long as its safety data sheet says, at least overnight. Smell does not tell when it is over.",
        "the coating's safety data sheet",
        Source.CommonPractice("solvent and unreacted hardener leave a film for days"));

    public static readonly Caution GlossySurface = new(
        "glossy-surface",
        Hazard.Slip,
        "A new glossy surface is slippery when wet and soapy, also where it was textured.",
        "the maker's test report, with its method and criterion",
        Source.CommonPractice("gloss and soap"));
}

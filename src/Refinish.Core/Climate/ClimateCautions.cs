namespace Refinish.Climate;

/// <summary>What goes with any advice to warm or dry a room in which solvents are sprayed.</summary>
internal static class ClimateCautions
{
    private static readonly Caution Burners = new(
        "glowing-heaters",
        Hazard.FireAndExplosion,
        "Heaters with a flame or a glowing element ignite solvent vapour: heat before spraying, then switch off and take them out before any coating is opened.",
        "the product's safety data sheet and the fire code",
        Source.CommonPractice("no ignition source where flammable coatings are sprayed"));

    private static readonly Caution UnventedGas = new(
        "unvented-heater",
        Hazard.Occupants,
        "An unvented gas or kerosene heater puts its water and carbon monoxide into the room: the dew point rises while it runs, which is not reckoned here.",
        "the heater's instructions and local codes",
        Source.Derived("a hydrocarbon burns to carbon dioxide and water; carbon monoxide when air is short"));

    private static readonly Caution WetRoom = new(
        "electricity-in-wet-room",
        Hazard.Electricity,
        "Heaters, fans and dehumidifiers in a bathroom need a circuit with a ground-fault (residual-current) device and dry cords; not every one may run among solvent vapour.",
        "the electrical code and the equipment's marking",
        Source.CommonPractice("portable electric equipment in wet rooms"));

    /// <summary>All of them; last, because static fields are set in the order of their text.</summary>
    public static readonly ValueList<Caution> Heating = new([Burners, UnventedGas, WetRoom]);
}

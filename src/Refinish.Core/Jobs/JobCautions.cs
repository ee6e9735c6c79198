namespace Refinish.Jobs;

/// <summary>Warnings of the whole job that belong to no single calculation.</summary>
internal static class JobCautions
{
    public static readonly Caution Slip = new(
        Hazard.Slip,
        "A newly coated tub or shower floor is slicker than the worn one, most of all with soap: tell the customer, offer a slip-resistant floor, and never call any floor non-slip. During preparation wet sheeting and a wet tub floor are slippery too.",
        "the local building code and the test method it names; the customer, once told",
        Source.CommonPractice("slipping in bathtubs; ASTM F462 for tub floors was withdrawn in July 2016"));

    public static readonly Caution AcidAndBleach = new(
        Hazard.Acid,
        "Never let an acid cleaner or etchant meet bleach or a bleach-based cleaner: chlorine gas comes off at once. Rinse one away before the other is opened, with the fan on.",
        "the safety data sheets of both",
        Source.CommonPractice("acid on hypochlorite frees chlorine"));

    public static readonly Caution WetElectricity = new(
        Hazard.Electricity,
        "Lamps, sanders and heaters in a wet room run from a residual-current device, and everything that can spark is out of it before solvent is opened.",
        "the local electrical code",
        Source.CommonPractice("residual-current protection of portable tools in wet rooms"));
}

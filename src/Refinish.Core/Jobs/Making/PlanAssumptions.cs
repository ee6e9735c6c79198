using System.Collections.Generic;

namespace Refinish.Jobs;

/// <summary>What every plan takes for granted.</summary>
internal static class PlanAssumptions
{
    public static IReadOnlyList<string> All { get; } = new ValueList<string>(
    [
        "Each room keeps the climate that was given for it until water may run, against the air that the fan brings in; the dew point stays as it was read.",
        "The sprayer wears supplied air and may go back into the room for the next coat; everybody else stays out until the vapour of each coat is below a tenth of its lower flammable limit. That is a limit against fire and not one of health: whoever goes in before the exposure limits are kept needs the protection that the plan lists.",
        "A fixture that is warmed keeps that temperature until it has cured: leave the heat on, and read the surface before each coat.",
        "Solvent of the sprayed coats and of the promoter's wipe is counted. Cleaners, strippers, silicone removers, filler, cups left open and the cleaning of the gun, which is done outdoors, are not.",
        "A wipe gives off all that is poured for it, evenly over the wiping and then within minutes (2 min, invented).",
        "Overspray gives off its solvent at once and the film at the shop's time constant; each room is well mixed apart from its mixing factor.",
        "A leftover of mixed coating is used in the next coat of the same product within the share of its pot life, counted from the opening of the cans.",
        "The hose is filled once for coats of one product that follow each other within the pot life.",
        "Volumes are additive on mixing.",
    ]);
}

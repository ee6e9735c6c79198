using System.Collections.Generic;

namespace Refinish.Jobs;

/// <summary>What every plan takes for granted.</summary>
internal static class PlanAssumptions
{
    public static IReadOnlyList<string> All { get; } = new ValueList<string>(
    [
        "Each room keeps the climate that was given for it until water may run, against the air that the fan brings in; the dew point stays as it was read.",
        "The sprayer wears supplied air and may go back into the room for the next coat; everybody else stays out of a room until what was sprayed, stripped or wiped on there is below a tenth of its lower flammable limit and, where the limits of all its substances are known, at or below 1 on the index of the lowest eight-hour limits. Mist of isocyanates is not counted in that time. Whoever goes in before needs the protection that the plan lists; so does whoever strips, wipes on promoter or broadcasts grains.",
        "A fixture that is warmed keeps that temperature until it has cured: leave the heat on, and read the surface before each coat.",
        "Solvent of the sprayed coats, of the promoter's wipe and of the shop's chemicals (stripper, silicone remover, cleaners, wipes) is counted in the room where they are used. Acid descalers, alkaline degreasers and epoxy filler are counted as giving off no solvent.",
        "Gun cleaner is not counted, since the gun is cleaned outdoors: a shop that cleans it in a room adds an operation with that vapour. Caulk, sealant, grout, spot and sealing primer put on by hand, cups left open and rags left lying are not counted either.",
        "A wipe gives off all that is poured for it, evenly over the wiping and then within its time constant (2 min unless given, invented).",
        "What is taken off again gives off vapour while it lies: silicone digester until its dwell ends, stripper until somebody has scraped it off. Until then it gives off solvent as fast as a fresh layer of its time constant, and what is left leaves the room with it in a closed can.",
        "What misses the fixture gives off its solvent at once, so does the shop's part of what lands (25 % unless given, from memory), and the film does at the shop's time constant; each room is well mixed apart from its mixing factor. The careful bound of the airflow lets all of a coat flash while it is sprayed, whatever that part.",
        "A leftover of mixed coating is used in the next coat of the same product within the share of its pot life, counted from the opening of the cans.",
        "The hose is filled once for coats of one product that follow each other within the pot life.",
        "Volumes are additive on mixing.",
    ]);
}

namespace Refinish.Estimating;

/// <summary>What can hurt with the usual extras: a slip-resistant floor, stripping an old coat.</summary>
internal static class OptionCautions
{
    public static Caution Slip { get; } = new(
        Hazard.Slip,
        "A textured floor slips less when clean and is still slippery with soap: no coating makes a bathtub floor non-slip.",
        "the maker's test report, with its method and criterion",
        Source.CommonPractice("ANSI A326.3 (seen second-hand) is for level floors and no criterion for bathtubs; ASTM F462 for bathtubs was withdrawn"));

    public static Caution Strippers { get; } = new(
        Hazard.Stripper,
        "Strippers with methylene chloride have killed refinishers in bathrooms and are to be taken as prohibited for this work; any other stripper needs its own exhaust and gloves.",
        "40 CFR 751 subpart B, local rules and the stripper's safety data sheet",
        Source.Published("MMWR 61(7):119-122 (24 February 2012)", "13 deaths of bathtub refinishers, 2000 to 2011"));

    public static Caution OldCoat { get; } = new(
        Hazard.Lead,
        "An old coat may hold lead: test before it is stripped or sanded.",
        "a lead test and the law on lead work",
        Source.Published("71 FR 1588", "target housing: built before 1978, TSCA section 401"));
}

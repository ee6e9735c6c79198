using System.Collections.Generic;

namespace Refinish.Air;

/// <summary>
/// Dated facts about the law of solvents, strippers, isocyanates, lead and dust, each with its citation. No fact here is advice.
/// </summary>
public static class LegalFacts
{
    private const string UnitedStates = "United States";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<LegalFact> All { get; } = new ValueList<LegalFact>(
    [
        new("methylene chloride", UnitedStates, "27 March 2019, effective 28 May 2019", "Paint and coating removers with methylene chloride for consumers were prohibited; commercial use was not covered then.", Standing.Seen, Source.Published("84 FR 11420", "summary")),
        new("methylene chloride", UnitedStates, "8 May 2024, effective 8 July 2024", "A rule under 40 CFR 751 ends consumer access, restricts industrial and commercial use with a phase-out, and protects the workers who remain.", Standing.Seen, Source.Published("89 FR 39254", "summary and dates")),
        new("methylene chloride", UnitedStates, "2024", "Removing a coating by a chemical is in the rule's definition of paint and coating removal, and a paid refinisher is not a consumer.", Standing.Seen, Source.Published("40 CFR 751.103", "definitions")),
        new("methylene chloride", UnitedStates, "2024", "Refinishing bathtubs with it is to be treated as prohibited unless an exception of subpart B is found to apply.", Standing.FromMemory, Source.FromMemory("40 CFR 751.105, .107, .109(a), .115; bathtubs are not named in the text that was read")),
        new("methylene chloride", UnitedStates, "3 May 2023", "85 deaths from methylene chloride are documented for 1980 to 2018.", Standing.Seen, Source.Published("88 FR 28284", "summary")),
        new("methylene chloride", UnitedStates, "24 February 2012", "Thirteen bathtub refinishers died in ten states from 2000 to 2011, each in a bathroom without enough air.", Standing.Seen, Source.Published("MMWR 61(7):119-122", "24 February 2012")),
        new("methylene chloride", UnitedStates, "January 2013", "At least fourteen bathtub refinishers had died since 2000.", Standing.Seen, Source.Published("OSHA/NIOSH hazard alert, methylene chloride", "January 2013")),
        new("diisocyanates", "European Union", "24 August 2023", "Whoever uses products with more than 0.1 % of monomeric diisocyanates at work has to be trained first, again every five years.", Standing.SecondHand, Source.Published("Regulation (EU) 2020/1149", "restriction 74; regulation number from memory")),
        new("isocyanates", UnitedStates, "1996", "NIOSH asked for the prevention of asthma and deaths from diisocyanates; about 280 000 workers were exposed.", Standing.Seen, Source.Published("NIOSH Alert 96-111", "1996")),
        new("lead", UnitedStates, "as of January 2021", "Renovation that disturbs at most 6 ft² of painted surface a room indoors is minor repair, if no prohibited practice is used; homes built before 1978 are covered.", Standing.Seen, Source.Published("40 CFR 745.83", "as explained in EPA's frequent questions")),
        new("silica", UnitedStates, "2016", "The action level for respirable crystalline silica in construction is 25 µg/m³ as an 8-hour average.", Standing.Seen, Source.Published("29 CFR 1926.1153", "(b)")),
        new("respirators", UnitedStates, "24 August 2006", "Respirators are chosen by assigned protection factors, within a programme that the employer keeps.", Standing.Seen, Source.Published("71 FR 50121", "29 CFR 1910.134")),
    ]);
}

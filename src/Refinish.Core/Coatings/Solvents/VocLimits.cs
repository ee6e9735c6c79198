using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// Limits for the category "tub and tile refinish coating" as they are remembered. None of the numbers was read in the rule itself: look
/// yours up, and add it as a <see cref="VocLimit"/>.
/// </summary>
/// <remarks>
/// A bath refinished where it stands is an architectural coating job: appurtenances include bathroom fixtures (Conn. Agencies Regs.
/// 22a-174-41a(a)(4), (5)). The federal rule, 40 CFR 59 subpart D, has no category of this name.
/// </remarks>
public static class VocLimits
{
    private const string Category = "tub and tile refinish coating";

    /// <summary>California's suggested control measure of 2007, which districts adopt.</summary>
    public static VocLimit CaliforniaMeasure2007 { get; } = Remembered("California, districts that adopted the measure", "suggested control measure for architectural coatings, 2007, table 1", "2011-01-01");

    /// <summary>California's suggested control measure of 2019.</summary>
    public static VocLimit CaliforniaMeasure2019 { get; } = Remembered("California, districts that adopted the measure", "suggested control measure for architectural coatings, 2019", null);

    /// <summary>South Coast, rule 1113.</summary>
    public static VocLimit SouthCoast1113 { get; } = Remembered("South Coast air district", "rule 1113, table of standards", null);

    /// <summary>States of the ozone transport region that took its second model rule.</summary>
    public static VocLimit OzoneTransportStates { get; } = Remembered("states with the ozone transport commission's phase II rule, as Maryland's COMAR 26.11.39", "architectural and industrial maintenance coatings, phase II", "Maryland: made on or after 2017-01-01");

    /// <summary>
    /// The European limit for two-pack reactive performance coatings for specific end use, solvent-borne, ready to use: 500 g/L. The
    /// directive speaks of buildings, their trim and fittings; whether a bath is one, the authority says.
    /// </summary>
    public static VocLimit EuropeanTwoPack { get; } = new()
    {
        Jurisdiction = "European Union",
        Rule = "Directive 2004/42/EC, annex II A(j)",
        Category = "two-pack reactive performance coatings, solvent-borne",
        EffectiveFrom = "2010-01-01",
        Basis = VocBasis.ReadyToUse,
        Limit = MassConcentration.FromGramsPerLiter(500),
        Source = Source.FromMemory("500 g/L in Directive 2004/42/EC, annex II, table A, subcategory j from 2010; that it counts g/L ready to use was read in the British regulations 2005/2773"),
    };

    /// <summary>Those for tub and tile refinish coatings.</summary>
    public static IReadOnlyList<VocLimit> All { get; } = new ValueList<VocLimit>([CaliforniaMeasure2007, CaliforniaMeasure2019, SouthCoast1113, OzoneTransportStates]);

    private static VocLimit Remembered(string jurisdiction, string rule, string? from) => new()
    {
        Jurisdiction = jurisdiction,
        Rule = rule,
        Category = Category,
        EffectiveFrom = from,
        Limit = MassConcentration.FromGramsPerLiter(420),
        Source = Source.FromMemory("420 g/L in " + rule + "; the rule's table was not seen"),
    };
}

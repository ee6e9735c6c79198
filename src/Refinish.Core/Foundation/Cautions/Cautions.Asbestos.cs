using System.Collections.Generic;

namespace Refinish;

/// <content>Asbestos round and under old fixtures.</content>
public static partial class Cautions
{
    private const string AsbestosLaw = "the asbestos programme of the state or country; in the United States 29 CFR 1926.1101 and 40 CFR 61 subpart M";

    /// <summary>Nobody knows yet whether there is asbestos.</summary>
    public static Caution AsbestosUntested { get; } = new(
        "asbestos-untested",
        Hazard.Asbestos,
        "Old tile adhesive, vinyl and asphalt flooring, backing board, joint compound and the pads under steel tubs and sinks can hold asbestos: nothing of them is cut, scraped, sanded or broken before an accredited laboratory has answered. In the United States vinyl and asphalt flooring laid no later than 1980 counts as asbestos until then.",
        AsbestosLaw,
        Source.Published("29 CFR 1926.1101(k)(1), (g)(8)(i)(I)", "flooring installed no later than 1980 and what the employer should have known of; text as printed on a consultant's page. Adhesive and vinyl flooring: lists of the trade; backing board and pads under tubs and sinks from memory. General industry: 29 CFR 1910.1001"),
        Audience.Crew | Audience.Customer | Audience.Occupant);

    /// <summary>Asbestos was found.</summary>
    public static Caution AsbestosFound { get; } = new(
        "asbestos-found",
        Hazard.Asbestos,
        "Asbestos was found: nobody cuts, scrapes, grinds or sands it, wet or dry, nor pulls out what holds it. What is whole stays untouched; everything else is for a licensed abatement contractor before refinishing begins, and the people of the building are told where it is.",
        AsbestosLaw + ", carried out by a licensed contractor",
        Source.Published("29 CFR 1926.1101(b), (g)(8)(i)", "aggressive methods: sanding, abrading, grinding and what else breaks it; sanding of flooring and its mastic is forbidden, OSHA letter of 18 May 2005"),
        Audience.Crew | Audience.Customer | Audience.Occupant);

    private static IEnumerable<Caution> Asbestos => [AsbestosUntested, AsbestosFound];
}

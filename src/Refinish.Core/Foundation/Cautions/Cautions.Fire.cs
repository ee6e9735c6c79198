using System.Collections.Generic;

namespace Refinish;

/// <content>What burns or explodes.</content>
public static partial class Cautions
{
    /// <summary>No sparks, flames or pilot lights.</summary>
    public static Caution IgnitionSources { get; } = new(
        "ignition-sources",
        Hazard.FireAndExplosion,
        "Put out every flame and pilot light that the air can reach and within 20 ft (6 m), water heater and boiler among them, and unplug what can spark, before the can is opened and until the vapour is gone. Do not smoke, switch or charge anything in the room.",
        FireCode,
        Source.Published("California Code of Regulations, title 8", "§5449(b), (c): no open flame, spark-producing equipment or hot surface in a spraying area nor within 20 ft of it unless a partition is between; 29 CFR 1926.66 in like words for construction, 29 CFR 1910.107(c), its numbers from memory, for general industry"),
        Audience.Crew | Audience.Occupant);

    /// <summary>The fan must not be what lights the vapour.</summary>
    public static Caution ExplosionProofFan { get; } = new(
        "explosion-proof-fan",
        Hazard.FireAndExplosion,
        "Draw the vapour through a fan with non-sparking blades and its motor out of the air stream or rated for it; a household box fan or bathroom fan is neither. Let the outlet end in the open, away from windows, intakes and flames, and keep the fan running while spraying and until the vapour is gone.",
        FireCode,
        Source.Published("WAC 296-24-37007; California Code of Regulations, title 8, §5450", "(2) kept in operation while spraying and until the vapour is gone, (4) non-sparking fan, (5) no motor inside the duct; general industry: 29 CFR 1910.107(d) in like words; construction: 29 CFR 1926.66(b), its paragraph from memory"),
        Audience.Crew);

    /// <summary>The vapour of the room passes the share of its lower flammable limit that is allowed.</summary>
    public static Caution Flammable { get; } = new(
        "flammable-vapour",
        Hazard.FireAndExplosion,
        "The vapour passes the share of its lower flammable limit that a rule allows, a quarter where none was chosen. A spark can burn the room. Do not spray under these conditions.",
        FireCode,
        Source.Published("International Mechanical Code", "502.7.3.3: at most 25 % of the lower flammable limit"),
        Audience.Crew);

    /// <summary>The vapour of the room passes a tenth of its lower flammable limit.</summary>
    public static Caution NearFlammable { get; } = new(
        "near-flammable-vapour",
        Hazard.FireAndExplosion,
        "The vapour of the room passes a tenth of its lower flammable limit. A model of a room tells no better than a factor of two, and near the gun and low in the tub it is richer: more air, a slower gun or less at a time before a can is opened.",
        FireCode,
        Source.Published("WAC 296-304-03009", "(2): below 10 % of the lower explosive limit, spray painting in ships; the factor of two is that of the box model"),
        Audience.Crew);

    /// <summary>Too rich today burns while it thins out.</summary>
    public static Caution TooRichThinsOut { get; } = new(
        "too-rich-thins-out",
        Hazard.FireAndExplosion,
        "Vapour above its upper flammable limit is no protection: as air comes in it thins out through the whole range in which it burns, and at its edges it burns already. Stay below a quarter of the lower limit.",
        FireCode,
        Source.Derived("a rich mixture that is diluted to nothing passes every fraction between"),
        Audience.Crew);

    /// <summary>Measure, low in the fixture.</summary>
    public static Caution GasMeter { get; } = new(
        "gas-meter",
        Hazard.FireAndExplosion,
        "Measure while you spray: a combustible-gas meter that its maker states for these solvents, held low in the fixture where vapour collects. Plug drain and overflow, so that vapour does not run into the pipes.",
        FireCode,
        Source.CommonPractice("vapours of solvents are heavier than air"),
        Audience.Crew);

    /// <summary>Compressor and turbine outside.</summary>
    public static Caution GunAir { get; } = new(
        "gun-air",
        Hazard.FireAndExplosion,
        "The compressor or turbine of the spray gun stands outside the room, in clean air: its motor sparks, and inside it would blow the room's vapour through the gun.",
        FireCode,
        Source.CommonPractice("motors that spark are kept out of a spraying area"),
        Audience.Crew);

    /// <summary>Static sparks.</summary>
    public static Caution BondingAndGrounding { get; } = new(
        "bonding-and-grounding",
        Hazard.FireAndExplosion,
        "Bond and ground cans and containers while solvent is poured, and the spray gun and metal fixture where the equipment's maker asks for it.",
        FireCode,
        Source.Published("29 CFR 1926.152", "(e)(2): flammable liquids are transferred only between containers that are bonded; quoted on an equipment maker's page; general industry: 29 CFR 1910.106(e)(6)(ii), from memory"),
        Audience.Crew);

    /// <summary>Mist burns like vapour.</summary>
    public static Caution MistBurns { get; } = new(
        "mist-burns",
        Hazard.FireAndExplosion,
        "Mist burns like vapour, and spraying makes static electricity: no flame, no spark, no switch in the room, and equipment bonded and grounded as its maker asks.",
        "the local fire code and the maker of the equipment",
        Source.CommonPractice("mist of flammable coatings is treated as vapour"),
        Audience.Crew);

    /// <summary>Rags.</summary>
    public static Caution Rags { get; } = new(
        "solvent-rags",
        Hazard.FireAndExplosion,
        "Solvent rags and overspray paper go into a closed metal can, out of the room, emptied every day. Some resins, oils and citrus solvents heat by themselves and burn: those rags go under water in the can.",
        "the local fire and waste code",
        Source.Published("WAC 296-24-37013", "(3): metal cans emptied at least daily or each shift; 29 CFR 1926.252(e), construction, in like words, second-hand; general industry: 29 CFR 1910.106(h)(8)(iii), second-hand. Citrus solvent: hazard statement of a safety data sheet of d-limonene"),
        Audience.Crew);

    /// <summary>Heaters that glow or burn.</summary>
    public static Caution GlowingHeaters { get; } = new(
        "glowing-heaters",
        Hazard.FireAndExplosion,
        "Heaters with a flame or a glowing element ignite solvent vapour: heat before spraying, then switch off and take them out before any coating is opened.",
        "the product's safety data sheet and the fire code",
        Source.CommonPractice("no ignition source where flammable coatings are sprayed"),
        Audience.Crew);

    /// <summary>A batch in the pot heats itself.</summary>
    public static Caution BatchHeats { get; } = new(
        "batch-heats-itself",
        Hazard.FireAndExplosion,
        "A batch in the pot heats itself: the larger and the warmer it is, the shorter it lives, and left over it can smoke. The time here is for the data sheet's own batch size.",
        "the product's data sheet and safety data sheet",
        Source.CommonPractice("exotherm of two-part coatings and fillers in the pot"),
        Audience.Crew);

    /// <summary>Styrene of polyester filler.</summary>
    public static Caution Styrene { get; } = new(
        "styrene-filler",
        Hazard.FireAndExplosion,
        "Polyester filler gives off styrene, which smells strongly and burns; leftovers in the cup get hot.",
        SafetyDataSheet + " and local rules",
        Source.CommonPractice("styrene in polyester filler"),
        Audience.Crew);

    private static IEnumerable<Caution> Fire =>
    [
        IgnitionSources, ExplosionProofFan, Flammable, NearFlammable, TooRichThinsOut, GasMeter, GunAir, BondingAndGrounding, MistBurns,
            Rags, GlowingHeaters, BatchHeats, Styrene,
    ];
}

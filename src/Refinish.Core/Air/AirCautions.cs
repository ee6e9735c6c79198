using System.Collections.Generic;

namespace Refinish.Air;

/// <summary>The warnings that go with spraying, stripping, etching and sanding in a small room. Each says who decides and what it rests on.</summary>
/// <remarks>They add to, and never replace, local codes, the product's safety data sheet and licensed practice.</remarks>
public static class AirCautions
{
    private const string Respirators = "the employer's respiratory protection programme under 29 CFR 1910.134 or the local equivalent, and the safety data sheet";
    private const string FireCode = "the local fire and mechanical code and the authority that enforces it";

    /// <summary>Supplied air where isocyanates are sprayed.</summary>
    public static Caution SuppliedAir { get; } = new(
        "supplied-air",
        Hazard.Isocyanate,
        "Two-part urethanes release isocyanates when sprayed: use supplied air, which is all that NIOSH lists for hexamethylene diisocyanate, in a programme with fit test and medical clearance. A cartridge gives no warning when it is spent, and one exposure too many can bring lifelong asthma.",
        Respirators,
        Source.Published("NIOSH Pocket Guide, hexamethylene diisocyanate; NIOSH Alert 96-111 (1996)", "respirator recommendations; case reports. That cartridges give no warning is from memory"));

    /// <summary>The supplied air itself has to be fit to breathe.</summary>
    public static Caution BreathingAir { get; } = new(
        "breathing-air",
        Hazard.Isocyanate,
        "Supplied air is only as good as its intake: the pump or compressor stands in fresh air, away from the fan's outlet, from engines and from flues; carbon monoxide and air quality are watched as the programme says, and there is a way out when it fails.",
        Respirators,
        Source.Published("29 CFR 1910.134", "(i): quality of breathing air; paragraph from memory"));

    /// <summary>Compressor and turbine outside.</summary>
    public static Caution GunAir { get; } = new(
        "gun-air",
        Hazard.FireAndExplosion,
        "The compressor or turbine of the spray gun stands outside the room, in clean air: its motor sparks, and inside it would blow the room's vapour through the gun.",
        FireCode,
        Source.CommonPractice("motors that spark are kept out of a spraying area"));

    /// <summary>Measure, low in the fixture.</summary>
    public static Caution GasMeter { get; } = new(
        "gas-meter",
        Hazard.FireAndExplosion,
        "Measure while you spray: a combustible-gas meter that its maker states for these solvents, held low in the fixture where vapour collects. Plug drain and overflow, so that vapour does not run into the pipes.",
        FireCode,
        Source.CommonPractice("vapours of solvents are heavier than air"));

    /// <summary>What the box model leaves out: the breathing zone.</summary>
    public static Caution BreathingZone { get; } = new(
        "breathing-zone",
        Hazard.SolventVapour,
        "The numbers are for a well-mixed room. Close to the gun and low in a tub the vapour is denser than that: they are a screening, not a measurement of what a person breathes.",
        "air sampling by an industrial hygienist; " + Respirators,
        Source.Published("S. Arnold, Y. Shao, G. Ramachandran, Evaluating well-mixed room and near-field–far-field model performance under highly controlled conditions, Journal of Occupational and Environmental Hygiene", "abstract: in a chamber with known inputs the room model met its criteria for 88 to 97 % of the pairs, the near field for 67 to 84 %"));

    /// <summary>No sparks, flames or pilot lights.</summary>
    public static Caution IgnitionSources { get; } = new(
        "ignition-sources",
        Hazard.FireAndExplosion,
        "Put out every flame and pilot light that the air can reach and within 20 ft (6 m), water heater and boiler among them, and unplug what can spark, before the can is opened and until the vapour is gone. Do not smoke, switch or charge anything in the room.",
        FireCode,
        Source.Published("California Code of Regulations, title 8", "§5449(b), (c): no open flame, spark-producing equipment or hot surface in a spraying area nor within 20 ft of it unless a partition is between; 29 CFR 1910.107(c) in like words, its numbers from memory"));

    /// <summary>The fan must not be what lights the vapour.</summary>
    public static Caution ExplosionProofFan { get; } = new(
        "explosion-proof-fan",
        Hazard.FireAndExplosion,
        "Draw the vapour through a fan with non-sparking blades and its motor out of the air stream or rated for it; a household box fan or bathroom fan is neither. Let the outlet end in the open, away from windows, intakes and flames, and keep the fan running while spraying and until the vapour is gone.",
        FireCode,
        Source.Published("WAC 296-24-37007; California Code of Regulations, title 8, §5450", "(2) kept in operation while spraying and until the vapour is gone, (4) non-sparking fan, (5) no motor inside the duct; 29 CFR 1910.107(d) in like words"));

    /// <summary>Air has to come in before it can go out.</summary>
    public static Caution MakeUpAir { get; } = new(
        "make-up-air",
        Hazard.SolventVapour,
        "As much clean air has to come in as the fan takes out, across the room from it. Without an opening the fan moves next to nothing, and it can draw flue gas back out of a water heater: shut gas appliances off and check their draught afterwards.",
        "the local mechanical and fuel-gas code",
        Source.Published("29 CFR 1910.94", "(c)(7)(i): clean make-up air equal to the exhaust; back-draught is common practice"));

    /// <summary>Everybody else out.</summary>
    public static Caution Occupants { get; } = new(
        "occupants-out",
        Hazard.Occupants,
        "Occupants and animals, birds above all, leave the dwelling; neighbours who share air, shafts or a corridor are told. Children, pregnant women and people with asthma stay away longest. Smell does not tell when to come back.",
        "the owner or landlord together with the product's safety data sheet; a physician for the vulnerable",
        Source.Published("US Environmental Protection Agency, Vacate and safe re-entry time for spray polyurethane foam application", "occupants vacate while isocyanates are sprayed in a building and until it is cured and aired, children considered; foam is not a coating, the likeness is ours. Animals, neighbours and smell: common practice, no source"));

    /// <summary>Static sparks.</summary>
    public static Caution BondingAndGrounding { get; } = new(
        "bonding-and-grounding",
        Hazard.FireAndExplosion,
        "Bond and ground cans and containers while solvent is poured, and the spray gun and metal fixture where the equipment's maker asks for it.",
        FireCode,
        Source.Published("29 CFR 1926.152", "(e)(2): flammable liquids are transferred only between containers that are bonded; quoted on an equipment maker's page"));

    /// <summary>Methylene chloride has killed people at this very work.</summary>
    public static Caution MethyleneChloride { get; } = new(
        "methylene-chloride",
        Hazard.Stripper,
        "Do not strip with methylene chloride. Its vapour has killed at least fourteen bathtub refinishers in the United States since 2000, each in a bathroom without enough air. Treat its use as prohibited there (40 CFR 751 subpart B) unless counsel has found an exception; elsewhere ask the local law.",
        "40 CFR 751 subpart B and the local law",
        Source.Published("OSHA/NIOSH hazard alert, January 2013; MMWR 61(7):119-122, 24 February 2012; 89 FR 39254, 8 May 2024", "deaths; rule. That the rule covers this use is from memory of its exceptions"));

    /// <summary>Lead in old enamel and paint.</summary>
    public static Caution LeadTest { get; } = new(
        "lead-test",
        Hazard.Lead,
        "Have the old enamel, glaze or paint tested for lead before it is sanded, ground or etched. In the United States homes built before 1978 fall under the renovation rule when painted surfaces are disturbed; whether a glazed fixture does is a question for the local programme, so take the careful answer.",
        "the local lead programme; in the United States 40 CFR 745 subpart E and 29 CFR 1926.62",
        Source.Published("40 CFR 745.83; 29 CFR 1926.62", "definitions; (c)(1)"));

    /// <summary>Dust.</summary>
    public static Caution WetSanding { get; } = new(
        "wet-sanding",
        Hazard.Dust,
        "Sand wet or with suction through a HEPA filter, and never dry-sweep: enamel, filler and tile dust can hold crystalline silica and lead.",
        "29 CFR 1926.1153 or the local equivalent; the safety data sheet",
        Source.Published("29 CFR 1926.1153", "(a), (b): action level 25 µg/m³; HEPA as 99.97 % at 0.3 µm"));

    /// <summary>Hydrofluoric acid.</summary>
    public static Caution HydrofluoricAcid { get; } = new(
        "hydrofluoric-acid",
        Hazard.Acid,
        "Etchants with hydrofluoric acid or bifluoride burn without pain at first, below 20 % for up to a day, and small burns can kill. Work without them where the system allows; otherwise have calcium gluconate gel open at hand. After any contact, painless too: off with what is soaked, rinse at once with much water, then work the gel in with gloved hands until help comes, and call an ambulance. How long to rinse before the gel is for the safety data sheet to say; the gel is not for eyes, which are rinsed on and on.",
        "the safety data sheet, poison control and emergency medicine",
        Source.Published("ATSDR Medical Management Guidelines, hydrogen fluoride", "onset of pain; rinsing and the gel are quoted second-hand"));

    /// <summary>Rags.</summary>
    public static Caution Rags { get; } = new(
        "solvent-rags",
        Hazard.FireAndExplosion,
        "Solvent rags and overspray paper go into a closed metal can, out of the room, emptied every day. Some resins and oils heat by themselves.",
        "the local fire and waste code",
        Source.Published("WAC 296-24-37013", "(3): metal cans emptied at least daily or each shift; 29 CFR 1926.252(e) in like words, second-hand"));

    /// <summary>Never alone.</summary>
    public static Caution NeverAlone { get; } = new(
        "never-alone",
        Hazard.SolventVapour,
        "Never work alone with solvents in a bathroom: a second person outside it, who can see or hear the first and who does not go in without supplied air.",
        "the employer's emergency plan",
        Source.Published("OSHA/NIOSH hazard alert, January 2013", "common to the deaths: alone, in small, windowless, badly ventilated bathrooms, without proper respirator; bathroom fans and open windows are not enough. The second person outside: common practice, no source"));

    internal static Caution NoAirflow { get; } = new(
        "no-airflow",
        Hazard.SolventVapour,
        "No fan: nothing leaves the room in this study. No time to clear and no re-entry can be judged.",
        "the local code; 29 CFR 1910.94(c) where it applies",
        Source.Derived("no airflow, so no removal"));

    internal static Caution BeyondSaturation { get; } = new(
        "beyond-saturation",
        Hazard.SolventVapour,
        "The room model gives more vapour than air can hold at this temperature: its numbers do not hold there. The real air is then close to saturated, which is far above every limit.",
        "air sampling by an industrial hygienist",
        Source.Derived("a vapour cannot exceed its saturation pressure"));

    internal static Caution ImmediatelyDangerous { get; } = new(
        "immediately-dangerous",
        Hazard.SolventVapour,
        "A peak is at or above what NIOSH lists as immediately dangerous to life or health. Do not enter; at such a level only full-facepiece pressure-demand self-contained or supplied air with an escape bottle is listed. Change the job: less at a time, more air, another product.",
        Respirators,
        Source.Published("29 CFR 1910.134", "(d)(2): atmospheres immediately dangerous to life or health; paragraph from memory"));

    internal static Caution Flammable { get; } = new(
        "flammable-vapour",
        Hazard.FireAndExplosion,
        "The vapour passes a quarter of its lower flammable limit. A spark can burn the room. Do not spray under these conditions.",
        FireCode,
        Source.Published("International Mechanical Code", "502.7.3.3: at most 25 % of the lower flammable limit"));

    internal static Caution NearFlammable { get; } = new(
        "near-flammable-vapour",
        Hazard.FireAndExplosion,
        "The vapour of the room passes a tenth of its lower flammable limit. A model of a room tells no better than a factor of two, and near the gun and low in the tub it is richer: more air, a slower gun or less at a time before a can is opened.",
        FireCode,
        Source.Published("WAC 296-304-03009", "(2): below 10 % of the lower explosive limit, spray painting in ships; the factor of two is that of the box model"));

    internal static Caution LimitUnknown { get; } = new(
        "limit-unknown",
        Hazard.SolventVapour,
        "For a substance of this study a limit is not known here, so part of it cannot be judged. Not known does not mean harmless: ask the safety data sheet, section 8.",
        "the safety data sheet",
        Source.Derived("missing data"));

    /// <summary>Those for spraying solvent-borne coatings.</summary>
    public static IReadOnlyList<Caution> ForSpraying { get; } = new ValueList<Caution>(
        [BreathingZone, IgnitionSources, ExplosionProofFan, GunAir, GasMeter, MakeUpAir, Occupants, NeverAlone, BondingAndGrounding, Rags]);

    /// <summary>Those for spraying two-part urethanes.</summary>
    public static IReadOnlyList<Caution> ForIsocyanates { get; } = new ValueList<Caution>([SuppliedAir, BreathingAir, Occupants, NeverAlone]);

    /// <summary>Those for stripping, etching and sanding.</summary>
    public static IReadOnlyList<Caution> ForPreparation { get; } = new ValueList<Caution>(
        [MethyleneChloride, LeadTest, WetSanding, HydrofluoricAcid, NeverAlone]);
}

using System.Collections.Generic;
using System.Linq;

namespace Refinish;

/// <summary>
/// Every caution of the library, each once: what can hurt where surfaces are judged, stripped, etched, sanded, sprayed, cured and used
/// again. Each says whom it concerns, who decides and what it rests on.
/// </summary>
/// <remarks>
/// They add to, and never replace, local codes, the product's safety data sheet and licensed practice. Where the United States have a rule
/// for construction (29 CFR 1926) and one for general industry (29 CFR 1910), both are named: "construction, alteration, and/or repair,
/// including painting and decorating" is construction work (29 CFR 1910.12(b), 1926.32(g)), maintenance is not, and no regulation draws the
/// line between them (OSHA letter of 18 November 2003). Renewing a fixture in a customer's building reads like the former; which rule binds
/// a job is for the employer and the authority.
/// </remarks>
/// <example><code>
/// string sentence = Cautions.NeverAlone.Sentence;
/// </code></example>
public static partial class Cautions
{
    private const string Respirators = "the employer's respiratory protection programme under 29 CFR 1910.134 or the local equivalent, and "
        + "the safety data sheet";
    private const string FireCode = "the local fire and mechanical code and the authority that enforces it";
    private const string SafetyDataSheet = "the product's safety data sheet";

    /// <summary>All of them, what kills fastest first: by <see cref="Hazard"/>, and as written within one.</summary>
    public static IReadOnlyList<Caution> All => field ??= new ValueList<Caution>(
        new[] { Vapours, Emergencies, Fire, Isocyanates, Preparing, Working, Lamps, Asbestos, Wastes, Slips }
            .SelectMany(some => some).OrderBy(caution => caution.Hazard));

    /// <summary>Those for spraying solvent-borne coatings.</summary>
    public static IReadOnlyList<Caution> ForSpraying => field ??= ValueList<Caution>.Owning(
        BreathingZone, IgnitionSources, ExplosionProofFan, GunAir, GasMeter, MakeUpAir, Occupants, NeverAlone, BondingAndGrounding, Rags);

    /// <summary>Those for spraying two-part urethanes.</summary>
    public static IReadOnlyList<Caution> ForIsocyanates => field ??= ValueList<Caution>.Owning(
        SuppliedAir, LooseHood, BreathingAir, Sensitised, MedicalSurveillance, Occupants, NeverAlone);

    /// <summary>Those for heating or drying a room in which solvents are sprayed.</summary>
    public static IReadOnlyList<Caution> ForHeating => field ??= ValueList<Caution>.Owning(GlowingHeaters, UnventedHeater, WetElectricity);

    internal static IReadOnlyList<Caution> ForBatch => field ??= ValueList<Caution>.Owning(BatchHeats);

    /// <summary>Those for planning the spray itself; the air of the room has its own.</summary>
    internal static IReadOnlyList<Caution> ForMist => field ??= ValueList<Caution>.Owning(Overspray, MistBurns, InjectionInjury);
}

using System.Collections.Generic;
using System.Linq;

namespace Refinish;

/// <summary>
/// Every caution of the library, each once: what can hurt where surfaces are judged, stripped, etched, sanded, sprayed, cured and used again.
/// Each says whom it concerns, who decides and what it rests on.
/// </summary>
/// <remarks>They add to, and never replace, local codes, the product's safety data sheet and licensed practice.</remarks>
/// <example><code>
/// string sentence = Cautions.NeverAlone.Sentence;
/// </code></example>
public static partial class Cautions
{
    private const string Respirators = "the employer's respiratory protection programme under 29 CFR 1910.134 or the local equivalent, and the safety data sheet";
    private const string FireCode = "the local fire and mechanical code and the authority that enforces it";
    private const string SafetyDataSheet = "the product's safety data sheet";

    /// <summary>All of them, what kills fastest first: by <see cref="Hazard"/>, and as written within one.</summary>
    public static IReadOnlyList<Caution> All => field ??= new ValueList<Caution>(
        new IEnumerable<Caution>[] { Fire, Vapours, Isocyanates, Preparing, Working, Slips }.SelectMany(some => some).OrderBy(caution => caution.Hazard));

    /// <summary>Those for spraying solvent-borne coatings.</summary>
    public static IReadOnlyList<Caution> ForSpraying => field ??= ValueList<Caution>.Owning(
        BreathingZone, IgnitionSources, ExplosionProofFan, GunAir, GasMeter, MakeUpAir, Occupants, NeverAlone, BondingAndGrounding, Rags);

    /// <summary>Those for spraying two-part urethanes.</summary>
    public static IReadOnlyList<Caution> ForIsocyanates => field ??= ValueList<Caution>.Owning(SuppliedAir, BreathingAir, Occupants, NeverAlone);

    /// <summary>Those for heating or drying a room in which solvents are sprayed.</summary>
    public static IReadOnlyList<Caution> ForHeating => field ??= ValueList<Caution>.Owning(GlowingHeaters, UnventedHeater, WetElectricity);

    internal static IReadOnlyList<Caution> ForBatch => field ??= ValueList<Caution>.Owning(BatchHeats);

    /// <summary>Those for planning the spray itself; the air of the room has its own.</summary>
    internal static IReadOnlyList<Caution> ForMist => field ??= ValueList<Caution>.Owning(Overspray, MistBurns, InjectionInjury);
}

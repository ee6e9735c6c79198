using System.Collections.Generic;

namespace Refinish;

/// <content>What hurts with coatings that cure under a lamp.</content>
public static partial class Cautions
{
    /// <summary>Acrylates make skin allergic.</summary>
    public static Caution Acrylates { get; } = new(
        "acrylate-sensitiser",
        Hazard.SkinAndEyes,
        "Acrylates of coatings that cure under a lamp are sensitisers: an allergy to them stays for life and reaches dental and medical plastics. Wear the glove material that section 8 of the safety data sheet names, change it after every splash, cover arms and eyes, keep spray mist out of lungs. What the lamp has not reached stays liquid and sensitises for as long: shadows, overspray, rags and cups count as wet.",
        SafetyDataSheet + " and the employer's respiratory protection programme",
        Source.FromMemory("acrylates as skin sensitisers, which thin gloves let through within minutes; no document was read"),
        Audience.Crew);

    /// <summary>Ultraviolet light of a curing lamp.</summary>
    public static Caution UltravioletLight { get; } = new(
        "ultraviolet-light",
        Hazard.SkinAndEyes,
        "Ultraviolet light of a curing lamp burns eyes and skin, and the burn is felt only hours later: goggles and a face shield that the lamp's maker names for its wavelength, no bare skin, nobody else in sight of the lamp or of what reflects it, door and window covered. Glossy enamel and mirrors reflect it. Some lamps make ozone: the exhaust stays on.",
        "the lamp's instructions, the local limits on optical radiation and the employer's safety programme",
        Source.FromMemory("photokeratitis after welding and lamps; exposure limits of the ICNIRP guidelines on ultraviolet radiation and the ACGIH threshold limit values, neither of which was read"),
        Audience.Crew | Audience.Occupant);

    /// <summary>A lamp is hot and may spark.</summary>
    public static Caution LampIgnites { get; } = new(
        "lamp-ignites",
        Hazard.FireAndExplosion,
        "A curing lamp is hot, its fan and switch may spark, and it is no tool for vapour: it comes into the room only after the solvent of coats and wipes is gone, measured with a gas meter, on a dry cord from a GFCI (residual-current device).",
        FireCode + " and the lamp's instructions",
        Source.CommonPractice("no ignition source where flammable vapour is"),
        Audience.Crew);

    private static IEnumerable<Caution> Lamps => [Acrylates, UltravioletLight, LampIgnites];
}

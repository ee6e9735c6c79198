using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;
using static Refinish.Fixtures.FixtureMaterial;
using static Refinish.Substrates.IdentificationAid;

namespace Refinish.Substrates;

/// <summary>
/// The usual signs by which the trade tells materials apart: common practice without a source, to be completed by a shop's own.
/// </summary>
public static class MaterialSigns
{
    private static readonly Source Practice = Source.CommonPractice("telling fixture materials apart on site; data sheets and makers' marks go first");

    private static readonly FixtureMaterial[] Enamel = [EnamelledCastIron, EnamelledSteel];
    private static readonly FixtureMaterial[] Fired = [VitreousChina, CeramicTile];
    private static readonly FixtureMaterial[] Sheet = [Gelcoat, Acrylic, Polyolefin];
    private static readonly FixtureMaterial[] Filled = [CulturedMarble, SolidSurface];

    /// <summary>All of them.</summary>
    public static IReadOnlyList<MaterialSign> Generic { get; } = new ValueList<MaterialSign>(
    [
        Sign("I-01", Magnet, "a magnet sticks", Enamel, [.. Fired, .. Sheet, .. Filled, Laminate]),
        Sign("I-02", Magnet, "a magnet does not stick", [.. Fired, .. Sheet, .. Filled, Laminate], Enamel),
        Sign("I-03", Tap, "knocking sounds dull and heavy", [EnamelledCastIron, .. Filled], [EnamelledSteel, .. Sheet]),
        Sign("I-04", Tap, "knocking rings like a pan or a bowl", [EnamelledSteel, VitreousChina], [EnamelledCastIron, .. Sheet, .. Filled, Laminate]),
        Sign("I-05", Tap, "knocking sounds hollow, like a box", [.. Sheet, Laminate], [EnamelledCastIron, VitreousChina, .. Filled]),
        Sign("I-06", Touch, "it feels cold", [.. Enamel, .. Fired], Sheet),
        Sign("I-07", Touch, "it feels about as warm as the room", Sheet, [.. Enamel, .. Fired]),
        Sign("I-08", Touch, "it feels waxy, and a fingernail leaves a mark", [Polyolefin], [.. Enamel, .. Fired, Laminate]),
        Sign("I-09", Flex, "floor or walls give under the hand", Sheet, [EnamelledCastIron, .. Fired, .. Filled]),
        Sign("I-10", Flex, "nothing gives", [EnamelledCastIron, .. Fired, .. Filled], []),
        Sign("I-11", Edge, "iron shows under glass", Enamel, [.. Fired, .. Sheet, .. Filled, Laminate]),
        Sign("I-12", Edge, "glass fibres show at the back or at a hole", [Gelcoat, Acrylic], [.. Enamel, .. Fired, SolidSurface, Laminate, Polyolefin]),
        Sign("I-13", Edge, "scraping lifts a curl of plastic", [Acrylic, Polyolefin], [.. Enamel, .. Fired, Gelcoat, CulturedMarble]),
        Sign("I-14", Edge, "scraping gives powder of the surface's colour", [Gelcoat, .. Filled], [Polyolefin, .. Enamel]),
        Sign("I-15", Edge, "the same colour goes all the way through", [SolidSurface, Polyolefin], [.. Enamel, .. Fired, Gelcoat, CulturedMarble, Laminate]),
        Sign("I-16", Edge, "a grey or white fired body shows under glaze", Fired, [.. Enamel, .. Sheet, .. Filled, Laminate]),
        Sign("I-17", Edge, "a dark line of resin-soaked paper runs along the edge", [Laminate], [.. Enamel, .. Fired, .. Sheet, .. Filled]),
        Sign("I-18", SolventRub, "the surface turns soft or tacky", [Acrylic], [.. Enamel, .. Fired, Laminate]),
        Sign("I-19", SolventRub, "the solvent does nothing", [.. Enamel, .. Fired, Laminate], [Acrylic]),
        Sign("I-20", Look, "grout lines run through it", [CeramicTile], [.. Enamel, VitreousChina, Acrylic, Gelcoat, Polyolefin]),
        Sign("I-21", Look, "veins like those of stone lie under a clear face", [CulturedMarble], [.. Enamel, VitreousChina, Polyolefin]),
    ]);

    private static MaterialSign Sign(string code, IdentificationAid aid, string observation, IEnumerable<FixtureMaterial> speaksFor, IEnumerable<FixtureMaterial> speaksAgainst) =>
        new(code, aid, observation, [.. speaksFor], [.. speaksAgainst], Practice);
}

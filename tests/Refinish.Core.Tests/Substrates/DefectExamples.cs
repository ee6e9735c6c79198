using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Tests.Substrates;

/// <summary>Every kind of defect, and the variants that are judged differently; sizes are invented.</summary>
internal static class DefectExamples
{
    public static Defect[] Every { get; } =
    [
        new Chip(Mm(20), Mm(2)), new WornPatch(Mm(150), Mm(100), Mm(0.4)), new RustSpot(Mm(15)), new Crack(Mm(300), Mm(1.5), Mm(2), true),
        new Crack(Mm(100), Mm(1.5), Mm(2), false), new Perforation(Mm(8)), new FlexingFloor(Mm(1)), new FlexingFloor(Mm(4)), new Crazing(Ratio.FromPercent(10)),
        new Crazing(Ratio.FromPercent(40)), new PeelingCoat(Area.FromSquareMeters(1), AdhesionGrade.Grade2B), new PeelingCoat(Area.FromSquareMeters(1), null),
        new SiliconeResidue(Mm(3000)), new GroutFailure(Mm(2000)), new LooseTiles(3), new Burn(Mm(12)), new Pitting(Area.FromSquareMeters(0.1), Mm(0.3), Ratio.FromPercent(20)),
        new LowSpot(Mm(300), Mm(200), Mm(0.6), Mm(40)), new Liner(Area.FromSquareMeters(2), LinerState.Loose, false), new Liner(Area.FromSquareMeters(2), LinerState.Loose, true),
    ];

    private static Length Mm(double mm) => Length.FromMillimeters(mm);
}

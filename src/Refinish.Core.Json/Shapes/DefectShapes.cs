using System;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>The thirteen kinds of defect.</summary>
internal static class DefectShapes
{
    /// <summary>Written as the class of cross-hatch adhesion is spoken: 3B.</summary>
    public static Shape<AdhesionGrade> Adhesion { get; } = new WordShape<AdhesionGrade>(name => name.Replace("Grade", string.Empty,
        StringComparison.Ordinal));

    public static Shape<DefectKind> Kind { get; } = new WordShape<DefectKind>();

    public static OneOfShape<Defect> Defect { get; } = new OneOfShape<Defect>("defect")
        .Or("chip", Chip())
        .Or("wornPatch", WornPatch())
        .Or("rustSpot", Round("rustSpot", diameter => new RustSpot(diameter), defect => defect.Diameter))
        .Or("crack", Crack())
        .Or("perforation", Round("perforation", diameter => new Perforation(diameter), defect => defect.Diameter))
        .Or("flexingFloor", FlexingFloor())
        .Or("crazing", Crazing())
        .Or("peelingCoat", PeelingCoat())
        .Or("siliconeResidue", AlongJoint("siliconeResidue", joint => new SiliconeResidue(joint), defect => defect.Joint))
        .Or("groutFailure", AlongJoint("groutFailure", joint => new GroutFailure(joint), defect => defect.Joint))
        .Or("looseTiles", LooseTiles())
        .Or("burn", Round("burn", diameter => new Burn(diameter), defect => defect.Diameter))
        .Or("pitting", Pitting());

    private static ObjectShape<Chip> Chip() => new Fields<Chip>("chip")
        .With("diameter", Quantities.Tape, chip => chip.Diameter, out Slot<Length> diameter)
        .With("depth", Quantities.Tape, chip => chip.Depth, out Slot<Length> depth)
        .MakingTogether(() => new Chip(Length.FromMillimeters(10), Length.FromMillimeters(1)), v => new Chip(diameter(v), depth(v)));

    private static ObjectShape<WornPatch> WornPatch() => new Fields<WornPatch>("wornPatch")
        .With("length", Quantities.Tape, patch => patch.Length, out Slot<Length> length)
        .With("width", Quantities.Tape, patch => patch.Width, out Slot<Length> width)
        .With("depth", Quantities.Tape, patch => patch.Depth, out Slot<Length> depth)
        .WithOr("profile", new WordShape<BowlProfile>(), patch => patch.Profile, BowlProfile.Paraboloid, out Slot<BowlProfile> profile)
        .MakingTogether(
            () => new WornPatch(Length.FromMillimeters(100), Length.FromMillimeters(100), Length.FromMillimeters(1)),
            v => new WornPatch(length(v), width(v), depth(v), profile(v)));

    private static ObjectShape<Crack> Crack() => new Fields<Crack>("crack")
        .With("length", Quantities.Tape, crack => crack.Length, out Slot<Length> length)
        .With("width", Quantities.Tape, crack => crack.Width, out Slot<Length> width)
        .With("depth", Quantities.Tape, crack => crack.Depth, out Slot<Length> depth)
        .With("movesUnderLoad", Scalars.YesNo, crack => crack.MovesUnderLoad, out Slot<bool> movesUnderLoad)
        .WithOr("profile", new WordShape<GrooveProfile>(), crack => crack.Profile, GrooveProfile.Vee, out Slot<GrooveProfile> profile)
        .MakingTogether(
            () => new Crack(Length.FromMillimeters(100), Length.FromMillimeters(1), Length.FromMillimeters(1), false),
            v => new Crack(length(v), width(v), depth(v), movesUnderLoad(v), profile(v)));

    private static ObjectShape<FlexingFloor> FlexingFloor() => new Fields<FlexingFloor>("flexingFloor")
        .With("deflection", Quantities.Tape, floor => floor.Deflection, out Slot<Length> deflection)
        .Making(v => new FlexingFloor(deflection(v)));

    private static ObjectShape<Crazing> Crazing() => new Fields<Crazing>("crazing")
        .With("ofArea", Quantities.Percent, crazing => crazing.OfArea, out Slot<Ratio> ofArea)
        .Making(v => new Crazing(ofArea(v)));

    private static ObjectShape<PeelingCoat> PeelingCoat() => new Fields<PeelingCoat>("peelingCoat")
        .With("area", Quantities.Area, coat => coat.Area, out Slot<Area> area)
        .WithOr("adhesion", Adhesion.OrNull(), coat => coat.Adhesion, null, out Slot<AdhesionGrade?> adhesion)
        .Making(v => new PeelingCoat(area(v), adhesion(v)));

    private static ObjectShape<LooseTiles> LooseTiles() => new Fields<LooseTiles>("looseTiles")
        .With("count", Scalars.Count, tiles => tiles.Count, out Slot<int> count)
        .Making(v => new LooseTiles(count(v)));

    private static ObjectShape<Pitting> Pitting() => new Fields<Pitting>("pitting")
        .With("area", Quantities.SmallArea, pitting => pitting.Area, out Slot<Area> area)
        .With("depth", Quantities.Tape, pitting => pitting.Depth, out Slot<Length> depth)
        .With("share", Quantities.Percent, pitting => pitting.Share, out Slot<Ratio> share)
        .Making(v => new Pitting(area(v), depth(v), share(v)));

    private static ObjectShape<T> Round<T>(string name, Func<Length, T> make, Func<T, Length> diameterOf) => new Fields<T>(name)
        .With("diameter", Quantities.Tape, diameterOf, out Slot<Length> diameter)
        .Making(v => make(diameter(v)));

    private static ObjectShape<T> AlongJoint<T>(string name, Func<Length, T> make, Func<T, Length> jointOf) => new Fields<T>(name)
        .With("joint", Quantities.Distance, jointOf, out Slot<Length> joint)
        .Making(v => make(joint(v)));
}

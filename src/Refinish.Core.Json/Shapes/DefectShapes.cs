using System;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>The kinds of defect, and those of a caller's own.</summary>
internal static class DefectShapes
{
    /// <summary>Written as the class of cross-hatch adhesion is spoken: 3B.</summary>
    public static Shape<AdhesionGrade> Adhesion { get; } = new WordShape<AdhesionGrade>(name => name.Replace("Grade", string.Empty,
        StringComparison.Ordinal));

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
        .Or("pitting", Pitting())
        .Or("lowSpot", LowSpot())
        .Or("liner", Liner())
        .Or("own", OwnDefectShapes.Defect);

    // Round by its diameter, oval by length and width.
    private static ObjectShape<Chip> Chip() => new Fields<Chip>("chip")
        .WithOr("diameter", Quantities.Tape.OrNull(), chip => chip.IsRound ? chip.Length : null, null, out Slot<Length?> diameter)
        .WithOr("length", Quantities.Tape.OrNull(), chip => chip.IsRound ? null : chip.Length, null, out Slot<Length?> length)
        .WithOr("width", Quantities.Tape.OrNull(), chip => chip.IsRound ? null : chip.Width, null, out Slot<Length?> width)
        .With("depth", Quantities.Tape, chip => chip.Depth, out Slot<Length> depth)
        .MakingTogether(
            () => new Chip(Length.FromMillimeters(10), Length.FromMillimeters(1)),
            v => (diameter(v), length(v), width(v)) switch
            {
                (Length across, null, null) => new Chip(across, depth(v)),
                (null, Length longer, Length shorter) => new Chip(longer, shorter, depth(v)),
                _ => throw new ArgumentException("A chip has either a diameter, or a length and a width.", nameof(diameter)),
            });

    private static ObjectShape<LowSpot> LowSpot() => new Fields<LowSpot>("lowSpot")
        .With("length", Quantities.Tape, spot => spot.Length, out Slot<Length> length)
        .With("width", Quantities.Tape, spot => spot.Width, out Slot<Length> width)
        .With("thickness", Quantities.Tape, spot => spot.Thickness, out Slot<Length> thickness)
        .With("feather", Quantities.Tape, spot => spot.Feather, out Slot<Length> feather)
        .MakingTogether(
            () => new LowSpot(Length.FromMillimeters(100), Length.FromMillimeters(100), Length.FromMillimeters(1), Length.Zero),
            v => new LowSpot(length(v), width(v), thickness(v), feather(v)));

    private static ObjectShape<Liner> Liner() => new Fields<Liner>("liner")
        .With("area", Quantities.Area, liner => liner.Area, out Slot<Area> area)
        .With("state", new WordShape<LinerState>(), liner => liner.State, out Slot<LinerState> state)
        .With("comesOff", Scalars.YesNo, liner => liner.ComesOff, out Slot<bool> comesOff)
        .Making(v => new Liner(area(v), state(v), comesOff(v)));

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

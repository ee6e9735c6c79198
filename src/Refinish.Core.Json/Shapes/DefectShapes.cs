using System;
using Refinish.Substrates;
using UnitsNet;
using static Refinish.Json.Shapes.Quantities;
using static Refinish.Json.Shapes.Scalars;

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
        .WithOr("diameter", Tape.OrNull(), it => it.IsRound ? it.Length : null, null, out Slot<Length?> diameter)
        .WithOr("length", Tape.OrNull(), it => it.IsRound ? null : it.Length, null, out Slot<Length?> length)
        .WithOr("width", Tape.OrNull(), it => it.IsRound ? null : it.Width, null, out Slot<Length?> width)
        .With("depth", Tape, it => it.Depth, out Slot<Length> depth)
        .MakingTogether(
            () => new Chip(Length.FromMillimeters(10), Length.FromMillimeters(1)),
            v => (diameter(v), length(v), width(v)) switch
            {
                (Length across, null, null) => new Chip(across, depth(v)),
                (null, Length longer, Length shorter) => new Chip(longer, shorter, depth(v)),
                _ => throw new ArgumentException("A chip has either a diameter, or a length and a width.", nameof(diameter)),
            });

    private static ObjectShape<LowSpot> LowSpot() => new Fields<LowSpot>("lowSpot")
        .With("length", Tape, it => it.Length, out Slot<Length> length)
        .With("width", Tape, it => it.Width, out Slot<Length> width)
        .With("thickness", Tape, it => it.Thickness, out Slot<Length> thickness)
        .With("feather", Tape, it => it.Feather, out Slot<Length> feather)
        .MakingTogether(
            () => new LowSpot(Length.FromMillimeters(100), Length.FromMillimeters(100), Length.FromMillimeters(1), Length.Zero),
            v => new LowSpot(length(v), width(v), thickness(v), feather(v)));

    private static ObjectShape<Liner> Liner() => new Fields<Liner>("liner")
        .With("area", Quantities.Area, it => it.Area, out Slot<Area> area)
        .With("state", new WordShape<LinerState>(), it => it.State, out Slot<LinerState> state)
        .With("comesOff", YesNo, it => it.ComesOff, out Slot<bool> comesOff)
        .Making(v => new Liner(area(v), state(v), comesOff(v)));

    private static ObjectShape<WornPatch> WornPatch() => new Fields<WornPatch>("wornPatch")
        .With("length", Tape, it => it.Length, out Slot<Length> length)
        .With("width", Tape, it => it.Width, out Slot<Length> width)
        .With("depth", Tape, it => it.Depth, out Slot<Length> depth)
        .WithOr("profile", new WordShape<BowlProfile>(), it => it.Profile, BowlProfile.Paraboloid, out Slot<BowlProfile> profile)
        .MakingTogether(
            () => new WornPatch(Length.FromMillimeters(100), Length.FromMillimeters(100), Length.FromMillimeters(1)),
            v => new WornPatch(length(v), width(v), depth(v), profile(v)));

    private static ObjectShape<Crack> Crack() => new Fields<Crack>("crack")
        .With("length", Tape, it => it.Length, out Slot<Length> length)
        .With("width", Tape, it => it.Width, out Slot<Length> width)
        .With("depth", Tape, it => it.Depth, out Slot<Length> depth)
        .With("movesUnderLoad", YesNo, it => it.MovesUnderLoad, out Slot<bool> movesUnderLoad)
        .WithOr("profile", new WordShape<GrooveProfile>(), it => it.Profile, GrooveProfile.Vee, out Slot<GrooveProfile> profile)
        .MakingTogether(
            () => new Crack(Length.FromMillimeters(100), Length.FromMillimeters(1), Length.FromMillimeters(1), false),
            v => new Crack(length(v), width(v), depth(v), movesUnderLoad(v), profile(v)));

    private static ObjectShape<FlexingFloor> FlexingFloor() => new Fields<FlexingFloor>("flexingFloor")
        .With("deflection", Tape, it => it.Deflection, out Slot<Length> deflection)
        .Making(v => new FlexingFloor(deflection(v)));

    private static ObjectShape<Crazing> Crazing() => new Fields<Crazing>("crazing")
        .With("ofArea", Percent, it => it.OfArea, out Slot<Ratio> ofArea)
        .Making(v => new Crazing(ofArea(v)));

    private static ObjectShape<PeelingCoat> PeelingCoat() => new Fields<PeelingCoat>("peelingCoat")
        .With("area", Quantities.Area, it => it.Area, out Slot<Area> area)
        .WithOr("adhesion", Adhesion.OrNull(), it => it.Adhesion, null, out Slot<AdhesionGrade?> adhesion)
        .Making(v => new PeelingCoat(area(v), adhesion(v)));

    private static ObjectShape<LooseTiles> LooseTiles() => new Fields<LooseTiles>("looseTiles")
        .With("count", Count, it => it.Count, out Slot<int> count)
        .Making(v => new LooseTiles(count(v)));

    private static ObjectShape<Pitting> Pitting() => new Fields<Pitting>("pitting")
        .With("area", SmallArea, it => it.Area, out Slot<Area> area)
        .With("depth", Tape, it => it.Depth, out Slot<Length> depth)
        .With("share", Percent, it => it.Share, out Slot<Ratio> share)
        .Making(v => new Pitting(area(v), depth(v), share(v)));

    private static ObjectShape<T> Round<T>(string name, Func<Length, T> make, Func<T, Length> diameterOf) => new Fields<T>(name)
        .With("diameter", Tape, diameterOf, out Slot<Length> diameter)
        .Making(v => make(diameter(v)));

    private static ObjectShape<T> AlongJoint<T>(string name, Func<Length, T> make, Func<T, Length> jointOf) => new Fields<T>(name)
        .With("joint", Distance, jointOf, out Slot<Length> joint)
        .Making(v => make(joint(v)));
}

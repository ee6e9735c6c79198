using System.Collections.Generic;

namespace Refinish.Fixtures;

/// <content>The ready materials.</content>
public sealed partial record FixtureMaterial
{
    private static readonly Source Practice = Source.CommonPractice("fixture materials and how they are keyed; data sheets go first");

    private static readonly MaterialKeying Glassy =
        new("abrade until no gloss is left, or etch as the etchant's sheet says and neutralise", 120, 220);

    private static readonly MaterialKeying Plain = new("abrade until no gloss is left, no acid", 220, 320);

    /// <summary>Not known: hold until it is.</summary>
    public static FixtureMaterial Unknown { get; } = Of("unknown", "an unknown material", MaterialSurface.Unknown);

    /// <summary>Vitreous (porcelain) enamel on cast iron.</summary>
    public static FixtureMaterial EnamelledCastIron { get; } = Of("enamelledCastIron", "enamelled cast iron", MaterialSurface.Enamel) with
    {
        Metal = MetalBelow.CastIron, MayBeEtched = true, Body = MaterialBody.Usual(FixtureThermalData.CastIron, 6, 7200), };

    /// <summary>Vitreous (porcelain) enamel on pressed steel.</summary>
    public static FixtureMaterial EnamelledSteel { get; } = Of("enamelledSteel", "enamelled steel", MaterialSurface.Enamel) with
    {
        Metal = MetalBelow.SteelSheet, MayBeEtched = true, Body = MaterialBody.Usual(FixtureThermalData.Steel, 2, 7850), };

    /// <summary>Gelcoat on glass-fibre reinforced polyester.</summary>
    public static FixtureMaterial Gelcoat { get; } = Of("gelcoat", "gelcoat on glass fibre", MaterialSurface.Polymer) with
    {
        IsFlexibleSheet = true, Body = MaterialBody.Usual(FixtureThermalData.GlassFibrePolyester, 5, 1500), };

    /// <summary>Thermoformed acrylic sheet.</summary>
    public static FixtureMaterial Acrylic { get; } = Of("acrylic", "acrylic sheet", MaterialSurface.Polymer) with
    {
        CrazesInSolvent = true,
        IsFlexibleSheet = true,
        Keying = new("abrade wet, lightly and evenly, no acid and no strong solvent", 320, 320),
        Body = MaterialBody.Usual(FixtureThermalData.Acrylic, 5, 1180), };

    /// <summary>Cast polymer with a gelcoat face, veined to look like stone.</summary>
    public static FixtureMaterial CulturedMarble { get; } = Of("culturedMarble", "cultured marble", MaterialSurface.FilledPolymer);

    /// <summary>Glazed vitreous china, as of sinks.</summary>
    public static FixtureMaterial VitreousChina { get; } = Of("vitreousChina", "vitreous china", MaterialSurface.Glaze) with
    {
        MayBeEtched = true, Body = MaterialBody.Usual(FixtureThermalData.GlazedCeramic, 10, 2300), };

    /// <summary>Glazed ceramic tile in grout.</summary>
    public static FixtureMaterial CeramicTile { get; } = Of("ceramicTile", "glazed ceramic tile", MaterialSurface.Glaze) with
    {
        MayBeEtched = true,
        HasJoints = true,
        Keying = new("abrade or etch the glaze until no gloss is left; keep etchant out of the joints", 120, 220),
        Body = MaterialBody.Usual(FixtureThermalData.GlazedCeramic, 8, 2300), };

    /// <summary>Solid surfacing, coloured through.</summary>
    public static FixtureMaterial SolidSurface { get; } = Of("solidSurface", "solid surface", MaterialSurface.FilledPolymer) with
    {
        Keying = new("abrade evenly", 220, 220), };

    /// <summary>High-pressure laminate on board.</summary>
    public static FixtureMaterial Laminate { get; } = Of("laminate", "high-pressure laminate", MaterialSurface.Laminate) with
    {
        Keying = new("abrade evenly without going through the face", 180, 220), };

    /// <summary>Polyethylene or polypropylene: nothing bonds to them in the field.</summary>
    public static FixtureMaterial Polyolefin { get; } = Of("polyolefin", "polyethylene or polypropylene", MaterialSurface.Polymer) with
    {
        BondsInTheField = false, };

    /// <summary>An old coating that is kept: what lies under the new coat, not what a fixture is made of.</summary>
    public static FixtureMaterial OldCoating { get; } = Of("oldCoating", "an old coating that is kept", MaterialSurface.Coating) with
    {
        Keying = new("abrade the old coat evenly until no gloss is left, no acid; try primer and tape on a test spot", 220, 320), };

    /// <summary>PVC or ABS sheet, as of wall panels, liners and trays. No generic product is stated for it.</summary>
    public static FixtureMaterial VinylSheet { get; } = Of("vinylSheet", "PVC or ABS sheet", MaterialSurface.Polymer) with
    {
        CrazesInSolvent = true, IsFlexibleSheet = true, };

    /// <summary>Stainless steel of the kinds to which no magnet sticks. No generic product is stated for it.</summary>
    public static FixtureMaterial StainlessSteel { get; } = Of("stainlessSteel", "stainless steel", MaterialSurface.Metal) with
    {
        Metal = MetalBelow.NotMagnetic, };

    /// <summary>Zinc-coated steel sheet. No generic product is stated for it.</summary>
    public static FixtureMaterial GalvanisedSteel { get; } = Of("galvanisedSteel", "galvanised steel", MaterialSurface.Metal) with
    {
        Metal = MetalBelow.SteelSheet, };

    /// <summary>Granite, marble and other natural stone. No generic product is stated for it, and acid eats marble.</summary>
    public static FixtureMaterial Stone { get; } = Of("stone", "natural stone", MaterialSurface.Mineral);

    /// <summary>Concrete, terrazzo in cement included. No generic product is stated for it.</summary>
    public static FixtureMaterial Concrete { get; } = Of("concrete", "concrete", MaterialSurface.Mineral);

    /// <summary>Wood or wood-fibre board. No generic product is stated for it.</summary>
    public static FixtureMaterial Wood { get; } = Of("wood", "wood or wood-fibre board", MaterialSurface.Wood);

    /// <summary>Painted wallboard or plaster. No generic product is stated for it.</summary>
    public static FixtureMaterial PaintedWallboard { get; } = Of("paintedWallboard", "painted wallboard", MaterialSurface.Coating);

    /// <summary>All ready materials.</summary>
    public static IReadOnlyList<FixtureMaterial> All { get; } = new ValueList<FixtureMaterial>(
    [
        Unknown, EnamelledCastIron, EnamelledSteel, Gelcoat, Acrylic, CulturedMarble, VitreousChina, CeramicTile, SolidSurface, Laminate,
        Polyolefin, OldCoating, VinylSheet, StainlessSteel, GalvanisedSteel, Stone, Concrete, Wood, PaintedWallboard,
    ]);

    private static FixtureMaterial Of(string id, string name, MaterialSurface surface) => new()
    {
        Id = id, Name = name, Surface = surface, Source = Practice, };
}

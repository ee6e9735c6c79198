namespace Refinish.Fixtures;

/// <summary>Materials in the words of the trade, for sentences.</summary>
public static class FixtureMaterialWords
{
    /// <summary>The material as it stands in a sentence.</summary>
    /// <param name="material">A named material.</param>
    /// <returns>Text such as <c>enamelled cast iron</c>.</returns>
    /// <exception cref="System.ArgumentOutOfRangeException">Not a named value.</exception>
    public static string InWords(this FixtureMaterial material) => Guard.Defined(material, nameof(material)) switch
    {
        FixtureMaterial.EnamelledCastIron => "enamelled cast iron",
        FixtureMaterial.EnamelledSteel => "enamelled steel",
        FixtureMaterial.Gelcoat => "gelcoat on glass fibre",
        FixtureMaterial.Acrylic => "acrylic sheet",
        FixtureMaterial.CulturedMarble => "cultured marble",
        FixtureMaterial.VitreousChina => "vitreous china",
        FixtureMaterial.CeramicTile => "glazed ceramic tile",
        FixtureMaterial.SolidSurface => "solid surface",
        FixtureMaterial.Laminate => "high-pressure laminate",
        FixtureMaterial.Polyolefin => "polyethylene or polypropylene",
        FixtureMaterial.OldCoating => "an old coating that is kept",
        _ => "an unknown material",
    };
}

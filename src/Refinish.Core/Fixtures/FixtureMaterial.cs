namespace Refinish.Fixtures;

/// <summary>What lies under the new coat: what the fixture is made of at its surface, or an old coating that stays on it.</summary>
public enum FixtureMaterial
{
    /// <summary>Not known: hold until it is.</summary>
    Unknown,

    /// <summary>Vitreous (porcelain) enamel on cast iron.</summary>
    EnamelledCastIron,

    /// <summary>Vitreous (porcelain) enamel on pressed steel.</summary>
    EnamelledSteel,

    /// <summary>Gelcoat on glass-fibre reinforced polyester.</summary>
    Gelcoat,

    /// <summary>Thermoformed acrylic sheet.</summary>
    Acrylic,

    /// <summary>Cast polymer with a gelcoat face, veined to look like stone.</summary>
    CulturedMarble,

    /// <summary>Glazed vitreous china, as of sinks.</summary>
    VitreousChina,

    /// <summary>Glazed ceramic tile in grout.</summary>
    CeramicTile,

    /// <summary>Solid surfacing, coloured through.</summary>
    SolidSurface,

    /// <summary>High-pressure laminate on board.</summary>
    Laminate,

    /// <summary>Polyethylene or polypropylene: nothing bonds to them in the field.</summary>
    Polyolefin,

    /// <summary>An old coating that is kept: what lies under the new coat, not what a fixture is made of.</summary>
    OldCoating,
}

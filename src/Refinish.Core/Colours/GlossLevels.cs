using System.Collections.Generic;

namespace Refinish.Colours;

/// <summary>Published levels of gloss, as data. They overlap: a reading may belong to two or to none.</summary>
public static class GlossLevels
{
    private static readonly Source Painters = Source.Published("gloss and sheen levels of the Master Painters Institute, as printed by paintinfo.com", "levels 1 to 7");

    /// <summary>The seven levels of the painting trade of North America: 60° gloss, and 85° sheen for the lower four.</summary>
    public static IReadOnlyList<GlossLevel> Painting { get; } = new ValueList<GlossLevel>(
    [
        new() { Name = "level 1, flat", Most60 = 5, Most85 = 10, Source = Painters },
        new() { Name = "level 2, velvet", Most60 = 10, Least85 = 10, Most85 = 35, Source = Painters },
        new() { Name = "level 3, eggshell", Least60 = 10, Most60 = 25, Least85 = 10, Most85 = 35, Source = Painters },
        new() { Name = "level 4, satin", Least60 = 20, Most60 = 35, Least85 = 35, Source = Painters },
        new() { Name = "level 5, semi-gloss", Least60 = 35, Most60 = 70, Source = Painters },
        new() { Name = "level 6, gloss", Least60 = 70, Most60 = 85, Source = Painters },
        new() { Name = "level 7, high gloss", Least60 = 85, AboveLeast60 = true, Source = Painters },
    ]);
}

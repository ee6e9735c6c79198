using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Coatings;

/// <summary>Volumes of the parts of a product, put into the order of its parts.</summary>
internal static class PartList
{
    /// <summary>Each part once; anything else is refused by name.</summary>
    public static ValueList<PartVolume> Of(CoatingProduct product, IEnumerable<PartVolume> volumes, string name)
    {
        ValueList<PartVolume> given = Unique.Ids(Guard.List(volumes, name: name), one => one.Component, name);
        foreach (PartVolume one in given)
        {
            if (!product.Parts.Any(part => part.Component.Id == one.Component))
            {
                throw new ArgumentException(name + " holds '" + one.Component + "', which is no part of " + product.Name + ".", name);
            }
        }

        return new ValueList<PartVolume>(product.Parts.Select(part =>
            given.FirstOrDefault(one => one.Component == part.Component.Id)
                ?? throw new ArgumentException(
                    name + " lacks the part '" + part.Component.Id + "' of " + product.Name + "; 0 is a volume.", name)));
    }
}

using System;
using System.Collections.Generic;
using Refinish.Coatings;
using Refinish.Estimating;

namespace Refinish.Json.Shapes;

/// <summary>The part of a document that defines what other parts name.</summary>
internal static class CatalogueShapes
{
    public static Shape<Catalogue> Catalogue { get; } = new DefiningShape<Catalogue>(
        new Fields<Catalogue>("catalogue")
            .MaybeOf("materials", Defined(MaterialShapes.Whole, material => material.Id),
                catalogue => catalogue.Materials.Count > 0 ? catalogue.Materials : null,
                (catalogue, materials) => catalogue with { Materials = materials })
            .Optional("solvents", Defined(CoatingShapes.WholeSolvent, solvent => solvent.CasNumber), catalogue => catalogue.Solvents,
                (catalogue, solvents) => catalogue with { Solvents = solvents })
            .Optional("additives", Defined(CoatingShapes.WholeAdditive, additive => additive.Id), catalogue => catalogue.Additives,
                (catalogue, additives) => catalogue with { Additives = additives })
            .Optional("promoters", Defined(CoatingShapes.WholePromoter, promoter => promoter.Id), catalogue => catalogue.Promoters,
                (catalogue, promoters) => catalogue with { Promoters = promoters })
            .Optional("products", Defined(CoatingShapes.WholeProduct, product => product.Id), catalogue => catalogue.Products,
                (catalogue, products) => catalogue with { Products = products })
            .Optional("systems", Defined(SystemShapes.WholeSystem, system => system.Id), catalogue => catalogue.Systems,
                (catalogue, systems) => catalogue with { Systems = systems })
            .MakingInOrder(_ => new Catalogue()),
        (_, _) => null);

    /// <summary>Notes the labour standards of a shop, whether they are its own or the library's.</summary>
    public static string? DefineLabour(Definitions definitions, IReadOnlyList<LabourStandard> standards)
    {
        foreach (LabourStandard standard in standards)
        {
            definitions.Add(standard.Code, standard);
        }

        return null;
    }

    private static DefiningShape<IReadOnlyList<T>> Defined<T>(Shape<T> whole, Func<T, string> idOf)
        where T : class => new(CommonShapes.List(whole), (definitions, items) =>
        {
            string? twice = null;
            foreach (T item in items)
            {
                if (!definitions.Add(idOf(item), item))
                {
                    twice ??= idOf(item);
                }
            }

            return twice;
        });
}

using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;

namespace Refinish.Json.Shapes;

/// <summary>What a document defines once and names by identifier elsewhere.</summary>
internal sealed record Catalogue
{
    /// <summary>Materials of fixtures that are not the library's own, by their identifiers.</summary>
    public IReadOnlyList<FixtureMaterial> Materials { get; init; } = [];

    /// <summary>Solvents, by their CAS numbers.</summary>
    public IReadOnlyList<Solvent> Solvents { get; init; } = [];

    /// <summary>Slip-resistant grains, by their identifiers.</summary>
    public IReadOnlyList<SlipAdditive> Additives { get; init; } = [];

    /// <summary>Adhesion promoters, by their identifiers.</summary>
    public IReadOnlyList<AdhesionPromoter> Promoters { get; init; } = [];

    /// <summary>Coating products, by their identifiers.</summary>
    public IReadOnlyList<CoatingProduct> Products { get; init; } = [];

    /// <summary>Coating systems, by their identifiers.</summary>
    public IReadOnlyList<CoatingSystem> Systems { get; init; } = [];

    /// <summary>What a job is made of, each identifier once; a second thing of the same identifier stands where it is used.</summary>
    public static Catalogue Of(Job job)
    {
        FixtureJob[] fixtures = [.. job.Fixtures, .. job.Alternatives.SelectMany(alternative => alternative.Fixtures)];
        FixtureOption[] options = [.. fixtures.SelectMany(fixture => fixture.Options)];
        CoatingSystem[] systems = [job.Shop.System, .. fixtures.Select(fixture => fixture.System).OfType<CoatingSystem>()];
        SystemStep[] steps = [.. systems.SelectMany(system => system.Steps)];
        AdhesionPromoter[] promoters = [.. steps.Select(step => step.Promoter).OfType<AdhesionPromoter>()];
        CoatingProduct[] products = [.. steps.Select(step => step.Layer?.Product).OfType<CoatingProduct>(),
            .. job.Stock.Select(kit => kit.Product)];
        IEnumerable<Operation?> own = options.Select(option => option.Operation);
        Operation[] operations = [.. own.Concat(job.Changes.Select(change => change.Operation)).OfType<Operation>()];
        return new Catalogue
        {
            Materials = Once(
                fixtures.Select(fixture => fixture.Survey.Material)
                    .Concat(products.SelectMany(product => product.Materials))
                    .Concat(promoters.SelectMany(promoter => promoter.Materials))
                    .Concat(steps.SelectMany(step => step.Materials))
                    .Concat(job.Shop.Chemicals.SelectMany(chemical => chemical.Surfaces))
                    .Concat(job.Shop.Survey.OwnRules.SelectMany(rule => rule.When?.Materials ?? []))
                    .Where(material => FixtureMaterial.TryFind(material.Id) is null),
                material => material.Id),
            Solvents = Once(
                promoters.SelectMany(promoter => promoter.Solvents)
                    .Concat(products.SelectMany(product => product.Solvents.Concat(CansOf(product).SelectMany(can => can.Solvents))))
                    .Concat(operations.SelectMany(operation => operation.Vapours).SelectMany(vapour => vapour.Solvents))
                    .Concat(job.Shop.Chemicals.SelectMany(chemical => chemical.Solvents))
                    .Select(share => share.Solvent),
                solvent => solvent.CasNumber),
            Additives = Once(steps.Select(step => step.Additive).Concat(options.Select(option => option.Additive)).OfType<SlipAdditive>(),
                additive => additive.Id),
            Promoters = Once(promoters, promoter => promoter.Id),
            Products = Once(products, product => product.Id),
            Systems = Once(systems, system => system.Id),
        };
    }

    private static IEnumerable<CoatingComponent> CansOf(CoatingProduct product)
    {
        yield return product.Base;
        if (product.Hardener is CoatingComponent hardener)
        {
            yield return hardener;
        }

        if (product.Reducer is CoatingComponent reducer)
        {
            yield return reducer;
        }
    }

    private static List<T> Once<T>(IEnumerable<T> items, Func<T, string> idOf) => [.. items.DistinctBy(idOf, StringComparer.Ordinal)];
}

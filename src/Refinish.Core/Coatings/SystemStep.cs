using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>One step of a coating system: a preparation, a wipe, a layer, or grains.</summary>
/// <remarks>Steps are made by the methods of this class, one for each sort, so that none can lack what its sort needs.</remarks>
/// <example><code>
/// SystemStep[] steps =
/// [
///     SystemStep.Preparation(SystemStepKind.Clean, "clean twice", [], Source.CommonPractice("two cleaning steps")),
///     SystemStep.Wipe(GenericCatalogue.SilanePromoter),
///     SystemStep.Coat(new CoatingLayer(GenericCatalogue.EpoxyPrimer, Length.FromMicrometers(30), 1)),
/// ];
/// </code></example>
public sealed record SystemStep
{
    private readonly double? broadcast;

    private SystemStep(SystemStepKind kind, string name, IEnumerable<FixtureMaterial> materials, Source source)
    {
        Kind = kind;
        Name = name;
        Materials = new ValueList<FixtureMaterial>(materials);
        Source = source;
    }

    /// <summary>What it is.</summary>
    public SystemStepKind Kind { get; }

    /// <summary>What is done, or what goes on.</summary>
    public string Name { get; }

    /// <summary>The materials it is meant for; empty when it suits any.</summary>
    public IReadOnlyList<FixtureMaterial> Materials { get; }

    // What a material bonds like is no word about acid.
    internal bool Serves(FixtureMaterial material) =>
        Kind == SystemStepKind.Etch ? material.IsNamedIn(Materials) : material.BondsAsNamedIn(Materials);

    /// <summary>The layer; <see langword="null"/> for a step that lays down none.</summary>
    public CoatingLayer? Layer { get; private init; }

    /// <summary>The wipe; <see langword="null"/> for other steps.</summary>
    public AdhesionPromoter? Promoter { get; private init; }

    /// <summary>The grains; <see langword="null"/> for other steps.</summary>
    public SlipAdditive? Additive { get; private init; }

    /// <summary>Grains per area; <see langword="null"/> for other steps.</summary>
    public AreaDensity? BroadcastRate
    {
        get => broadcast is double rate ? AreaDensity.FromKilogramsPerSquareMeter(rate) : null;
        private init => broadcast = value?.KilogramsPerSquareMeter;
    }

    /// <summary>Where the step comes from.</summary>
    public Source Source { get; }

    /// <summary>A step that leaves nothing on the surface, or filler.</summary>
    /// <param name="kind">Clean, etch, abrade, rinse and dry, or filler.</param>
    /// <param name="name">What is done.</param>
    /// <param name="materials">The materials it is meant for; empty when it suits any.</param>
    /// <param name="source">Where it comes from.</param>
    /// <returns>The step.</returns>
    /// <exception cref="ArgumentException">
    /// <paramref name="name"/> is empty, a material is missing, or <paramref name="kind"/> is another sort of step.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is not a named value.</exception>
    public static SystemStep Preparation(SystemStepKind kind, string name, IEnumerable<FixtureMaterial> materials, Source source)
    {
        if (Guard.Defined(kind) > SystemStepKind.Filler)
        {
            throw new ArgumentException("kind is " + kind + "; a preparation is Clean, Etch, Abrade, RinseAndDry or Filler.", nameof(kind));
        }

        return new(kind, Guard.Named(name), Guard.List(materials), Guard.NotNull(source));
    }

    /// <summary>A wipe.</summary>
    /// <param name="promoter">The promoter.</param>
    /// <returns>The step; it applies to the promoter's materials only and is passed over on others.</returns>
    public static SystemStep Wipe(AdhesionPromoter promoter)
    {
        Guard.NotNull(promoter);
        return new(SystemStepKind.AdhesionPromoter, promoter.Name, promoter.Materials, promoter.Source) { Promoter = promoter };
    }

    /// <summary>A layer, by the role of its product.</summary>
    /// <param name="layer">The layer.</param>
    /// <returns>The step.</returns>
    /// <exception cref="ArgumentException">The product is a promoter wipe.</exception>
    public static SystemStep Coat(CoatingLayer layer)
    {
        CoatingProduct product = Guard.NotNull(layer).Product;
        SystemStepKind kind = product.Role switch
        {
            CoatingRole.Filler => SystemStepKind.Filler,
            CoatingRole.Primer => SystemStepKind.Primer,
            CoatingRole.Topcoat => SystemStepKind.Topcoat,
            CoatingRole.ClearCoat => SystemStepKind.ClearCoat,
            _ => throw new ArgumentException("layer is of a promoter; make the step with Wipe.", nameof(layer)),
        };
        return new(kind, product.Name, [], product.Source) { Layer = layer };
    }

    /// <summary>Grains sprinkled on the wet coat before.</summary>
    /// <param name="additive">The grains.</param>
    /// <param name="rate">Grains per area, more than 0 and at most 1 kg/m².</param>
    /// <returns>The step.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="rate"/> is outside its range.</exception>
    public static SystemStep Broadcast(SlipAdditive additive, AreaDensity rate)
    {
        Guard.NotNull(additive);
        double checkedRate = Guard.Within(rate, Bounds.Positive(Measure.ArealMass, 1));
        return new(SystemStepKind.SlipResistantBroadcast, additive.Name, [], additive.Source) { Additive = additive, BroadcastRate = AreaDensity.FromKilogramsPerSquareMeter(checkedRate) };
    }

    /// <summary>A finish coat with grains stirred in.</summary>
    /// <param name="layer">The coat.</param>
    /// <param name="additive">The grains.</param>
    /// <returns>The step.</returns>
    public static SystemStep CoatWithGrains(CoatingLayer layer, SlipAdditive additive)
    {
        Guard.NotNull(layer);
        Guard.NotNull(additive);
        return new(SystemStepKind.SlipResistantAdditive, layer.Product.Name + " with " + additive.Name, [], additive.Source) { Layer = layer, Additive = additive };
    }

    /// <summary>The sort and the name.</summary>
    /// <returns>Text such as <c>Primer: two-part epoxy primer</c>.</returns>
    public override string ToString() => Kind + ": " + Name;

    /// <summary>Whether the step makes the surface ready and lays down no coat.</summary>
    internal bool IsPreparation => Kind <= SystemStepKind.Filler && Layer is null;

    /// <summary>
    /// The order of steps: a later one has no lower rank. Grains go between finish coats; a coat with grains stirred in ranks as its
    /// product does.
    /// </summary>
    internal int Rank => Kind switch
    {
        SystemStepKind.Clean => 0,
        SystemStepKind.Etch or SystemStepKind.Abrade => 1,
        SystemStepKind.RinseAndDry => 2,
        SystemStepKind.Filler => 3,
        SystemStepKind.AdhesionPromoter => 4,
        SystemStepKind.Primer => 5,
        SystemStepKind.SlipResistantAdditive when Layer!.Product.Role == CoatingRole.ClearCoat => 7,
        SystemStepKind.Topcoat or SystemStepKind.SlipResistantBroadcast or SystemStepKind.SlipResistantAdditive => 6,
        _ => 7,
    };
}

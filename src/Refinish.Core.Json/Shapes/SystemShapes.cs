using System.Collections.Generic;
using Refinish.Coatings;
using Refinish.Fixtures;
using UnitsNet;
using static Refinish.Json.Shapes.Quantities;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>Coating systems and their steps.</summary>
internal static class SystemShapes
{
    public static OneOfShape<SystemStep> Step { get; } = new OneOfShape<SystemStep>("systemStep")
        .Or("preparation", Preparation(), step => step.Kind <= SystemStepKind.Filler && step.Layer is null)
        .Or("wipe", Wipe(), step => step.Promoter is not null)
        .Or("coat", CoatingShapes.Layer.Into("coat", SystemStep.Coat, step => step.Layer!), step => step.Layer is not null
            && step.Additive is null)
        .Or("broadcast", Broadcast(), step => step.Kind == SystemStepKind.SlipResistantBroadcast)
        .Or("coatWithGrains", CoatWithGrains());

    public static ObjectShape<CoatingSystem> WholeSystem { get; } = new Fields<CoatingSystem>("coatingSystem")
        .With("id", Text, it => it.Id, out Slot<string> id)
        .With("name", Text, it => it.Name, out Slot<string> name)
        .With("steps", List(Step), it => it.Steps, out Slot<IReadOnlyList<SystemStep>> steps)
        .WithOr("maximumTotalDryFilm", Film.OrNull(), it => it.MaximumTotalDryFilm, null, out Slot<Length?> maximumTotalDryFilm)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .Making(v => new CoatingSystem(id(v), name(v), steps(v), maximumTotalDryFilm(v), source(v)));

    public static ReferenceShape<CoatingSystem> System { get; } = new(
        WholeSystem,
        "a coating system",
        system => system.Id,
        CoatingShapes.ById([GenericCatalogue.EpoxyUrethaneSystem, GenericCatalogue.SlipResistantTub, GenericCatalogue.ClearedPlastic],
            system => system.Id));

    private static ObjectShape<SystemStep> Preparation() => new Fields<SystemStep>("preparationStep")
        .With("step", new WordShape<SystemStepKind>(), it => it.Kind, out Slot<SystemStepKind> kind)
        .With("name", Text, it => it.Name, out Slot<string> name)
        .WithOr("materials", List(MaterialShapes.Material), it => it.Materials, [], out Slot<IReadOnlyList<FixtureMaterial>> materials)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .Making(v => SystemStep.Preparation(kind(v), name(v), materials(v), source(v)));

    private static ObjectShape<SystemStep> Wipe() => new Fields<SystemStep>("wipeStep")
        .With("promoter", CoatingShapes.Promoter, it => it.Promoter!, out Slot<AdhesionPromoter> promoter)
        .Making(v => SystemStep.Wipe(promoter(v)));

    private static ObjectShape<SystemStep> Broadcast() => new Fields<SystemStep>("broadcastStep")
        .With("additive", CoatingShapes.Additive, it => it.Additive!, out Slot<SlipAdditive> additive)
        .With("rate", Quantities.AreaDensity, it => it.BroadcastRate!.Value, out Slot<AreaDensity> rate)
        .Making(v => SystemStep.Broadcast(additive(v), rate(v)));

    private static ObjectShape<SystemStep> CoatWithGrains() => new Fields<SystemStep>("coatWithGrainsStep")
        .With("layer", CoatingShapes.Layer, it => it.Layer!, out Slot<CoatingLayer> layer)
        .With("additive", CoatingShapes.Additive, it => it.Additive!, out Slot<SlipAdditive> additive)
        .Making(v => SystemStep.CoatWithGrains(layer(v), additive(v)));
}

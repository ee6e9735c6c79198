using System.Collections.Generic;
using Refinish.Coatings;
using Refinish.Fixtures;
using UnitsNet;

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
        .With("id", Scalars.Text, system => system.Id, out Slot<string> id)
        .With("name", Scalars.Text, system => system.Name, out Slot<string> name)
        .With("steps", CommonShapes.List(Step), system => system.Steps, out Slot<IReadOnlyList<SystemStep>> steps)
        .WithOr("maximumTotalDryFilm", Quantities.Film.OrNull(), system => system.MaximumTotalDryFilm, null,
            out Slot<Length?> maximumTotalDryFilm)
        .With("source", CommonShapes.Source, system => system.Source, out Slot<Source> source)
        .Making(v => new CoatingSystem(id(v), name(v), steps(v), maximumTotalDryFilm(v), source(v)));

    public static ReferenceShape<CoatingSystem> System { get; } = new(
        WholeSystem,
        "a coating system",
        system => system.Id,
        CoatingShapes.ById([GenericCatalogue.EpoxyUrethaneSystem, GenericCatalogue.SlipResistantTub, GenericCatalogue.ClearedPlastic],
            system => system.Id));

    private static ObjectShape<SystemStep> Preparation() => new Fields<SystemStep>("preparationStep")
        .With("step", new WordShape<SystemStepKind>(), step => step.Kind, out Slot<SystemStepKind> kind)
        .With("name", Scalars.Text, step => step.Name, out Slot<string> name)
        .WithOr("materials", CommonShapes.List(MaterialShapes.Material), step => step.Materials, [],
            out Slot<IReadOnlyList<FixtureMaterial>> materials)
        .With("source", CommonShapes.Source, step => step.Source, out Slot<Source> source)
        .Making(v => SystemStep.Preparation(kind(v), name(v), materials(v), source(v)));

    private static ObjectShape<SystemStep> Wipe() => new Fields<SystemStep>("wipeStep")
        .With("promoter", CoatingShapes.Promoter, step => step.Promoter!, out Slot<AdhesionPromoter> promoter)
        .Making(v => SystemStep.Wipe(promoter(v)));

    private static ObjectShape<SystemStep> Broadcast() => new Fields<SystemStep>("broadcastStep")
        .With("additive", CoatingShapes.Additive, step => step.Additive!, out Slot<SlipAdditive> additive)
        .With("rate", Quantities.AreaDensity, step => step.BroadcastRate!.Value, out Slot<AreaDensity> rate)
        .Making(v => SystemStep.Broadcast(additive(v), rate(v)));

    private static ObjectShape<SystemStep> CoatWithGrains() => new Fields<SystemStep>("coatWithGrainsStep")
        .With("layer", CoatingShapes.Layer, step => step.Layer!, out Slot<CoatingLayer> layer)
        .With("additive", CoatingShapes.Additive, step => step.Additive!, out Slot<SlipAdditive> additive)
        .Making(v => SystemStep.CoatWithGrains(layer(v), additive(v)));
}

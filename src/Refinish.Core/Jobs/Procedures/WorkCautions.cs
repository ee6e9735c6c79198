using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Substrates;

namespace Refinish.Jobs;

/// <summary>Which cautions a kind of work brings: those of the table of kinds, and what surface, product and defect add.</summary>
internal static class WorkCautions
{
    internal static readonly IReadOnlyList<Caution> Wiping = ValueList<Caution>.Owning(
        Cautions.IgnitionSources, Cautions.ExplosionProofFan, Cautions.MakeUpAir, Cautions.NeverAlone, Cautions.Rags);

    private static readonly IReadOnlyList<Caution> Acid = ValueList<Caution>.Owning(
        Cautions.Etchants, Cautions.AcidAndBleach, Cautions.EyeWash, Cautions.RinseWater, Cautions.Drains);

    internal static readonly IReadOnlyList<Caution> Spray = new ValueList<Caution>(
        [.. Cautions.ForSpraying, Cautions.FireExtinguisher, Cautions.Rescue, Cautions.Drains, Cautions.WasteOwner]);

    /// <summary>What a kind of work brings on any surface and with any product.</summary>
    public static IReadOnlyList<Caution> Of(WorkKind kind) => WorkOrder.Of(kind).Cautions;

    /// <summary>What a kind of work brings on one fixture.</summary>
    public static IReadOnlyList<Caution> Of(WorkKind kind, Procedure procedure, bool etches)
    {
        IEnumerable<Caution> more = kind switch
        {
            WorkKind.Clear => procedure.Fixture.Fixture is ComposedFixture made ? made.Kind.Cautions : [],
            WorkKind.Descale when etches => [Cautions.AcidAndBleach, Cautions.EyeWash],
            WorkKind.Key when etches => Acid,
            WorkKind.Key or WorkKind.RinseAndDry when etches || procedure.MayHoldLead => [Cautions.RinseWater, Cautions.Drains],
            WorkKind.Regrout => SurveyCautions.Found(procedure.Fixture.Survey).Where(caution => caution.Hazard == Hazard.Asbestos),
            WorkKind.Fill => procedure.Filler.Cautions.Concat(procedure.Filler.Items.Count > 0 ? [Cautions.EyeWash] : [Cautions.Dust]),
            WorkKind.Promote when procedure.Promoter?.Solvents.Count > 0 => Wiping,
            WorkKind.Inspect when procedure.CoatsFloor => [Cautions.NewCoatSlip],
            _ => [],
        };
        bool above = procedure.LooksDown ? kind != WorkKind.Inspect : procedure.IsOverhead && kind is WorkKind.Key or WorkKind.Regrout;
        IEnumerable<Caution> overhead = above ? [Cautions.OverheadWork] : [];
        return more is Array { Length: 0 } && overhead is Array { Length: 0 } ? Of(kind) : new ValueList<Caution>(Of(kind).Concat(more).Concat(overhead).Distinct());
    }

    /// <summary>What spraying, broadcasting into or cleaning up after a product brings.</summary>
    public static IReadOnlyList<Caution> Of(WorkKind kind, CoatingProduct product, bool overhead)
    {
        bool isocyanate = product.IsocyanateFraction.DecimalFractions > 0;
        bool inTheMist = kind != WorkKind.CleanGun;
        IEnumerable<Caution> lungs = isocyanate && inTheMist ? Cautions.ForIsocyanates
            : product.Parts.Count > 1 ? [Cautions.Sensitised] : [];
        IEnumerable<Caution> mist = inTheMist ? Spray : [];
        return new ValueList<Caution>(mist.Concat(Of(kind)).Concat(lungs).Concat(SystemCautions.OfMixing(product)).Concat(product.Cautions)
            .Concat(overhead ? [Cautions.OverheadWork] : []).Distinct());
    }

    /// <summary>
    /// All that an operation brings: its own, those of its kind, and those of what it does to the room, so that work of a caller's own
    /// loses nothing.
    /// </summary>
    public static IEnumerable<Caution> Brought(Operation operation) =>
        operation.Cautions
            .Concat(Of(operation.Kind))
            .Concat(operation.Sprays ? Spray : [])
            .Concat(operation.Vapours.Count > 0 ? Wiping : [])
            .Concat(operation.RaisesDust ? [Cautions.Dust] : [])
            .Concat(operation.IsLoud || operation.Sprays || operation.SoundLevel is not null ? [Cautions.Noise] : [])
            .Distinct();
}

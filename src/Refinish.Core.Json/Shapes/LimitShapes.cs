using System;
using Refinish.Air;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>Limits that hold where a shop works.</summary>
internal static class LimitShapes
{
    public static ObjectShape<ExposureLimit> Exposure { get; } = new Fields<ExposureLimit>("exposureLimit")
        .With("casNumber", Scalars.Text, limit => limit.CasNumber, out Slot<string> casNumber)
        .With("substance", Scalars.Text, limit => limit.Substance, out Slot<string> substance)
        .With("authority", Scalars.Text, limit => limit.Authority, out Slot<string> authority)
        .With("jurisdiction", Scalars.Text, limit => limit.Jurisdiction, out Slot<string> jurisdiction)
        .With("kind", new WordShape<ExposureLimitKind>(), limit => limit.Kind, out Slot<ExposureLimitKind> kind)
        .Maybe("period", Quantities.Duration, limit => limit.Period, (limit, period) => limit with { Period = period })
        .With("volumeFraction", Quantities.PartsPerMillion.OrNull(), limit => limit.VolumeFraction, out Slot<Ratio?> volumeFraction)
        .With("massConcentration", Quantities.Concentration.OrNull(), limit => limit.MassConcentration,
            out Slot<MassConcentration?> massConcentration)
        .With("asOf", Scalars.Text, limit => limit.AsOf, out Slot<string> asOf)
        .With("standing", new WordShape<Standing>(), limit => limit.Standing, out Slot<Standing> standing)
        .With("source", CommonShapes.Source, limit => limit.Source, out Slot<Source> source)
        .Making(v => new ExposureLimit
        {
            CasNumber = casNumber(v),
            Substance = substance(v),
            Authority = authority(v),
            Jurisdiction = jurisdiction(v),
            Kind = kind(v),
            VolumeFraction = volumeFraction(v),
            MassConcentration = massConcentration(v),
            AsOf = asOf(v),
            Standing = standing(v),
            Source = source(v),
        });

    public static ObjectShape<VocLimit> Voc { get; } = new Fields<VocLimit>("vocLimit")
        .With("jurisdiction", Scalars.Text, limit => limit.Jurisdiction, out Slot<string> jurisdiction)
        .With("rule", Scalars.Text, limit => limit.Rule, out Slot<string> rule)
        .With("category", Scalars.Text, limit => limit.Category, out Slot<string> category)
        .With("effectiveFrom", Scalars.Text.OrNull(), limit => limit.EffectiveFrom, out Slot<string?> effectiveFrom)
        .With("limit", Quantities.CoatingContent, limit => limit.Limit, out Slot<MassConcentration> most)
        .With("source", CommonShapes.Source, limit => limit.Source, out Slot<Source> source)
        .Making(v => new VocLimit
        {
            Jurisdiction = jurisdiction(v),
            Rule = rule(v),
            Category = category(v),
            EffectiveFrom = effectiveFrom(v),
            Limit = most(v),
            Source = source(v),
        });
}

using System;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Jobs;
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
        .Optional("basis", new WordShape<VocBasis>(), limit => limit.Basis, (limit, basis) => limit with { Basis = basis })
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

    public static ObjectShape<FlammableShare> Flammable { get; } = new Fields<FlammableShare>("flammableShare")
        .With("share", Quantities.Percent, line => line.Share, out Slot<Ratio> share)
        .With("authority", Scalars.Text, line => line.Authority, out Slot<string> authority)
        .With("jurisdiction", Scalars.Text, line => line.Jurisdiction, out Slot<string> jurisdiction)
        .With("asOf", Scalars.Text, line => line.AsOf, out Slot<string> asOf)
        .With("source", CommonShapes.Source, line => line.Source, out Slot<Source> source)
        .Making(v => new FlammableShare
        {
            Share = share(v),
            Authority = authority(v),
            Jurisdiction = jurisdiction(v),
            AsOf = asOf(v),
            Source = source(v),
        });

    public static ObjectShape<SlipClass> Slip { get; } = new Fields<SlipClass>("slipClass")
        .With("name", Scalars.Text, one => one.Name, out Slot<string> name)
        .With("scale", new WordShape<SlipScale>(), one => one.Scale, out Slot<SlipScale> scale)
        .With("least", Scalars.Number, one => one.Least, out Slot<double> least)
        .With("isWet", Scalars.YesNo, one => one.IsWet, out Slot<bool> isWet)
        .With("isBarefoot", Scalars.YesNo, one => one.IsBarefoot, out Slot<bool> isBarefoot)
        .With("jurisdiction", Scalars.Text, one => one.Jurisdiction, out Slot<string> jurisdiction)
        .With("asOf", Scalars.Text, one => one.AsOf, out Slot<string> asOf)
        .With("source", CommonShapes.Source, one => one.Source, out Slot<Source> source)
        .MakingTogether(
            () => SlipClasses.PendulumLow,
            v => new SlipClass(name(v), scale(v), least(v), isWet(v), isBarefoot(v), jurisdiction(v), asOf(v), source(v)));

    public static ObjectShape<NoiseLimit> Noise { get; } = new Fields<NoiseLimit>("noiseLimit")
        .With("authority", Scalars.Text, limit => limit.Authority, out Slot<string> authority)
        .With("jurisdiction", Scalars.Text, limit => limit.Jurisdiction, out Slot<string> jurisdiction)
        .With("criterionLevel", Quantities.SoundLevel, limit => limit.CriterionLevel, out Slot<Level> criterion)
        .With("exchangeRate", Quantities.SoundLevel, limit => limit.ExchangeRate, out Slot<Level> exchange)
        .With("threshold", Quantities.SoundLevel.OrNull(), limit => limit.Threshold, out Slot<Level?> threshold)
        .With("asksFor", Scalars.Text, limit => limit.AsksFor, out Slot<string> asksFor)
        .With("asOf", Scalars.Text, limit => limit.AsOf, out Slot<string> asOf)
        .With("source", CommonShapes.Source, limit => limit.Source, out Slot<Source> source)
        .Making(v => new NoiseLimit
        {
            Authority = authority(v),
            Jurisdiction = jurisdiction(v),
            CriterionLevel = criterion(v),
            ExchangeRate = exchange(v),
            Threshold = threshold(v),
            AsksFor = asksFor(v),
            AsOf = asOf(v),
            Source = source(v),
        });

    public static ObjectShape<WorkNoise> Work { get; } = new Fields<WorkNoise>("workNoise")
        .With("work", LabourShapes.Work, noise => noise.Work, out Slot<WorkKind> work)
        .With("tool", Scalars.Text, noise => noise.Tool, out Slot<string> tool)
        .With("level", Quantities.SoundLevel, noise => noise.Level, out Slot<Level> level)
        .With("source", CommonShapes.Source, noise => noise.Source, out Slot<Source> source)
        .Making(v => new WorkNoise(work(v), tool(v), level(v), source(v)));

    /// <summary>A set as a whole, or by the name of one of the library's: "generic/osha".</summary>
    public static ReferenceShape<LimitSet> Set { get; } = new(
        new Fields<LimitSet>("limitSet")
            .With("id", Scalars.Text, set => set.Id, out Slot<string> id)
            .With("name", Scalars.Text, set => set.Name, out Slot<string> name)
            .With("jurisdiction", Scalars.Text, set => set.Jurisdiction, out Slot<string> jurisdiction)
            .With("asOf", Scalars.Text, set => set.AsOf, out Slot<string> asOf)
            .Optional("exposure", CommonShapes.List(Exposure), set => set.Exposure, (set, limits) => set with { Exposure = limits })
            .MaybeOf("flammable", Flammable, set => set.Flammable, (set, line) => set with { Flammable = line })
            .MaybeOf("flammableDesign", Flammable, set => set.FlammableDesign, (set, line) => set with { FlammableDesign = line })
            .Optional("voc", CommonShapes.List(Voc), set => set.Voc, (set, limits) => set with { Voc = limits })
            .Optional("slip", CommonShapes.List(Slip), set => set.Slip, (set, classes) => set with { Slip = classes })
            .Optional("noise", CommonShapes.List(Noise), set => set.Noise, (set, limits) => set with { Noise = limits })
            .Making(v => new LimitSet { Id = id(v), Name = name(v), Jurisdiction = jurisdiction(v), AsOf = asOf(v) }),
        "a set of limits",
        set => set.Id,
        CoatingShapes.ById(LimitSets.All, set => set.Id));
}

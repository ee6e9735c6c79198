using System;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Jobs;
using UnitsNet;
using static Refinish.Json.Shapes.Quantities;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>Limits that hold where a shop works.</summary>
internal static class LimitShapes
{
    public static ObjectShape<ExposureLimit> Exposure { get; } = new Fields<ExposureLimit>("exposureLimit")
        .With("casNumber", Text, it => it.CasNumber, out Slot<string> casNumber)
        .With("substance", Text, it => it.Substance, out Slot<string> substance)
        .With("authority", Text, it => it.Authority, out Slot<string> authority)
        .With("jurisdiction", Text, it => it.Jurisdiction, out Slot<string> jurisdiction)
        .With("kind", new WordShape<ExposureLimitKind>(), it => it.Kind, out Slot<ExposureLimitKind> kind)
        .Maybe("period", Quantities.Duration, it => it.Period, (it, period) => it with { Period = period })
        .With("volumeFraction", PartsPerMillion.OrNull(), it => it.VolumeFraction, out Slot<Ratio?> volumeFraction)
        .With("massConcentration", Concentration.OrNull(), it => it.MassConcentration, out Slot<MassConcentration?> massConcentration)
        .With("asOf", Text, it => it.AsOf, out Slot<string> asOf)
        .With("standing", new WordShape<Standing>(), it => it.Standing, out Slot<Standing> standing)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .Making(v => new ExposureLimit
        {
            CasNumber = casNumber(v), Substance = substance(v), Authority = authority(v), Jurisdiction = jurisdiction(v), Kind = kind(v),
            VolumeFraction = volumeFraction(v), MassConcentration = massConcentration(v), AsOf = asOf(v), Standing = standing(v),
            Source = source(v),
        });

    public static ObjectShape<VocLimit> Voc { get; } = new Fields<VocLimit>("vocLimit")
        .With("jurisdiction", Text, it => it.Jurisdiction, out Slot<string> jurisdiction)
        .With("rule", Text, it => it.Rule, out Slot<string> rule)
        .With("category", Text, it => it.Category, out Slot<string> category)
        .With("effectiveFrom", Text.OrNull(), it => it.EffectiveFrom, out Slot<string?> effectiveFrom)
        .With("limit", CoatingContent, it => it.Limit, out Slot<MassConcentration> most)
        .Optional("basis", new WordShape<VocBasis>(), it => it.Basis, (it, basis) => it with { Basis = basis })
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .Making(v => new VocLimit
        {
            Jurisdiction = jurisdiction(v), Rule = rule(v), Category = category(v), EffectiveFrom = effectiveFrom(v), Limit = most(v),
            Source = source(v),
        });

    public static ObjectShape<FlammableShare> Flammable { get; } = new Fields<FlammableShare>("flammableShare")
        .With("share", Percent, it => it.Share, out Slot<Ratio> share)
        .With("authority", Text, it => it.Authority, out Slot<string> authority)
        .With("jurisdiction", Text, it => it.Jurisdiction, out Slot<string> jurisdiction)
        .With("asOf", Text, it => it.AsOf, out Slot<string> asOf)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .Making(v => new FlammableShare
        {
            Share = share(v), Authority = authority(v), Jurisdiction = jurisdiction(v), AsOf = asOf(v), Source = source(v),
        });

    public static ObjectShape<SlipClass> Slip { get; } = new Fields<SlipClass>("slipClass")
        .With("name", Text, it => it.Name, out Slot<string> name)
        .With("scale", new WordShape<SlipScale>(), it => it.Scale, out Slot<SlipScale> scale)
        .With("least", Number, it => it.Least, out Slot<double> least)
        .With("isWet", YesNo, it => it.IsWet, out Slot<bool> isWet)
        .With("isBarefoot", YesNo, it => it.IsBarefoot, out Slot<bool> isBarefoot)
        .With("jurisdiction", Text, it => it.Jurisdiction, out Slot<string> jurisdiction)
        .With("asOf", Text, it => it.AsOf, out Slot<string> asOf)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .MakingTogether(
            () => SlipClasses.PendulumLow,
            v => new SlipClass(name(v), scale(v), least(v), isWet(v), isBarefoot(v), jurisdiction(v), asOf(v), source(v)));

    public static ObjectShape<NoiseLimit> Noise { get; } = new Fields<NoiseLimit>("noiseLimit")
        .With("authority", Text, it => it.Authority, out Slot<string> authority)
        .With("jurisdiction", Text, it => it.Jurisdiction, out Slot<string> jurisdiction)
        .With("criterionLevel", SoundLevel, it => it.CriterionLevel, out Slot<Level> criterion)
        .With("exchangeRate", SoundLevel, it => it.ExchangeRate, out Slot<Level> exchange)
        .With("threshold", SoundLevel.OrNull(), it => it.Threshold, out Slot<Level?> threshold)
        .With("asksFor", Text, it => it.AsksFor, out Slot<string> asksFor)
        .With("asOf", Text, it => it.AsOf, out Slot<string> asOf)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .Making(v => new NoiseLimit
        {
            Authority = authority(v), Jurisdiction = jurisdiction(v), CriterionLevel = criterion(v), ExchangeRate = exchange(v),
            Threshold = threshold(v), AsksFor = asksFor(v), AsOf = asOf(v), Source = source(v),
        });

    public static ObjectShape<WorkNoise> Work { get; } = new Fields<WorkNoise>("workNoise")
        .With("work", LabourShapes.Work, it => it.Work, out Slot<WorkKind> work)
        .With("tool", Text, it => it.Tool, out Slot<string> tool)
        .With("level", SoundLevel, it => it.Level, out Slot<Level> level)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .Making(v => new WorkNoise(work(v), tool(v), level(v), source(v)));

    /// <summary>A set as a whole, or by the name of one of the library's: "generic/osha".</summary>
    public static ReferenceShape<LimitSet> Set { get; } = new(
        new Fields<LimitSet>("limitSet")
            .With("id", Text, it => it.Id, out Slot<string> id)
            .With("name", Text, it => it.Name, out Slot<string> name)
            .With("jurisdiction", Text, it => it.Jurisdiction, out Slot<string> jurisdiction)
            .With("asOf", Text, it => it.AsOf, out Slot<string> asOf)
            .Optional("exposure", List(Exposure), it => it.Exposure, (it, limits) => it with { Exposure = limits })
            .MaybeOf("flammable", Flammable, it => it.Flammable, (it, line) => it with { Flammable = line })
            .MaybeOf("flammableDesign", Flammable, it => it.FlammableDesign, (it, line) => it with { FlammableDesign = line })
            .Optional("voc", List(Voc), it => it.Voc, (it, limits) => it with { Voc = limits })
            .Optional("slip", List(Slip), it => it.Slip, (it, classes) => it with { Slip = classes })
            .Optional("noise", List(Noise), it => it.Noise, (it, limits) => it with { Noise = limits })
            .Making(v => new LimitSet { Id = id(v), Name = name(v), Jurisdiction = jurisdiction(v), AsOf = asOf(v) }),
        "a set of limits",
        set => set.Id,
        CoatingShapes.ById(LimitSets.All, set => set.Id));
}

using System;
using System.Collections.Generic;
using Refinish.Climate;
using Refinish.Coatings;
using UnitsNet;
using static Refinish.Json.Shapes.Quantities;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>Times and limits of a data sheet.</summary>
internal static class CureShapes
{
    public static ObjectShape<CureTimes> Times { get; } = new Fields<CureTimes>("cureTimes")
        .With("referenceTemperature", Quantities.Temperature, it => it.ReferenceTemperature, out Slot<Temperature> referenceTemperature)
        .With("minimumTemperature", Quantities.Temperature, it => it.MinimumTemperature, out Slot<Temperature> minimumTemperature)
        .With("maximumTemperature", Quantities.Temperature, it => it.MaximumTemperature, out Slot<Temperature> maximumTemperature)
        .Optional("ratePerTenKelvin", Number, it => it.RatePerTenKelvin, (it, rate) => it with { RatePerTenKelvin = rate })
        .Optional("induction", Quantities.Duration, it => it.Induction, (it, induction) => it with { Induction = induction })
        .With("potLife", Quantities.Duration.OrNull(), it => it.PotLife, out Slot<TimeSpan?> potLife)
        .With("touchDry", Quantities.Duration, it => it.TouchDry, out Slot<TimeSpan> touchDry)
        .With("recoatOpens", Quantities.Duration, it => it.RecoatOpens, out Slot<TimeSpan> recoatOpens)
        .With("recoatCloses", Quantities.Duration.OrNull(), it => it.RecoatCloses, out Slot<TimeSpan?> recoatCloses)
        .With("waterService", Quantities.Duration, it => it.WaterService, out Slot<TimeSpan> waterService)
        .With("fullCure", Quantities.Duration, it => it.FullCure, out Slot<TimeSpan> fullCure)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .Making(v => new CureTimes
        {
            ReferenceTemperature = referenceTemperature(v), MinimumTemperature = minimumTemperature(v),
            MaximumTemperature = maximumTemperature(v), PotLife = potLife(v), TouchDry = touchDry(v), RecoatOpens = recoatOpens(v),
            RecoatCloses = recoatCloses(v), WaterService = waterService(v), FullCure = fullCure(v), Source = source(v),
        });

    public static ObjectShape<CureTable> Table { get; } = new Fields<CureTable>("cureTable")
        .With("rows", List(Times), it => it.Rows, out Slot<IReadOnlyList<CureTimes>> rows)
        .Making(v => new CureTable(rows(v)));

    public static ObjectShape<SprayLimits> SprayLimits { get; } = new Fields<SprayLimits>("sprayLimits")
        .With("minimumTemperature", Quantities.Temperature, it => it.MinimumTemperature, out Slot<Temperature> minimumTemperature)
        .With("maximumTemperature", Quantities.Temperature, it => it.MaximumTemperature, out Slot<Temperature> maximumTemperature)
        .With("maximumRelativeHumidity", Percent, it => it.MaximumRelativeHumidity, out Slot<Ratio> maximumRelativeHumidity)
        .Optional("minimumRelativeHumidity", Percent, it => it.MinimumRelativeHumidity,
            (it, humidity) => it with { MinimumRelativeHumidity = humidity })
        .Optional("minimumSpreadAboveDewPoint", TemperatureDifference, it => it.MinimumSpreadAboveDewPoint,
            (it, spread) => it with { MinimumSpreadAboveDewPoint = spread })
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .Making(v => new SprayLimits
        {
            MinimumTemperature = minimumTemperature(v), MaximumTemperature = maximumTemperature(v),
            MaximumRelativeHumidity = maximumRelativeHumidity(v), Source = source(v),
        });
}

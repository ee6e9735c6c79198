using System;
using System.Collections.Generic;
using Refinish.Climate;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>Times and limits of a data sheet.</summary>
internal static class CureShapes
{
    public static ObjectShape<CureTimes> Times { get; } = new Fields<CureTimes>("cureTimes")
        .With("referenceTemperature", Quantities.Temperature, times => times.ReferenceTemperature,
            out Slot<Temperature> referenceTemperature)
        .With("minimumTemperature", Quantities.Temperature, times => times.MinimumTemperature, out Slot<Temperature> minimumTemperature)
        .With("maximumTemperature", Quantities.Temperature, times => times.MaximumTemperature, out Slot<Temperature> maximumTemperature)
        .Optional("ratePerTenKelvin", Scalars.Number, times => times.RatePerTenKelvin,
            (times, rate) => times with { RatePerTenKelvin = rate })
        .Optional("induction", Quantities.Duration, times => times.Induction, (times, induction) => times with { Induction = induction })
        .With("potLife", Quantities.Duration.OrNull(), times => times.PotLife, out Slot<TimeSpan?> potLife)
        .With("touchDry", Quantities.Duration, times => times.TouchDry, out Slot<TimeSpan> touchDry)
        .With("recoatOpens", Quantities.Duration, times => times.RecoatOpens, out Slot<TimeSpan> recoatOpens)
        .With("recoatCloses", Quantities.Duration.OrNull(), times => times.RecoatCloses, out Slot<TimeSpan?> recoatCloses)
        .With("waterService", Quantities.Duration, times => times.WaterService, out Slot<TimeSpan> waterService)
        .With("fullCure", Quantities.Duration, times => times.FullCure, out Slot<TimeSpan> fullCure)
        .With("source", CommonShapes.Source, times => times.Source, out Slot<Source> source)
        .Making(v => new CureTimes
        {
            ReferenceTemperature = referenceTemperature(v),
            MinimumTemperature = minimumTemperature(v),
            MaximumTemperature = maximumTemperature(v),
            PotLife = potLife(v),
            TouchDry = touchDry(v),
            RecoatOpens = recoatOpens(v),
            RecoatCloses = recoatCloses(v),
            WaterService = waterService(v),
            FullCure = fullCure(v),
            Source = source(v),
        });

    public static ObjectShape<CureTable> Table { get; } = new Fields<CureTable>("cureTable")
        .With("rows", CommonShapes.List(Times), table => table.Rows, out Slot<IReadOnlyList<CureTimes>> rows)
        .Making(v => new CureTable(rows(v)));

    public static ObjectShape<SprayLimits> SprayLimits { get; } = new Fields<SprayLimits>("sprayLimits")
        .With("minimumTemperature", Quantities.Temperature, limits => limits.MinimumTemperature, out Slot<Temperature> minimumTemperature)
        .With("maximumTemperature", Quantities.Temperature, limits => limits.MaximumTemperature, out Slot<Temperature> maximumTemperature)
        .With("maximumRelativeHumidity", Quantities.Percent, limits => limits.MaximumRelativeHumidity,
            out Slot<Ratio> maximumRelativeHumidity)
        .Optional("minimumRelativeHumidity", Quantities.Percent, limits => limits.MinimumRelativeHumidity,
            (limits, humidity) => limits with { MinimumRelativeHumidity = humidity })
        .Optional("minimumSpreadAboveDewPoint", Quantities.TemperatureDifference, limits => limits.MinimumSpreadAboveDewPoint,
            (limits, spread) => limits with { MinimumSpreadAboveDewPoint = spread })
        .With("source", CommonShapes.Source, limits => limits.Source, out Slot<Source> source)
        .Making(v => new SprayLimits
        {
            MinimumTemperature = minimumTemperature(v),
            MaximumTemperature = maximumTemperature(v),
            MaximumRelativeHumidity = maximumRelativeHumidity(v),
            Source = source(v),
        });
}

using System;
using System.Linq;
using Refinish.Air;
using Refinish.Jobs;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>What a plan says of the air: always a limit, its source and how far off, never that something is safe.</summary>
internal static class AirResults
{
    private static readonly FieldsShape<ExposureComparison> Exposure = new Fields<ExposureComparison>("exposureComparison")
        .Show("substance", Text, it => it.Solvent.Name)
        .Show("casNumber", Text, it => it.Solvent.CasNumber)
        .Show("authority", Text.OrNull(), it => it.Limit?.Authority)
        .Show("jurisdiction", Text.OrNull(), it => it.Limit?.Jurisdiction)
        .Show("asOf", Text.OrNull(), it => it.Limit?.AsOf)
        .Show("kind", new WordShape<ExposureLimitKind>().OrNull(), it => it.Limit?.Kind)
        .Show("standing", new WordShape<Standing>().OrNull(), it => it.Limit?.Standing)
        .Show("comparison", Results.Comparison, it => it.Comparison)
        .AsResults();

    private static readonly FieldsShape<SubstanceAir> Substance = new Fields<SubstanceAir>("substanceAir")
        .Show("substance", Text, it => it.Solvent.Name)
        .Show("casNumber", Text, it => it.Solvent.CasNumber)
        .Show("released", Results.Mass, it => it.Released.Kilograms)
        .Show("peak", Results.PartsPerMillion, it => it.Peak.DecimalFractions)
        .Show("peakConcentration", Results.Concentration, it => it.PeakConcentration.KilogramsPerCubicMeter)
        .Show("peakAt", Results.Hours.OrNull(), it => it.PeakAt?.TotalSeconds)
        .Show("fifteenMinuteAverage", Results.PartsPerMillion, it => it.FifteenMinuteAverage.DecimalFractions)
        .Show("fifteenMinuteConcentration", Results.Concentration, it => it.FifteenMinuteConcentration.KilogramsPerCubicMeter)
        .Show("eightHourAverage", Results.PartsPerMillion, it => it.EightHourAverage.DecimalFractions)
        .Show("eightHourConcentration", Results.Concentration, it => it.EightHourConcentration.KilogramsPerCubicMeter)
        .AsResults();

    private static readonly FieldsShape<RespiratorClass> Respirator = new Fields<RespiratorClass>("respiratorClass")
        .Show("name", Text, it => it.Name)
        .Show("assignedProtectionFactor", Count, it => it.AssignedProtectionFactor)
        .Show("factorWithMakerEvidence", Count.OrNull(), it => it.FactorWithMakerEvidence)
        .Show("forImmediateDanger", Text.OrNull(), it => it.ForImmediateDanger)
        .Show("suppliesAir", YesNo, it => it.SuppliesAir)
        .Show("source", CommonShapes.Source, it => it.Source)
        .AsResults();

    private static readonly FieldsShape<AirStudy> Study = new Fields<AirStudy>("airStudy")
        .Show("shift", Results.Hours, it => it.Shift.TotalSeconds)
        .Show("freshAirFlow", Results.Airflow, it => it.FreshAirFlow.CubicMetersPerSecond)
        .Show("airChangesPerHour", Results.Number, it => it.AirChangesPerHour)
        .Show("lastSprayEnds", Results.Hours, it => it.LastSprayEnds.TotalSeconds)
        .Show("peakFlammableFraction", Results.Percent.OrNull(), it => it.PeakFlammableFraction?.DecimalFractions)
        .Show("peakFlammableAt", Results.Hours.OrNull(), it => it.PeakFlammableAt?.TotalSeconds)
        .Show("flammableLimit", Results.Comparison, it => it.FlammableLimit)
        .Show("flammableDesignLine", Results.Comparison, it => it.FlammableDesignLine)
        .Show("exposure", List(Exposure), it => it.Exposure)
        .Show("strictestLimit", Results.Comparison, it => it.StrictestLimit)
        .Show("shortTermLimit", Results.Comparison, it => it.ShortTermLimit)
        .Show("saturation", Results.Comparisons, it => it.Saturation)
        .Show("substances", List(Substance), it => it.Substances)
        .Show("notGivenOff", List(Text), it => [.. it.NotGivenOff.Select(solvent => solvent.Name)])
        .Show("airflowForFlammableLimit", Results.Airflow.OrNull(), it => it.AirflowForFlammableLimit?.CubicMetersPerSecond)
        .Show("steadyAirflowForFlammableLimit", Results.Airflow.OrNull(), it => it.SteadyAirflowForFlammableLimit?.CubicMetersPerSecond)
        .Show("airflowForExposureIndex", Results.Airflow.OrNull(), it => it.AirflowForExposureIndex?.CubicMetersPerSecond)
        .Show("cautions", Results.CautionCodes, it => it.Cautions)
        .AsResults();

    private static readonly FieldsShape<IsocyanateScreen> Isocyanate = new Fields<IsocyanateScreen>("isocyanateScreen")
        .Show("airborneMass", Results.Mass, it => it.AirborneMass.Kilograms)
        .Show("concentration", Results.Concentration, it => it.Concentration.KilogramsPerCubicMeter)
        .Show("hazardRatio", Results.Number.OrNull(), it => it.HazardRatio)
        .Show("comparison", Results.Comparison, it => it.Comparison)
        .Show("respirators", List(Respirator), it => it.Respirators)
        .Show("cautions", Results.CautionCodes, it => it.Cautions)
        .AsResults();

    private static readonly FieldsShape<RespiratorCheck> Check = new Fields<RespiratorCheck>("respiratorCheck")
        .Show("respirator", Text, it => it.Respirator.Name)
        .Show("exclusion", new WordShape<RespiratorExclusion>(), it => it.Exclusion)
        .Show("insideOverLimit", Results.Number.OrNull(), it => it.InsideOverLimit)
        .Show("comparison", Results.Comparison, it => it.Comparison)
        .Show("reaches", YesNo, it => it.Reaches)
        .AsResults();

    public static FieldsShape<ProtectionNeed> Protection { get; } = new Fields<ProtectionNeed>("protectionNeed")
        .Show("about", Text, it => it.About)
        .Show("comparison", Results.Comparison, it => it.Comparison)
        .Show("asksForAir", YesNo, it => it.AsksForAir)
        .Show("isImmediatelyDangerous", YesNo, it => it.IsImmediatelyDangerous)
        .Show("hazardRatio", Results.Number.OrNull(), it => it.HazardRatio)
        .Show("respirators", List(Respirator), it => it.Respirators)
        .Show("checks", List(Check), it => it.Checks)
        .AsResults();

    public static FieldsShape<RoomAirPlan> Room { get; } = new Fields<RoomAirPlan>("roomAirPlan")
        .Show("id", Text, it => it.Room.Id)
        .Show("zero", Times.Instant.OrNull(), it => it.Study is null ? (DateTimeOffset?)null : it.Zero)
        .Show("study", Study.OrNull(), it => it.Study)
        .Show("flammableAirflow", Results.Comparison.OrNull(), it => it.FlammableAirflow)
        .Show("humidity", Results.Comparison.OrNull(), it => it.Humidity)
        .Show("screens", List(Isocyanate), it => it.Screens)
        .Show("unstated", Results.Comparisons, it => it.Unstated)
        .Show("asksForAir", YesNo, it => it.AsksForAir)
        .Show("isImmediatelyDangerous", YesNo, it => it.IsImmediatelyDangerous)
        .Show("protection", List(Protection), it => it.Protection)
        .Show("cautions", Results.CautionCodes, it => it.Cautions)
        .AsResults();

    private static readonly FieldsShape<PersonExposure> Person = new Fields<PersonExposure>("personExposure")
        .Show("exposure", List(Exposure), it => it.Exposure)
        .Show("strictestLimit", Results.Comparison.OrNull(), it => it.Stays.Count == 0 ? null : it.StrictestLimit)
        .AsResults();

    public static FieldsShape<DayExposure> Day { get; } = new Fields<DayExposure>("dayExposure")
        .Show("worker", Text, it => it.Worker)
        .Show("day", Times.Day, it => it.Day)
        .Show("exposure", Person, it => it.Exposure)
        .Show("protection", List(Protection), it => it.Protection)
        .AsResults();

    private static readonly FieldsShape<NoiseDose> Dose = new Fields<NoiseDose>("noiseDose")
        .Show("dose", Results.Percent.OrNull(), it => it.Dose?.DecimalFractions)
        .Show("dailyLevel", Results.SoundLevel.OrNull(), it => it.DailyLevel?.Decibels)
        .Show("leastNoiseReductionRating", Results.SoundLevel.OrNull(), it => it.LeastNoiseReductionRating?.Decibels)
        .Show("comparison", Results.Comparison, it => it.Comparison)
        .Show("loudest", Results.Comparison, it => it.Loudest)
        .Show("cautions", Results.CautionCodes, it => it.Cautions)
        .AsResults();

    public static FieldsShape<DayNoise> Noise { get; } = new Fields<DayNoise>("dayNoise")
        .Show("worker", Text, it => it.Worker)
        .Show("day", Times.Day, it => it.Day)
        .Show("doses", List(Dose), it => it.Doses)
        .AsResults();
}

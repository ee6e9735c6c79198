using System;
using System.Linq;
using Refinish.Air;
using Refinish.Jobs;

namespace Refinish.Json.Shapes;

/// <summary>What a plan says of the air: always a limit, its source and how far off, never that something is safe.</summary>
internal static class AirResults
{
    private static readonly FieldsShape<ExposureComparison> Exposure = new Fields<ExposureComparison>("exposureComparison")
        .Show("substance", Scalars.Text, exposure => exposure.Solvent.Name)
        .Show("casNumber", Scalars.Text, exposure => exposure.Solvent.CasNumber)
        .Show("authority", Scalars.Text.OrNull(), exposure => exposure.Limit?.Authority)
        .Show("jurisdiction", Scalars.Text.OrNull(), exposure => exposure.Limit?.Jurisdiction)
        .Show("asOf", Scalars.Text.OrNull(), exposure => exposure.Limit?.AsOf)
        .Show("kind", new WordShape<ExposureLimitKind>().OrNull(), exposure => exposure.Limit?.Kind)
        .Show("standing", new WordShape<Standing>().OrNull(), exposure => exposure.Limit?.Standing)
        .Show("comparison", Results.Comparison, exposure => exposure.Comparison)
        .AsResults();

    private static readonly FieldsShape<SubstanceAir> Substance = new Fields<SubstanceAir>("substanceAir")
        .Show("substance", Scalars.Text, air => air.Solvent.Name)
        .Show("casNumber", Scalars.Text, air => air.Solvent.CasNumber)
        .Show("released", Results.Mass, air => air.Released.Kilograms)
        .Show("peak", Results.PartsPerMillion, air => air.Peak.DecimalFractions)
        .Show("peakConcentration", Results.Concentration, air => air.PeakConcentration.KilogramsPerCubicMeter)
        .Show("peakAt", Results.Hours.OrNull(), air => air.PeakAt?.TotalSeconds)
        .Show("fifteenMinuteAverage", Results.PartsPerMillion, air => air.FifteenMinuteAverage.DecimalFractions)
        .Show("fifteenMinuteConcentration", Results.Concentration, air => air.FifteenMinuteConcentration.KilogramsPerCubicMeter)
        .Show("eightHourAverage", Results.PartsPerMillion, air => air.EightHourAverage.DecimalFractions)
        .Show("eightHourConcentration", Results.Concentration, air => air.EightHourConcentration.KilogramsPerCubicMeter)
        .AsResults();

    private static readonly FieldsShape<RespiratorClass> Respirator = new Fields<RespiratorClass>("respiratorClass")
        .Show("name", Scalars.Text, respirator => respirator.Name)
        .Show("assignedProtectionFactor", Scalars.Count, respirator => respirator.AssignedProtectionFactor)
        .Show("factorWithMakerEvidence", Scalars.Count.OrNull(), respirator => respirator.FactorWithMakerEvidence)
        .Show("forImmediateDanger", Scalars.Text.OrNull(), respirator => respirator.ForImmediateDanger)
        .Show("suppliesAir", Scalars.YesNo, respirator => respirator.SuppliesAir)
        .Show("source", CommonShapes.Source, respirator => respirator.Source)
        .AsResults();

    private static readonly FieldsShape<AirStudy> Study = new Fields<AirStudy>("airStudy")
        .Show("shift", Results.Hours, air => air.Shift.TotalSeconds)
        .Show("freshAirFlow", Results.Airflow, air => air.FreshAirFlow.CubicMetersPerSecond)
        .Show("airChangesPerHour", Results.Number, air => air.AirChangesPerHour)
        .Show("lastSprayEnds", Results.Hours, air => air.LastSprayEnds.TotalSeconds)
        .Show("peakFlammableFraction", Results.Percent.OrNull(), air => air.PeakFlammableFraction?.DecimalFractions)
        .Show("peakFlammableAt", Results.Hours.OrNull(), air => air.PeakFlammableAt?.TotalSeconds)
        .Show("flammableLimit", Results.Comparison, air => air.FlammableLimit)
        .Show("flammableDesignLine", Results.Comparison, air => air.FlammableDesignLine)
        .Show("exposure", CommonShapes.List(Exposure), air => air.Exposure)
        .Show("strictestLimit", Results.Comparison, air => air.StrictestLimit)
        .Show("shortTermLimit", Results.Comparison, air => air.ShortTermLimit)
        .Show("saturation", Results.Comparisons, air => air.Saturation)
        .Show("substances", CommonShapes.List(Substance), air => air.Substances)
        .Show("notGivenOff", CommonShapes.List(Scalars.Text), air => [.. air.NotGivenOff.Select(solvent => solvent.Name)])
        .Show("airflowForFlammableLimit", Results.Airflow.OrNull(), air => air.AirflowForFlammableLimit?.CubicMetersPerSecond)
        .Show("steadyAirflowForFlammableLimit", Results.Airflow.OrNull(), air => air.SteadyAirflowForFlammableLimit?.CubicMetersPerSecond)
        .Show("airflowForExposureIndex", Results.Airflow.OrNull(), air => air.AirflowForExposureIndex?.CubicMetersPerSecond)
        .Show("cautions", Results.CautionCodes, air => air.Cautions)
        .AsResults();

    private static readonly FieldsShape<IsocyanateScreen> Isocyanate = new Fields<IsocyanateScreen>("isocyanateScreen")
        .Show("airborneMass", Results.Mass, screen => screen.AirborneMass.Kilograms)
        .Show("concentration", Results.Concentration, screen => screen.Concentration.KilogramsPerCubicMeter)
        .Show("hazardRatio", Results.Number.OrNull(), screen => screen.HazardRatio)
        .Show("comparison", Results.Comparison, screen => screen.Comparison)
        .Show("respirators", CommonShapes.List(Respirator), screen => screen.Respirators)
        .Show("cautions", Results.CautionCodes, screen => screen.Cautions)
        .AsResults();

    private static readonly FieldsShape<RespiratorCheck> Check = new Fields<RespiratorCheck>("respiratorCheck")
        .Show("respirator", Scalars.Text, check => check.Respirator.Name)
        .Show("exclusion", new WordShape<RespiratorExclusion>(), check => check.Exclusion)
        .Show("insideOverLimit", Results.Number.OrNull(), check => check.InsideOverLimit)
        .Show("comparison", Results.Comparison, check => check.Comparison)
        .Show("reaches", Scalars.YesNo, check => check.Reaches)
        .AsResults();

    public static FieldsShape<ProtectionNeed> Protection { get; } = new Fields<ProtectionNeed>("protectionNeed")
        .Show("about", Scalars.Text, need => need.About)
        .Show("comparison", Results.Comparison, need => need.Comparison)
        .Show("asksForAir", Scalars.YesNo, need => need.AsksForAir)
        .Show("isImmediatelyDangerous", Scalars.YesNo, need => need.IsImmediatelyDangerous)
        .Show("hazardRatio", Results.Number.OrNull(), need => need.HazardRatio)
        .Show("respirators", CommonShapes.List(Respirator), need => need.Respirators)
        .Show("checks", CommonShapes.List(Check), need => need.Checks)
        .AsResults();

    public static FieldsShape<RoomAirPlan> Room { get; } = new Fields<RoomAirPlan>("roomAirPlan")
        .Show("id", Scalars.Text, room => room.Room.Id)
        .Show("zero", Times.Instant.OrNull(), room => room.Study is null ? (DateTimeOffset?)null : room.Zero)
        .Show("study", Study.OrNull(), room => room.Study)
        .Show("flammableAirflow", Results.Comparison.OrNull(), room => room.FlammableAirflow)
        .Show("humidity", Results.Comparison.OrNull(), room => room.Humidity)
        .Show("screens", CommonShapes.List(Isocyanate), room => room.Screens)
        .Show("unstated", Results.Comparisons, room => room.Unstated)
        .Show("asksForAir", Scalars.YesNo, room => room.AsksForAir)
        .Show("isImmediatelyDangerous", Scalars.YesNo, room => room.IsImmediatelyDangerous)
        .Show("protection", CommonShapes.List(Protection), room => room.Protection)
        .Show("cautions", Results.CautionCodes, room => room.Cautions)
        .AsResults();

    private static readonly FieldsShape<PersonExposure> Person = new Fields<PersonExposure>("personExposure")
        .Show("exposure", CommonShapes.List(Exposure), person => person.Exposure)
        .Show("strictestLimit", Results.Comparison.OrNull(), person => person.Stays.Count == 0 ? null : person.StrictestLimit)
        .AsResults();

    public static FieldsShape<DayExposure> Day { get; } = new Fields<DayExposure>("dayExposure")
        .Show("worker", Scalars.Text, day => day.Worker)
        .Show("day", Times.Day, day => day.Day)
        .Show("exposure", Person, day => day.Exposure)
        .Show("protection", CommonShapes.List(Protection), day => day.Protection)
        .AsResults();

    private static readonly FieldsShape<NoiseDose> Dose = new Fields<NoiseDose>("noiseDose")
        .Show("dose", Results.Percent.OrNull(), dose => dose.Dose?.DecimalFractions)
        .Show("dailyLevel", Results.SoundLevel.OrNull(), dose => dose.DailyLevel?.Decibels)
        .Show("leastNoiseReductionRating", Results.SoundLevel.OrNull(), dose => dose.LeastNoiseReductionRating?.Decibels)
        .Show("comparison", Results.Comparison, dose => dose.Comparison)
        .Show("loudest", Results.Comparison, dose => dose.Loudest)
        .Show("cautions", Results.CautionCodes, dose => dose.Cautions)
        .AsResults();

    public static FieldsShape<DayNoise> Noise { get; } = new Fields<DayNoise>("dayNoise")
        .Show("worker", Scalars.Text, day => day.Worker)
        .Show("day", Times.Day, day => day.Day)
        .Show("doses", CommonShapes.List(Dose), day => day.Doses)
        .AsResults();
}

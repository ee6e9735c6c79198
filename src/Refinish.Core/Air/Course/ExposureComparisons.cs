using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;

namespace Refinish.Air;

/// <summary>Substances in the air held against the limits, and what has to be said with them.</summary>
internal static class ExposureComparisons
{
    internal const string LookUp = "take a limit from the safety data sheet, section 8, and hand it in";

    public static Source Missing { get; } = Source.Supplied("no eight-hour limit in the set that was chosen");

    /// <summary>
    /// Each substance but water against each of its limits; one that cannot be judged where there is no eight-hour limit.
    /// </summary>
    public static IReadOnlyList<ExposureComparison> Of(IReadOnlyList<SubstanceAir> substances, LimitSet limits)
    {
        List<ExposureComparison> comparisons = [];
        foreach (SubstanceAir air in substances.Where(one => !one.Solvent.IsWater))
        {
            bool average = false;
            foreach (ExposureLimit limit in limits.Exposure)
            {
                if (string.Equals(limit.CasNumber, air.Solvent.CasNumber, StringComparison.Ordinal))
                {
                    comparisons.Add(new ExposureComparison(air.Solvent, limit, Compare(air, limit)));
                    average |= limit.Kind == ExposureLimitKind.Twa8h && limit.VolumeFractionOf(air.Solvent.MolarMass) is not null;
                }
            }

            if (!average)
            {
                comparisons.Add(Unlimited(string.Empty, air.Solvent, air.EightHourAverage.DecimalFractions, limits));
            }
        }

        return new ValueList<ExposureComparison>(comparisons);
    }

    /// <summary>A substance for which the set has no eight-hour limit.</summary>
    public static ExposureComparison Unlimited(string of, Solvent solvent, double average, LimitSet limits) => new(
        solvent, null, Compare(of + solvent.Name + ", 8-hour average, no limit in " + limits.Name, average, null, Missing, limits.Whose,
            LookUp));

    /// <summary>A part of the air against a limit.</summary>
    public static LimitComparison Compare(string subject, double value, double? limit, Source source, string whose, string? remedy) =>
        new(subject, value, limit, LimitSense.AtMost, Measure.PartsPerMillion, source, remedy) { Digits = AirStudy.ScreeningDigits,
            Whose = whose };

    /// <summary>The cautions of a study: first those that its numbers call for.</summary>
    public static IReadOnlyList<Caution> Cautions(AirStudy study)
    {
        bool near = study.FlammableDesignLine.Outcome == ComparisonOutcome.Beyond || study.FlammableLimit.IsAboutAtLimit;
        return new ValueList<Caution>(
        [
            .. When(study.Changes == 0, Refinish.Cautions.NoAirflow),
            .. study.FlammableLimit.Outcome == ComparisonOutcome.Beyond
                ? [Refinish.Cautions.Flammable] : When(near, Refinish.Cautions.NearFlammable),
            .. When(study.Saturation.Any(one => one.Outcome == ComparisonOutcome.Beyond), Refinish.Cautions.BeyondSaturation),
            .. When(study.Exposure.Any(IsImmediatelyDangerous), Refinish.Cautions.ImmediatelyDangerous),
            .. When(
                !study.Flammability.IsWhole || study.Exposure.Any(one => one.Comparison.Outcome == ComparisonOutcome.CannotBeJudged),
                Refinish.Cautions.LimitUnknown),
            .. When(study.HoldsNonBurning, Refinish.Cautions.NonBurningVapour),
            .. When(study.NotGivenOff.Count > 0, Refinish.Cautions.StaysInFilm),
            .. Refinish.Cautions.ForSpraying,
        ]);
    }

    /// <summary>At the limit counts as dangerous, though a comparison calls it within.</summary>
    public static bool IsImmediatelyDangerous(ExposureComparison exposure) =>
        exposure.Limit?.Kind == ExposureLimitKind.Idlh && exposure.Comparison.Margin?.Si <= 0;

    /// <summary>
    /// For each solvent the lowest limit of a kind by volume; <see langword="null"/> where there is none, and infinite for water.
    /// </summary>
    public static double?[] Lowest(Solvent[] solvents, LimitSet set, ExposureLimitKind kind)
    {
        ExposureLimit[] limits = [.. set.Exposure.Where(limit => limit.Kind == kind)];
        return [.. solvents.Select(solvent => solvent.IsWater ? double.PositiveInfinity : limits
            .Where(limit => string.Equals(limit.CasNumber, solvent.CasNumber, StringComparison.Ordinal))
            .Min(limit => limit.VolumeFractionOf(solvent.MolarMass)?.DecimalFractions))];
    }

    private static Caution[] When(bool holds, Caution caution) => holds ? [caution] : [];

    private static LimitComparison Compare(SubstanceAir air, ExposureLimit limit)
    {
        (string what, double value) = limit.Kind switch
        {
            ExposureLimitKind.Twa8h => ("8-hour average", air.EightHourAverage.DecimalFractions),
            ExposureLimitKind.Stel15min => ("15-minute average", air.FifteenMinuteAverage.DecimalFractions),
            _ => ("peak", air.Peak.DecimalFractions),
        };
        string kind = limit.Kind switch
        {
            ExposureLimitKind.Ceiling => ", ceiling",
            ExposureLimitKind.BriefPeak => ", brief peak above the ceiling",
            _ => string.Empty,
        };
        double? fraction = limit.VolumeFractionOf(air.Solvent.MolarMass)?.DecimalFractions;
        return Compare(
            air.Solvent.Name + ", " + what + ", " + limit.Authority + kind, value, fraction, limit.Source, limit.Whose,
            value > fraction ? "breathing protection by the employer's programme; less solvent at a time; another product" : null);
    }
}

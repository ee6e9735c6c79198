using System;
using System.Collections.Generic;
using Refinish.Coatings;

namespace Refinish.Air;

/// <summary>Substances in the air held against the limits, and what has to be said with them.</summary>
internal static class ExposureComparisons
{
    internal const string LookUp = "take a limit from the safety data sheet, section 8, and hand it in";

    public static Source Missing { get; } = Source.Supplied("no eight-hour limit in the set that was chosen");

    public static string NoneIn(LimitSet limits) => "no limit in " + limits.Name;

    /// <summary>
    /// Each substance but water against each of its limits; one that cannot be judged where there is no eight-hour limit.
    /// </summary>
    public static IReadOnlyList<ExposureComparison> Of(IReadOnlyList<SubstanceAir> substances, LimitSet limits)
    {
        List<ExposureComparison> comparisons = [];
        foreach (SubstanceAir air in substances)
        {
            if (air.Solvent.IsWater)
            {
                continue;
            }

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
                comparisons.Add(new ExposureComparison(air.Solvent, null, new LimitComparison(
                    air.Solvent.Name + ", 8-hour average, " + NoneIn(limits),
                    air.EightHourAverage.DecimalFractions,
                    null,
                    LimitSense.AtMost,
                    Measure.PartsPerMillion,
                    Missing,
                    LookUp)
                {
                    Digits = AirStudy.ScreeningDigits,
                    Whose = limits.Whose,
                }));
            }
        }

        return new ValueList<ExposureComparison>(comparisons);
    }

    /// <summary>The cautions of a study: first those that its numbers call for.</summary>
    public static IReadOnlyList<Caution> Cautions(AirStudy study)
    {
        List<Caution> cautions = [];
        if (study.Changes == 0)
        {
            cautions.Add(Refinish.Cautions.NoAirflow);
        }

        if (study.FlammableLimit.Outcome == ComparisonOutcome.Beyond)
        {
            cautions.Add(Refinish.Cautions.Flammable);
        }
        else if (study.FlammableDesignLine.Outcome == ComparisonOutcome.Beyond || study.FlammableLimit.IsAboutAtLimit)
        {
            cautions.Add(Refinish.Cautions.NearFlammable);
        }

        foreach (LimitComparison saturation in study.Saturation)
        {
            if (saturation.Outcome == ComparisonOutcome.Beyond)
            {
                cautions.Add(Refinish.Cautions.BeyondSaturation);
                break;
            }
        }

        bool immediate = false;
        bool unknown = !study.Flammability.IsWhole;
        foreach (ExposureComparison exposure in study.Exposure)
        {
            // At the limit counts as dangerous, though a comparison calls it within.
            immediate |= exposure.Limit?.Kind == ExposureLimitKind.Idlh && exposure.Comparison.Margin <= 0;
            unknown |= exposure.Comparison.Outcome == ComparisonOutcome.CannotBeJudged;
        }

        if (immediate)
        {
            cautions.Add(Refinish.Cautions.ImmediatelyDangerous);
        }

        if (unknown)
        {
            cautions.Add(Refinish.Cautions.LimitUnknown);
        }

        if (study.HoldsNonBurning)
        {
            cautions.Add(Refinish.Cautions.NonBurningVapour);
        }

        if (study.NotGivenOff.Count > 0)
        {
            cautions.Add(Refinish.Cautions.StaysInFilm);
        }

        cautions.AddRange(Refinish.Cautions.ForSpraying);
        return new ValueList<Caution>(cautions);
    }

    /// <summary>
    /// For each solvent the lowest limit of a kind by volume; <see langword="null"/> where there is none, and infinite for water.
    /// </summary>
    public static double?[] Lowest(Solvent[] solvents, LimitSet set, ExposureLimitKind kind)
    {
        IReadOnlyList<ExposureLimit> limits = set.Exposure;
        double?[] lowest = new double?[solvents.Length];
        for (int j = 0; j < solvents.Length; j++)
        {
            lowest[j] = solvents[j].IsWater ? double.PositiveInfinity : null;
        }

        for (int i = 0; i < limits.Count; i++)
        {
            ExposureLimit limit = limits[i];
            if (limit.Kind != kind)
            {
                continue;
            }

            for (int j = 0; j < solvents.Length; j++)
            {
                if (!solvents[j].IsWater && string.Equals(limit.CasNumber, solvents[j].CasNumber, StringComparison.Ordinal)
                    && limit.VolumeFractionOf(solvents[j].MolarMass)?.DecimalFractions is double fraction
                    && !(lowest[j] <= fraction))
                {
                    lowest[j] = fraction;
                }
            }
        }

        return lowest;
    }

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
        return new LimitComparison(
            air.Solvent.Name + ", " + what + ", " + limit.Authority + kind,
            value,
            fraction,
            LimitSense.AtMost,
            Measure.PartsPerMillion,
            limit.Source,
            value > fraction ? "breathing protection by the employer's programme; less solvent at a time; another product" : null)
        {
            Digits = AirStudy.ScreeningDigits,
            Whose = limit.Whose,
        };
    }
}

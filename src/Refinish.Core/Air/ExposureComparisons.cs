using System;
using System.Collections.Generic;
using Refinish.Coatings;

namespace Refinish.Air;

/// <summary>A study's substances held against the limits, and what has to be said with them.</summary>
internal static class ExposureComparisons
{
    private static readonly Source None = Source.Supplied("no limit among those given");

    public static IReadOnlyList<LimitComparison> Of(AirStudy study)
    {
        List<LimitComparison> comparisons = [];
        foreach (SubstanceAir air in study.Substances)
        {
            bool average = false;
            foreach (ExposureLimit limit in study.Limits)
            {
                if (string.Equals(limit.CasNumber, air.Solvent.CasNumber, StringComparison.Ordinal))
                {
                    comparisons.Add(Compare(air, limit));
                    average |= limit.Kind == ExposureLimitKind.Twa8h && limit.VolumeFractionOf(air.Solvent.MolarMass) is not null;
                }
            }

            if (!average)
            {
                comparisons.Add(new LimitComparison(
                    air.Solvent.Name + ", 8-hour average, no limit known",
                    air.EightHourAverage.DecimalFractions,
                    null,
                    LimitSense.AtMost,
                    Measure.PartsPerMillion,
                    None,
                    "take a limit from the safety data sheet, section 8, and hand it in"));
            }
        }

        return new ValueList<LimitComparison>(comparisons);
    }

    public static IReadOnlyList<Caution> Cautions(AirStudy study)
    {
        List<Caution> cautions = [];
        if (study.Changes == 0)
        {
            cautions.Add(AirCautions.NoAirflow);
        }

        if (study.FlammableLimit.Outcome == ComparisonOutcome.Beyond)
        {
            cautions.Add(AirCautions.Flammable);
        }

        bool immediate = false;
        bool unknown = !study.Flammability.IsWhole;
        foreach (LimitComparison comparison in Of(study))
        {
            // At the limit counts as dangerous, though a comparison calls it within.
            immediate |= comparison.Subject.EndsWith(ImmediatelyDangerous, StringComparison.Ordinal) && comparison.Margin <= 0;
            unknown |= comparison.Outcome == ComparisonOutcome.CannotBeJudged;
        }

        if (immediate)
        {
            cautions.Add(AirCautions.ImmediatelyDangerous);
        }

        if (unknown)
        {
            cautions.Add(AirCautions.LimitUnknown);
        }

        cautions.AddRange(AirCautions.ForSpraying);
        return new ValueList<Caution>(cautions);
    }

    private const string ImmediatelyDangerous = ", immediately dangerous";

    private static LimitComparison Compare(SubstanceAir air, ExposureLimit limit)
    {
        (string what, double value) = limit.Kind switch
        {
            ExposureLimitKind.Twa8h => (", 8-hour average", air.EightHourAverage.DecimalFractions),
            ExposureLimitKind.Stel15min => (", 15-minute average", air.FifteenMinuteAverage.DecimalFractions),
            ExposureLimitKind.Ceiling => (", peak", air.Peak.DecimalFractions),
            _ => (", peak", air.Peak.DecimalFractions),
        };
        double? fraction = limit.VolumeFractionOf(air.Solvent.MolarMass)?.DecimalFractions;
        return new LimitComparison(
            air.Solvent.Name + what + ", " + limit.Authority + " (" + limit.Jurisdiction + ", " + limit.AsOf + ")"
                + (limit.Kind == ExposureLimitKind.Ceiling ? ", ceiling" : limit.Kind == ExposureLimitKind.Idlh ? ImmediatelyDangerous : string.Empty),
            value,
            fraction,
            LimitSense.AtMost,
            Measure.PartsPerMillion,
            limit.Source,
            value > fraction ? "breathing protection by the employer's programme; less solvent at a time; another product" : null);
    }
}

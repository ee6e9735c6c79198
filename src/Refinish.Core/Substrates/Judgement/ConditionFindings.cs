using System.Collections.Generic;
using System.Linq;

namespace Refinish.Substrates;

/// <summary>What a rule of a caller's own finds in a survey.</summary>
internal static class ConditionFindings
{
    public static IEnumerable<Finding> Of(SurveyCondition when, Survey survey, Source source)
    {
        if ((when.Materials.Count > 0 && !survey.Material.IsNamedIn(when.Materials))
            || (when.Surfaces.Count > 0 && !when.Surfaces.Contains(survey.Material.Surface))
            || !when.Facts.All(fact => IsSo(survey, fact))
            || !when.OwnFacts.All(fact => survey.OwnFacts.Contains(fact))
            || survey.YearBuilt >= when.BuiltBefore)
        {
            return [];
        }

        LimitComparison? age = when.OlderThanYears is int years
            ? new("age of the fixture in years", survey.FixtureAge, years, LimitSense.AtMost, Measure.Number, source) : null;
        if (age?.Outcome == ComparisonOutcome.Within)
        {
            return [];
        }

        bool isOpen = age?.Outcome == ComparisonOutcome.CannotBeJudged || (when.BuiltBefore is not null && survey.YearBuilt is null);
        return when.Defect is null
            ? [new Finding(system => Words(when, survey, age, system), age) { IsOpen = isOpen }]
            : Defects(when, survey, source).Select(found => isOpen ? found.Open() : found);
    }

    private static List<Finding> Defects(SurveyCondition when, Survey survey, Source source)
    {
        List<Finding> found = [];
        int number = 0;
        foreach (Defect defect in survey.Defects.Where(defect => defect.Kind == when.Defect))
        {
            LimitComparison[] limits = [.. Limits(when, defect, source)];
            if (limits.Any(limit => limit.Outcome == ComparisonOutcome.Within))
            {
                continue;
            }

            number += defect.Number;
            bool isOpen = limits.Any(limit => limit.Outcome == ComparisonOutcome.CannotBeJudged);
            found.Add(new Finding(
                system => string.Join("; ", limits.Select(limit => limit.Sentence(system)).Prepend(defect.Describe(system))),
                limits.FirstOrDefault())
            {
                IsOpen = isOpen,
            });
        }

        if (when.MoreThan is not int most)
        {
            return found;
        }

        LimitComparison count = new("number of " + when.Defect, number, most, LimitSense.AtMost, Measure.Number, source);
        return count.Outcome != ComparisonOutcome.Beyond
            ? [] : [Finding.About(count) is Finding all && found.Exists(one => one.IsOpen) ? all.Open() : Finding.About(count)];
    }

    private static IEnumerable<LimitComparison> Limits(SurveyCondition when, Defect defect, Source source)
    {
        if (when.Larger is double larger)
        {
            yield return new("its size", defect.Size, larger, LimitSense.AtMost, Measure.Length, source);
        }

        if (when.Deeper is double deeper)
        {
            yield return new("its depth", defect.MeasuredDepth, deeper, LimitSense.AtMost, Measure.Length, source);
        }

        if (when.SquareMetres is double area)
        {
            yield return new("its area", defect.FlatArea, area, LimitSense.AtMost, Measure.Area, source);
        }
    }

    // What was found, as far as the condition speaks of it.
    private static string Words(SurveyCondition when, Survey survey, LimitComparison? age, DisplayUnits system)
    {
        List<string> words = [];
        if (when.Materials.Count + when.Surfaces.Count > 0)
        {
            words.Add(survey.Material.Name);
        }

        words.AddRange(when.Facts.Select(Spoken));
        words.AddRange(when.OwnFacts);
        if (when.BuiltBefore is int year)
        {
            string limit = Figures.Fixed(year, 0);
            words.Add(survey.YearBuilt is int built
                ? "built in " + Figures.Fixed(built, 0) + ", before " + limit
                : "year of building not known, so that it may be before " + limit);
        }

        if (age is not null)
        {
            words.Add(age.Sentence(system));
        }

        return string.Join("; ", words);
    }

    private static string Spoken(SurveyFact fact)
    {
        string name = fact.ToString("G");
        return string.Concat(name.Select((letter, i) =>
            char.IsUpper(letter) ? (i > 0 ? " " : string.Empty) + char.ToLowerInvariant(letter) : letter.ToString()));
    }

    private static bool IsSo(Survey survey, SurveyFact fact) => fact switch
    {
        SurveyFact.PreviouslyRefinished => survey.PreviouslyRefinished,
        SurveyFact.LeadSuspected => survey.LeadSuspected,
        SurveyFact.CertifiedForLead => survey.CertifiedForLead,
        SurveyFact.AsbestosSuspected => survey.AsbestosSuspected,
        SurveyFact.CertifiedForAsbestos => survey.CertifiedForAsbestos,
        SurveyFact.NoPermittedStrippingRoute => survey.NoPermittedStrippingRoute,
        SurveyFact.LeakCannotBeStopped => survey.LeakCannotBeStopped,
        SurveyFact.SubstrateWet => survey.SubstrateWet,
        SurveyFact.SwollenOrDelaminated => survey.SwollenOrDelaminated,
        SurveyFact.StainsBleed => survey.StainsBleed,
        SurveyFact.CuttingOrFoodContactExpected => survey.CuttingOrFoodContactExpected,
        SurveyFact.NoExhaustPath => survey.NoExhaustPath,
        SurveyFact.FlameCannotBeShutOff => survey.FlameCannotBeShutOff,
        SurveyFact.SensitiveOccupantsCannotLeave => survey.SensitiveOccupantsCannotLeave, _ => survey.CureTimeRefused, };
}

using System.Collections.Generic;
using System.Linq;

namespace Refinish.Substrates;

/// <summary>Which cautions a surface brings while it is judged and prepared. Made from the survey, never from the verdict.</summary>
internal static class SurveyCautions
{
    /// <summary>What goes with a filler; every caution when nobody says what it is.</summary>
    public static IReadOnlyList<Caution> Filler(FillerChemistry chemistry) => new ValueList<Caution>(chemistry switch
    {
        FillerChemistry.Polyester => [Cautions.Peroxide, Cautions.Styrene, Cautions.Dust],
        FillerChemistry.Epoxy => [Cautions.EpoxyHardener, Cautions.Dust],
        _ => [Cautions.Peroxide, Cautions.EpoxyHardener, Cautions.Styrene, Cautions.Dust],
    });

    /// <summary>What was found, whatever is done about it.</summary>
    public static IEnumerable<Caution> Found(Survey survey)
    {
        if (survey.LeadTest == LeadTest.Positive)
        {
            yield return Cautions.LeadFound;
        }
        else if (SurveyRules.LeadIsOpen(survey))
        {
            yield return Cautions.LeadUntested;
        }

        if (survey.AsbestosTest == AsbestosTest.Positive)
        {
            yield return Cautions.AsbestosFound;
        }
        else if (AsbestosRules.IsOpen(survey))
        {
            yield return Cautions.AsbestosUntested;
        }

        if (survey.Defects.Any(defect => defect is FlexingFloor or Perforation or Crack { MovesUnderLoad: true }))
        {
            yield return Cautions.FixtureGivesWay;
        }

        if (survey.SubstrateWet || survey.LeakCannotBeStopped || survey.SwollenOrDelaminated
            || survey.Defects.Any(defect => defect is LooseTiles or Liner { State: LinerState.WaterBehind }))
        {
            yield return Cautions.WaterBehind;
        }

        foreach (Caution caution in survey.Defects.SelectMany(defect => defect.Brings).Distinct())
        {
            yield return caution;
        }
    }

    /// <summary>What was found, and what the preparation of such a surface may bring before anybody planned it.</summary>
    public static IEnumerable<Caution> Of(Survey survey)
    {
        foreach (Caution caution in Found(survey))
        {
            yield return caution;
        }

        yield return Cautions.Dust;
        if (survey.Material.MayBeEtched)
        {
            yield return Cautions.Etchants;
        }

        if (survey.PreviouslyRefinished || survey.Defects.Any(defect => defect is PeelingCoat))
        {
            yield return Cautions.Strippers;
        }
    }
}

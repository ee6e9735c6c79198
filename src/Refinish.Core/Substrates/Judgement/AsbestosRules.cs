using System.Collections.Generic;
using System.Linq;

namespace Refinish.Substrates;

/// <summary>Whether asbestos is in question, and what the work found necessary would disturb.</summary>
/// <remarks>
/// Renewing the surface itself (clearing, cleaning, etching, sanding, filling, coating, drain trim fitted from above) leaves adhesive,
/// board, flooring and what is under a tub alone. What disturbs them is listed in <see cref="Disturbing"/>.
/// </remarks>
internal static class AsbestosRules
{
    // Insulation, sprayed or trowelled surfacing, vinyl and asphalt flooring are presumed to hold asbestos up to this year. Tile adhesive,
    // backing board and pads are not presumed by the text, but fall under it where somebody knows or could have known.
    private const int LastPresumedYear = 1980;

    public static readonly Source Presumed = Source.Published(
        "29 CFR 1926.1101",
        "(b), (k)(1): presumed in buildings of 1980 and before, other materials where known or to be known; read in reprints. "
            + "What the trade disturbs is common practice");

    public static bool IsOpen(Survey survey) =>
        survey.AsbestosTest == AsbestosTest.NotTested && (survey.AsbestosSuspected || !(survey.YearBuilt > LastPresumedYear));

    public static string WhyOpen(Survey survey) => survey.YearBuilt switch
    {
        null => "year of building not known and not tested for asbestos",
        <= LastPresumedYear => "built in 1980 or before and not tested for asbestos", _ => "asbestos is suspected and not tested", };

    /// <summary>What would be disturbed, one entry for each finding that calls for it; empty where only the surface is worked on.</summary>
    public static IReadOnlyList<string> Disturbing(Survey survey, SurveyPolicy policy)
    {
        List<string> found = [];
        void When(bool applies, string words)
        {
            if (applies)
            {
                found.Add(words);
            }
        }

        When(survey.Defects.Any(defect => defect is LooseTiles), "fixing loose tiles loosens old adhesive and backing board");
        When(survey.Defects.Any(defect => defect is GroutFailure), "raking out grout reaches old adhesive and backing board");
        When(survey.Defects.Any(defect => defect is Liner { ComesOff: true }), "taking off a liner loosens old adhesive and what holds it");
        When(survey.SubstrateWet, "drying or replacing a wet wall opens backing board and adhesive");
        When(survey.SwollenOrDelaminated, "replacing board or laminate loosens adhesive and backing");
        When(
            survey.Defects.OfType<FlexingFloor>().Any(floor => floor.Deflection > policy.MaximumFloorDeflection),
            "supporting the floor from below reaches pads and coatings under the fixture and the flooring");
        When(
            survey.Defects.Any(defect => defect is Crack { MovesUnderLoad: true } or Perforation),
            "mending from behind reaches pads and coatings under the fixture");
        When(survey.LeakCannotBeStopped, "reaching the plumbing opens walls, floors and pipe insulation");
        return found;
    }

    public static IEnumerable<Finding> Found(Survey survey, SurveyPolicy policy, bool certified) =>
        survey.AsbestosTest == AsbestosTest.Positive && survey.CertifiedForAsbestos == certified
            ? Disturbing(survey, policy).Select(words => (Finding)("asbestos was found, and " + words)) : [];

    public static IEnumerable<Finding> LeftAlone(Survey survey, SurveyPolicy policy) =>
        survey.AsbestosTest == AsbestosTest.Positive && Disturbing(survey, policy).Count == 0
            ? ["asbestos was found; the work on the surface leaves it alone"] : [];

    public static IEnumerable<Finding> Untested(Survey survey, SurveyPolicy policy) =>
        IsOpen(survey) ? Disturbing(survey, policy).Select(words => (Finding)(WhyOpen(survey) + ", and " + words)) : [];

    public static IEnumerable<Finding> UntestedAlone(Survey survey, SurveyPolicy policy) =>
        IsOpen(survey) && Disturbing(survey, policy).Count == 0 ? [WhyOpen(survey)] : [];
}

using System.Collections.Generic;
using System.Linq;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>What becomes of an earlier coating: nothing there, kept and abraded, or stripped.</summary>
public sealed record OldCoatDecision
{
    private readonly AdhesionGrade least;

    internal OldCoatDecision(Survey survey, SurveyPolicy policy)
    {
        least = policy.MinimumAdhesion;
        IsThere = survey.PreviouslyRefinished || survey.OldCoatAdhesion is not null || survey.Defects.Any(defect => defect is PeelingCoat);
        ComesOff = survey.OldCoatAdhesion < least || (survey.OldCoatAdhesion is null && survey.Defects.OfType<PeelingCoat>().Any(coat => coat.Adhesion < least));
        IsTested = !IsThere || survey.OldCoatAdhesion is not null || survey.Defects.OfType<PeelingCoat>().Any(coat => coat.Adhesion is not null);
    }

    /// <summary>Whether there is an earlier coating.</summary>
    public bool IsThere { get; }

    /// <summary>Whether all of it comes off, because it holds less than the policy keeps and no grade says that the rest of it holds.</summary>
    public bool ComesOff { get; }

    /// <summary>Whether it stays under the new coat, loose patches apart.</summary>
    public bool IsKept => IsThere && !ComesOff;

    /// <summary>Whether its adhesion was tested; an untested coat is planned as kept, under the condition of a test.</summary>
    public bool IsTested { get; }

    /// <summary>What becomes of it.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => !IsThere ? "no old coat" : ComesOff ? "the old coat comes off" : IsTested ? "the old coat is kept" : "the old coat is kept if it passes the tape test";

    /// <summary>The defects that are worked on: one strip of the whole instead of patches where all of it comes off.</summary>
    internal IEnumerable<Defect> Effective(Survey survey, Area whole) => ComesOff
        ? survey.Defects.Where(defect => defect is not PeelingCoat).Append(new PeelingCoat(whole, survey.OldCoatAdhesion ?? survey.Defects.OfType<PeelingCoat>().Min(coat => coat.Adhesion)))
        : survey.Defects;
}

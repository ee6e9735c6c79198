using System;
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
        ComesOff = survey.OldCoatAdhesion < least || survey.Defects.OfType<PeelingCoat>().Any(coat => coat.Adhesion < least);
        IsTested = !IsThere || survey.OldCoatAdhesion is not null || survey.Defects.OfType<PeelingCoat>().Any(coat => coat.Adhesion is not null);
    }

    /// <summary>Whether there is an earlier coating.</summary>
    public bool IsThere { get; }

    /// <summary>
    /// Whether all of it comes off, because somewhere it was found to hold less than the policy keeps. Where a part of it is to be kept all
    /// the same, that part is an entry of its own, by zone or share.
    /// </summary>
    public bool ComesOff { get; }

    /// <summary>Whether it stays under the new coat, loose patches apart.</summary>
    public bool IsKept => IsThere && !ComesOff;

    /// <summary>Whether its adhesion was tested; an untested coat is planned as kept, under the condition of a test.</summary>
    public bool IsTested { get; }

    /// <summary>What becomes of it.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => !IsThere ? "no old coat" : ComesOff ? "the old coat comes off" : IsTested ? "the old coat is kept" : "the old coat is kept if it passes the tape test";

    /// <summary>The defects that are worked on: a strip of the whole instead of patches where all of it comes off.</summary>
    internal IEnumerable<Defect> Effective(Survey survey, Area whole)
    {
        if (!ComesOff)
        {
            return survey.Defects;
        }

        // One defect holds at most 100 m²; what is larger is stripped in equal parts.
        int parts = (int)Math.Ceiling(whole.SquareMeters / 100);
        AdhesionGrade? worst = survey.Defects.OfType<PeelingCoat>().Select(coat => coat.Adhesion).Append(survey.OldCoatAdhesion).Min();
        return survey.Defects.Where(defect => defect is not PeelingCoat)
            .Concat(Enumerable.Repeat(new PeelingCoat(whole / parts, worst), parts));
    }
}

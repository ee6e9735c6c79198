using System.Collections.Generic;
using System.Linq;

namespace Refinish.Jobs;

/// <summary>Objections, gaps, conditions and cautions that came, went or say something else.</summary>
internal static class ChangesOfRemarks
{
    public static IEnumerable<PlanChange> Of(PlanFigures before, PlanFigures after) =>
        Of("objection/", ChangeSubject.Objection, before, before.Objections, after, after.Objections)
            .Concat(Of("gap/", ChangeSubject.PriceGap, before, before.Gaps, after, after.Gaps))
            .Concat(Of("condition/", ChangeSubject.Condition, before, before.Conditions, after, after.Conditions))
            .Concat(Of("caution/", ChangeSubject.Caution, before, before.Cautions, after, after.Cautions));

    private static IEnumerable<PlanChange> Of(
        string prefix, ChangeSubject subject, PlanFigures before, IReadOnlyList<PlanRemark> was, PlanFigures after,
            IReadOnlyList<PlanRemark> now)
    {
        // Stored sentences stand in the units of their document; two documents in different units say the same in other numbers.
        bool comparable = before.Units is null || after.Units is null || before.Units == after.Units;
        DisplayUnits units = before.Units ?? after.Units ?? DisplayUnits.Si;
        return new Pairs<PlanRemark>(was, now, remark => remark.Id).All
            .Where(pair => pair.Kind != ChangeKind.Changed || (comparable && pair.Before!.Sentence(units) != pair.After!.Sentence(units)))
            .Select(pair => new PlanChange(prefix + pair.Key, subject, pair.Kind)
            {
                About = (pair.After ?? pair.Before)!.About,
                RemarkBefore = pair.Before,
                RemarkAfter = pair.After,
            });
    }
}

using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Fixtures;

namespace Refinish.Jobs;

/// <summary>
/// What a customer or the crew has to know of a fixture's kind before the price is agreed, and of two finishes in one room.
/// </summary>
internal static class FixtureConditions
{
    private static readonly Source Overspray = Source.CommonPractice("overspray of one finish on another");
    private static readonly Source Customary = Source.CommonPractice("agreed before the price is told");

    public static IEnumerable<PlanCondition> Of(JobPlan plan) => plan.Planned.SelectMany(Kinds).Concat(Finishes(plan));

    private static IEnumerable<PlanCondition> Kinds(Procedure procedure)
    {
        if (procedure.Fixture.Fixture is not ComposedFixture made)
        {
            yield break;
        }

        if (made.Kind.NotCoated.Count > 0)
        {
            yield return new PlanCondition(
                procedure.Fixture.Id, "not-coated", _ =>
                    string.Join("; ", made.Kind.NotCoated), "agree on it with the customer", made.Kind.NotCoated[0].Source,
                Audience.Crew | Audience.Customer);
        }

        if (made.Count > 1)
        {
            yield return new PlanCondition(
                procedure.Fixture.Id, "pieces",
                _ => "time for hardware, masking and refitting is that of one fixture and not of " + Figures.Fixed(made.Count, 0)
                    + " pieces, and both faces are sprayed in one go",
                "add the time for each piece, and for turning those that lie flat, as an operation of your own", Customary, Audience.Crew);
        }
    }

    private static IEnumerable<PlanCondition> Finishes(JobPlan plan)
    {
        foreach (IGrouping<string, Procedure> room in plan.Planned.GroupBy(procedure => procedure.Fixture.Room, StringComparer.Ordinal))
        {
            string[] last =
            [
                .. room.Where(procedure => procedure.System.Layers.Count > 0)
                    .Select(procedure =>
                        procedure.System.Layers[procedure.System.Layers.Count - 1].Product.Name).Distinct(StringComparer.Ordinal),
            ];
            if (last.Length > 1)
            {
                yield return new PlanCondition(
                    room.Key, "finishes", _ => string.Join(" and ", last) + " are sprayed in one room: the spray of one lands on the other",
                    "mask one fixture from the other before each change, and where they touch let the first dry until it bears tape: the plan "
                        + "has time for neither; add it as an operation of your own",
                    Overspray, Audience.Crew);
            }
        }
    }
}

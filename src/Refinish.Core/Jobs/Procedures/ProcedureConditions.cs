using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;
using Refinish.Substrates;

namespace Refinish.Jobs;

/// <summary>What has to be done or found out before one fixture may be coated.</summary>
internal static class ProcedureConditions
{
    private static readonly Source NotGiven = Source.Derived("missing data");

    // In the order in which the calculation lists its bands.
    private static readonly string[] BandCodes = ["grains-embedded-least", "grains-embedded-most", "grains-cover-least", "grains-cover-most"];

    public static IEnumerable<PlanCondition> Of(Procedure procedure)
    {
        string id = procedure.Fixture.Id;
        Dictionary<string, int> found = new(StringComparer.Ordinal);
        foreach (VerdictReason reason in procedure.Verdict.Reasons.Where(reason => reason.Effect == Suitability.SuitableWithConditions))
        {
            found.TryGetValue(reason.RuleCode, out int before);
            found[reason.RuleCode] = before + 1;
            yield return new PlanCondition(id, reason, before + 1);
        }

        if (BondsBy(procedure) is FixtureMaterial like)
        {
            FixtureMaterial under = procedure.Surface;
            yield return new PlanCondition(
                id, "bonds-like", _ =>
                    under.Name + " is taken to bond like " + like.Name + ": system and promoter name that one, not this one",
                "coat a test spot and tape test it before the whole is coated", under.Source);
        }

        if (procedure.Hiding is { IsJudged: false } hiding)
        {
            yield return new PlanCondition(
                id, "hiding", _ => "whether the coats hide the old colour " + hiding,
                "spray a test panel over the old colour, or take the hiding figures from the product's sheet or a drawdown", NotGiven);
        }

        for (int i = 0; i < (procedure.SlipFloor?.Bands.Count ?? 0); i++)
        {
            LimitComparison band = procedure.SlipFloor!.Bands[i];
            if (band.Outcome == ComparisonOutcome.Beyond)
            {
                yield return new PlanCondition(id, BandCodes[i], band.Sentence, band.Remedy ?? string.Empty, band.Source, Audience.Crew);
            }
        }
    }

    // What a material is taken to bond like, where nothing of the system names the material itself.
    private static FixtureMaterial? BondsBy(Procedure procedure)
    {
        FixtureMaterial under = procedure.Surface;
        bool named = under.IsNamedIn(procedure.System.Layers[0].Product.Materials)
            && (procedure.Promoter is null || under.IsNamedIn(procedure.Promoter.Materials));
        return named ? null : under.BondsLike;
    }
}

using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;
using Refinish.Substrates;

namespace Refinish.Json.Shapes;

/// <summary>Rules of the survey that a shop adds, strikes or changes.</summary>
internal static class RuleShapes
{
    /// <summary>Without an effect the rule is struck.</summary>
    public static ObjectShape<RuleChange> Change { get; } = new Fields<RuleChange>("ruleChange")
        .With("code", Scalars.Text, change => change.Code, out Slot<string> changed)
        .WithOr("effect", new WordShape<Suitability>().OrNull(), change => change.Effect, null, out Slot<Suitability?> instead)
        .With("source", CommonShapes.Source, change => change.Source, out Slot<Source> by)
        .Making(v => instead(v) is Suitability effect
            ? RuleChange.ToEffect(changed(v), effect, by(v)) : RuleChange.Strike(changed(v), by(v)));

    public static ObjectShape<SurveyCondition> Condition { get; } = new Fields<SurveyCondition>("surveyCondition")
        .Optional("materials", CommonShapes.List(MaterialShapes.Material), when => when.Materials,
            (when, materials) => when with { Materials = materials })
        .Optional("surfaces", CommonShapes.List(new WordShape<MaterialSurface>()), when => when.Surfaces,
            (when, surfaces) => when with { Surfaces = surfaces })
        .Optional("facts", CommonShapes.List(new WordShape<SurveyFact>()), when => when.Facts, (when, facts) => when with { Facts = facts })
        .Optional("ownFacts", CommonShapes.List(Scalars.Text), when => when.OwnFacts, (when, facts) => when with { OwnFacts = facts })
        .Maybe("builtBefore", Scalars.Count, when => when.BuiltBefore, (when, year) => when with { BuiltBefore = year })
        .Maybe("olderThanYears", Scalars.Count, when => when.OlderThanYears, (when, years) => when with { OlderThanYears = years })
        .MaybeOf("defect", DefectKindShape.Kind, when => when.Defect, (when, kind) => when with { Defect = kind })
        .Maybe("moreThan", Scalars.Count, when => when.MoreThan, (when, count) => when with { MoreThan = count })
        .Maybe("largerThan", Quantities.Tape, when => when.LargerThan, (when, size) => when with { LargerThan = size })
        .Maybe("deeperThan", Quantities.Tape, when => when.DeeperThan, (when, depth) => when with { DeeperThan = depth })
        .Maybe("widerThan", Quantities.SmallArea, when => when.WiderThan, (when, area) => when with { WiderThan = area })
        .Making(_ => new SurveyCondition());

    public static ObjectShape<SurveyRule> Rule { get; } = new Fields<SurveyRule>("surveyRule")
        .With("code", Scalars.Text, Storable, out Slot<string> code)
        .With("title", Scalars.Text, rule => rule.Title, out Slot<string> title)
        .With("effect", new WordShape<Suitability>(), rule => rule.Effect, out Slot<Suitability> effect)
        .With("remedy", Scalars.Text, rule => rule.Remedy, out Slot<string> remedy)
        .With("repeatTest", Scalars.Text, rule => rule.RepeatTest, out Slot<string> repeatTest)
        .With("source", CommonShapes.Source, rule => rule.Source, out Slot<Source> source)
        .With("when", Condition, rule => rule.When!, out Slot<SurveyCondition> when)
        .Optional("concerns", CommonShapes.Audiences, rule => CommonShapes.Concerned(rule.Concerns),
            (rule, concerns) => rule.Concerning(concerns.Aggregate(Audience.None, (all, one) => all | one)))
        .MakingTogether(
            () => new SurveyRule("stand-in", "stand-in", Suitability.Suitable, "stand-in", "stand-in", Source.Invented("stand-in"),
                new SurveyCondition { OwnFacts = ["stand-in"] }),
            v => new SurveyRule(code(v), title(v), effect(v), remedy(v), repeatTest(v), source(v), when(v)));

    private static string Storable(SurveyRule rule) => rule.When is not null
        ? rule.Code
        : throw new NotSupportedException("The rule \"" + rule
            + "\" applies by a function, which has no form in JSON; give it a condition, or add "
            + "it again after reading.");
}

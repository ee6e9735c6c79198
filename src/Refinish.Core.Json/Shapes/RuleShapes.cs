using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;
using Refinish.Substrates;
using static Refinish.Json.Shapes.Quantities;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>Rules of the survey that a shop adds, strikes or changes.</summary>
internal static class RuleShapes
{
    /// <summary>Without an effect the rule is struck.</summary>
    public static ObjectShape<RuleChange> Change { get; } = new Fields<RuleChange>("ruleChange")
        .With("code", Text, it => it.Code, out Slot<string> changed)
        .WithOr("effect", new WordShape<Suitability>().OrNull(), it => it.Effect, null, out Slot<Suitability?> instead)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> by)
        .Making(v => instead(v) is Suitability effect
            ? RuleChange.ToEffect(changed(v), effect, by(v)) : RuleChange.Strike(changed(v), by(v)));

    public static ObjectShape<SurveyCondition> Condition { get; } = new Fields<SurveyCondition>("surveyCondition")
        .Optional("materials", List(MaterialShapes.Material), it => it.Materials, (it, materials) => it with { Materials = materials })
        .Optional("surfaces", List(new WordShape<MaterialSurface>()), it => it.Surfaces, (it, surfaces) => it with { Surfaces = surfaces })
        .Optional("facts", List(new WordShape<SurveyFact>()), it => it.Facts, (it, facts) => it with { Facts = facts })
        .Optional("ownFacts", List(Text), it => it.OwnFacts, (it, facts) => it with { OwnFacts = facts })
        .Maybe("builtBefore", Count, it => it.BuiltBefore, (it, year) => it with { BuiltBefore = year })
        .Maybe("olderThanYears", Count, it => it.OlderThanYears, (it, years) => it with { OlderThanYears = years })
        .MaybeOf("defect", DefectKindShape.Kind, it => it.Defect, (it, kind) => it with { Defect = kind })
        .Maybe("moreThan", Count, it => it.MoreThan, (it, count) => it with { MoreThan = count })
        .Maybe("largerThan", Tape, it => it.LargerThan, (it, size) => it with { LargerThan = size })
        .Maybe("deeperThan", Tape, it => it.DeeperThan, (it, depth) => it with { DeeperThan = depth })
        .Maybe("widerThan", SmallArea, it => it.WiderThan, (it, area) => it with { WiderThan = area })
        .Making(_ => new SurveyCondition());

    public static ObjectShape<SurveyRule> Rule { get; } = new Fields<SurveyRule>("surveyRule")
        .With("code", Text, Storable, out Slot<string> code)
        .With("title", Text, it => it.Title, out Slot<string> title)
        .With("effect", new WordShape<Suitability>(), it => it.Effect, out Slot<Suitability> effect)
        .With("remedy", Text, it => it.Remedy, out Slot<string> remedy)
        .With("repeatTest", Text, it => it.RepeatTest, out Slot<string> repeatTest)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .With("when", Condition, it => it.When!, out Slot<SurveyCondition> when)
        .Optional("concerns", Audiences, it => Concerned(it.Concerns),
            (it, concerns) => it.Concerning(concerns.Aggregate(Audience.None, (all, one) => all | one)))
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

using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Substrates;

/// <summary>
/// The thresholds of the survey rules. Every default is invented or common practice and is meant to be replaced by the shop's own.
/// </summary>
public sealed record SurveyPolicy
{
    private static readonly Bounds Depths = Bounds.Positive(Measure.Length, 0.05);

    private readonly double deflection = 2e-3;
    private readonly double crazing = 0.20;
    private readonly double filler = 150e-6;
    private readonly double metalLoss = 1.5e-3;
    private readonly double perforation = 3e-3;

    /// <summary>
    /// Most that a floor may give under a standing person of about 80 kg; 2 mm unless given (invented); more than 0 and at most 50 mm.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length MaximumFloorDeflection { get => Length.FromMeters(deflection); init => deflection = Guard.Within(value, Depths); }

    /// <summary>
    /// Share of crazed surface beyond which the work is held; 20 % unless given (invented); more than 0 and at most 100 %.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio MaximumCrazing
    {
        get => Ratio.FromDecimalFractions(crazing);
        init => crazing = Guard.Within(value, Bounds.Positive(Measure.Percent, 1));
    }

    /// <summary>Least grade at which an old coat may stay; 4B unless given (common practice, no source).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public AdhesionGrade MinimumAdhesion { get; init => field = Guard.Defined(value); } = AdhesionGrade.Grade4B;

    /// <summary>Cleaning cycles after which a failed water-break test ends the attempt; 3 unless given (invented); 1 to 100.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int CleaningCycles { get; init => field = Guard.Count(value, 1, 100); } = 3;

    /// <summary>
    /// Mixed filler on one fixture beyond which the survey is looked at again; 150 mL unless given (invented); more than 0 and at most
    /// 100 L.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Volume UsualFiller
    {
        get => Volume.FromCubicMeters(filler);
        init => filler = Guard.Within(value, Bounds.Positive(Measure.Liquid, 0.1));
    }

    /// <summary>
    /// Depth in an enamelled fixture beyond which metal is lost; 1.5 mm unless given (from memory: enamel is 0.3 to 1 mm thick); more
    /// than 0 and at most 50 mm.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length MetalLossDepth { get => Length.FromMeters(metalLoss); init => metalLoss = Guard.Within(value, Depths); }

    /// <summary>
    /// Depth in enamelled steel beyond which the sheet may be through; 3 mm unless given (invented); more than 0 and at most 50 mm.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length SteelPerforationDepth { get => Length.FromMeters(perforation); init => perforation = Guard.Within(value, Depths); }

    /// <summary>How filler is reckoned for <see cref="UsualFiller"/>.</summary>
    public FillerPolicy Filler { get; init => field = Guard.NotNull(value); } = FillerPolicy.Generic;

    /// <summary>Ready rules that are struck or have another effect; none unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing, or a rule is changed twice.</exception>
    public IReadOnlyList<RuleChange> RuleChanges
    {
        get;
        init => field = Unique.Ids(Guard.List(value), change => change.Code, nameof(RuleChanges));
    }
    = ValueList<RuleChange>.Empty;

    /// <summary>Rules beside the ready ones; none unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing, is a ready rule, or has the code of another.</exception>
    public IReadOnlyList<SurveyRule> OwnRules
    {
        get;
        init
        {
            ValueList<SurveyRule> rules = Unique.Ids(Guard.List(value), rule => rule.Code, nameof(OwnRules));
            field = rules.FirstOrDefault(rule => rule.When is null && !rule.IsByFunction) is SurveyRule ready
                ? throw new ArgumentException("OwnRules holds the ready rule " + ready + ", which applies anyway.", nameof(OwnRules))
                : rules;
        }
    }
    = ValueList<SurveyRule>.Empty;

    /// <summary>The defaults: invented, to be replaced.</summary>
    public static SurveyPolicy Generic { get; } = new();

    internal RuleChange? ChangeOf(SurveyRule rule) => RuleChanges.FirstOrDefault(change => change.Code == rule.Code);

    /// <summary>Whether a rule reads a fact; a function may read any.</summary>
    internal bool Reads(Func<SurveyCondition, bool> fact) => OwnRules.Any(rule => rule.When is null || fact(rule.When));

    /// <summary>The two thresholds that are asked for most.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        "floor gives at most " + Measure.Length.Format(deflection) + ", old coat holds at least " + PeelingCoat.GradeName(MinimumAdhesion);
}

using System;
using System.Linq;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// An extra on one fixture: what it is called in the price book, and the work it adds. An option without work does not exist.
/// </summary>
/// <example><code>
/// FixtureOption grains = FixtureOption.SlipResistantFloor("slip-floor", GenericCatalogue.PolymerBeads, AreaDensity.FromGramsPerSquareMeter(20));
/// </code></example>
public sealed record FixtureOption
{
    private readonly double rate;
    private readonly double loss;

    private FixtureOption(FixtureOptionKind kind, string code)
    {
        Kind = kind;
        Code = Guard.Id(code);
    }

    /// <summary>What it adds.</summary>
    public FixtureOptionKind Kind { get; }

    /// <summary>Its code in the price book's options.</summary>
    public string Code { get; }

    /// <summary>How many, more than 0 and at most 1 000 000; 1 unless given. A slip-resistant floor is one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public decimal Quantity
    {
        get;
        init
        {
            Guard.Within((double)Money.Amount(value, nameof(Quantity), zeroAllowed: false), Bounds.Positive(Measure.Number, 1e6), nameof(Quantity));
            Guard.Rule(value == 1 || Kind != FixtureOptionKind.SlipResistantFloor, nameof(Quantity), (double)value, Measure.Number, "1 for a slip-resistant floor");
            field = value;
        }
    }
    = 1;

    /// <summary>The grains; <see langword="null"/> unless it is a slip-resistant floor.</summary>
    public SlipAdditive? Additive { get; private init; }

    /// <summary>Grains to an area of floor; zero unless it is a slip-resistant floor.</summary>
    public AreaDensity Rate => AreaDensity.FromKilogramsPerSquareMeter(rate);

    /// <summary>Part of the grains that misses the floor, 0 to 80 %; 20 % unless given (invented).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio Loss
    {
        get => Ratio.FromDecimalFractions(loss);
        init => loss = Guard.Within(value, Bounds.NotNegative(Measure.Percent, 0.8));
    }

    /// <summary>The operation; <see langword="null"/> unless it is work of the caller's own.</summary>
    public Operation? Operation { get; private init; }

    /// <summary>Where the operation of the caller's own stands: the kind of work after which it is done.</summary>
    public WorkKind After { get; private init; } = WorkKind.Other;

    /// <summary>A slip-resistant floor.</summary>
    /// <param name="code">Code in the price book.</param>
    /// <param name="additive">The grains.</param>
    /// <param name="rate">Grains to an area of floor, more than 0 and at most 1 kg/m².</param>
    /// <returns>The option.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="additive"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="rate"/> is outside its range.</exception>
    public static FixtureOption SlipResistantFloor(string code, SlipAdditive additive, AreaDensity rate) =>
        new(code, Guard.NotNull(additive), Guard.Within(rate, Bounds.Positive(Measure.ArealMass, 1)));

    /// <summary>New drain and overflow trim.</summary>
    /// <param name="code">Code in the price book.</param>
    /// <returns>The option.</returns>
    public static FixtureOption DrainTrim(string code) => new(FixtureOptionKind.DrainTrim, code);

    /// <summary>An operation of the caller's own.</summary>
    /// <param name="code">Code in the price book.</param>
    /// <param name="operation">What is done; its identifier is unique within the job.</param>
    /// <param name="after">
    /// The kind of work of the same fixture after which it is done: one that stands before the promoter or after the last coat.
    /// </param>
    /// <returns>The option.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="operation"/> is missing.</exception>
    /// <exception cref="ArgumentException">
    /// <paramref name="after"/> is promoter or coat, whose windows leave no room for more, or work that is done on no single fixture.
    /// </exception>
    public static FixtureOption Work(string code, Operation operation, WorkKind after) =>
        new(FixtureOptionKind.Work, code)
        {
            Operation = Guard.NotNull(operation),
            After = DefectWork.Places.Contains(Guard.Defined(after)) ? after : throw new ArgumentException(
                "after is " + after + "; allowed: " + string.Join(", ", DefectWork.Places)
                    + ". What is done between the coats is added to the list of work (OperationChange.Add).", nameof(after)),
        };

    /// <summary>Code and quantity.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Figures.Significant((double)Quantity) + " × " + Code;

    private FixtureOption(string code, SlipAdditive additive, double rate) : this(FixtureOptionKind.SlipResistantFloor, code)
    {
        Additive = additive;
        this.rate = rate;
        loss = 0.2;
    }
}

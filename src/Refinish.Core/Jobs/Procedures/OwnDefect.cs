using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Substrates;

namespace Refinish.Jobs;

/// <summary>
/// A defect of a caller's own: what it makes of the fixture, how much filler its hollow takes, and what is done about it. It goes through
/// verdict, procedure, hours, materials and price as the ready ones do.
/// </summary>
/// <remarks>
/// A hollow without work of its own is filled with the shop's filler among the other repairs; its hours then come from the shop's labour
/// standard for <c>DefectKind.Own(code)</c>. With work of its own the filler is bought for that operation and hardens after it. A defect
/// with neither is another trade's: it has its effect on the verdict alone.
/// </remarks>
/// <example><code>
/// OwnDefect inlay = new()
/// {
///     Code = "loose-inlay",
///     Name = "loose inlay",
///     Effect = Suitability.SuitableWithConditions,
///     Remedy = "bed it again",
///     RepeatTest = "tap test",
///     Source = Source.Supplied("own records"),
///     Count = 2,
///     Hollow = new Hollow(Volume.FromMilliliters(4), Length.FromMillimeters(3)),
/// };
/// string text = inlay.ToString();   // "2 × loose inlay, each a hollow of 4 mL, 3 mm deep"
/// </code></example>
public sealed record OwnDefect : Defect
{
    private static readonly Source OwnHollow = Source.Supplied("volume of the hollow");

    /// <summary>Its code, as labour standards, materials and rules name it; none of a ready kind or rule.</summary>
    /// <exception cref="ArgumentException">No identity, or that of a ready kind or rule.</exception>
    public required string Code
    {
        get => Kind.Code;
        init => Kind = SurveyRule.All.Any(ready => ready.Code.Equals(value, StringComparison.OrdinalIgnoreCase))
            ? throw new ArgumentException("Code is " + value + ", which a ready rule has; give yours another.", nameof(Code))
            : DefectKind.Own(value);
    }

    /// <summary>What it is called.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public new required string Name { get => base.Name; init => base.Name = Guard.Named(value); }

    /// <summary>What it makes of the fixture.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public required Suitability Effect { get; init => field = Guard.Defined(value); }

    /// <summary>What would help.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Remedy { get; init => field = Guard.Named(value); }

    /// <summary>Which test is repeated when that was done.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string RepeatTest { get; init => field = Guard.Named(value); }

    /// <summary>What this rests on.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>How many there are, all alike, 1 to 10 000; one when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int Count { get; init => field = Guard.Count(value, 1, 10_000); } = 1;

    /// <summary>The hollow of each that is filled; <see langword="null"/>, none, when left out.</summary>
    /// <exception cref="ArgumentException">The work of its own comes after filler is sanded.</exception>
    public Hollow? Hollow
    {
        get;
        init
        {
            Fits(value, Work, nameof(Hollow));
            field = value;
        }
    }

    /// <summary>What is done about it; <see langword="null"/>, nothing but to fill its hollow, when left out.</summary>
    /// <exception cref="ArgumentException">There is a hollow, and the work comes after filler is sanded.</exception>
    public DefectWork? Work
    {
        get;
        init
        {
            Fits(Hollow, value, nameof(Work));
            field = value;
        }
    }

    /// <summary>
    /// What can hurt because of it, while it is there and while it is mended; none beside those of the kind of work when left out.
    /// </summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<Caution> Cautions { get; init => field = Guard.List(value); } = ValueList<Caution>.Empty;

    /// <inheritdoc/>
    public override string Describe(DisplayUnits system) => (Count > 1 ? Figures.Fixed(Count, 0) + " × " : string.Empty) + Name
        + (Hollow is null ? string.Empty : (Count > 1 ? ", each a " : ", ") + Hollow.Describe(system));

    internal override int Number => Count;

    // A hollow of some volume and depth has a mouth of the one over the other at least.
    internal override double FlatArea => Hollow is null ? 0 : Count * Hollow.CubicMetres / Hollow.Metres;

    internal override double? MeasuredDepth => Hollow?.Metres;

    internal override SurveyRule? OwnRule =>
        new(Code, Name, Effect, Remedy, RepeatTest, Source, (Func<Survey, SurveyPolicy, IEnumerable<Finding>>?)null);

    internal override IReadOnlyList<Caution> Brings => Cautions;

    internal override Cavity? CavityUnder(FillerPolicy policy, Trace? t = null) => Hollow is null ? null : new Cavity(
        t.Given("n", Count, Measure.Number) * t.Given("V_1", Hollow.CubicMetres, Measure.Liquid), Hollow.Metres,
            OwnHollow);

    /// <summary>Whether the other is mended in the same way, so that both are one operation.</summary>
    internal bool IsMendedAs(OwnDefect other) => Name == other.Name && Equals(Work, other.Work) && Cautions.Equals(other.Cautions);

    private static void Fits(Hollow? hollow, DefectWork? work, string name)
    {
        if (hollow is not null && work is { IsBeforeSanding: false })
        {
            throw new ArgumentException(
                name + ": there is a hollow to fill, and the work is of the kind " + work.Kind
                    + ", after filler is sanded; allowed: up to Fill.", name);
        }
    }
}

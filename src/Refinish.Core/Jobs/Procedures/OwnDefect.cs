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
/// OwnDefect inlay = new(
///     "loose-inlay", "loose inlay", Suitability.SuitableWithConditions, "bed it again", "tap test", Source.Supplied("own records"))
/// {
///     Count = 2,
///     Hollow = new Hollow(Volume.FromMilliliters(4), Length.FromMillimeters(3)),
/// };
/// string text = inlay.ToString();   // "2 × loose inlay, each a hollow of 4 mL, 3 mm deep"
/// </code></example>
public sealed record OwnDefect : Defect
{
    private static readonly Source OwnHollow = Source.Supplied("volume of the hollow");

    private readonly SurveyRule rule;

    /// <summary>Records a defect that the library has no kind for.</summary>
    /// <param name="code">Its code, as labour standards, materials and rules name it; none of a ready kind or rule.</param>
    /// <param name="name">What it is called.</param>
    /// <param name="effect">What it makes of the fixture.</param>
    /// <param name="remedy">What would help.</param>
    /// <param name="repeatTest">Which test is repeated when that was done.</param>
    /// <param name="source">What this rests on.</param>
    /// <exception cref="ArgumentException">
    /// A text is empty, or <paramref name="code"/> is no identity or that of a ready kind or rule.
    /// </exception>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="effect"/> is not a named value.</exception>
    public OwnDefect(string code, string name, Suitability effect, string remedy, string repeatTest, Source source)
        : base(DefectKind.Own(code), Guard.Named(name))
    {
        rule = SurveyRule.All.Any(ready => ready.Code.Equals(code, StringComparison.OrdinalIgnoreCase))
            ? throw new ArgumentException("code is " + code + ", which a ready rule has; give yours another.", nameof(code))
            : new SurveyRule(code, name, effect, remedy, repeatTest, source, (Func<Survey, SurveyPolicy, IEnumerable<Finding>>?)null);
    }

    /// <summary>Its code.</summary>
    public string Code => Kind.Code;

    /// <summary>What it makes of the fixture.</summary>
    public Suitability Effect => rule.Effect;

    /// <summary>What would help.</summary>
    public string Remedy => rule.Remedy;

    /// <summary>Which test is repeated when that was done.</summary>
    public string RepeatTest => rule.RepeatTest;

    /// <summary>What this rests on.</summary>
    public Source Source => rule.Source;

    /// <summary>How many there are, all alike, 1 to 10 000; one when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int Count { get; init => field = Guard.Count(value, 1, 10_000); }
    = 1;

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
    public IReadOnlyList<Caution> Cautions { get; init => field = Guard.List(value); }
    = ValueList<Caution>.Empty;

    /// <inheritdoc/>
    public override string Describe(DisplayUnits system) => (Count > 1 ? Figures.Fixed(Count, 0) + " × " : string.Empty) + Name
        + (Hollow is null ? string.Empty : (Count > 1 ? ", each a " : ", ") + Hollow.Describe(system));

    internal override int Number => Count;

    // A hollow of some volume and depth has a mouth of the one over the other at least.
    internal override double FlatArea => Hollow is null ? 0 : Count * Hollow.CubicMetres / Hollow.Metres;

    internal override double? MeasuredDepth => Hollow?.Metres;

    internal override SurveyRule? OwnRule => rule;

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

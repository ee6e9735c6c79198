using System;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// What stands in for a reading that was not taken: a least, a most likely and a greatest value, as they are, as a share of another
/// reading, or beyond it.
/// </summary>
/// <remarks>
/// With points p, base x and what is taken off it y: usual p; share p (x − y); beyond x + p. A share fits whatever the base is, so that
/// readings drawn one by one still make a fixture that can be. The proportions of this library come from no document; each says so in its
/// <see cref="Source"/>.
/// </remarks>
/// <example><code>
/// ReadingAssumption depth = ReadingAssumption.Usual(
///     "Depth", Length.FromInches(12), Length.FromInches(13), Length.FromInches(16), Source.Supplied("tubs of this estate"));
/// </code></example>
public sealed record ReadingAssumption
{
    private static readonly Bounds Shares = Bounds.Between(0, 10, Measure.Number);
    private static readonly Bounds Lengths = Bounds.Between(-20, 20, Measure.Length);
    private static readonly Bounds Numbers = Bounds.Between(0, 1000, Measure.Number);
    private static readonly Bounds Angles = Bounds.Between(0, 2 * Math.PI, Measure.Angle);

    private ReadingAssumption(string reading, AssumptionForm form, string? of, string? less, double least, double likely, double greatest,
        Bounds bounds, Source source)
    {
        Reading = Guard.Named(reading);
        Form = form;
        Of = of;
        Less = less;
        Measure = bounds.Measure;
        Least = Guard.Within(least, bounds);
        Likely = Guard.Within(likely, bounds);
        Greatest = Guard.Within(greatest, bounds);
        Guard.Rule(likely >= least, nameof(likely), likely, Measure, "at least least, ", least);
        Guard.Rule(greatest >= likely, nameof(greatest), greatest, Measure, "at least likely, ", likely);
        Source = Guard.NotNull(source);
    }

    /// <summary>Name of the reading that it stands in for.</summary>
    public string Reading { get; }

    /// <summary>How the three points are meant.</summary>
    public AssumptionForm Form { get; }

    /// <summary>Name of the reading that the points refer to; <see langword="null"/> for a usual value.</summary>
    public string? Of { get; }

    /// <summary>Name of the reading that is taken off <see cref="Of"/> before the share; <see langword="null"/> when none is.</summary>
    public string? Less { get; }

    /// <summary>Least point, in the SI base unit of <see cref="Measure"/>.</summary>
    public double Least { get; }

    /// <summary>Most likely point, in the same unit.</summary>
    public double Likely { get; }

    /// <summary>Greatest point, in the same unit.</summary>
    public double Greatest { get; }

    /// <summary>What kind of amount the points are: a length, an angle or a plain number; a share is a plain number.</summary>
    public Measure Measure { get; }

    /// <summary>Where the points come from.</summary>
    public Source Source { get; }

    /// <summary>Whether nothing is left open: all three points are one.</summary>
    public bool IsExact => Least == Greatest;

    /// <summary>A usual length.</summary>
    /// <param name="reading">Name of the reading.</param>
    /// <param name="least">Least value, −20 to 20 m.</param>
    /// <param name="likely">Most likely value, from <paramref name="least"/> upwards.</param>
    /// <param name="greatest">Greatest value, from <paramref name="likely"/> upwards.</param>
    /// <param name="source">Where it comes from.</param>
    /// <returns>The assumption.</returns>
    /// <exception cref="ArgumentException">A text is empty or missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range or out of order.</exception>
    public static ReadingAssumption Usual(string reading, Length least, Length likely, Length greatest, Source source) =>
        new(reading, AssumptionForm.Usual, null, null, least.Meters, likely.Meters, greatest.Meters, Lengths, source);

    /// <summary>A usual number, such as a count, a factor or an exponent.</summary>
    /// <param name="reading">Name of the reading.</param>
    /// <param name="least">Least value, 0 to 1000.</param>
    /// <param name="likely">Most likely value, from <paramref name="least"/> upwards.</param>
    /// <param name="greatest">Greatest value, from <paramref name="likely"/> upwards.</param>
    /// <param name="source">Where it comes from.</param>
    /// <returns>The assumption.</returns>
    /// <exception cref="ArgumentException">A text is empty or missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range or out of order.</exception>
    public static ReadingAssumption Usual(string reading, double least, double likely, double greatest, Source source) =>
        new(reading, AssumptionForm.Usual, null, null, least, likely, greatest, Numbers, source);

    /// <summary>A usual angle.</summary>
    /// <param name="reading">Name of the reading.</param>
    /// <param name="least">Least value, 0° to 360°.</param>
    /// <param name="likely">Most likely value, from <paramref name="least"/> upwards.</param>
    /// <param name="greatest">Greatest value, from <paramref name="likely"/> upwards.</param>
    /// <param name="source">Where it comes from.</param>
    /// <returns>The assumption.</returns>
    /// <exception cref="ArgumentException">A text is empty or missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range or out of order.</exception>
    public static ReadingAssumption Usual(string reading, Angle least, Angle likely, Angle greatest, Source source) =>
        new(reading, AssumptionForm.Usual, null, null, least.Radians, likely.Radians, greatest.Radians, Angles, source);

    /// <summary>A share of another reading.</summary>
    /// <param name="reading">Name of the reading.</param>
    /// <param name="of">Name of the other reading, which stands before it in the list of its kind.</param>
    /// <param name="least">Least share, 0 to 10.</param>
    /// <param name="likely">Most likely share, from <paramref name="least"/> upwards.</param>
    /// <param name="greatest">Greatest share, from <paramref name="likely"/> upwards.</param>
    /// <param name="source">Where it comes from.</param>
    /// <returns>The assumption.</returns>
    /// <exception cref="ArgumentException">A text is empty or missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range or out of order.</exception>
    public static ReadingAssumption Share(string reading, string of, double least, double likely, double greatest, Source source) =>
        new(reading, AssumptionForm.Share, Guard.Named(of), null, least, likely, greatest, Shares, source);

    /// <summary>A share of what is left of one reading when another is taken off.</summary>
    /// <param name="reading">Name of the reading.</param>
    /// <param name="of">Name of the reading that is shared out.</param>
    /// <param name="less">Name of the reading that is taken off it first.</param>
    /// <param name="least">Least share, 0 to 10.</param>
    /// <param name="likely">Most likely share, from <paramref name="least"/> upwards.</param>
    /// <param name="greatest">Greatest share, from <paramref name="likely"/> upwards.</param>
    /// <param name="source">Where it comes from.</param>
    /// <returns>The assumption.</returns>
    /// <exception cref="ArgumentException">A text is empty or missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range or out of order.</exception>
    public static ReadingAssumption ShareOfRest(string reading, string of, string less, double least, double likely, double greatest,
        Source source) =>
        new(reading, AssumptionForm.Share, Guard.Named(of), Guard.Named(less), least, likely, greatest, Shares, source);

    /// <summary>A length beyond another reading.</summary>
    /// <param name="reading">Name of the reading.</param>
    /// <param name="of">Name of the other reading, which stands before it in the list of its kind.</param>
    /// <param name="least">Least length beyond it, −20 to 20 m.</param>
    /// <param name="likely">Most likely length beyond it, from <paramref name="least"/> upwards.</param>
    /// <param name="greatest">Greatest length beyond it, from <paramref name="likely"/> upwards.</param>
    /// <param name="source">Where it comes from.</param>
    /// <returns>The assumption.</returns>
    /// <exception cref="ArgumentException">A text is empty or missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range or out of order.</exception>
    public static ReadingAssumption Beyond(string reading, string of, Length least, Length likely, Length greatest, Source source) =>
        new(reading, AssumptionForm.Beyond, Guard.Named(of), null, least.Meters, likely.Meters, greatest.Meters, Lengths, source);

    /// <summary>The three points and what they refer to, in metric units.</summary>
    /// <returns>Text such as <c>RimLength: 0.84 – 0.885 – 0.93 of OverallLength</c>.</returns>
    public override string ToString() =>
        $"{Reading}: {Measure.Format(Least)} – {Measure.Format(Likely)} – {Measure.Format(Greatest)}"
        + Form switch { AssumptionForm.Share => " of " + Of, AssumptionForm.Beyond => " beyond " + Of, _ => string.Empty }
        + (Less is null ? string.Empty : " less " + Less);

    /// <summary>The reading that a point stands for.</summary>
    internal Num At(Num point, Num? of, Num? less) => Form switch
    {
        AssumptionForm.Share => point * (less is Num taken ? of!.Value - taken : of!.Value),
        AssumptionForm.Beyond => of!.Value + point, _ => point, };
}

using System.Collections.Generic;
using System.Linq;

namespace Refinish.Fixtures;

/// <summary>
/// Something about the readings that is not what such fixtures are: what, by how much, which slip would explain it, and what to do. Nothing
/// is corrected, and a doubt stands in nobody's way: the fixture may be an unusual one.
/// </summary>
public sealed record Doubt
{
    internal Doubt(DoubtKind kind, string about, string? reading, string subject, string remedy, Source source)
    {
        Kind = kind;
        About = about;
        Reading = reading;
        Subject = subject;
        Remedy = remedy;
        Source = source;
    }

    /// <summary>Identifier, formed from what it is about, its kind and the reading; never from its place in a list of doubts.</summary>
    public string Id => About + "/" + Kind.ToString("G").ToLowerInvariant()
        + (Reading is null || Kind == DoubtKind.Unit ? string.Empty : "/" + Reading);

    /// <summary>What kind of doubt it is.</summary>
    public DoubtKind Kind { get; }

    /// <summary>Identifier of the fixture or room that it is about.</summary>
    public string About { get; }

    /// <summary>
    /// The reading, by its name among the measurements, such as <c>Depth</c> or <c>Walls[1].Length</c>; for a unit the one that is furthest
    /// off; <see langword="null"/> where it is about none.
    /// </summary>
    public string? Reading { get; }

    /// <summary>What is in doubt, in words.</summary>
    public string Subject { get; }

    /// <summary>The value in doubt, in the SI base unit of <see cref="Measure"/>; <see langword="null"/> where it is no number.</summary>
    public double? Value { get; internal init; }

    /// <summary>The least that is usual, in the same unit; <see langword="null"/> when there is no such limit.</summary>
    public double? Least { get; internal init; }

    /// <summary>The greatest that is usual, in the same unit; <see langword="null"/> when there is no such limit.</summary>
    public double? Greatest { get; internal init; }

    /// <summary>What kind of amount value and limits are.</summary>
    public Measure Measure { get; internal init; } = Measure.Length;

    /// <summary>
    /// The slips that would explain the value, the likeliest first, three at most; empty when none would. Of a reading each fits its band
    /// and the other readings: mix-ups of units in whose unit the number has few digits, then slips of digits, and other mix-ups only where
    /// none of these fits.
    /// </summary>
    public IReadOnlyList<LikelySlip> Slips { get; internal init; } = ValueList<LikelySlip>.Empty;

    /// <summary>What to do.</summary>
    public string Remedy { get; }

    /// <summary>Where the limits come from.</summary>
    public Source Source { get; }

    /// <summary>Whether a mix-up of units would explain it: then the price is off by far more than any tape.</summary>
    public bool IsUnitMixUp => Slips.Any(slip => slip.IsUnitMixUp);

    /// <summary>The doubt as a sentence with its numbers.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>One sentence without a full stop, such as <c>depth of the tub is 132.5 mm; usual is 254 mm to 660.4 mm</c>.</returns>
    public string Sentence(DisplayUnits system)
    {
        if (Value is not double value)
        {
            return Subject + " is unusual";
        }

        string found = Subject + " is " + Shown(value, system) + "; usual is " + Band(system);
        return Kind == DoubtKind.Unit
            ? "the lengths look like " + Fixtures.Slips.InWords(Slips[0].Slip) + ": " + found + ", and " + Shown(Slips[0].Metres, system)
                + " would be meant"
            : Slips.Count == 0 ? found
            : found + "; perhaps " + string.Join(" or ", Slips.Select(slip => slip.Describe(system))) + " was meant";
    }

    /// <summary>What it is about, the sentence in metric units and the remedy.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => About + ": " + Sentence(DisplayUnits.Si) + ". " + Remedy;

    private string Shown(double si, DisplayUnits system) => Measure.Format(si, system, 4);

    private string Band(DisplayUnits system) => (Least, Greatest) switch
    {
        (double least, double greatest) => Shown(least, system) + " to " + Shown(greatest, system),
        (double least, null) => "at least " + Shown(least, system),
        (null, double greatest) => "at most " + Shown(greatest, system), _ => "not known", };
}

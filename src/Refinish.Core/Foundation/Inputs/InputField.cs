using System;
using System.Globalization;
using UnitsNet;

namespace Refinish;

/// <summary>
/// One input of a record: its name, what it means, its unit, what it may be and what holds when it is left out. The guard, the refusal, the
/// JSON field and the reading of the tape follow from it.
/// </summary>
/// <remarks>
/// Numbers are in the SI base unit of <see cref="Measure"/>. A form for entry is made from a record's inputs, such as
/// <c>RecessedBathtubMeasurements.Inputs</c>.
/// </remarks>
/// <example><code>
/// InputField depth = RecessedBathtubMeasurements.Inputs["Depth"];
/// string meaning = depth.Meaning;   // "depth"
/// double most = depth.Greatest;     // 0.8
/// string? refusal = depth.Refusal(Length.FromInches(133));
/// // "Depth is 3378.2 mm (given as 133 in); allowed: at least 100 mm and at most 800 mm."
/// </code></example>
public sealed class InputField
{
    private InputField(string name, string meaning, Bounds allowed, double? otherwise)
    {
        Name = name;
        Meaning = meaning;
        Allowed = allowed;
        Default = otherwise;
    }

    /// <summary>Its name: that of the property, or of the reading that was taken.</summary>
    public string Name { get; }

    /// <summary>What it is, in words.</summary>
    public string Meaning { get; }

    /// <summary>What kind of amount it is, and the units in which it is shown.</summary>
    public Measure Measure => Allowed.Measure;

    /// <summary>The lower end of what is allowed, in SI.</summary>
    public double Least => Allowed.Minimum;

    /// <summary>Whether <see cref="Least"/> itself is allowed.</summary>
    public bool IsLeastAllowed => Allowed.MinimumIncluded;

    /// <summary>The upper end of what is allowed, in SI; infinite where there is none.</summary>
    public double Greatest => Allowed.Maximum;

    /// <summary>Whether <see cref="Greatest"/> itself is allowed.</summary>
    public bool IsGreatestAllowed => Allowed.MaximumIncluded && !double.IsInfinity(Allowed.Maximum);

    /// <summary>Whether it is a whole number, such as a count.</summary>
    public bool IsWhole { get; private init; }

    /// <summary>Whether it may stay empty, because what is not known has no number that stands for it.</summary>
    public bool MayBeUnknown { get; private init; }

    /// <summary>Whether it has to be given.</summary>
    public bool IsRequired => Default is null && !MayBeUnknown;

    /// <summary>
    /// What holds when it is left out, in SI: 0 for a part that is not there, 1 for a factor; <see langword="null"/> for an input that has
    /// to be given and for one that may be unknown.
    /// </summary>
    public double? Default { get; }

    /// <summary>What is usual for a tape reading, in inches; beyond it a reading is in doubt, not wrong.</summary>
    internal (double Least, double Greatest, Source Source)? Usual { get; private init; }

    internal Bounds Allowed { get; }

    /// <summary>Why a number is refused.</summary>
    /// <param name="si">The number in the SI base unit of <see cref="Measure"/>, or a count.</param>
    /// <returns>The sentence of the exception that the record would throw; <see langword="null"/> for a number that is allowed.</returns>
    public string? Refusal(double si) =>
        !Allowed.Contains(si) ? (IsWhole ? Guard.Miscounted(si, Least, Greatest, Name) : Guard.Beyond(si, Allowed, Name, null))
        : IsWhole && si != Math.Floor(si) ? Name + " is " + Measure.Format(si) + "; allowed: a whole number."
        : null;

    /// <summary>Why a quantity is refused.</summary>
    /// <param name="value">The quantity, such as a length, in any unit.</param>
    /// <returns>The sentence of the exception that the record would throw; <see langword="null"/> for one that is allowed.</returns>
    /// <exception cref="ArgumentException">It is missing, or not of the kind that this input is.</exception>
    public string? Refusal(IQuantity value)
    {
        double si = Si(value);
        return Allowed.Contains(si) ? null : Guard.Beyond(si, Allowed, Name, value);
    }

    /// <summary>The name and what is allowed, in metric units.</summary>
    /// <returns>Text such as <c>Depth: at least 100 mm and at most 800 mm</c>.</returns>
    public override string ToString() => string.Format(CultureInfo.InvariantCulture, "{0}: {1}", Name, Allowed);

    /// <summary>A length off the tape, from one length to another; required unless it has a default.</summary>
    internal static InputField Tape(string name, string meaning, double least, double greatest, double? otherwise = null) =>
        new(name, meaning, Bounds.Between(least, greatest, Measure.Length), otherwise);

    /// <summary>A number without a unit.</summary>
    internal static InputField Number(string name, string meaning, double least, double greatest, double? otherwise = null) =>
        new(name, meaning, Bounds.Between(least, greatest, Measure.Number), otherwise);

    /// <summary>A whole number.</summary>
    internal static InputField Count(string name, string meaning, int least, int greatest, double? otherwise = null) =>
        new(name, meaning, Bounds.Between(least, greatest, Measure.Number), otherwise) { IsWhole = true };

    /// <summary>Of any measure.</summary>
    internal static InputField Of(string name, string meaning, Bounds allowed, double? otherwise = null) =>
        new(name, meaning, allowed, otherwise);

    /// <summary>A length with what is usual for it.</summary>
    internal InputField Usually(double least, double greatest, Source source) =>
        new(Name, Meaning, Allowed, Default) { Usual = (least, greatest, source) };

    /// <summary>The same input, which may stay empty.</summary>
    internal InputField OrUnknown() => new(Name, Meaning, Allowed, null) { MayBeUnknown = true };

    /// <summary>The number in SI, or the exception with the sentence of <see cref="Refusal(double)"/>.</summary>
    internal double Checked(double si) =>
        Refusal(si) is string refusal ? throw new ArgumentOutOfRangeException(Name, Measure.Format(si), refusal) : si;

    internal double Checked(IQuantity value)
    {
        double si = Si(value);
        return Allowed.Contains(si) ? si : throw Guard.Refused(si, Allowed, Name, value);
    }

    /// <summary>Most inputs are lengths: one that is allowed is not boxed.</summary>
    internal double Checked(Length value)
    {
        double si = value.Meters;
        return ReferenceEquals(Measure, Measure.Length) && Allowed.Contains(si) ? si : Checked((IQuantity)value);
    }

    private double Si(IQuantity value) => Measure.Si(Guard.NotNull(value, nameof(value), nameof(value)), Name);
}

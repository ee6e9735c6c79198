using System.Globalization;

namespace Refinish.Fixtures;

/// <summary>One reading of a <see cref="ComposedKind"/>: what is measured, what it may be, and what holds when it was not taken.</summary>
public sealed class ComposedReading
{
    internal ComposedReading(string name, string words, Measure measure, Bounds allowed, double? otherwise)
    {
        Name = name;
        Words = words;
        Measure = measure;
        Allowed = allowed;
        Otherwise = otherwise;
    }

    /// <summary>Its name, as a reading that was taken gives it.</summary>
    public string Name { get; }

    /// <summary>What is measured, in words.</summary>
    public string Words { get; }

    /// <summary>What kind of amount it is: a length, an angle or a plain number.</summary>
    public Measure Measure { get; }

    /// <summary>The least that is allowed, in the SI base unit of <see cref="Measure"/>.</summary>
    public double Least => Allowed.Minimum;

    /// <summary>The greatest that is allowed, in the same unit.</summary>
    public double Greatest => Allowed.Maximum;

    /// <summary>Whether it has to be taken.</summary>
    public bool IsNeeded => Otherwise is null;

    /// <summary>
    /// What holds when it was not taken, in the same unit: 0 for a part that is not there, 1 for a factor; <see langword="null"/> for a
    /// reading that has to be taken.
    /// </summary>
    public double? Otherwise { get; }

    internal Bounds Allowed { get; }

    internal bool IsCount { get; set; }

    /// <summary>What is usual, for a length.</summary>
    internal (double Least, double Greatest, Source Source)? Usual { get; set; }

    /// <summary>The name and what it may be, in metric units.</summary>
    /// <returns>Text such as <c>SeatDepth: at least 0 mm and at most 1000 mm</c>.</returns>
    public override string ToString() => string.Format(CultureInfo.InvariantCulture, "{0}: {1}", Name, Allowed);
}

using System;
using System.Globalization;

namespace Refinish.Samples.WorkedExamples;

/// <summary>One number of the answer, and what it is held against: a number as its source prints it.</summary>
/// <param name="What">What it is, in words.</param>
/// <param name="Measure">What kind of amount it is.</param>
/// <param name="Si">The library's number, in the SI base unit of <paramref name="Measure"/>.</param>
/// <param name="Printed">The number as its source prints it, every digit; <see langword="null"/> when the source is silent.</param>
/// <param name="In">The units in which the source prints it.</param>
/// <param name="Within">How far the two may be apart, in the source's unit; half of the last printed digit when left out.</param>
internal sealed record Answer(string What, Measure Measure, double Si, string? Printed = null, DisplayUnits In = DisplayUnits.Si, double? Within = null)
{
    public bool Holds => Printed is null || Math.Abs(Measure.Shown(Si, In) - double.Parse(Printed, CultureInfo.InvariantCulture)) <= Tolerance;

    public double Tolerance => Within ?? (0.5 * Math.Pow(10, -Decimals) * (1 + 1e-9));

    private int Decimals => Printed!.Contains('.', StringComparison.Ordinal) ? Printed.Length - Printed.IndexOf('.', StringComparison.Ordinal) - 1 : 0;

    public string Value(DisplayUnits system) => Measure.Format(Si, system, 6);

    /// <summary>The source's own number with its unit, and the library's beside it where the reader asked for other units.</summary>
    public string HeldTo(DisplayUnits system)
    {
        string unit = Measure.Symbol(In);
        string printed = Printed + (Within is double off ? " ± " + off.ToString(CultureInfo.InvariantCulture) : string.Empty) + (unit.Length == 0 ? string.Empty : " " + unit);
        return system == In || unit == Measure.Symbol(system) ? printed : printed + " (here " + Value(In) + ")";
    }
}

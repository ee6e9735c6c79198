using System;

namespace Refinish.Coverage;

/// <summary>One thing that alone would make a batch possible: from what to what.</summary>
public sealed record BatchRelaxation
{
    internal BatchRelaxation(string subject, double from, double to, Measure measure, double effort)
    {
        Subject = subject;
        From = from;
        To = to;
        Measure = measure;
        Effort = effort;
    }

    /// <summary>What would have to change.</summary>
    public string Subject { get; }

    /// <summary>What it is, in the SI base unit of <see cref="Measure"/>.</summary>
    public double From { get; }

    /// <summary>What it would have to be, in the same unit.</summary>
    public double To { get; }

    /// <summary>What kind of amount both are.</summary>
    public Measure Measure { get; }

    /// <summary>
    /// How far that is, as the natural logarithm of the factor; for a temperature, of the factor on the rate of reaction.
    /// </summary>
    public double Effort { get; }

    /// <summary>The change as a sentence, in metric units; what is needed is rounded to the side on which it still does.</summary>
    /// <returns>Text such as <c>spraying rate from 10 mL/min to at least 12.5 mL/min</c>.</returns>
    public override string ToString() =>
        Subject + " from " + (To >= From
            ? Measure.FormatAtMost(From, DisplayUnits.Si, 3) + " to at least " + Measure.FormatAtLeast(To, DisplayUnits.Si, 3)
            : Measure.FormatAtLeast(From, DisplayUnits.Si, 3) + " to at most " + Measure.FormatAtMost(To, DisplayUnits.Si, 3));
}

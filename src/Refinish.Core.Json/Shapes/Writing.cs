using System;

namespace Refinish.Json.Shapes;

/// <summary>One pass of writing: the units, and what earlier places of the document have defined.</summary>
internal sealed class Writing(DisplayUnits units)
{
    public DisplayUnits Units => units;

    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public static Writing In(DisplayUnits units) => units is DisplayUnits.Si or DisplayUnits.UsCustomary
        ? new(units)
        : throw new ArgumentOutOfRangeException(nameof(units), "units is not a named value.");

    /// <summary>
    /// Whether quantities are shown in the units that are wanted, to twelve figures, and not so that they read back to the very same
    /// number.
    /// </summary>
    public bool IsShown { get; init; }

    public Definitions Definitions { get; } = new();
}

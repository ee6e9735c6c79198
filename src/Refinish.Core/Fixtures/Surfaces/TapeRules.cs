using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>Rules between lengths that the tape gave; nothing is put into words while all is well.</summary>
internal static class TapeRules
{
    /// <summary>A length in metric units.</summary>
    public static string Shown(Length length) => Measure.Length.Format(length.Meters);

    /// <summary>Refuses a value beyond a limit that follows from others.</summary>
    public static void AtMost(double value, double limit, string name, string what, Measure? measure = null)
    {
        if (value > limit)
        {
            measure ??= Measure.Length;
            Guard.Rule(false, name, value, measure, "at most " + measure.Format(limit) + ", " + what);
        }
    }
}

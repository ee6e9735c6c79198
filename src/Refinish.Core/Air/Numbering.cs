using System.Globalization;

namespace Refinish.Air;

/// <summary>Inputs whose symbol carries a number or a name. Without a trace no text is made.</summary>
internal static class Numbering
{
    /// <summary>1 for the first.</summary>
    public static string Number(int index) => (index + 1).ToString(CultureInfo.InvariantCulture);

    /// <summary>An input of a numbered thing, such as <c>T_1</c> of the first.</summary>
    public static Num Given(this Trace? trace, string letter, int index, double value, Measure measure) =>
        trace is null ? value : trace.Given(letter + "_" + Number(index), value, measure);

    /// <summary>An input of a named thing, such as <c>M_acetone</c>.</summary>
    public static Num Given(this Trace? trace, string letter, string name, double value, Measure measure) =>
        trace is null ? value : trace.Given(letter + "_" + name, value, measure);
}

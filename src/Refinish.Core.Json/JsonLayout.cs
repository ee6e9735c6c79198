using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Unicode;

namespace Refinish.Json;

/// <summary>
/// How a document is laid out. It never changes what the document says: every quantity carries its unit, and reads back to the very same
/// number.
/// </summary>
/// <example><code>
/// JsonLayout layout = new() { Units = DisplayUnits.UsCustomary, IsIndented = false };
/// </code></example>
public sealed record JsonLayout
{
    /// <summary>Metric and indented.</summary>
    public static JsonLayout Default { get; } = new();

    /// <summary>The units in which quantities are written where that loses nothing; metric when left out.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Not a named value.</exception>
    public DisplayUnits Units
    {
        get;
        init => field = value is DisplayUnits.Si or DisplayUnits.UsCustomary
            ? value
            : throw new System.ArgumentOutOfRangeException(nameof(Units), "Units is not a named value.");
    }

    /// <summary>Whether the text is broken into indented lines; <see langword="true"/> when left out.</summary>
    public bool IsIndented { get; init; } = true;

    // Letters such as µ, ² and ° stay as they are; what could end a script in a web page is still escaped.
    internal JsonWriterOptions Options => new()
    {
        Indented = IsIndented,
        Encoder = Letters,
#if NET9_0_OR_GREATER
        NewLine = "\n",
#endif
    };

    private static JavaScriptEncoder Letters { get; } = JavaScriptEncoder.Create(UnicodeRanges.All);

    /// <summary>Units and layout.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Units.ToString() + (IsIndented ? ", indented" : ", in one line");
}

using System;
using System.Globalization;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>How a quantity is written: in one line even where the document is indented, since a tub alone has eighteen of them.</summary>
internal static class QuantityText
{
    public static void WriteQuantity(this Utf8JsonWriter json, double number, string symbol, bool isItem = false)
    {
        if (!double.IsFinite(number))
        {
            throw new ArgumentException("A quantity is not a number or is infinite; JSON has no such numbers.", nameof(number));
        }

        // The writer leaves the line break before a ready-made item of a list to whoever made it.
        string indent = isItem && json.Options.Indented ? "\n" + new string(' ', 2 * json.CurrentDepth) : string.Empty;
        Span<char> text = stackalloc char[256];
        int length;
        bool fits = json.Options.Indented
            ? text.TryWrite(CultureInfo.InvariantCulture, $"{indent}{{ \"value\": {number}, \"unit\": \"{symbol}\" }}", out length)
            : text.TryWrite(CultureInfo.InvariantCulture, $"{{\"value\":{number},\"unit\":\"{symbol}\"}}", out length);
        json.WriteRawValue(fits ? text[..length] : throw new InvalidOperationException("A quantity is longer than a line."),
            skipInputValidation: true);
    }
}

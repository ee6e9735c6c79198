using System;
using System.Globalization;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>How a quantity is written: in one line even where the document is indented, since a tub alone has eighteen of them.</summary>
internal static class QuantityText
{
    public static void WriteQuantity(this Utf8JsonWriter json, double number, string symbol)
    {
        if (!double.IsFinite(number))
        {
            throw new ArgumentException("A quantity is not a number or is infinite; JSON has no such numbers.", nameof(number));
        }

        Span<char> text = stackalloc char[96];
        int length;
        _ = json.Options.Indented
            ? text.TryWrite(CultureInfo.InvariantCulture, $"{{ \"value\": {number}, \"unit\": \"{symbol}\" }}", out length)
            : text.TryWrite(CultureInfo.InvariantCulture, $"{{\"value\":{number},\"unit\":\"{symbol}\"}}", out length);
        json.WriteRawValue(text[..length], skipInputValidation: true);
    }
}

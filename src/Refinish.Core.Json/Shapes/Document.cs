using System;
using System.Buffers;
using System.Collections.Generic;
using System.IO;
using System.Text;
using System.Text.Json;
using NameOfAttribute = System.Runtime.CompilerServices.CallerArgumentExpressionAttribute;

namespace Refinish.Json.Shapes;

/// <summary>Text, bytes and streams to and from one shape.</summary>
internal static class Document
{
    public static string Write<T>(Shape<T> shape, T value, JsonLayout layout, [NameOf(nameof(value))] string name = "")
    {
        ArgumentNullException.ThrowIfNull(value, name);
        ArgumentNullException.ThrowIfNull(layout);
        ArrayBufferWriter<byte> bytes = new(16384);
        using (Utf8JsonWriter json = new(bytes, layout.Options))
        {
            shape.Write(json, value, new Writing(layout.Units));
        }

        return Encoding.UTF8.GetString(bytes.WrittenSpan);
    }

    public static void Write<T>(Shape<T> shape, T value, Stream stream, JsonLayout layout, [NameOf(nameof(value))] string name = "")
    {
        ArgumentNullException.ThrowIfNull(value, name);
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(stream);
        using Utf8JsonWriter json = new(stream, layout.Options);
        shape.Write(json, value, new Writing(layout.Units));
    }

    public static void Write<T>(Shape<T> shape, T value, Utf8JsonWriter json, DisplayUnits units, [NameOf(nameof(value))] string name = "")
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(value, name);
        shape.Write(json, value, Writing.In(units));
    }

    public static T Read<T>(Shape<T> shape, string json)
    {
        ArgumentNullException.ThrowIfNull(json);
        return Read(shape, () => JsonDocument.Parse(json));
    }

    public static T Read<T>(Shape<T> shape, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        return Read(shape, () => JsonDocument.Parse(stream));
    }

    public static bool TryRead<T>(Shape<T> shape, string json, out T value, out IReadOnlyList<JsonFault> faults)
    {
        ArgumentNullException.ThrowIfNull(json);
        return TryRead(shape, () => JsonDocument.Parse(json), out value, out faults, out _);
    }

    public static T Read<T>(Shape<T> shape, Func<JsonDocument> parse) =>
        TryRead(shape, parse, out T value, out IReadOnlyList<JsonFault> faults, out JsonException? syntax)
            ? value
            : throw RefinishJsonException.Of(faults, syntax);

    public static bool TryRead<T>(Shape<T> shape, Func<JsonDocument> parse, out T value, out IReadOnlyList<JsonFault> faults,
        out JsonException? syntax)
    {
        syntax = null;
        JsonDocument? document = null;
        try
        {
            document = parse();
        }
        catch (JsonException malformed)
        {
            syntax = malformed;
            return Malformed(malformed.Message, out value, out faults);
        }
        catch (ArgumentException)
        {
            // What the parser says of half a surrogate pair in a string outside of any JSON text.
            return Malformed("The text is no valid Unicode.", out value, out faults);
        }

        using (document)
        {
            return TryRead(shape, document.RootElement, out value, out faults);
        }
    }

    public static bool TryRead<T>(Shape<T> shape, JsonElement root, out T value, out IReadOnlyList<JsonFault> faults)
    {
        Reading reading = new();
        bool isRead = false;
        value = default!;
        try
        {
            isRead = shape.Read(root, reading, out value) == Outcome.Read && reading.Faults.Count == 0;
        }
        catch (InvalidOperationException)
        {
            // The parser lets half of a surrogate pair through and refuses it when the text is asked for; the pass still stands at that
            // place.
            reading.Fault(JsonFaultKind.Malformed, "The text is no valid Unicode.");
        }

        faults = reading.Faults;
        value = isRead ? value : default!;
        return isRead;
    }

    private static bool Malformed<T>(string sentence, out T value, out IReadOnlyList<JsonFault> faults)
    {
        value = default!;
        faults = [new JsonFault("$", JsonFaultKind.Malformed, sentence)];
        return false;
    }
}

using System;
using System.Collections.Generic;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Refinish.Json.Shapes;

/// <summary>A shape as the serialiser of the platform knows such things.</summary>
internal sealed class ShapeConverter<T>(Shape<T> shape, DisplayUnits units) : JsonConverter<T>
{
    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        using JsonDocument part = JsonDocument.ParseValue(ref reader);
        return Document.TryRead(shape, part.RootElement, out T value, out IReadOnlyList<JsonFault> faults)
            ? value
            : throw RefinishJsonException.Inside(faults);
    }

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) =>
        shape.Write(writer, value, new Writing(units));
}

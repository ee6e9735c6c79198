using System.Buffers;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>What the schema asks of a list or of a value that may be null.</summary>
internal interface IHolderShape
{
    Shape Item { get; }
}

/// <summary>What tells a list from a value that may be null.</summary>
internal interface IListShape : IHolderShape;

/// <summary>A list of values of one shape.</summary>
/// <param name="item">The shape of each.</param>
/// <param name="isPacked">Whether it is written in one line, as the thousands of numbers of a mesh are.</param>
internal sealed class ListShape<T>(Shape<T> item, bool isPacked = false) : Shape<IReadOnlyList<T>>, IListShape
{
    public Shape Item => item;

    public override IEnumerable<IReadOnlyList<T>> StandIns => item.StandIns.Take(1).Select(one => (IReadOnlyList<T>)[one]).Prepend([]);

    public override Outcome Read(JsonElement json, Reading reading, out IReadOnlyList<T> value)
    {
        if (json.ValueKind != JsonValueKind.Array)
        {
            reading.WrongType(json, "an array");
            return Nothing(out value);
        }

        List<T> items = new(json.GetArrayLength());
        Outcome whole = Outcome.Read;
        int index = 0;
        foreach (JsonElement element in json.EnumerateArray())
        {
            if (reading.IsFull)
            {
                return Nothing(out value);
            }

            reading.Enter(index++);
            Outcome outcome = item.Read(element, reading, out T read);
            reading.Leave();
            if (outcome != Outcome.Read)
            {
                whole = Outcome.StandIn;
            }

            if (outcome != Outcome.Nothing)
            {
                items.Add(read);
            }
        }

        value = items;
        return whole;
    }

    public override void Write(Utf8JsonWriter json, IReadOnlyList<T> value, Writing to)
    {
        if (isPacked)
        {
            ArrayBufferWriter<byte> bytes = new();
            using (Utf8JsonWriter line = new(bytes, json.Options with { Indented = false }))
            {
                WriteItems(line, value, to);
            }

            json.WriteRawValue(bytes.WrittenSpan, skipInputValidation: true);
        }
        else
        {
            WriteItems(json, value, to);
        }
    }

    private void WriteItems(Utf8JsonWriter json, IReadOnlyList<T> value, Writing to)
    {
        json.WriteStartArray();
        foreach (T each in value)
        {
            item.WriteItem(json, each, to);
        }

        json.WriteEndArray();
    }
}

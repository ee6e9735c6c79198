using System.Collections.Generic;
using System.Linq;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>One kind alone of a shape with variants, for a place that can hold no other.</summary>
internal sealed class KindShape<TAny, T>(Shape<TAny> any) : Shape<T>
    where T : TAny
{
    public override IEnumerable<T> StandIns => any.StandIns.OfType<T>();

    public override Outcome Read(JsonElement json, Reading reading, out T value)
    {
        Outcome outcome = any.Read(json, reading, out TAny read);
        if (outcome != Outcome.Nothing && read is T expected)
        {
            value = expected;
            return outcome;
        }

        if (outcome == Outcome.Read)
        {
            reading.FaultAt("kind", JsonFaultKind.UnknownKind, "The kind is known but cannot stand here; expected: " + typeof(T).Name
                + ".");
        }

        return Nothing(out value);
    }

    public override void Write(Utf8JsonWriter json, T value, Writing to) => any.Write(json, value, to);
}

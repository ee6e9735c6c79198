using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>The same shape, or null.</summary>
/// <typeparam name="T">The value.</typeparam>
/// <typeparam name="TNull">The value or null.</typeparam>
/// <param name="shape">The shape of a value.</param>
/// <param name="some">A value as one that may be null.</param>
/// <param name="take">One that is not null as a value.</param>
internal sealed class OrNullShape<T, TNull>(Shape<T> shape, Func<T, TNull> some, Func<TNull, T> take) : Shape<TNull>, IHolderShape
{
    public Shape Item => shape;

    public override string WhereItIsSaid => shape.WhereItIsSaid;

    public override IEnumerable<TNull> StandIns => shape.StandIns.Select(some).Prepend(default!);

    public override Outcome Read(JsonElement json, Reading reading, out TNull value)
    {
        T given = default!;
        Outcome outcome = json.ValueKind == JsonValueKind.Null ? Outcome.Read : shape.Read(json, reading, out given);
        value = json.ValueKind == JsonValueKind.Null ? default! : some(given);
        return outcome;
    }

    public override void Write(Utf8JsonWriter json, TNull value, Writing to)
    {
        if (value is null)
        {
            json.WriteNullValue();
        }
        else
        {
            shape.Write(json, take(value), to);
        }
    }
}

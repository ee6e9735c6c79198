using System.Collections.Generic;
using System.Linq;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>A shape whose value may also be null.</summary>
internal static class NullableClass
{
    public static Shape<T?> OrNull<T>(this Shape<T> shape)
        where T : class =>
        new Of<T>(shape);

    private sealed class Of<T>(Shape<T> shape) : Shape<T?>, IHolderShape
        where T : class
    {
        public Shape Item => shape;

        public override string WhereItIsSaid => shape.WhereItIsSaid;

        public override IEnumerable<T?> StandIns => shape.StandIns.Cast<T?>().Prepend(null);

        public override Outcome Read(JsonElement json, Reading reading, out T? value)
        {
            if (json.ValueKind == JsonValueKind.Null)
            {
                value = null;
                return Outcome.Read;
            }

            Outcome outcome = shape.Read(json, reading, out T read);
            value = read;
            return outcome;
        }

        public override void Write(Utf8JsonWriter json, T? value, Writing to)
        {
            if (value is null)
            {
                json.WriteNullValue();
            }
            else
            {
                shape.Write(json, value, to);
            }
        }
    }
}

using System.Linq;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>A currency by its three letters.</summary>
internal sealed class CurrencyShape() : ScalarShape<Currency>(Schema(), Currency.Of("USD"), Currency.Of("JPY"), Currency.Of("KWD"))
{
    public static CurrencyShape Only { get; } = new();

    public override Outcome Read(JsonElement json, Reading reading, out Currency value)
    {
        if (json.ValueKind != JsonValueKind.String)
        {
            reading.WrongType(json, "a currency as a text");
            return Nothing(out value);
        }

        string code = json.GetString()!;
        if (!Currency.TryOf(code, out Currency? known))
        {
            reading.Fault(JsonFaultKind.UnknownKind,
                "\"" + code + "\" is no currency that is known; allowed: three capital letters of ISO 4217 for one with 0, 2 or 3 decimals, such as USD."
                + Spelling.Suggestion(code, [.. Currency.All.Select(one => one.Code)]));
            return Nothing(out value);
        }

        value = known!;
        return Outcome.Read;
    }

    public override void Write(Utf8JsonWriter json, Currency value, Writing to) => json.WriteStringValue(value.Code);

    private static string Schema() => "\"enum\": [" + string.Join(", ", Currency.All.Select(one => "\"" + one.Code + "\"")) + "]";
}

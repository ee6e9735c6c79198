using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>A quantity as it stands in a document: a number and the symbol of its unit, and nothing else.</summary>
internal static class Quantity
{
    public static bool TryOf(JsonElement json, out double number, out string unit)
    {
        number = 0;
        unit = string.Empty;
        if (json.ValueKind != JsonValueKind.Object
            || !json.TryGetProperty("value", out JsonElement value) || value.ValueKind != JsonValueKind.Number
                || !value.TryGetDouble(out number)
            || !json.TryGetProperty("unit", out JsonElement symbol) || symbol.ValueKind != JsonValueKind.String)
        {
            return false;
        }

        unit = symbol.GetString()!;
        int fields = 0;
        foreach (JsonProperty _ in json.EnumerateObject())
        {
            fields++;
        }

        return fields == 2 && double.IsFinite(number);
    }
}

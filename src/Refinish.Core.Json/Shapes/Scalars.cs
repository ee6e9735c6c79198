using System.Collections.Generic;
using System.Globalization;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>What the schema asks of a value that is one JSON string, number or boolean.</summary>
internal interface IScalarShape
{
    /// <summary>The keywords that describe it.</summary>
    string Keywords { get; }
}

/// <summary>A value that is one JSON string, number or boolean.</summary>
internal abstract class ScalarShape<T>(string keywords, params T[] standIns) : Shape<T>, IScalarShape
{
    public string Keywords => keywords;

    public override IEnumerable<T> StandIns => standIns;
}

/// <summary>The scalars of a document.</summary>
internal static class Scalars
{
    public static Shape<string> Text { get; } = new TextShape();

    public static Shape<bool> YesNo { get; } = new YesNoShape();

    public static Shape<int> Count { get; } = new CountShape();

    public static Shape<double> Number { get; } = new NumberShape();

    /// <summary>An amount in the currency of the job; its decimals are kept as they are written.</summary>
    public static Shape<decimal> Money { get; } = new MoneyShape();

    private sealed class TextShape() : ScalarShape<string>("\"type\": \"string\", \"pattern\": \"\\\\S\"", "stand-in")
    {
        public override Outcome Read(JsonElement json, Reading reading, out string value)
        {
            if (json.ValueKind != JsonValueKind.String)
            {
                reading.WrongType(json, "a text");
                return Nothing(out value);
            }

            value = json.GetString()!;
            return Outcome.Read;
        }

        public override void Write(Utf8JsonWriter json, string value, Writing to) => json.WriteStringValue(value);
    }

    private sealed class YesNoShape() : ScalarShape<bool>("\"type\": \"boolean\"", false)
    {
        public override Outcome Read(JsonElement json, Reading reading, out bool value)
        {
            if (json.ValueKind is not (JsonValueKind.True or JsonValueKind.False))
            {
                reading.WrongType(json, "true or false");
                return Nothing(out value);
            }

            value = json.GetBoolean();
            return Outcome.Read;
        }

        public override void Write(Utf8JsonWriter json, bool value, Writing to) => json.WriteBooleanValue(value);
    }

    private sealed class CountShape() : ScalarShape<int>("\"type\": \"integer\"", 0, 1, 2, 5, 10)
    {
        public override Outcome Read(JsonElement json, Reading reading, out int value)
        {
            value = 0;
            if (json.ValueKind != JsonValueKind.Number)
            {
                reading.WrongType(json, "a whole number");
                return Outcome.Nothing;
            }

            if (!json.TryGetInt32(out value))
            {
                reading.Fault(JsonFaultKind.WrongType, json.GetRawText() + " is not a whole number of at most nine digits.");
                return Outcome.Nothing;
            }

            return Outcome.Read;
        }

        public override void Write(Utf8JsonWriter json, int value, Writing to) => json.WriteNumberValue(value);
    }

    private sealed class NumberShape() : ScalarShape<double>("\"type\": \"number\"", 1, 2, 10, 0.5, 0, 100)
    {
        public override Outcome Read(JsonElement json, Reading reading, out double value)
        {
            value = 0;
            if (json.ValueKind != JsonValueKind.Number)
            {
                reading.WrongType(json, "a number");
                return Outcome.Nothing;
            }

            if (!json.TryGetDouble(out value) || !double.IsFinite(value))
            {
                reading.Fault(JsonFaultKind.OutOfRange, "The number is too large; allowed: up to 1.797e308.");
                return Outcome.Nothing;
            }

            return Outcome.Read;
        }

        public override void Write(Utf8JsonWriter json, double value, Writing to) => json.WriteNumberValue(value);
    }

    private sealed class MoneyShape() : ScalarShape<decimal>("\"type\": \"number\"", 1m, 0m)
    {
        public override Outcome Read(JsonElement json, Reading reading, out decimal value)
        {
            value = 0;
            if (json.ValueKind != JsonValueKind.Number)
            {
                reading.WrongType(json, "an amount as a number");
                return Outcome.Nothing;
            }

            if (!json.TryGetDecimal(out value))
            {
                reading.Fault(JsonFaultKind.OutOfRange, "The amount is too large; allowed: up to "
                    + decimal.MaxValue.ToString(CultureInfo.InvariantCulture) + ".");
                return Outcome.Nothing;
            }

            return Outcome.Read;
        }

        public override void Write(Utf8JsonWriter json, decimal value, Writing to) => json.WriteNumberValue(value);
    }
}

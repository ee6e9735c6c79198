using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>What the schema asks of a quantity.</summary>
internal interface IQuantityShape
{
    /// <summary>Name of the kind of quantity.</summary>
    string Name { get; }

    /// <summary>Every spelling that is read.</summary>
    IEnumerable<string> Spellings { get; }
}

/// <summary>A quantity as value and unit.</summary>
/// <param name="table">The kind of quantity.</param>
/// <param name="choose">The unit that the trade would write it in.</param>
internal sealed class QuantityShape<T>(UnitTable<T> table, Func<T, DisplayUnits, Unit<T>> choose) : Shape<T>, IQuantityShape
{
    private static readonly JsonEncodedText Value = JsonEncodedText.Encode("value");
    private static readonly JsonEncodedText Unit = JsonEncodedText.Encode("unit");

    /// <summary>Shown in the unit that the trade uses for one measure: a length of tape in mm, of film in µm.</summary>
    public QuantityShape(UnitTable<T> table, Measure measure)
        : this(table, Shown(table, measure))
    {
    }

    public string Name => table.Name;

    public IEnumerable<string> Spellings => table.Spellings;

    public override string WhereItIsSaid => ".value";

    public override IEnumerable<T> StandIns => table.StandIns.Select(table.Base.Of);

    public override Outcome Read(JsonElement json, Reading reading, out T value)
    {
        if (json.ValueKind != JsonValueKind.Object)
        {
            reading.WrongType(json, "an object with value and unit, such as " + Example());
            return Nothing(out value);
        }

        double? number = null;
        Unit<T>? unit = null;
        bool hasValue = false;
        bool hasUnit = false;
        foreach (JsonProperty property in json.EnumerateObject())
        {
            reading.Enter(property.Name);
            if (property.NameEquals(Value.EncodedUtf8Bytes))
            {
                number = Once(ref hasValue, reading) && Scalars.Number.Read(property.Value, reading, out double read) == Outcome.Read
                    ? read
                    : number;
            }
            else if (property.NameEquals(Unit.EncodedUtf8Bytes))
            {
                unit = Once(ref hasUnit, reading) ? ReadUnit(property.Value, reading) : unit;
            }
            else
            {
                reading.Fault(JsonFaultKind.UnknownField, "A quantity has the fields value and unit alone.");
            }

            reading.Leave();
        }

        Missing(hasValue, "value", reading);
        Missing(hasUnit, "unit", reading);
        return number is double n && unit is not null ? Of(n, unit, reading, out value) : Nothing(out value);
    }

    public override void Write(Utf8JsonWriter json, T value, Writing to) => Write(json, value, to, false);

    public override void WriteItem(Utf8JsonWriter json, T value, Writing to) => Write(json, value, to, true);

    private void Write(Utf8JsonWriter json, T value, Writing to, bool isItem)
    {
        if (to.IsShown)
        {
            Unit<T> shown = choose(value, to.Units);
            json.WriteQuantity(Results.Rounded(shown.In(value)), shown.Symbol, isItem);
            return;
        }

        foreach (Unit<T> unit in (ReadOnlySpan<Unit<T>>)[choose(value, to.Units), choose(value, DisplayUnits.Si)])
        {
            if (table.Exactly(value, unit) is double number)
            {
                json.WriteQuantity(number, unit.Symbol, isItem);
                return;
            }
        }

        json.WriteQuantity(table.Base.In(value), table.Base.Symbol, isItem);
    }

    private static Func<T, DisplayUnits, Unit<T>> Shown(UnitTable<T> table, Measure measure)
    {
        Unit<T> si = table.UnitOf(measure, DisplayUnits.Si);
        Unit<T> us = table.UnitOf(measure, DisplayUnits.UsCustomary);
        return (_, units) => units == DisplayUnits.UsCustomary ? us : si;
    }

    private static bool Once(ref bool already, Reading reading)
    {
        if (already)
        {
            reading.Fault(JsonFaultKind.DuplicateField, "The field stands here twice.");
            return false;
        }

        return already = true;
    }

    private static void Missing(bool isThere, string field, Reading reading)
    {
        if (!isThere)
        {
            reading.FaultAt(field, JsonFaultKind.Missing, "The field is missing.");
        }
    }

    private static Outcome Of(double number, Unit<T> unit, Reading reading, out T value)
    {
        try
        {
            value = unit.Of(number);
            return Outcome.Read;
        }
        catch (ArgumentException refusal)
        {
            reading.Fault(JsonFaultKind.OutOfRange, Refusal.Bare(refusal.Message), ".value");
            return Nothing(out value);
        }
    }

    private Unit<T>? ReadUnit(JsonElement json, Reading reading)
    {
        if (json.ValueKind != JsonValueKind.String)
        {
            reading.WrongType(json, "the symbol of a unit as a text, such as \"" + choose(table.Base.Of(1), DisplayUnits.Si).Symbol + "\"");
            return null;
        }

        Unit<T>? unit = table.Find(json);
        if (unit is null)
        {
            string given = json.GetString()!;
            string hint = table.Spellings.Contains("US " + given)
                ? " Write \"US " + given + "\" or \"imp " + given + "\": the two differ."
                : Spelling.UnitSuggestion(given, table.Spellings);
            reading.Fault(JsonFaultKind.UnknownUnit, "\"" + given + "\" is no unit of " + table.Name + "; one of: "
                + string.Join(", ", table.Symbols) + "." + hint);
        }

        return unit;
    }

    private string Example() => "{ \"value\": 1, \"unit\": \"" + choose(table.Base.Of(1), DisplayUnits.Si).Symbol + "\" }";
}

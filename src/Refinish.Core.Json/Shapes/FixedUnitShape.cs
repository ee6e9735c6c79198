using System;
using System.Collections.Generic;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>The symbol of the one unit in which a value can be given; the first spelling is written.</summary>
internal sealed class FixedUnitShape(params string[] spellings) : Shape<string>, IWordShape
{
    public IReadOnlyList<string> Words => spellings;

    public override IEnumerable<string> StandIns => spellings;

    public override Outcome Read(JsonElement json, Reading reading, out string value)
    {
        value = spellings[0];
        if (json.ValueKind != JsonValueKind.String)
        {
            reading.WrongType(json, "the symbol of the unit as a text: \"" + spellings[0] + "\"");
            return Outcome.Nothing;
        }

        if (Array.Exists(spellings, json.ValueEquals))
        {
            return Outcome.Read;
        }

        reading.Fault(JsonFaultKind.UnknownUnit, "\"" + json.GetString() + "\" is not the unit of this value; it is given in "
            + spellings[0] + ".");
        return Outcome.Nothing;
    }

    public override void Write(Utf8JsonWriter json, string value, Writing to) => json.WriteStringValue(spellings[0]);
}

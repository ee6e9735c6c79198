using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using Refinish.Substrates;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>
/// A ready kind of defect by a word, or one of a caller's own as an object with its code, so that a misspelt word is no new kind.
/// </summary>
internal sealed class DefectKindShape : Shape<DefectKind>, IReferenceShape
{
    private static readonly ObjectShape<DefectKind> Own = new Fields<DefectKind>("ownDefectKind")
        .With("code", Text, it => it.Code, out Slot<string> code)
        .Making(v => DefectKind.Own(code(v)));

    private DefectKindShape()
    {
    }

    public static DefectKindShape Kind { get; } = new();

    public Shape Whole => Own;

    public override IEnumerable<DefectKind> StandIns => DefectKind.All;

    public override Outcome Read(JsonElement json, Reading reading, out DefectKind value)
    {
        if (json.ValueKind == JsonValueKind.Object)
        {
            return Own.Read(json, reading, out value);
        }

        if (json.ValueKind != JsonValueKind.String)
        {
            reading.WrongType(json, "a word as a text, or an object with the code of a kind of your own");
            return Nothing(out value);
        }

        foreach (DefectKind kind in DefectKind.All)
        {
            if (json.ValueEquals(Word(kind)))
            {
                value = kind;
                return Outcome.Read;
            }
        }

        string given = json.GetString()!;
        string[] words = [.. DefectKind.All.Select(Word)];
        reading.Fault(JsonFaultKind.UnknownKind, "\"" + given + "\" is not known; one of: " + string.Join(", ", words)
            + "; a kind of your own is an object with its code." + Spelling.Suggestion(given, words));
        return Nothing(out value);
    }

    public override void Write(Utf8JsonWriter json, DefectKind value, Writing to)
    {
        if (value.IsOwn)
        {
            Own.Write(json, value, to);
        }
        else
        {
            json.WriteStringValue(Word(value));
        }
    }

    private static string Word(DefectKind kind) => char.ToLowerInvariant(kind.Code[0]) + kind.Code[1..];
}

using System;
using System.Collections.Generic;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>What the schema and the tests ask of a shape that may also be an identifier.</summary>
internal interface IReferenceShape
{
    Shape Whole { get; }
}

/// <summary>
/// A value that stands here as a whole, or by the identifier under which the document has defined it before. <c>generic/</c> and an
/// identifier name one of the library's own catalogue.
/// </summary>
/// <param name="whole">How the value looks as a whole.</param>
/// <param name="what">What it is, in words.</param>
/// <param name="idOf">Its identifier.</param>
/// <param name="generic">The library's own by their identifiers; empty where it has none.</param>
internal sealed class ReferenceShape<T>(FieldsShape<T> whole, string what, Func<T, string> idOf, IReadOnlyDictionary<string, T> generic)
    : Shape<T>, IReferenceShape
    where T : class
{
    /// <summary>No identifier has a slash, so that nothing that a document defines can be meant.</summary>
    public const string GenericPrefix = "generic/";

    public Shape Whole => whole;

    public override IEnumerable<T> StandIns => whole.StandIns;

    public override Outcome Read(JsonElement json, Reading reading, out T value)
    {
        if (json.ValueKind == JsonValueKind.Object)
        {
            return whole.Read(json, reading, out value);
        }

        if (json.ValueKind != JsonValueKind.String)
        {
            reading.WrongType(json, "an object, or the identifier of " + what);
            return Nothing(out value);
        }

        string id = json.GetString()!;
        if (id.StartsWith(GenericPrefix, StringComparison.Ordinal)
            ? generic.TryGetValue(id[GenericPrefix.Length..], out T? found)
            : reading.Definitions.TryFind(id, out found))
        {
            // What is defined may itself be a stand-in.
            value = found;
            return reading.Definitions.IsDoubtful ? Outcome.StandIn : Outcome.Read;
        }

        if (!reading.Definitions.IsDoubtful)
        {
            reading.Fault(JsonFaultKind.UnknownId, Unknown(id, reading));
        }

        return Nothing(out value);
    }

    public override void Write(Utf8JsonWriter json, T value, Writing to)
    {
        string id = idOf(value);
        if (to.Definitions.TryFind(id, out T? known) && (ReferenceEquals(known, value) || known.Equals(value)))
        {
            json.WriteStringValue(id);
        }
        else
        {
            whole.Write(json, value, to);
        }
    }

    private string Unknown(string id, Reading reading)
    {
        List<string> known = [.. reading.Definitions.Ids<T>()];
        foreach (string each in generic.Keys)
        {
            known.Add(GenericPrefix + each);
        }

        return "\"" + id + "\" is not the identifier of " + what + " that this document defines"
            + (generic.Count > 0 ? ", nor " + GenericPrefix + " and that of one of the library's." : ".") + Spelling.Suggestion(id, known);
    }
}

using System.Collections.Generic;
using System.Globalization;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>What the schema asks of a document of its own.</summary>
internal interface IDocumentShape : IFieldsShape
{
    string Format { get; }

    int Version { get; }

    string SchemaId { get; }
}

/// <summary>A document of its own: beside its fields it says what it is, in which version, and where its schema is.</summary>
internal sealed class DocumentShape<T>(string format, int version, FieldsShape<T> fields) : FieldsShape<T>(format), IDocumentShape
{
    private const string Earlier =
        " An earlier version of the library wrote it, when a job, its shop and its premises were one; enter the job anew.";

    private static readonly string[] Header = ["$schema", "format", "version"];

    public string Format { get; } = "refinish/" + format;

    public int Version => version;

    public string SchemaId { get; } = "urn:refinish:schema:" + format + ":" + version.ToString(CultureInfo.InvariantCulture);

    public override IReadOnlyList<IField> Fields => fields.Fields;

    public override IEnumerable<T> StandIns => fields.StandIns;

    public override Outcome ReadFields(JsonElement json, Reading reading, string[] outer, out T value)
    {
        if (json.ValueKind != JsonValueKind.Object)
        {
            reading.WrongType(json, "an object with format \"" + Format + "\"");
            return Nothing(out value);
        }

        // A document of another format or version has other fields; to go on would only make noise.
        return HasFormat(json, reading) & HasVersion(json, reading)
            ? fields.ReadFields(json, reading, [.. outer, .. Header], out value)
            : Nothing(out value);
    }

    public override void WriteFields(Utf8JsonWriter json, T value, Writing to)
    {
        json.WriteString(Header[0], SchemaId);
        json.WriteString(Header[1], Format);
        json.WriteNumber(Header[2], version);
        fields.WriteFields(json, value, to);
    }

    private bool HasFormat(JsonElement json, Reading reading)
    {
        if (!json.TryGetProperty(Header[1], out JsonElement given))
        {
            reading.FaultAt(Header[1], JsonFaultKind.Missing, "The field is missing; expected: \"" + Format + "\".");
            return false;
        }

        bool isThis = given.ValueKind == JsonValueKind.String && given.ValueEquals(Format);
        if (!isThis)
        {
            reading.FaultAt(Header[1], JsonFaultKind.UnknownVersion, "The document is of format " + given.GetRawText() + "; expected: \""
                + Format + "\".");
        }

        return isThis;
    }

    private bool HasVersion(JsonElement json, Reading reading)
    {
        string known = version.ToString(CultureInfo.InvariantCulture);
        if (!json.TryGetProperty(Header[2], out JsonElement given))
        {
            reading.FaultAt(Header[2], JsonFaultKind.Missing, "The field is missing; expected: " + known + ".");
            return false;
        }

        bool isThis = given.ValueKind == JsonValueKind.Number && given.TryGetInt32(out int number) && number == version;
        if (!isThis)
        {
            bool isEarlier = given.ValueKind == JsonValueKind.Number && given.TryGetInt32(out number) && number > 0 && number < version;
            reading.FaultAt(
                Header[2],
                JsonFaultKind.UnknownVersion,
                "The document is of version " + given.GetRawText() + ", which this library does not read; it reads version " + known + "."
                    + (isEarlier ? Earlier : string.Empty));
        }

        return isThis;
    }
}

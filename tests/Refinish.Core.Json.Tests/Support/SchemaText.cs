using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Refinish.Json.Shapes;

namespace Refinish.Json.Tests;

/// <summary>Writes the JSON Schema of a document from its shapes and from the documentation of the types they describe.</summary>
internal sealed class SchemaText
{
    private static readonly JsonSerializerOptions Layout = new() { WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly Documentation documentation = new();
    private readonly SortedDictionary<string, JsonObject> definitions = new(StringComparer.Ordinal);
    private readonly HashSet<string> open = [];

    /// <summary>Fields of a job without a sentence; the sentences are missing in the library.</summary>
    public List<string> Unexplained { get; } = [];

    public static string Of(IDocumentShape shape, string title, out IReadOnlyList<string> unexplained)
    {
        SchemaText writer = new();
        JsonObject schema = new()
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["$id"] = shape.SchemaId,
            ["title"] = title,
        };
        foreach ((string keyword, JsonNode? value) in writer.Body(shape, null))
        {
            schema[keyword] = value?.DeepClone();
        }

        schema["$defs"] = new JsonObject(writer.definitions.Select(pair => KeyValuePair.Create(pair.Key, (JsonNode?)pair.Value)));
        unexplained = writer.Unexplained;
        return schema.ToJsonString(Layout).ReplaceLineEndings("\n") + "\n";
    }

    private JsonObject Of(Shape shape) => shape switch
    {
        IDocumentShape document => Defined(document.Name + "Document", () => Body(document, null)),
        IThroughShape through => Of(through.Inner),
        IReferenceShape reference => new JsonObject { ["anyOf"] = new JsonArray(new JsonObject { ["type"] = "string",
            ["pattern"] = "\\S" }, Of(reference.Whole)) },
        IOneOfShape variants => Defined(variants.Name,
            () => new JsonObject { ["oneOf"] = new JsonArray([.. variants.Variants.Select(variant => Defined(variant.Fields.Name,
            () => Body(variant.Fields, variant.Kind)))]) }),
        IFieldsShape fields => Defined(fields.Name, () => Body(fields, null)),
        IListShape list => new JsonObject { ["type"] = "array", ["items"] = Of(list.Item) },
        IHolderShape { Item: IFieldsShape { Name: "jobPlan" } results } => Of((Shape)results),
        IHolderShape holder => new JsonObject { ["anyOf"] = new JsonArray(Of(holder.Item), new JsonObject { ["type"] = "null" }) },
        IQuantityShape quantity => Defined(Camel(quantity.Name) + "Quantity", () => Quantity(quantity)),
        IWordShape words => new JsonObject { ["enum"] = new JsonArray([.. words.Words.Select(word => (JsonNode)word)]) },
        IScalarShape scalar => JsonNode.Parse("{" + scalar.Keywords + "}")!.AsObject(),
        _ => throw new NotSupportedException(shape.GetType().Name),
    };

    /// <summary>A reference to a definition, which is made on the first use. Two of one name have to be alike.</summary>
    private JsonObject Defined(string name, Func<JsonObject> make)
    {
        if (open.Add(name))
        {
            JsonObject made = make();
            if (definitions.TryGetValue(name, out JsonObject? other) && !JsonNode.DeepEquals(made, other))
            {
                throw new InvalidOperationException("There are two shapes with the name " + name + ".");
            }

            definitions[name] = made;
            open.Remove(name);
        }

        return new JsonObject { ["$ref"] = "#/$defs/" + name };
    }

    private JsonObject Body(IFieldsShape shape, string? kind)
    {
        JsonObject properties = [];
        List<string> required = [];
        if (shape is IDocumentShape document)
        {
            properties["$schema"] = new JsonObject { ["type"] = "string", ["description"] = "Where the schema is; for editors, not read." };
            properties["format"] = new JsonObject { ["const"] = document.Format };
            properties["version"] = new JsonObject { ["const"] = document.Version };
            required.AddRange(["format", "version"]);
        }

        if (kind is not null)
        {
            properties["kind"] = new JsonObject { ["const"] = kind };
            required.Add("kind");
        }

        foreach (IField field in shape.Fields)
        {
            JsonObject schema = Of(field.Shape);
            if (Sentence(shape, field) is string sentence)
            {
                schema["description"] = sentence;
            }
            else
            {
                Unexplained.Add(shape.Name + "." + field.Name);
            }

            properties[field.Name] = schema;
            if (field.IsRequired)
            {
                required.Add(field.Name);
            }
        }

        JsonObject body = new() { ["type"] = "object" };
        if (documentation.Of(shape.Described) is string about)
        {
            body["description"] = about;
        }

        body["properties"] = properties;
        body["required"] = new JsonArray([.. required.Select(name => (JsonNode)name)]);
        body["additionalProperties"] = false;
        return body;
    }

    // A few fields are not called as the property or parameter that they stand for.
    private string? Sentence(IFieldsShape shape, IField field) => (shape.Name, field.Name) switch
    {
        (_, "unit") when field.Shape is FixedUnitShape => "Unit of the three values.",
        ("roughFixture" or "composedFixture", "of") => "Which kind of fixture it is, by the name of its kind.",
        ("triangleMesh", "vertices") => "The points in metres, three numbers each: along, across, upwards.",
        ("triangleMesh", "zones") => "The zones that its triangles name by their place in this list, from 0.",
        ("triangleMesh", "triangles") => "Four numbers for each triangle: three places in vertices, from 0 and anticlockwise as seen from "
            + "the coated side, and one in zones, -1 for none. At most 200 000 triangles.",
        ("materialNeed", "volume") => "How much, where it is needed by volume; otherwise amount.",
        ("preparationStep", "step") => documentation.Of(shape.Described, "kind"),
        ("solvent", "nonBurning") => "What it rests on that the vapour does not burn; left out when it burns or when nothing is known.",
        ("solvent", "lowerFlammableLimit") => documentation.Of(typeof(Refinish.Coatings.Flammability), "lower"),
        ("solvent", "upperFlammableLimit") => documentation.Of(typeof(Refinish.Coatings.Flammability), "upper"),
        ("solvent", "flashPoint") => documentation.Of(typeof(Refinish.Coatings.Flammability), field.Name),
        ("solvent", "vapourPressure" or "boilingPoint") => documentation.Of(typeof(Refinish.Coatings.Volatility), field.Name),
        ("solvent", "notVolatile") => "What it rests on that it is not volatile; left out when it evaporates or when nothing is known.",
        (_, "catalogue") => documentation.Of(typeof(Catalogue)) + " generic/ and an identifier name what the library has itself.",
        _ => documentation.Of(shape.Described, field.Name),
    };

    private static JsonObject Quantity(IQuantityShape quantity)
    {
        JsonObject unit = quantity.Spellings.Any()
            ? new JsonObject { ["enum"] = new JsonArray([.. quantity.Spellings.Select(spelling => (JsonNode)spelling)]) }
            : new JsonObject { ["type"] = "string" };
        return new JsonObject
        {
            ["type"] = "object",
            ["properties"] = new JsonObject { ["value"] = new JsonObject { ["type"] = "number" }, ["unit"] = unit },
            ["required"] = new JsonArray("value", "unit"),
            ["additionalProperties"] = false,
        };
    }

    private static string Camel(string words) =>
        string.Concat(words.Split(' ').Select((word, i) => i == 0 ? word : char.ToUpperInvariant(word[0]) + word[1..]));
}

using System.Collections.Generic;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>What the schema and the tests ask of a shape with fields.</summary>
internal interface IFieldsShape
{
    /// <summary>Name of the definition in the schema.</summary>
    string Name { get; }

    /// <summary>The type whose documentation explains the fields.</summary>
    System.Type Described { get; }

    IReadOnlyList<IField> Fields { get; }
}

/// <summary>What the schema and the tests ask of a field.</summary>
internal interface IField
{
    string Name { get; }

    Shape Shape { get; }

    bool IsRequired { get; }
}

/// <summary>A shape whose values are JSON objects with known fields. A larger object may take in the fields beside its own.</summary>
internal abstract class FieldsShape<T>(string name) : Shape<T>, IFieldsShape
{
    public string Name => name;

    public virtual System.Type Described => typeof(T);

    public abstract IReadOnlyList<IField> Fields { get; }

    public sealed override Outcome Read(JsonElement json, Reading reading, out T value) => ReadFields(json, reading, [], out value);

    public sealed override void Write(Utf8JsonWriter json, T value, Writing to)
    {
        json.WriteStartObject();
        WriteFields(json, value, to);
        json.WriteEndObject();
    }

    /// <param name="json">The object.</param>
    /// <param name="reading">The pass.</param>
    /// <param name="outer">Names of fields that stand in the same object and are read elsewhere.</param>
    /// <param name="value">What was read.</param>
    public abstract Outcome ReadFields(JsonElement json, Reading reading, string[] outer, out T value);

    public abstract void WriteFields(Utf8JsonWriter json, T value, Writing to);

    /// <summary>Makes known what stands in it and may be written alone; nothing unless it says so.</summary>
    public virtual void AddParts(ShapeResolver resolver)
    {
    }
}

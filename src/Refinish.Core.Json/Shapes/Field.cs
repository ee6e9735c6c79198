using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>One field of an object.</summary>
internal abstract class Field<T>(string name, Shape shape, bool isRequired) : IField
{
    public string Name => name;

    public Shape Shape => shape;

    public bool IsRequired => isRequired;

    public JsonEncodedText Encoded { get; } = JsonEncodedText.Encode(name);

    /// <summary>Whether the object is made with this field; the others are put on it afterwards.</summary>
    public abstract bool IsPartOfMaking { get; }

    /// <summary>What the object is made with when the document leaves the field out.</summary>
    public abstract object? Fallback { get; }

    public abstract IEnumerable<object?> StandIns { get; }

    public abstract Outcome Read(JsonElement json, Reading reading, out object? value);

    public abstract T Put(T made, object? value);

    public abstract void Write(Utf8JsonWriter json, T owner, Writing to);
}

/// <inheritdoc/>
/// <param name="name">Name in the document.</param>
/// <param name="shape">How its value looks.</param>
/// <param name="isRequired">Whether a document has to have it.</param>
/// <param name="get">Takes the value from its owner.</param>
/// <param name="put">Puts the value on an owner already made; null for a field with which the owner is made.</param>
/// <param name="fallback">What the owner is made with when the document leaves the field out.</param>
internal sealed class Field<T, TField>(string name, Shape<TField> shape, bool isRequired, Func<T, TField> get, Func<T, TField, T>? put,
    TField fallback)
    : Field<T>(name, shape, isRequired)
{
    public override bool IsPartOfMaking => put is null;

    public override object? Fallback => fallback;

    public override IEnumerable<object?> StandIns => shape.StandIns.Cast<object?>();

    public override Outcome Read(JsonElement json, Reading reading, out object? value)
    {
        Outcome outcome = shape.Read(json, reading, out TField read);
        value = read;
        return outcome;
    }

    // Null, where it is allowed, says the same as leaving the field out.
    public override T Put(T made, object? value) => put is null || value is null ? made : put(made, (TField)value);

    public override void Write(Utf8JsonWriter json, T owner, Writing to)
    {
        TField value = get(owner);
        if (value is null && !IsRequired)
        {
            return;
        }

        json.WritePropertyName(Encoded);
        shape.Write(json, value, to);
    }
}

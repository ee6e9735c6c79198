using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>What the schema asks of a shape with variants.</summary>
internal interface IOneOfShape
{
    string Name { get; }

    IReadOnlyList<(string Kind, IFieldsShape Fields)> Variants { get; }
}

/// <summary>One of several shapes, told apart by the field "kind".</summary>
internal sealed class OneOfShape<T>(string name) : Shape<T>, IOneOfShape
{
    private static readonly string[] Discriminator = ["kind"];

    private readonly List<Variant> variants = [];

    public string Name => name;

    public IReadOnlyList<(string Kind, IFieldsShape Fields)> Variants => [.. variants.Select(variant => (variant.Kind, variant.Fields))];

    public override IEnumerable<T> StandIns => variants.SelectMany(variant => variant.StandIns);

    /// <summary>What has a form in the place of a type of one's own; <see langword="null"/> where nothing has.</summary>
    public string? Instead { get; init; }

    public OneOfShape<T> Or<TVariant>(string kind, FieldsShape<TVariant> shape, Func<TVariant, bool>? when = null)
        where TVariant : T
    {
        variants.Add(new Variant<TVariant>(kind, shape, when));
        return this;
    }

    public override Outcome Read(JsonElement json, Reading reading, out T value)
    {
        if (json.ValueKind != JsonValueKind.Object)
        {
            reading.WrongType(json, "an object with the field \"kind\"");
            return Nothing(out value);
        }

        if (!json.TryGetProperty(Discriminator[0], out JsonElement kind))
        {
            reading.FaultAt(Discriminator[0], JsonFaultKind.Missing, "The field is missing; one of: " + Kinds + ".");
            return Nothing(out value);
        }

        reading.Enter(Discriminator[0]);
        Variant? variant = null;
        if (kind.ValueKind != JsonValueKind.String)
        {
            reading.WrongType(kind, "a text");
        }
        else if ((variant = variants.Find(each => kind.ValueEquals(each.Kind))) is null)
        {
            string given = kind.GetString()!;
            reading.Fault(
                JsonFaultKind.UnknownKind,
                "\"" + given + "\" is not known; one of: " + Kinds + "." + Spelling.Suggestion(given, variants.Select(each => each.Kind)));
        }

        reading.Leave();
        return variant is null ? Nothing(out value) : variant.ReadFields(json, reading, out value);
    }

    public override void Write(Utf8JsonWriter json, T value, Writing to)
    {
        Variant variant = variants.Find(each => each.Holds(value))
            ?? throw new NotSupportedException("A " + value!.GetType().Name + " of one's own has no form in JSON; "
                + (Instead is null ? string.Empty : Instead + "; ") + "known: " + Kinds + ".");
        json.WriteStartObject();
        json.WriteString(Discriminator[0], variant.Kind);
        variant.WriteFields(json, value, to);
        json.WriteEndObject();
    }

    /// <summary>Makes itself known, and each kind alone with what it is made of.</summary>
    public void AddTo(ShapeResolver resolver)
    {
        resolver.Add(this);
        variants.ForEach(variant => variant.AddTo(resolver, this));
    }

    private string Kinds => string.Join(", ", variants.Select(each => each.Kind));

    private abstract class Variant(string kind)
    {
        public string Kind => kind;

        public abstract IFieldsShape Fields { get; }

        public abstract IEnumerable<T> StandIns { get; }

        public abstract bool Holds(T value);

        public abstract Outcome ReadFields(JsonElement json, Reading reading, out T value);

        public abstract void WriteFields(Utf8JsonWriter json, T value, Writing to);

        public abstract void AddTo(ShapeResolver resolver, Shape<T> any);
    }

    private sealed class Variant<TVariant>(string kind, FieldsShape<TVariant> shape, Func<TVariant, bool>? when) : Variant(kind)
        where TVariant : T
    {
        public override IFieldsShape Fields => shape;

        public override IEnumerable<T> StandIns => shape.StandIns.Select(variant => (T)variant);

        public override bool Holds(T value) => value is TVariant variant && (when is null || when(variant));

        public override Outcome ReadFields(JsonElement json, Reading reading, out T value)
        {
            Outcome outcome = shape.ReadFields(json, reading, Discriminator, out TVariant variant);
            value = variant;
            return outcome;
        }

        public override void WriteFields(Utf8JsonWriter json, T value, Writing to) => shape.WriteFields(json, (TVariant)value!, to);

        public override void AddTo(ShapeResolver resolver, Shape<T> any)
        {
            resolver.Add(new KindShape<T, TVariant>(any));
            shape.AddParts(resolver);
        }
    }
}

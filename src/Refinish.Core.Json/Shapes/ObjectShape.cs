using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>A record or struct: its fields and how it is made of them.</summary>
internal sealed class ObjectShape<T>(string name, Field<T>[] fields, Func<Values, T> make, Func<T>? standIn) : FieldsShape<T>(name)
{
    /// <summary>
    /// Whether the fields are read in their own order and not in that of the document, because later ones name what earlier ones define.
    /// </summary>
    public bool IsInOrder { get; init; }

    /// <summary>The type whose properties the fields show; the type itself unless given.</summary>
    public Type? Of { get; init; }

    public override Type Described => Of ?? base.Described;

    public override IReadOnlyList<IField> Fields => fields;

    // Where fields bear upon each other, stand-ins of the single fields would contradict each other.
    private bool IsTogether => standIn is not null;

    public override IEnumerable<T> StandIns
    {
        get
        {
            if (standIn is not null)
            {
                yield return standIn();
            }
            else if (Make(new Reading(), new Values(fields.Length), out T invented))
            {
                yield return invented;
            }
        }
    }

    /// <summary>The same fields for a calculation that is made of this record and checks what lies between its values.</summary>
    public FieldsShape<TMade> Into<TMade>(string madeName, Func<T, TMade> into, Func<TMade, T> from) =>
        new IntoShape<T, TMade>(madeName, this, into, from);

    public override Outcome ReadFields(JsonElement json, Reading reading, string[] outer, out T value)
    {
        if (json.ValueKind != JsonValueKind.Object)
        {
            reading.WrongType(json, "an object");
            return Nothing(out value);
        }

        Values values = new(fields.Length);
        bool[] seen = new bool[fields.Length];

        // What is missing may have defined what other fields name.
        reading.Definitions.IsDoubtful |= IsInOrder
            && Array.Exists(fields, field => field.IsRequired && !json.TryGetProperty(field.Name, out _));
        ReadEach(json, reading, outer, values, seen);
        FillIn(reading, values, seen);
        return Make(reading, values, out value) ? Finish(reading, values, ref value) : Nothing(out value);
    }

    public override void WriteFields(Utf8JsonWriter json, T value, Writing to)
    {
        foreach (Field<T> field in fields)
        {
            field.Write(json, value, to);
        }
    }

    private void ReadEach(JsonElement json, Reading reading, string[] outer, Values values, bool[] seen)
    {
        bool[] seenOuter = new bool[outer.Length];
        int next = 0;
        foreach (JsonProperty property in IsInOrder ? InOrder(json) : json.EnumerateObject())
        {
            if (reading.IsFull)
            {
                return;
            }

            int field = Find(property, next);
            bool isOuter = field < 0 && (field = Array.FindIndex(outer, property.NameEquals)) >= 0;
            bool[] already = isOuter ? seenOuter : seen;
            reading.Enter(field < 0 || isOuter ? property.Name : fields[field].Name);
            if (field < 0)
            {
                IEnumerable<string> known = outer.Concat(fields.Where((_, i) => !seen[i]).Select(each => each.Name));
                reading.Fault(JsonFaultKind.UnknownField, "There is no field of this name." + Spelling.Suggestion(property.Name, known));
            }
            else if (already[field])
            {
                reading.Fault(JsonFaultKind.DuplicateField, "The field stands here twice.");
            }
            else
            {
                already[field] = true;
                if (!isOuter)
                {
                    Outcome outcome = fields[field].Read(property.Value, reading, out object? read);
                    values.Set(field, read, outcome);
                    next = field + 1;
                }
            }

            reading.Leave();
        }
    }

    private IEnumerable<JsonProperty> InOrder(JsonElement json) =>
        json.EnumerateObject().OrderBy(property => Find(property, 0) is >= 0 and int field ? field : fields.Length);

    // Documents mostly hold the fields in the order of writing, so the one after the last is tried first.
    private int Find(JsonProperty property, int next)
    {
        for (int i = 0; i < fields.Length; i++)
        {
            int field = (next + i) % fields.Length;
            if (property.NameEquals(fields[field].Encoded.EncodedUtf8Bytes))
            {
                return field;
            }
        }

        return -1;
    }

    private void FillIn(Reading reading, Values values, bool[] seen)
    {
        for (int i = 0; i < fields.Length; i++)
        {
            if (seen[i])
            {
                continue;
            }

            if (fields[i].IsRequired)
            {
                reading.FaultAt(fields[i].Name, JsonFaultKind.Missing, "The field is missing.");
            }
            else if (fields[i].IsPartOfMaking)
            {
                values.Set(i, fields[i].Fallback, Outcome.Read);
            }
        }
    }

    // Where a value is missing or refused, stand-ins are tried in its place until the library accepts one, so that what else is wrong comes
    // to light too.
    private bool Make(Reading reading, Values values, out T made)
    {
        IEnumerator<object?>?[] standIns = new IEnumerator<object?>?[fields.Length];
        for (int i = 0; i < fields.Length; i++)
        {
            if (fields[i].IsPartOfMaking && values.OutcomeOf(i) == Outcome.Nothing && !StandIn(i))
            {
                return Failed(out made);
            }
        }

        while (true)
        {
            try
            {
                made = make(values);
                return true;
            }
            catch (ArgumentException refusal)
            {
                int field = Array.IndexOf(fields, Refusal.Find(refusal, fields));
                if (values.HasStandIns && (IsTogether || field < 0))
                {
                    return Failed(out made);
                }

                if (field < 0)
                {
                    Refusal.Note(refusal, fields, reading);
                    return Failed(out made);
                }

                if (values.OutcomeOf(field) == Outcome.Read)
                {
                    Refuse(reading, fields[field], refusal);
                }

                if (IsTogether || !StandIn(field))
                {
                    return Failed(out made);
                }
            }
        }

        static bool Failed(out T made) => Nothing(out made) != Outcome.Nothing;

        bool StandIn(int field)
        {
            IEnumerator<object?> next = standIns[field] ??= fields[field].StandIns.GetEnumerator();
            if (!next.MoveNext())
            {
                return false;
            }

            values.Set(field, next.Current, Outcome.StandIn);
            return true;
        }
    }

    private Outcome Finish(Reading reading, Values values, ref T made)
    {
        bool isWhole = !values.HasStandIns;
        for (int i = 0; i < fields.Length; i++)
        {
            if (fields[i].IsPartOfMaking || values.OutcomeOf(i) == Outcome.Nothing)
            {
                continue;
            }

            try
            {
                made = fields[i].Put(made, values[i]);
            }
            catch (ArgumentException refusal)
            {
                isWhole = false;
                if (values.OutcomeOf(i) == Outcome.Read)
                {
                    Refuse(reading, fields[i], refusal);
                }
            }
        }

        return isWhole ? Outcome.Read : Outcome.StandIn;
    }

    private void Refuse(Reading reading, Field<T> field, ArgumentException refusal)
    {
        reading.Enter(field.Name);
        reading.Fault(JsonFaultKind.OutOfRange, Refusal.Sentence(refusal, fields), field.Shape.WhereItIsSaid);
        reading.Leave();
    }
}

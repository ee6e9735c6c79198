using System;
using System.Collections.Generic;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>A calculation that is made of one record, such as a bathtub of its measurements, and looks like that record.</summary>
internal sealed class IntoShape<TFrom, T>(string name, FieldsShape<TFrom> from, Func<TFrom, T> into, Func<T, TFrom> back)
    : FieldsShape<T>(name)
{
    public override Type Described => typeof(TFrom);

    public override IReadOnlyList<IField> Fields => from.Fields;

    public override IEnumerable<T> StandIns
    {
        get
        {
            foreach (TFrom given in from.StandIns)
            {
                T made;
                try
                {
                    made = into(given);
                }
                catch (ArgumentException)
                {
                    continue;
                }

                yield return made;
            }
        }
    }

    public override Outcome ReadFields(JsonElement json, Reading reading, string[] outer, out T value)
    {
        Outcome outcome = from.ReadFields(json, reading, outer, out TFrom given);
        if (outcome == Outcome.Nothing)
        {
            return Nothing(out value);
        }

        try
        {
            value = into(given);
            return outcome;
        }
        catch (ArgumentException refusal)
        {
            // Between a value and a stand-in there is nothing to contradict.
            if (outcome == Outcome.Read)
            {
                Refusal.Note(refusal, Fields, reading);
            }

            return Nothing(out value);
        }
    }

    public override void AddParts(ShapeResolver resolver) => resolver.Add(from);

    public override void WriteFields(Utf8JsonWriter json, T value, Writing to) => from.WriteFields(json, back(value), to);
}

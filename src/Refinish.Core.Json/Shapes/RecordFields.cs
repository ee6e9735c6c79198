using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>Fields that follow from the table of a record's inputs.</summary>
internal static class RecordFields
{
    /// <summary>A field for each input, first those that have to be there.</summary>
    public static Fields<T> Readings<T>(this Fields<T> fields, RecordInputs<T> inputs, out Slot<InputValues> slot)
        where T : class
    {
        List<Func<Values, InputValues, InputValues>> needed = [];
        foreach (InputField input in inputs.OrderBy(input => !input.IsRequired))
        {
            if (input.IsWhole)
            {
                Add(Scalars.Count, si => (int)si, (made, count) => made.With(input.Name, count));
            }
            else if (input.Measure.Equals(Measure.Length))
            {
                Add(Quantities.Tape, si => Length.FromMeters(si), (made, length) => made.With(input.Name, length));
            }
            else if (input.Measure.Equals(Measure.Angle))
            {
                Add(Quantities.Angle, si => Angle.FromRadians(si), (made, angle) => made.With(input.Name, angle));
            }
            else if (input.Measure.Equals(Measure.Percent))
            {
                Add(Quantities.Percent, si => Ratio.FromDecimalFractions(si), (made, share) => made.With(input.Name, share));
            }
            else if (input.Measure.Equals(Measure.Number))
            {
                Add(Scalars.Number, si => si, (made, number) => made.With(input.Name, number));
            }
            else
            {
                throw new NotSupportedException("There is no field for " + input.Name + ", a " + input.Measure.Kind + ".");
            }

            void Add<TField>(Shape<TField> shape, Func<double, TField> of, Func<InputValues, TField, InputValues> with)
            {
                string name = char.ToLowerInvariant(input.Name[0]) + input.Name[1..];
                TField Get(T record) => of(inputs.ValuesOf(record).Value(input.Name)!.Value);
                if (input.IsRequired)
                {
                    fields.With(name, shape, Get, out Slot<TField> value);
                    needed.Add((values, made) => with(made, value(values)));
                }
                else
                {
                    fields.Optional(name, shape, Get, (record, value) => inputs.With(record, with(inputs.ValuesOf(record), value)));
                }
            }
        }

        slot = values => needed.Aggregate(inputs.Empty, (made, each) => each(values, made));
        return fields;
    }
}

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
            switch (input)
            {
                case { IsWhole: true }:
                    Add(Scalars.Count, si => (int)si, (made, count) => made.With(input.Name, count));
                    break;
                case { Measure: var measure } when measure.Equals(Measure.Number):
                    Add(Scalars.Number, si => si, (made, number) => made.With(input.Name, number));
                    break;
                case { Measure: var measure } when measure.Equals(Measure.HydroxylNumber):
                    Add(Quantities.HydroxylNumber, si => Math.Round(si * 1000, 9), (made, number) =>
                        made.With(input.Name, number / 1000).With(input.Name, Math.Round(number, 9) / 1000));
                    break;
                case { Measure: var measure } when measure.Equals(Measure.Hours):
                    Add(Quantities.Duration, si => TimeSpan.FromTicks((long)Math.Round(si * TimeSpan.TicksPerSecond)),
                        (made, time) => made.With(input.Name, time.TotalSeconds));
                    break;
                case { Measure: var measure } when measure.Equals(Measure.Length):
                    Quantity(Quantities.Tape, si => Length.FromMeters(si));
                    break;
                case { Measure: var measure } when measure.Equals(Measure.Film):
                    Quantity(Quantities.Film, si => Length.FromMeters(si));
                    break;
                case { Measure: var measure } when measure.Equals(Measure.Angle):
                    Quantity(Quantities.Angle, si => Angle.FromRadians(si));
                    break;
                case { Measure: var measure } when measure.Equals(Measure.Percent):
                    Quantity(Quantities.Percent, si => Ratio.FromDecimalFractions(si));
                    break;
                case { Measure: var measure } when measure.Equals(Measure.Liquid):
                    Quantity(Quantities.Liquid, si => Volume.FromCubicMeters(si));
                    break;
                case { Measure: var measure } when measure.Equals(Measure.FluidRate):
                    Quantity(Quantities.FluidRate, si => VolumeFlow.FromCubicMetersPerSecond(si));
                    break;
                case { Measure: var measure } when measure.Equals(Measure.Distance):
                    Quantity(Quantities.Distance, si => Length.FromMeters(si));
                    break;
                case { Measure: var measure } when measure.Equals(Measure.Airflow):
                    Quantity(Quantities.Airflow, si => VolumeFlow.FromCubicMetersPerSecond(si));
                    break;
                case { Measure: var measure } when measure.Equals(Measure.Pressure):
                    Quantity(Quantities.Pressure, si => Pressure.FromPascals(si));
                    break;
                case { Measure: var measure } when measure.Equals(Measure.Temperature):
                    Quantity(Quantities.Temperature, si => Temperature.FromKelvins(si));
                    break;
                case { Measure: var measure } when measure.Equals(Measure.Density):
                    Quantity(Quantities.Density, si => Density.FromKilogramsPerCubicMeter(si));
                    break;
                case { Measure: var measure } when measure.Equals(Measure.EquivalentWeight):
                    Quantity(Quantities.MolarMass, si => MolarMass.FromKilogramsPerMole(si));
                    break;
                case { Measure: var measure } when measure.Equals(Measure.DynamicViscosity):
                    Quantity(Quantities.Viscosity, si => DynamicViscosity.FromPascalSeconds(si));
                    break;
                default:
                    throw new NotSupportedException("There is no field for " + input.Name + ", of the kind " + input.Measure.Kind + ".");
            }

            void Quantity<TField>(Shape<TField> shape, Func<double, TField> of)
                where TField : struct, IQuantity => Add(shape, of, (made, value) => made.With(input.Name, value));

            void Add<TField>(Shape<TField> shape, Func<double, TField> of, Func<InputValues, TField, InputValues> with)
                where TField : struct
            {
                string name = char.ToLowerInvariant(input.Name[0]) + input.Name[1..];
                TField Get(T record) => of(inputs.ValuesOf(record).Value(input.Name)!.Value);
                if (input.IsRequired)
                {
                    fields.With(name, shape, Get, out Slot<TField> value);
                    needed.Add((values, made) => with(made, value(values)));
                }
                else if (input.MayBeUnknown)
                {
                    fields.Maybe(name, shape, record => inputs.ValuesOf(record).Value(input.Name) is double si ? of(si) : null, Put);
                }
                else
                {
                    fields.Optional(name, shape, Get, Put);
                }

                T Put(T record, TField value) => inputs.With(record, with(inputs.ValuesOf(record), value));
            }
        }

        slot = values => needed.Aggregate(inputs.Empty, (made, each) => each(values, made));
        return fields;
    }
}

using System;

namespace Refinish;

/// <summary>The inputs of one type of record, with which its values are read and changed by name.</summary>
/// <typeparam name="T">The record.</typeparam>
/// <example><code>
/// ShowerPan pan = new(tape);                                 // the pan of ShowerPanMeasurements
/// RecordInputs&lt;ShowerPanMeasurements&gt; inputs = ShowerPanMeasurements.Inputs;
/// ShowerPanMeasurements longer = inputs.With(tape, inputs.ValuesOf(tape).With("FloorLength", Length.FromInches(54)));
/// </code></example>
public sealed class RecordInputs<T> : InputTable
    where T : class
{
    private readonly Func<T, InputValues> values;
    private readonly Func<T, InputValues, T> with;

    internal RecordInputs(Func<T, InputValues> values, Func<T, InputValues, T> with, params InputField[] inputs) : base(inputs)
    {
        this.values = values;
        this.with = with;
    }

    /// <summary>The values of a record.</summary>
    /// <param name="record">The record.</param>
    /// <returns>Its values by name.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="record"/> is missing.</exception>
    public InputValues ValuesOf(T record) => values(Guard.NotNull(record));

    /// <summary>The same record with other values.</summary>
    /// <param name="record">The record; what is no input of the table is taken from it.</param>
    /// <param name="newValues">The values.</param>
    /// <returns>The record with them.</returns>
    /// <exception cref="ArgumentException">
    /// An argument is missing, the values are of other inputs, or one is missing that has to be given.
    /// </exception>
    public T With(T record, InputValues newValues) => with(Guard.NotNull(record), Whole(newValues, nameof(newValues)));
}

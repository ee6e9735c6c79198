using System;
using System.Collections;
using System.Collections.Generic;
using System.Linq;

namespace Refinish;

/// <summary>The inputs of a record or of a kind of fixture, in the order in which they are asked for.</summary>
/// <example><code>
/// string[] needed = [.. ShowerPanMeasurements.Inputs.Where(input =&gt; input.IsRequired).Select(input =&gt; input.Name)];
/// int first = needed.Length;   // 8
/// </code></example>
public class InputTable : IReadOnlyList<InputField>
{
    private readonly InputField[] inputs;

    internal InputTable(IEnumerable<InputField> inputs)
    {
        this.inputs = [.. inputs];
        Empty = new InputValues(this, [.. this.inputs.Select(input => input.Default ?? double.NaN)]);
    }

    /// <summary>How many there are.</summary>
    public int Count => inputs.Length;

    /// <summary>No values yet, but for the inputs that have one when they are left out.</summary>
    public InputValues Empty { get; }

    /// <summary>An input by its place.</summary>
    /// <param name="index">The place, from 0.</param>
    /// <returns>The input.</returns>
    public InputField this[int index] => inputs[index];

    /// <summary>An input by its name.</summary>
    /// <param name="name">The name.</param>
    /// <returns>The input.</returns>
    /// <exception cref="ArgumentException">There is no such input; the message lists those that are.</exception>
    public InputField this[string name] => inputs[PlaceOf(name)];

    /// <inheritdoc/>
    public IEnumerator<InputField> GetEnumerator() => ((IEnumerable<InputField>)inputs).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>The names.</summary>
    /// <returns>Text such as <c>FloorLength, FloorWidth</c>.</returns>
    public override string ToString() => string.Join(", ", inputs.Select(input => input.Name));

    internal int PlaceOf(string name) => Find(name) is >= 0 and int place
        ? place
        : throw new ArgumentException("name is \"" + Guard.NotNull(name) + "\"; known: " + this + ".", nameof(name));

    // A property asks for its own name, which is mostly the same object: found without reading the letters.
    internal int Find(string name)
    {
        for (int i = 0; i < inputs.Length; i++)
        {
            if (ReferenceEquals(inputs[i].Name, name))
            {
                return i;
            }
        }

        return FindByLetters(name);
    }

    // Apart, because what a search captures is made on entry, and reading a length makes nothing.
    private int FindByLetters(string name) => Array.FindIndex(inputs, input => input.Name == name);

    /// <summary>Values that are found by name, in SI; of an input that is not found the default.</summary>
    internal InputValues Of(Func<string, double?> found) =>
        new(this, [.. inputs.Select(input => found(input.Name) is double si ? input.Checked(si) : input.Default ?? double.NaN)]);

    /// <summary>Values of this table, none of those missing that have to be given.</summary>
    internal InputValues Whole(InputValues values, string name)
    {
        if (!ReferenceEquals(Guard.NotNull(values, name).Inputs, this))
        {
            throw new ArgumentException(name + " has values of other inputs; expected: " + this + ".", name);
        }

        return values.IsWhole
            ? values
            : throw new ArgumentException(name + " lacks " + string.Join(", ", values.Missing.Select(input => input.Name)) + ".", name);
    }
}

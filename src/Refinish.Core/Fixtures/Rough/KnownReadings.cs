using System;
using System.Collections.Generic;

namespace Refinish.Fixtures;

/// <summary>The readings of a fixture that are known so far, taken or worked out, in SI.</summary>
internal readonly struct KnownReadings(IReadOnlyDictionary<string, int> places, double[] values, bool[] known)
{
    public double this[string name] => values[places[name]];

    /// <summary>A reading, or something else while it is not known or where the fixture does not have it.</summary>
    public double Or(string name, double otherwise) => places.TryGetValue(name, out int place) && known[place] ? values[place] : otherwise;

    public UnitsNet.Length Length(string name) => UnitsNet.Length.FromMeters(this[name]);

    /// <summary>The readings for a record; those that this kind does not have are left as the record has them.</summary>
    public InputValues For(InputTable inputs)
    {
        IReadOnlyDictionary<string, int> all = places;
        double[] si = values;
        return inputs.Of(name => !all.TryGetValue(name, out int place) ? null : inputs[name].IsWhole ? Math.Round(si[place]) : si[place]);
    }
}

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

    public int Count(string name) => (int)Math.Round(this[name]);
}

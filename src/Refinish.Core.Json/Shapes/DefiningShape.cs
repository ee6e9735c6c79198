using System;
using System.Collections.Generic;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>What the schema and the tests ask of a shape that looks like another.</summary>
internal interface IThroughShape
{
    Shape Inner { get; }
}

/// <summary>A value that later places of the document may name in part: products of a catalogue, labour standards of a shop.</summary>
/// <param name="inner">How the value looks.</param>
/// <param name="define">Notes its definitions; gives the identifier that is there twice, if one is.</param>
internal sealed class DefiningShape<T>(Shape<T> inner, Func<Definitions, T, string?> define) : Shape<T>, IThroughShape
{
    public Shape Inner => inner;

    public override IEnumerable<T> StandIns => inner.StandIns;

    public override Outcome Read(JsonElement json, Reading reading, out T value)
    {
        int faults = reading.Faults.Count;
        Outcome outcome = inner.Read(json, reading, out value);
        reading.Definitions.IsDoubtful |= reading.Faults.Count > faults;
        if (outcome != Outcome.Nothing && define(reading.Definitions, value) is string twice && outcome == Outcome.Read)
        {
            reading.Fault(JsonFaultKind.Contradiction, "\"" + twice + "\" is defined twice; each entry needs an identifier of its own.");
            reading.Definitions.IsDoubtful = true;
            return Outcome.StandIn;
        }

        return outcome;
    }

    public override void Write(Utf8JsonWriter json, T value, Writing to)
    {
        inner.Write(json, value, to);
        define(to.Definitions, value);
    }
}

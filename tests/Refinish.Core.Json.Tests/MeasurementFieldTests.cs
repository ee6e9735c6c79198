using System;
using System.Collections.Generic;
using System.Linq;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Nodes;
using Refinish.Fixtures;
using Refinish.Json.Shapes;
using Refinish.Tests.Fixtures;
using UnitsNet;
using Xunit;

namespace Refinish.Json.Tests;

/// <summary>The fields of measurements follow from the tables of the records.</summary>
public class MeasurementFieldTests
{
    private static readonly IFixture[] Fixtures = [.. Tapes.Every().Where(fixture => Tape(fixture) is not null)];

    public static TheoryData<int, DisplayUnits> Cases
    {
        get
        {
            TheoryData<int, DisplayUnits> cases = [];
            for (int place = 0; place < Fixtures.Length; place++)
            {
                cases.Add(place, DisplayUnits.Si);
                cases.Add(place, DisplayUnits.UsCustomary);
            }

            return cases;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Every_input_is_written_and_read_in_both_systems(int place, DisplayUnits units)
    {
        IFixture fixture = Fixtures[place];
        object tape = Tape(fixture)!;
        string text = Document.Write(FixtureShapes.Fixture, fixture, JsonLayout.Default with { Units = units });
        JsonObject json = JsonNode.Parse(text)!.AsObject();
        foreach (InputField input in (InputTable)tape.GetType().GetProperty("Inputs")!.GetValue(null)!)
        {
            JsonNode? field = json[char.ToLowerInvariant(input.Name[0]) + input.Name[1..]];
            Assert.True(field is not null, fixture.GetType().Name + "." + input.Name + " has no field.");
            object value = tape.GetType().GetProperty(input.Name)!.GetValue(tape)!;
            if (field is JsonObject quantity)
            {
                string unit = (string)quantity["unit"]!;
                double number = (double)quantity["value"]!;
                Assert.Contains(unit, new[] { "mm", "in", "m", "°", "rad", "%", "1" });
                double si = unit switch { "mm" => number / 1000, "in" => number * 0.0254, "°" => number * Math.PI / 180, "%" => number / 100, _ => number };
                Assert.Equal(Si(value), si, 12);
            }
            else
            {
                Assert.Equal(Si(value), (double)field, 12);
            }
        }

        using JsonDocument document = JsonDocument.Parse(text);
        Assert.True(Document.TryRead(FixtureShapes.Fixture, document.RootElement, out IFixture? back, out IReadOnlyList<JsonFault> faults), string.Join(" | ", faults));
        Assert.Equal(tape, Tape(back!));
    }

    private static object? Tape(IFixture fixture) => fixture.GetType().GetProperty("Measurements", BindingFlags.Public | BindingFlags.Instance)?.GetValue(fixture);

    private static double Si(object value) => value switch
    {
        Length length => length.Meters,
        Angle angle => angle.Radians,
        Ratio ratio => ratio.DecimalFractions,
        int count => count,
        _ => (double)value,
    };
}

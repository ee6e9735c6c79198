using System;
using System.Collections.Generic;
using System.Linq;
using System.Text;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.House;

/// <summary>The tables in docs/measurements.md are made from the tables of inputs.</summary>
public class MeasurementPageTests
{
    [Fact]
    [Evidence(Basis.Contract, "the page of measurements says of every input what its row says")]
    public void The_page_of_measurements_is_current() =>
        GeneratedPage.Holds("measurements", string.Concat(Tables().Select(table => Text(table.Key, table.Value))));

    private static IEnumerable<KeyValuePair<string, InputTable>> Tables() => FixtureKind.All
        .Select(kind => kind.FixtureType.GetProperty("Measurements")?.PropertyType).OfType<Type>()
        .Select(record => new KeyValuePair<string, InputTable>("`" + record.Name + "`", (InputTable)record.GetProperty("Inputs")!.GetValue(null)!))
        .Concat(ComposedKind.Kinds.Select(kind => new KeyValuePair<string, InputTable>(kind.Name + ", `" + kind.Id + "`", kind.Readings)));

    private static string Text(string title, InputTable table)
    {
        StringBuilder text = new("\n## " + title + "\n\n| input | what it is | allowed | unless it is given |\n|---|---|---|---|\n");
        foreach (InputField input in table)
        {
            text.Append("| `").Append(input.Name).Append("` | ").Append(input.Meaning).Append(input.IsWhole ? ", a whole number" : string.Empty)
                .Append(" | ").Append(input.ToString().Replace(input.Name + ": ", string.Empty, StringComparison.Ordinal))
                .Append(" | ").Append(input.Default is double si ? input.Measure.Format(si) : "has to be given").Append(" |\n");
        }

        return text.ToString();
    }
}

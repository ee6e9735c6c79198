using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text;
using Refinish.Fixtures;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.House;

/// <summary>The tables in docs/measurements.md are made from the tables of inputs.</summary>
public class MeasurementPageTests
{
    private const string Marker = "<!-- Made from the library below this line; a test of the suite holds it current. -->\n";

    [Fact]
    [Evidence(Basis.Contract, "the page of measurements says of every input what its row says")]
    public void The_page_of_measurements_is_current()
    {
        string page = File.ReadAllText(Path.Combine(ReadmeTests.Root(), "docs", "measurements.md")).Replace("\r\n", "\n");
        int at = page.IndexOf(Marker, StringComparison.Ordinal);
        Assert.True(at > 0, "docs/measurements.md has lost its marker");
        string now = page.Remove(at) + Marker + string.Concat(Tables().Select(table => Text(table.Key, table.Value)));
        if (now != page)
        {
            string received = Path.Combine(AppContext.BaseDirectory, "measurements.received.md");
            File.WriteAllText(received, now);
            Assert.Fail("The measurements changed. If that is meant, copy " + received + " over docs/measurements.md and commit the difference.");
        }
    }

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

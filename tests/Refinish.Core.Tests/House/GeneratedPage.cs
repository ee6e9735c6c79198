using System;
using System.IO;
using Xunit;

namespace Refinish.Tests.House;

/// <summary>A page of docs/ of which everything below a line is made from the library.</summary>
internal static class GeneratedPage
{
    private const string Marker = "<!-- Made from the library below this line; a test of the suite holds it current. -->\n";

    /// <summary>
    /// Holds the page to what the library says now. Where they differ, the page as it should be is written beside the tests as
    /// <c>name.received.md</c>, and the test fails.
    /// </summary>
    /// <param name="name">The page's name without folder and ending.</param>
    /// <param name="generated">What stands below the line.</param>
    public static void Holds(string name, string generated)
    {
        string page = File.ReadAllText(Path.Combine(ReadmeTests.Root(), "docs", name + ".md")).Replace("\r\n", "\n");
        int at = page.IndexOf(Marker, StringComparison.Ordinal);
        Assert.True(at > 0, "docs/" + name + ".md has lost its marker");
        string now = page.Remove(at) + Marker + generated;
        string received = Path.Combine(AppContext.BaseDirectory, name + ".received.md");
        File.Delete(received);
        if (now != page)
        {
            File.WriteAllText(received, now);
            Assert.Fail("docs/" + name + ".md is not what the library says. If that is meant, copy " + received + " over it and commit the difference.");
        }
    }

    /// <summary>A text as it stands in a cell of a Markdown table.</summary>
    public static string Cell(string text) => text.Replace("|", "\\|").Replace("<", "&lt;").Replace("*", "\\*").Replace("_", "\\_").Trim();
}

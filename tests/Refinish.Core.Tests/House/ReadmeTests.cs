using System;
using System.IO;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.House;

public class ReadmeTests
{
    [Fact]
    [Evidence(Basis.Contract, "the ten lines of the README are the sample that runs on every change")]
    public void The_example_of_the_readme_is_the_sample_that_runs()
    {
        string root = Root();
        string readme = File.ReadAllText(Path.Combine(root, "README.md")).ReplaceLineEndings("\n");
        string sample = File.ReadAllText(Path.Combine(root, "samples", "TenLines", "Program.cs")).ReplaceLineEndings("\n");
        Assert.Contains("```csharp\n" + sample + "```\n", readme, StringComparison.Ordinal);
        string output = File.ReadAllText(Path.Combine(root, "samples", "TenLines", "expected.txt")).ReplaceLineEndings("\n");
        foreach (string line in output.Split('\n')[..2])
        {
            Assert.Contains("`" + line + "`", readme, StringComparison.Ordinal);
        }
    }

    internal static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Refinish.Core.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests have to run inside the repository.");
    }
}

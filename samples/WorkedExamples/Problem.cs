using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;

namespace Refinish.Samples.WorkedExamples;

/// <summary>A worked problem: a question, numbers that may be changed, a calculation of a few lines, and what its answer is held against.</summary>
/// <remarks>
/// In the source of a problem the lines after a comment <c>// shown</c> are what a reader copies; a comment <c>// given</c> hides the lines in which
/// the reader's own numbers are put in place of the stated ones, and <c>// end</c> the rest.
/// </remarks>
internal abstract class Problem
{
    private static readonly Dictionary<string, string> Unchanged = [];

    public abstract string Floor { get; }

    public abstract string Title { get; }

    public abstract string Question { get; }

    public abstract Backing Backing { get; }

    /// <summary>Where the answer is printed, or how it was worked apart from the library; and what is invented.</summary>
    public abstract string Origin { get; }

    /// <summary>The units of the source, in which the problem is shown unless the reader asks for others.</summary>
    public virtual DisplayUnits Units => DisplayUnits.Si;

    public IReadOnlyList<Input> Inputs
    {
        get
        {
            Given given = new(Unchanged);
            Work(given);
            return given.Inputs;
        }
    }

    /// <summary>The lines that a reader copies: this problem's own source, as it was compiled, with the namespaces that it names.</summary>
    public string Code
    {
        get
        {
            using StreamReader source = new(GetType().Assembly.GetManifestResourceStream(GetType().Name)!);
            List<string> usings = ["using Refinish;"];
            List<string> lines = [];
            bool shown = false;
            while (source.ReadLine() is string line)
            {
                if (line.StartsWith("using ", StringComparison.Ordinal))
                {
                    usings.Add(line);
                }

                shown = line.Trim() switch { "// shown" => true, "// given" or "// end" => false, _ => shown };
                if (shown && line.Trim() != "// shown")
                {
                    lines.Add(line.Length > 8 ? line[8..] : string.Empty);
                }
            }

            return string.Join('\n', usings.OrderBy(line => !line.StartsWith("using System", StringComparison.Ordinal)).Concat(["", .. lines]));
        }
    }

    /// <summary>Works the problem with the reader's numbers in place of the stated ones.</summary>
    public (Solution Solution, IReadOnlyList<Input> Inputs) Solve(IReadOnlyDictionary<string, string> changes)
    {
        string[] names = [.. Inputs.Select(input => input.Name)];
        if (changes.Keys.Except(names).FirstOrDefault() is string unknown)
        {
            throw new InputException("There is no '" + unknown + "' in this problem; it has " + string.Join(", ", names) + ".");
        }

        Given given = new(changes);
        return (Work(given), given.Inputs);
    }

    /// <summary>The range of an input in the library's own words: it is asked with a number that cannot be, and its refusal says what is allowed.</summary>
    public string RangeOf(Input input)
    {
        foreach (double number in new[] { -1e9, 1e9 })
        {
            Given asked = new(Unchanged) { Probe = (input.Name, number) };
            try
            {
                Work(asked);
            }
            catch (ArgumentOutOfRangeException refused) when (refused.Message.Contains("allowed: ", StringComparison.Ordinal)
                && (string.Equals(refused.ParamName, input.Name, StringComparison.OrdinalIgnoreCase) || asked.Probed.Contains(refused.ActualValue as string)))
            {
                return refused.Message.Split("allowed: ")[1].Split(" (Parameter")[0].TrimEnd('.');
            }
            catch (ArgumentException)
            {
                // Something that was calculated from it was refused first, which says nothing about the input itself.
            }
        }

        return "not limited by itself";
    }

    protected abstract Solution Work(Given given);
}

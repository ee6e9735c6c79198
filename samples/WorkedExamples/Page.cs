using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;

namespace Refinish.Samples.WorkedExamples;

/// <summary>All problems as one page of Markdown: docs/worked-examples.md.</summary>
internal static class Page
{
    // Longer derivations would bury the page; the sample prints them.
    private const int MostSteps = 30;

    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;
    private static readonly Dictionary<string, string> Unchanged = [];

    public static string Markdown()
    {
        StringBuilder text = new("""
            # Worked examples

            Problems of the trade with the lines of code that solve them. The code of each is what the sample compiles and runs, the range of each number
            is the library's own refusal, and a test holds each answer to the answer of its source, to the digits that the source prints. This page is
            written by `dotnet run --project samples/WorkedExamples -- --markdown docs/worked-examples.md`. To work one with numbers of your own:

            ```sh
            dotnet run --project samples/WorkedExamples -- 7 depth="15 in"
            ```

            | | problem | floor | the answer is held to |
            |---|---|---|---|

            """.ReplaceLineEndings("\n"));
        for (int i = 0; i < ProblemSet.All.Count; i++)
        {
            Problem problem = ProblemSet.All[i];
            text.Append(Invariant, $"| {i + 1} | [{problem.Title}](#problem-{i + 1}) | `Refinish.{problem.Floor}` | {Sheet.Standing(problem.Backing)} |\n");
        }

        for (int i = 0; i < ProblemSet.All.Count; i++)
        {
            Write(text, i + 1, ProblemSet.All[i]);
        }

        return text.ToString();
    }

    private static void Write(StringBuilder text, int number, Problem problem)
    {
        (Solution solution, IReadOnlyList<Input> inputs) = problem.Solve(Unchanged);
        text.Append(Invariant, $"\n<a id=\"problem-{number}\"></a>\n\n## {number}. {problem.Title}\n\n{problem.Question}\n\n");
        text.Append("| given | is | stands for | may be |\n|---|---|---|---|\n");
        foreach (Input input in inputs)
        {
            text.Append(Invariant, $"| `{input.Name}` | {input.Value} | {input.What} | {problem.RangeOf(input)} |\n");
        }

        text.Append(Invariant, $"\n```csharp\n{problem.Code}\n```\n\n| answer | | {Sheet.Beside(problem.Backing)} |\n|---|---|---|\n");
        foreach (Answer answer in solution.Answers)
        {
            text.Append(Invariant, $"| {answer.What} | {answer.Value(problem.Units)} | {(answer.Printed is null ? string.Empty : answer.HeldTo(problem.Units))} |\n");
        }

        text.Append(Invariant, $"\nSource ({Sheet.Standing(problem.Backing)}): {problem.Origin}\n");
        foreach (Caution caution in solution.Cautions)
        {
            text.Append(Invariant, $"\n> {caution.Sentence} (Decided by: {caution.DecidedBy}.)\n");
        }

        int steps = solution.Workings.AllSteps().Count();
        if (steps > MostSteps)
        {
            text.Append(Invariant, $"\nWorkings: {steps} steps; `dotnet run --project samples/WorkedExamples -- {number}` prints them.\n");
            return;
        }

        text.Append(Invariant, $"\n<details><summary>Workings, {steps} {(steps == 1 ? "step" : "steps")}</summary>\n\n");
        text.Append(Invariant, $"```text\n{solution.Workings.ToPlainText(problem.Units)}```\n\n</details>\n");
    }
}

using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text;

namespace Refinish.Samples.WorkedExamples;

/// <summary>A worked problem as text for the console.</summary>
internal static class Sheet
{
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    public static string List()
    {
        StringBuilder text = new("Worked examples of the surface-refinishing trade. Show one: WorkedExamples 7. Change a number: WorkedExamples 7 depth=\"15 in\"\n\n");
        for (int i = 0; i < ProblemSet.All.Count; i++)
        {
            Problem problem = ProblemSet.All[i];
            text.Append(Invariant, $"{i + 1,3}  {problem.Floor,-12}{problem.Title}\n");
        }

        return text.ToString();
    }

    public static string Of(int number, IReadOnlyDictionary<string, string> changes, DisplayUnits? units)
    {
        Problem problem = ProblemSet.All[number - 1];
        DisplayUnits system = units ?? problem.Units;
        (Solution solution, IReadOnlyList<Input> inputs) = problem.Solve(changes);
        StringBuilder text = new();
        text.Append(Invariant, $"{number}. {problem.Title}\n\n{problem.Question}\n\nGiven\n");
        foreach (Input input in inputs)
        {
            string changed = changes.ContainsKey(input.Name) ? "  (changed)" : string.Empty;
            text.Append(Invariant, $"  {input.Name} = {input.Value}: {input.What}; {problem.RangeOf(input)}{changed}\n");
        }

        text.Append("\nCode\n").Append(string.Concat(problem.Code.Split('\n').Select(line => line.Length == 0 ? "\n" : "  " + line + "\n")));
        text.Append("\nWorkings\n").Append(solution.Workings.ToPlainText(system));
        text.Append("\nAnswer\n");
        foreach (Answer answer in solution.Answers)
        {
            // With another number put in, the source's answer is no longer this problem's.
            string held = answer.Printed is null || changes.Count > 0 ? string.Empty : "; " + Beside(problem.Backing) + ": " + answer.HeldTo(system);
            text.Append(Invariant, $"  {answer.What}: {answer.Value(system)}{held}\n");
        }

        text.Append(Invariant, $"\nSource ({Standing(problem.Backing)})\n  {problem.Origin}\n");
        if (solution.Cautions.Count > 0)
        {
            text.Append("\nCautions\n").Append(string.Concat(solution.Cautions.Select(caution => $"  ! {caution.Sentence} (Decided by: {caution.DecidedBy}.)\n")));
        }

        return text.ToString();
    }

    public static string Beside(Backing backing) => backing == Backing.Published ? "the source has" : "worked apart";

    public static string Standing(Backing backing) => backing == Backing.Published ? "a published answer" : "no published answer known; worked apart from the library";
}

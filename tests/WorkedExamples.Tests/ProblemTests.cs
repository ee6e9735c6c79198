using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using Xunit;

namespace Refinish.Samples.WorkedExamples.Tests;

public class ProblemTests
{
    private static readonly Dictionary<string, string> Unchanged = [];

    public static TheoryData<int> Numbers => [.. Enumerable.Range(1, ProblemSet.All.Count)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public void The_answer_is_the_one_that_the_source_prints(int number)
    {
        Solution solution = ProblemSet.All[number - 1].Solve(Unchanged).Solution;
        Assert.Contains(solution.Answers, answer => answer.Printed is not null);
        Assert.All(solution.Answers, answer => Assert.True(answer.Holds, answer.What + ": the source has " + answer.HeldTo(answer.In) + ", here " + answer.Measure.Format(answer.Si, answer.In, 12)));
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void The_stated_numbers_typed_again_change_nothing(int number)
    {
        Problem problem = ProblemSet.All[number - 1];
        Dictionary<string, string> typed = problem.Inputs.ToDictionary(input => input.Name, input => input.Value);
        Assert.NotEmpty(typed);
        double[] stated = [.. problem.Solve(Unchanged).Solution.Answers.Select(answer => answer.Si)];
        double[] again = [.. problem.Solve(typed).Solution.Answers.Select(answer => answer.Si)];
        Assert.All(stated.Zip(again), pair => Assert.Equal(pair.First, pair.Second, 1e-9 * Math.Max(1, Math.Abs(pair.First))));
    }

    [Theory]
    [MemberData(nameof(Numbers))]
    public void The_code_names_every_input_and_hides_what_the_sample_needs(int number)
    {
        Problem problem = ProblemSet.All[number - 1];
        Assert.All(problem.Inputs, input => Assert.Contains(input.Name + " = ", problem.Code, StringComparison.Ordinal));
        Assert.DoesNotContain("given.", problem.Code, StringComparison.Ordinal);
        Assert.DoesNotContain("return", problem.Code, StringComparison.Ordinal);
    }

    [Fact]
    public void A_deeper_tub_has_more_to_coat_and_holds_more()
    {
        Problem tub = ProblemSet.All.Single(problem => problem is TubFromTape);
        IReadOnlyList<Answer> before = tub.Solve(Unchanged).Solution.Answers;
        IReadOnlyList<Answer> after = tub.Solve(new Dictionary<string, string> { ["depth"] = "15 in" }).Solution.Answers;
        Assert.Equal(after[0].Si, tub.Solve(new Dictionary<string, string> { ["depth"] = "381 mm" }).Solution.Answers[0].Si, 1e-12);
        Assert.All(before.Zip(after), pair => Assert.True(pair.Second.Si > pair.First.Si, pair.First.What));
    }

    [Theory]
    [InlineData("deepth", "15 in", "There is no 'deepth' in this problem; it has depth, rimLength, rimWidth, coveRadius.")]
    [InlineData("depth", "15 lb", "depth is given as '15 lb', which cannot be read here; write it like '13.25 in'.")]
    [InlineData("depth", "deep", "depth is given as 'deep', which cannot be read here; write it like '13.25 in'.")]
    public void A_wrong_name_or_unit_is_refused_with_what_would_do(string name, string value, string message)
    {
        Problem tub = ProblemSet.All.Single(problem => problem is TubFromTape);
        Assert.Equal(message, Assert.Throws<InputException>(() => tub.Solve(new Dictionary<string, string> { [name] = value })).Message);
    }

    [Fact]
    public void A_number_out_of_range_is_refused_in_the_librarys_own_words()
    {
        Problem tub = ProblemSet.All.Single(problem => problem is TubFromTape);
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => tub.Solve(new Dictionary<string, string> { ["depth"] = "15 m" }));
        Assert.StartsWith("Depth is 15000 mm (given as 15 m); allowed: at least 100 mm and at most 800 mm.", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_in_the_documentation_is_the_one_that_the_sample_writes()
    {
        string onFile = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "worked-examples.md")).ReplaceLineEndings("\n");
        Assert.True(
            Page.Markdown() == onFile,
            "The page is not current. Write it anew: dotnet run --project samples/WorkedExamples -- --markdown docs/worked-examples.md");
    }

    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    public void The_page_does_not_depend_on_the_culture(string culture)
    {
        string before = Page.Markdown();
        CultureInfo current = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo(culture);
            Assert.Equal(before, Page.Markdown());
        }
        finally
        {
            CultureInfo.CurrentCulture = current;
        }
    }
}

using System.Collections.Generic;
using System.Linq;

namespace Refinish.Jobs;

/// <summary>
/// A plan and the alternatives of its job, side by side. Each alternative is planned anew, which takes about as long as the plan.
/// </summary>
/// <remarks>
/// An alternative is planned by itself: its price does not depend on the others or on their order, and one that changes nothing costs the
/// same.
/// </remarks>
public sealed class QuoteAlternatives
{
    /// <summary>Plans the alternatives of a job.</summary>
    /// <param name="plan">The plan of the job as it stands.</param>
    /// <exception cref="System.ArgumentNullException"><paramref name="plan"/> is missing.</exception>
    public QuoteAlternatives(JobPlan plan)
    {
        Plan = Guard.NotNull(plan);
        Alternatives = new ValueList<AlternativePlan>(plan.Job.Alternatives.Select(alternative => new AlternativePlan(plan, alternative)));
    }

    /// <summary>The plan of the job as it stands.</summary>
    public JobPlan Plan { get; }

    /// <summary>The quote of the job as it stands; <see langword="null"/> while something stands in its way.</summary>
    public CustomerQuote? Quote => Plan.Quote;

    /// <summary>The alternatives in the order of the job.</summary>
    public IReadOnlyList<AlternativePlan> Alternatives { get; }

    /// <summary>An alternative by its identity.</summary>
    /// <param name="id">Identity of the alternative.</param>
    /// <returns>The alternative, or <see langword="null"/> when there is none.</returns>
    public AlternativePlan? TryFind(string id) => Alternatives.FirstOrDefault(one => one.Alternative.Id == id);

    /// <summary>The quote and the alternatives, one a line.</summary>
    /// <returns>Lines of text.</returns>
    public override string ToString() => string.Join("\n", new[] { Quote?.ToString() ?? Plan.ToString() }.Concat(Alternatives.Select(one =>
        one.ToString())));
}

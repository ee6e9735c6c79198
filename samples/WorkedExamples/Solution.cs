using System.Collections.Generic;

namespace Refinish.Samples.WorkedExamples;

/// <summary>A problem worked: the answer's numbers, the derivation, and what can hurt people in it.</summary>
internal sealed record Solution(Workings Workings, IReadOnlyList<Answer> Answers)
{
    public IReadOnlyList<Caution> Cautions { get; init; } = [];
}

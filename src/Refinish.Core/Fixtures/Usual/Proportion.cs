namespace Refinish.Fixtures;

/// <summary>How two readings of one fixture go together: a value made from them, and its limits.</summary>
internal sealed record Proportion(string Code, string Words, double Value, double? Least, double? Greatest, Measure Measure, Source Source,
    string Remedy)
{
    public bool Holds => !(Value < Least - 1e-9) && !(Value > Greatest + 1e-9);
}

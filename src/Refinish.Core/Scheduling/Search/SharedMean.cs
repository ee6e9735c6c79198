using System.Linq;

namespace Refinish.Scheduling;

/// <summary>Something that steps share: how much of it there is, and how much each step needs.</summary>
internal readonly struct SharedMean(int capacity, int[] need)
{
    public int Capacity { get; } = capacity;

    public int[] Need { get; } = need;

    /// <summary>The steps that need any of it.</summary>
    public int[] Users()
    {
        int[] own = Need;
        return [.. Enumerable.Range(0, own.Length).Where(i => own[i] > 0)];
    }
}

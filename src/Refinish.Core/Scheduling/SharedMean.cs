namespace Refinish.Scheduling;

/// <summary>Something that steps share: how much of it there is, and how much each step needs.</summary>
internal readonly struct SharedMean(int capacity, int[] need)
{
    public int Capacity { get; } = capacity;

    public int[] Need { get; } = need;
}

using System.Linq;

namespace Refinish.Scheduling;

/// <summary>Something that steps share: how much of it there is, and how much each step needs.</summary>
internal readonly record struct SharedMean(int Capacity, int[] Need)
{
    /// <summary>The steps that need any of it.</summary>
    public int[] Users()
    {
        int[] need = Need;
        return [.. Enumerable.Range(0, need.Length).Where(i => need[i] > 0)];
    }
}

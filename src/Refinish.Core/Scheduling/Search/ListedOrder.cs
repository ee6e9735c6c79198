using System.Collections.Generic;

namespace Refinish.Scheduling;

/// <summary>
/// The schedule that follows the list: of two steps that exclude each other the one listed first comes first, and each is as early as it
/// can be. It is what somebody would do who works a list off, so a search starts from it and is never worse.
/// </summary>
internal sealed class ListedOrder
{
    private readonly StepModel model;
    private readonly StepOverlaps overlaps;
    private readonly EarliestTimes earliest;
    private readonly int[]? place;

    /// <param name="model">The steps.</param>
    /// <param name="overlaps">Where steps overlap.</param>
    /// <param name="taken">Stretches that each step has to keep clear of; those of the model unless given.</param>
    /// <param name="order">The steps in another order than that of the model.</param>
    public ListedOrder(StepModel model, StepOverlaps overlaps, long[]?[]? taken, int[]? order = null)
    {
        this.model = model;
        this.overlaps = overlaps;
        place = order is null ? null : new int[order.Length];
        earliest = new EarliestTimes(model, taken);
        List<int> next = [];
        for (int i = 0; i < model.Count; i++)
        {
            int first = order?[i] ?? i;
            place?[first] = i;
            next.Clear();
            for (int j = i + 1; j < model.Count; j++)
            {
                int second = order?[j] ?? j;
                long gap = model.Gap(first, second);
                if (gap != StepModel.None && !Follows(next, first, second, gap))
                {
                    next.Add(second);
                    earliest.Order(first, second, gap);
                }
            }
        }
    }

    // What follows from two orders after each other need not be told.
    private bool Follows(List<int> next, int first, int second, long gap)
    {
        foreach (int between in next)
        {
            long after = model.Gap(between, second);
            if (after != StepModel.None && gap <= model.Gap(first, between) + model.Duration[between] + after)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Finds the times; false when the list's order cannot be kept by the limit.</summary>
    public bool Run(long start, long limit, DaySet days, long[] starts, long[] ends)
    {
        earliest.Days = days;
        bool holds = earliest.Solve(start, limit, starts, ends) < 0;
        Stack<int> added = new();
        while (holds && overlaps.Crowd(starts, ends) is List<int> crowd)
        {
            (int first, int last) = Pick(crowd, ends);
            earliest.Order(first, last, 0);
            added.Push(first);
            holds = added.Count <= 4 * model.Count && earliest.Push(first, last, 0, limit, starts, ends) < 0;
        }

        while (added.Count > 0)
        {
            earliest.Forget(added.Pop());
        }

        // Checked, because of what other groups take.
        return holds && overlaps.First(starts, ends).Length == 0;
    }

    // The one listed last waits for the first of the others to end.
    private (int First, int Last) Pick(List<int> crowd, long[] ends)
    {
        int last = crowd[0];
        foreach (int i in crowd)
        {
            last = (place?[i] ?? i) > (place?[last] ?? last) ? i : last;
        }

        int first = -1;
        foreach (int i in crowd)
        {
            first = i != last && (first < 0 || ends[i] < ends[first]) ? i : first;
        }

        return (first, last);
    }
}

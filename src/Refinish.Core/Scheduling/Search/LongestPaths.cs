using System.Collections.Generic;
using System.Linq;

namespace Refinish.Scheduling;

/// <summary>
/// The least time from the start of one step to the start of another that lags and chosen orders force, as longest paths between all pairs:
/// one table that grows with every order that a search chooses, and remembers what an order changed until it is taken back.
/// </summary>
internal sealed class LongestPaths
{
    // Beyond this the tables cost more than the branches they save.
    private const int MostSteps = 64;

    private readonly StepModel model;
    private readonly int count;
    private readonly long[] table;

    // What orders changed, newest last: the place and the path before.
    private readonly List<(int Place, long Path)> changes = [];
    private readonly int[] later;
    private readonly long[] least;

    private LongestPaths(StepModel model)
    {
        this.model = model;
        count = model.Count;
        table = FromLags(model);
        later = new int[count];
        least = new long[count];
    }

    /// <summary>The tables; <see langword="null"/> when there are too many steps for them to pay.</summary>
    public static LongestPaths? Of(StepModel model) => model.Count <= MostSteps ? new(model) : null;

    /// <summary>
    /// The least time from the start of one step to that of another under the orders chosen; never when nothing forces any.
    /// </summary>
    public long Between(int first, int second) => table[(first * count) + second];

    public bool CanPrecede(int first, int second) =>
        table[(second * count) + first] is long back
            && (back == Openings.Never || model.Duration[first] + model.GapOf(first, second) + back <= 0);

    /// <summary>How much was changed so far, to come back to.</summary>
    public int Mark => changes.Count;

    /// <summary>Takes back the orders chosen since a mark.</summary>
    public void Back(int mark)
    {
        for (int k = changes.Count - 1; k >= mark; k--)
        {
            table[changes[k].Place] = changes[k].Path;
        }

        changes.RemoveRange(mark, changes.Count - mark);
    }

    /// <summary>Adds the paths through a chosen order.</summary>
    public void Add(int first, int second)
    {
        long step = model.Duration[first] + model.GapOf(first, second);
        if (Between(first, second) is long forced && forced != Openings.Never && forced >= step)
        {
            return;
        }

        int last = 0;
        for (int j = 0; j < count; j++)
        {
            if (Between(second, j) is long onwards && onwards != Openings.Never)
            {
                (later[last], least[last]) = (j, step + onwards);
                last++;
            }
        }

        for (int i = 0; i < count; i++)
        {
            int row = i * count;
            long reach = table[row + first];
            for (int k = 0; k < last && reach != Openings.Never; k++)
            {
                int place = row + later[k];
                if (table[place] == Openings.Never || reach + least[k] > table[place])
                {
                    changes.Add((place, table[place]));
                    table[place] = reach + least[k];
                }
            }
        }
    }

    private static long[] FromLags(StepModel model)
    {
        int n = model.Count;
        long[] d = Enumerable.Repeat(Openings.Never, n * n).ToArray();
        for (int i = 0; i < n; i++)
        {
            d[(i * n) + i] = 0;
        }

        void Raise(int at, long least) => d[at] = d[at] == Openings.Never || least > d[at] ? least : d[at];
        foreach (StepEdge edge in model.Edges)
        {
            Raise((edge.From * n) + edge.To, model.Duration[edge.From] + edge.Minimum);
            if (edge.Maximum < Openings.Never)
            {
                Raise((edge.To * n) + edge.From, -edge.Maximum - model.Duration[edge.From]);
            }
        }

        for (int k = 0; k < n; k++)
        {
            for (int i = 0; i < n; i++)
            {
                long reach = d[(i * n) + k];
                for (int j = 0; j < n && reach != Openings.Never; j++)
                {
                    long onwards = d[(k * n) + j];
                    if (onwards != Openings.Never)
                    {
                        Raise((i * n) + j, reach + onwards);
                    }
                }
            }
        }

        return d;
    }
}

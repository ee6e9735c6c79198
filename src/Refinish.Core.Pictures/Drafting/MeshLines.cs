using System;
using System.Collections.Generic;
using System.Linq;
using OxyPlot;

namespace Refinish.Pictures.Drafting;

/// <summary>Joins pieces of line that meet end to end, so that a curve is one path.</summary>
internal static class MeshLines
{
    private const double Grid = 1e-5;

    public static IEnumerable<DataPoint[]> Joined(IReadOnlyList<(DataPoint From, DataPoint To)> pieces)
    {
        Dictionary<(long, long), List<int>> ends = [];
        for (int i = 0; i < pieces.Count; i++)
        {
            Note(Key(pieces[i].From), i);
            Note(Key(pieces[i].To), i);
        }

        bool[] used = new bool[pieces.Count];
        for (int i = 0; i < pieces.Count; i++)
        {
            if (!used[i])
            {
                used[i] = true;
                LinkedList<DataPoint> line = new([pieces[i].From, pieces[i].To]);
                while (Next(line.Last!.Value) is DataPoint next)
                {
                    line.AddLast(next);
                }

                while (Next(line.First!.Value) is DataPoint before)
                {
                    line.AddFirst(before);
                }

                yield return [.. line];
            }
        }

        void Note((long, long) key, int piece)
        {
            if (!ends.TryGetValue(key, out List<int>? list))
            {
                ends[key] = list = [];
            }

            list.Add(piece);
        }

        DataPoint? Next(DataPoint end)
        {
            foreach (int i in ends[Key(end)].Where(i => !used[i]))
            {
                used[i] = true;
                return Key(pieces[i].From) == Key(end) ? pieces[i].To : pieces[i].From;
            }

            return null;
        }
    }

    private static (long X, long Y) Key(DataPoint point) => ((long)Math.Round(point.X / Grid), (long)Math.Round(point.Y / Grid));
}

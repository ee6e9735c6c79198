using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Pictures.Drawing;

/// <summary>Labels that would lie on one another, moved apart.</summary>
internal static class Labels
{
    /// <summary>Places as near to the wanted ones as they can be, in the same order, at least so far apart and within bounds.</summary>
    public static double[] Apart(IReadOnlyList<double> wanted, double distance, double least, double most)
    {
        int[] order = [.. Enumerable.Range(0, wanted.Count).OrderBy(i => wanted[i])];
        double[] places = new double[wanted.Count];
        double next = least;
        foreach (int i in order)
        {
            places[i] = Math.Max(wanted[i], next);
            next = places[i] + distance;
        }

        double last = most;
        foreach (int i in Enumerable.Reverse(order))
        {
            places[i] = Math.Min(places[i], last);
            last = places[i] - distance;
        }

        return places;
    }
}

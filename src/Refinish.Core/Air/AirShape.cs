using System.Collections.Generic;

namespace Refinish.Air;

/// <summary>One shape over time: when its sum peaks and when its worst windows end. Found when asked for.</summary>
internal sealed class AirShape(AirShapes owner, double[] weights)
{
    private readonly Dictionary<double, double> found = [];

    public double[] Weights => weights;

    /// <summary>When the worst window of a length ends; with a length of 0, when the largest momentary value is reached.</summary>
    public double Worst(double length)
    {
        lock (found)
        {
            if (!found.TryGetValue(length, out double at))
            {
                RoomPath path = new(owner.Grid(length), weights);
                _ = length > 0 ? RoomHistory.WorstWindow(path, out at) : RoomHistory.Peak(path, out at);
                found[length] = at;
            }

            return at;
        }
    }
}

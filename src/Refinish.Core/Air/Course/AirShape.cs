using System.Collections.Generic;

namespace Refinish.Air;

/// <summary>One shape over time: when its sum peaks and over which windows it is worst, with the airborne part of each term there. Found when asked for.</summary>
internal sealed class AirShape(AirShapes owner, double[] weights)
{
    private readonly List<AirMoment> windows = [];
    private AirMoment? peak;
    private RoomPath? path;

    public double[] Weights => weights;

    /// <summary>The sum itself, in the scale of this shape's weights.</summary>
    public RoomPath Path => path ??= new RoomPath(owner.Grid(0), weights);

    /// <summary>The largest momentary value: when, and what part of each term is in the air then.</summary>
    public AirMoment Peak()
    {
        if (peak is null)
        {
            RoomHistory.Peak(Path, out double at);
            double[] parts = new double[weights.Length];
            for (int i = 0; i < parts.Length; i++)
            {
                parts[i] = weights[i] == 0 ? 0 : owner.Answers.Airborne(i, at);
            }

            peak = new AirMoment(at, 0, parts);
        }

        return peak;
    }

    /// <summary>The worst window of a length: when it ends, and the time integral of the airborne part of each term over it.</summary>
    public AirMoment Window(double length)
    {
        lock (windows)
        {
            foreach (AirMoment known in windows)
            {
                if (known.Length == length)
                {
                    return known;
                }
            }

            RoomHistory.WorstWindow(new RoomPath(owner.Grid(length), weights), out double end);
            double[] parts = new double[weights.Length];
            for (int i = 0; i < parts.Length; i++)
            {
                parts[i] = weights[i] == 0 ? 0 : owner.Answers.AirborneTime(i, end) - owner.Answers.AirborneTime(i, end - length);
            }

            AirMoment another = new(end, length, parts);
            windows.Add(another);
            return another;
        }
    }
}

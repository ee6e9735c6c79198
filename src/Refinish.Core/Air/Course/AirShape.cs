using System.Collections.Generic;

namespace Refinish.Air;

/// <summary>
/// One shape over time: when its sum peaks and over which windows it is worst, with the airborne part of each term there. Found when asked
/// for.
/// </summary>
internal sealed class AirShape(AirShapes owner, double[] weights)
{
    private readonly Dictionary<double, AirMoment> found = [];

    public double[] Weights => weights;

    /// <summary>The worst window of a length; with a length of 0, the largest momentary value.</summary>
    public AirMoment Worst(double length)
    {
        lock (found)
        {
            if (!found.TryGetValue(length, out AirMoment? worst))
            {
                RoomPath path = new(owner.Grid(length), weights);
                _ = length > 0 ? RoomHistory.WorstWindow(path, out double at) : RoomHistory.Peak(path, out at);
                double[] parts = new double[weights.Length];
                for (int i = 0; i < parts.Length; i++)
                {
                    parts[i] = weights[i] == 0 ? 0
                        : (length > 0 ? owner.Answers.AirborneTime(i, at - length, at) : owner.Answers.Airborne(i, at)).Value;
                }

                worst = new AirMoment(at, parts);
                found[length] = worst;
            }

            return worst;
        }
    }
}

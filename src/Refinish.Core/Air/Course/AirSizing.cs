using System;
using Refinish.Numerics;

namespace Refinish.Air;

/// <summary>Which air changes bring a peak or a dose down to a target. Both fall as the air changes rise, so there is one answer.</summary>
internal static class AirSizing
{
    /// <summary>The air changes at which the peak of the weighted sum is the target; 0 when even without airflow it stays below.</summary>
    public static double ForPeak(AirLoad load, double[] weights, double target) =>
        AirLoad.Total(weights) <= target ? 0 : Solve(new PeakExcess(load, weights, target), GreatestRelease(load, weights) / target);

    /// <summary>The air changes at which the worst window's dose is the target; 0 when even without airflow it stays below.</summary>
    public static double ForDose(AirLoad load, double[] weights, double window, double target) =>
        AirLoad.Total(weights) * window <= target ? 0 : Solve(new DoseExcess(load, weights, window, target), AirLoad.Total(weights) / target);

    /// <summary>
    /// The greatest release there can be, per second, if all that is sprayed flashed at once and the films of earlier ones dried beside it.
    /// Between two beginnings of a spray each term only falls, so it is enough to look at the beginnings.
    /// </summary>
    public static double GreatestRelease(AirLoad load, double[] weights)
    {
        double greatest = 0;
        for (int s = 0; s < weights.Length; s++)
        {
            greatest = Math.Max(greatest, ReleaseAt(load, weights, load.Timeline.Start(s)));
        }

        return greatest;
    }

    public static double ReleaseAt(AirLoad load, double[] weights, double time)
    {
        double sum = 0;
        for (int i = 0; i < weights.Length; i++)
        {
            sum += weights[i] * UnitRelease(load.Timeline, i, time);
        }

        return sum;
    }

    public static double UnitRelease(RoomTimeline line, int term, double time)
    {
        double since = time - line.Start(term);
        return since < 0 ? 0
            : since < line.Spray(term) ? 1 / line.Spray(term)
            : (1 - line.Flash(term)) * PhiFunctions.Phi1(-(line.Spray(term) / line.TimeConstant(term))) / line.TimeConstant(term)
                * Math.Exp(-((since - line.Spray(term)) / line.TimeConstant(term)));
    }

    // At the upper end the value is at most the target: peak ≤ greatest release / λ, dose ≤ total / λ.
    private static double Solve<T>(T excess, double upper)
        where T : struct, IFunction
    {
        if (excess.At(upper) >= 0)
        {
            return upper;
        }

        double lower = upper / 2;
        while (excess.At(lower) <= 0)
        {
            upper = lower;
            lower /= 2;
            if (lower < 1e-12)
            {
                return upper;
            }
        }

        return Roots.Enclose(excess, lower, upper, Roots.Sharp).Upper;
    }

    private readonly struct PeakExcess(AirLoad load, double[] weights, double target) : IFunction
    {
        public double At(double changes) => RoomHistory.Peak(new RoomPath(new RoomGrid(load.Timeline, changes, 0), weights), out _) - target;
    }

    private readonly struct DoseExcess(AirLoad load, double[] weights, double window, double target) : IFunction
    {
        public double At(double changes) => RoomHistory.WorstWindow(new RoomPath(new RoomGrid(load.Timeline, changes, window), weights), out _) - target;
    }
}

using Refinish.Numerics;

namespace Refinish.Air;

/// <summary>Which air changes bring a peak or a dose down to a target. Both fall as the air changes rise, so there is one answer.</summary>
internal static class AirSizing
{
    /// <summary>The air changes at which the peak of the weighted sum is the target; 0 when even without airflow it stays below.</summary>
    public static double ForPeak(AirLoad load, double[] weights, double target) =>
        Total(weights) <= target ? 0 : Solve(new PeakExcess(load, weights, target), GreatestRelease(load, weights, out _) / target);

    /// <summary>The air changes at which the worst window's dose is the target; 0 when even without airflow it stays below.</summary>
    public static double ForDose(AirLoad load, double[] weights, double window, double target) =>
        Total(weights) * window <= target ? 0 : Solve(new DoseExcess(load, weights, window, target), Total(weights) / target);

    /// <summary>
    /// The greatest release there can be, per second, if all that is sprayed flashed at once and the films of earlier ones dried beside it.
    /// Between two beginnings of a spray each term only falls, so it is enough to look at the beginnings.
    /// </summary>
    public static double GreatestRelease(AirLoad load, TermWeights weights, out double moment)
    {
        double greatest = 0;
        moment = 0;
        foreach (ReleaseTerm term in load.Terms)
        {
            double release = ReleaseAt(load, weights, term.Start).Value;
            if (release >= greatest)
            {
                greatest = release;
                moment = term.Start;
            }
        }

        return greatest;
    }

    /// <summary>What is released per second at a time, if all that is sprayed flashed at once.</summary>
    public static Num ReleaseAt(AirLoad load, TermWeights weights, double time, Trace? t = null) =>
        weights.Sum((load.Timeline, time, t), static (of, i) =>
        {
            double since = of.time - of.Timeline.Start(i);
            return since < 0 ? 0 : of.Timeline.Term(i, 0, of.t).Release(of.t.Given("x_", i + 1, since, Measure.Minutes));
        });

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

    private static double Total(TermWeights weights) => weights.Total.Value;

    private readonly struct PeakExcess(AirLoad load, double[] weights, double target) : IFunction
    {
        public double At(double changes) => RoomHistory.Peak(new RoomPath(new RoomGrid(load.Timeline, changes, 0), weights), out _) - target;
    }

    private readonly struct DoseExcess(AirLoad load, double[] weights, double window, double target) : IFunction
    {
        public double At(double changes) => RoomHistory.WorstWindow(new RoomPath(new RoomGrid(load.Timeline, changes, window), weights), out _) - target;
    }
}

using System;
using System.Threading;
using System.Threading.Tasks;

namespace Refinish.Films;

/// <summary>
/// Strokes over triangles. Each block of triangles belongs to one worker, which adds the strokes in their order, so that the sums
/// do not depend on how many workers there are. Per stroke nothing is allocated.
/// </summary>
internal static class SprayBuild
{
    /// <summary>The wet film on each triangle, in metres and in the order of <paramref name="faces"/>.</summary>
    public static double[] Films(SprayFaces faces, SprayFan[] fans, bool vector, int threads, IProgress<double>? progress, CancellationToken cancellation)
    {
        double[] films = new double[faces.Count];
        int done = 0;
        int told = 0;
        object gate = new();
        ParallelOptions options = new() { CancellationToken = cancellation, MaxDegreeOfParallelism = threads };
        Parallel.For(
            0,
            faces.Blocks,
            options,
            static () => new Scratch(),
            (block, _, scratch) =>
            {
                Lay(faces, fans, block, vector, films, scratch, cancellation);
                int now = Interlocked.Increment(ref done);
                if (progress is not null)
                {
                    // Reported in steps of a hundredth and never backwards.
                    lock (gate)
                    {
                        int step = (int)(100L * now / faces.Blocks);
                        if (step > told)
                        {
                            told = step;
                            progress.Report(step / 100.0);
                        }
                    }
                }

                return scratch;
            },
            static _ => { });
        return films;
    }

    public static bool VectorIsSupported =>
#if NET8_0_OR_GREATER
        SprayKernelVector.IsSupported;
#else
        false;
#endif

    private static void Lay(SprayFaces faces, SprayFan[] fans, int block, bool vector, double[] films, Scratch scratch, CancellationToken cancellation)
    {
        int first = block * SprayFaces.Block;
        int count = faces.CountOf(block);
        double x = faces.Balls[4 * block];
        double y = faces.Balls[(4 * block) + 1];
        double z = faces.Balls[(4 * block) + 2];
        double radius = faces.Balls[(4 * block) + 3];
        double[] film = scratch.Film;
        double[] middle = scratch.Middle;
        foreach (SprayFan fan in fans)
        {
            if (fan.Misses(x, y, z, radius) || !Kernel(fan, faces, first, count, vector, film, middle))
            {
                continue;
            }

            cancellation.ThrowIfCancellationRequested();
            Hide(fan, faces, first, count, vector, scratch);
            for (int i = 0; i < count; i++)
            {
                films[first + i] += film[i];
            }
        }
    }

    /// <summary>Takes the film away from triangles that do not see the gun in the middle of their time.</summary>
    private static void Hide(SprayFan fan, SprayFaces faces, int first, int count, bool vector, Scratch scratch)
    {
#if NET8_0_OR_GREATER
        if (vector)
        {
            SprayKernelVector.Hide(fan, faces, first, count, scratch.Film, scratch.Middle, scratch.Stack);
            return;
        }
#endif
        SprayKernel.Hide(fan, faces, first, count, scratch.Film, scratch.Middle, scratch.Stack);
    }

    private static bool Kernel(SprayFan fan, SprayFaces faces, int first, int count, bool vector, double[] film, double[] middle)
    {
#if NET8_0_OR_GREATER
        if (vector)
        {
            return SprayKernelVector.Lay(fan, faces, first, count, film, middle);
        }
#endif
        return SprayKernel.Lay(fan, faces, first, count, film, middle);
    }

    private sealed class Scratch
    {
        public double[] Film { get; } = new double[SprayFaces.Block];

        public double[] Middle { get; } = new double[SprayFaces.Block];

        public int[] Stack { get; } = new int[SprayBvh.Deepest + 4];
    }
}

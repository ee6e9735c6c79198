using System;
using System.Collections.Generic;
using System.Linq;
using System.Runtime.ExceptionServices;
using System.Threading;
using System.Threading.Tasks;
using Refinish.Numerics;

namespace Refinish.Estimating;

/// <summary>
/// Draws the inputs of each trial from seed and number of the trial alone and calls the model. Trials are cut into fixed blocks and every
/// result is written to its own place, so that the number of threads cannot matter.
/// </summary>
internal sealed class SimulationEngine
{
    private const int BlockLength = 2048;

    // The largest chance below 1: the last slice of many must not round up to certainty.
    private const double AlmostCertain = 1 - (1.0 / (1ul << 53));

    // Purposes of words that are not numbers of a stream.
    private const int StrataKeys = 1;
    private const int ShiftKeys = 2;

    private readonly SimulationOptions options;
    private readonly CounterRandom random;
    private readonly Distribution[] distributions;
    private readonly ScoreTable?[] tables;

    // The dimension of the factor that an input shares with its group; −1 for an input of its own.
    private readonly int[] factors;
    private readonly int factorCount;
    private readonly double shared;
    private readonly double own;
    private readonly Strata[] strata;
    private readonly uint[] shifts;

    public SimulationEngine(IReadOnlyList<UncertainInput> inputs, SimulationOptions options)
    {
        this.options = options;
        random = new CounterRandom(options.Seed);
        distributions = [.. inputs.Select(input => input.Distribution)];
        tables = [.. distributions.Select(distribution => distribution.Table())];
        double correlation = options.CorrelationFraction;
        shared = Math.Sqrt(correlation);
        own = Math.Sqrt(1 - correlation);
        string[] groups = correlation == 0 ? [] : [.. inputs.Select(input => input.Group).OfType<string>().Distinct(StringComparer.Ordinal)];
        factorCount = groups.Length;
        factors = [.. inputs.Select(input => input.Group is null ? -1 : Array.IndexOf(groups, input.Group))];
        int dimensions = factorCount + distributions.Length;
        strata = [.. Enumerable.Range(0, dimensions).Select(dimension => new Strata(options.Trials, random.Word(StrataKeys, dimension)))];
        shifts = [.. Enumerable.Range(0, dimensions).Select(dimension => random.Word(ShiftKeys, dimension))];
    }

    /// <summary>
    /// Runs every trial; <paramref name="model"/> reads the inputs and writes the outputs, and may be called from several threads at
    /// once.
    /// </summary>
    public double[][] Run(int outputs, Action<double[], double[]> model, IProgress<double>? progress, CancellationToken cancellation)
    {
        double[][] results = [.. Enumerable.Range(0, outputs).Select(_ => new double[options.Trials])];
        int blocks = (options.Trials + BlockLength - 1) / BlockLength;
        int threads = Math.Min(blocks, options.Threads == 0 ? Environment.ProcessorCount : options.Threads);
        object gate = new();
        int done = 0;

        void Block(int block)
        {
            RunBlock(block, results, model);
            if (progress is not null)
            {
                lock (gate)
                {
                    done++;
                    progress.Report((double)done / blocks);
                }
            }
        }

        if (threads == 1)
        {
            for (int block = 0; block < blocks; block++)
            {
                cancellation.ThrowIfCancellationRequested();
                Block(block);
            }

            return results;
        }

        try
        {
            Parallel.For(0, blocks, new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = cancellation }, Block);
        }
        catch (AggregateException several)
        {
            // What the model threw is what the caller should see.
            ExceptionDispatchInfo.Capture(several.InnerExceptions[0]).Throw();
        }

        return results;
    }

    private void RunBlock(int block, double[][] results, Action<double[], double[]> model)
    {
        double[] inputs = new double[distributions.Length];
        double[] chances = new double[factorCount + distributions.Length + 1];
        double[] outputs = new double[results.Length];
        int end = Math.Min(options.Trials, (block + 1) * BlockLength);
        for (int trial = block * BlockLength; trial < end; trial++)
        {
            DrawChances(trial, chances);
            DrawInputs(chances, inputs);
            model(inputs, outputs);
            for (int i = 0; i < outputs.Length; i++)
            {
                if (double.IsNaN(outputs[i]) || double.IsInfinity(outputs[i]))
                {
                    throw new InvalidOperationException("The model gave no finite number in trial " + Figures.Fixed(trial, 0) + ".");
                }

                results[i][trial] = outputs[i];
            }
        }
    }

    private void DrawChances(int trial, double[] chances)
    {
        // The last place takes the second number of a pair when the count is odd.
        int dimensions = chances.Length - 1;
        int first = options.Sampling == SamplingMethod.QuasiRandom ? Math.Min(Sobol.Dimensions, dimensions) : 0;
        for (int i = 0; i < first; i++)
        {
            chances[i] = ((Sobol.At(i, (uint)trial) ^ shifts[i]) + 0.5) * (1.0 / (1ul << 32));
        }

        for (int i = first; i < dimensions; i += 2)
        {
            random.Pair(i / 2, trial, out chances[i], out chances[i + 1]);
        }

        if (options.Sampling == SamplingMethod.LatinHypercube)
        {
            for (int i = 0; i < dimensions; i++)
            {
                chances[i] = Math.Min(AlmostCertain, (strata[i].Of((uint)trial) + chances[i]) / options.Trials);
            }
        }
    }

    private void DrawInputs(double[] chances, double[] inputs)
    {
        for (int i = 0; i < factorCount; i++)
        {
            chances[i] = Distribution.ScoreOf(chances[i]);
        }

        for (int i = 0; i < inputs.Length; i++)
        {
            double u = chances[factorCount + i];
            if (factorCount > 0 && factors[i] >= 0)
            {
                double z = (shared * chances[factors[i]]) + (own * Distribution.ScoreOf(u));
                inputs[i] = tables[i] is ScoreTable table ? table.At(z) : distributions[i].AtScore(z);
            }
            else
            {
                inputs[i] = tables[i] is ScoreTable table ? table.At(Distribution.ScoreOf(u)) : distributions[i].At(u);
            }
        }
    }
}

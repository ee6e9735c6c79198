using System;
using System.Collections.Generic;
using System.Linq;
using System.Threading;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>A number that depends on uncertain inputs: Monte Carlo trials of it, and which input moves it most.</summary>
/// <remarks>
/// Trials are the same for one seed whatever the number of threads. Correlated inputs are joined by a Gaussian copula with one factor for each
/// group: score = √ρ · common + √(1 − ρ) · own. Memory is eight bytes for each trial.
/// </remarks>
/// <example><code>
/// UncertainInput[] inputs = [new("hours", new PertDistribution(3, 4, 7)), new("rate", new TriangularDistribution(30, 36, 45))];
/// Simulation cost = new(inputs, values => values[0] * values[1]);
/// double careful = cost.Run().P80;
/// </code></example>
public sealed class Simulation
{
    private readonly Func<IReadOnlyList<double>, double> model;

    /// <summary>Describes what depends on what.</summary>
    /// <param name="inputs">The uncertain inputs, at least one.</param>
    /// <param name="model">
    /// The number as a function of the values of the inputs, in their order. It may be called from several threads at once, must depend on
    /// nothing else and must not keep the list.
    /// </param>
    /// <exception cref="ArgumentException">The list is empty or holds an empty entry.</exception>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public Simulation(IReadOnlyList<UncertainInput> inputs, Func<IReadOnlyList<double>, double> model)
    {
        Inputs = Guard.List(inputs, 1);
        this.model = Guard.NotNull(model);
    }

    /// <summary>The uncertain inputs.</summary>
    public IReadOnlyList<UncertainInput> Inputs { get; }

    /// <summary>Runs the trials.</summary>
    /// <param name="options">How; the defaults of <see cref="SimulationOptions"/> when omitted.</param>
    /// <param name="progress">Told the share that is done, rising from 0 to 1.</param>
    /// <param name="cancellation">Stops the run within about two thousand trials.</param>
    /// <returns>What came out.</returns>
    /// <exception cref="InvalidOperationException">The model gave no finite number.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public SimulationResult Run(SimulationOptions? options = null, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        options ??= new SimulationOptions();
        double[][] results = new SimulationEngine(Inputs, options).Run(1, (inputs, outputs) => outputs[0] = model(inputs), progress, cancellation);
        return new SimulationResult(results[0], options);
    }

    /// <summary>How far each input alone moves the number, from its P10 to its P90 with all others at their medians; the widest first.</summary>
    /// <returns>One bar for each input that is not exact.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The model gave no finite number.</exception>
    public IReadOnlyList<TornadoBar> Tornado() => TornadoBar.Of(Inputs, model);

    /// <summary>The names of the inputs.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => "simulation over " + string.Join(", ", Inputs.Select(input => input.Name));
}

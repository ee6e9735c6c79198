using System;
using System.Collections.Generic;
using System.Threading;
using Refinish.Estimating;

namespace Refinish.Tests.Estimating;

/// <summary>The engine put to a model of a test's own.</summary>
internal sealed class Simulation(IReadOnlyList<UncertainInput> inputs, Func<double[], double> model)
{
    public SimulationResult Run() => Run(new SimulationOptions());

    public SimulationResult Run(SimulationOptions options, IProgress<double>? progress = null, CancellationToken cancellation = default) => new(
        new SimulationEngine(inputs, options).Run(1, (drawn, found) => found[0] = model(drawn), progress, cancellation)[0], options);

    public IReadOnlyList<TornadoBar> Tornado() => TornadoBar.Of(inputs, model);
}

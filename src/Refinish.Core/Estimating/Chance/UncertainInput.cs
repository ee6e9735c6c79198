using System;

namespace Refinish.Estimating;

/// <summary>One uncertain input of a simulation: what it is called, how it is spread, and with which others it moves.</summary>
/// <example><code>
/// UncertainInput masking = new() { Name = "masking", Distribution = new PertDistribution(0.5, 0.75, 1.25), Group = "labour" };
/// </code></example>
public sealed record UncertainInput
{
    /// <summary>What it is called.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>How it is spread.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required Distribution Distribution { get; init => field = Guard.NotNull(value); }

    /// <summary>
    /// Inputs of one group are correlated with each other as <see cref="SimulationOptions.Correlation"/> says; <see langword="null"/>, it
    /// goes its own way, when left out.
    /// </summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public string? Group { get; init => field = value is null ? null : Guard.Named(value); }

    /// <summary>Name and distribution.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ": " + Distribution;
}

using System;

namespace Refinish.Estimating;

/// <summary>One uncertain input of a simulation: what it is called, how it is spread, and with which others it moves.</summary>
/// <example><code>
/// UncertainInput masking = new("masking", new PertDistribution(0.5, 0.75, 1.25), group: "labour");
/// </code></example>
public sealed record UncertainInput
{
    /// <summary>Makes an input.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="distribution">How it is spread.</param>
    /// <param name="group">
    /// Inputs of one group are correlated with each other as <see cref="SimulationOptions.Correlation"/> says; <see langword="null"/> for an input
    /// that goes its own way.
    /// </param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="distribution"/> is missing.</exception>
    public UncertainInput(string name, Distribution distribution, string? group = null)
    {
        Name = Guard.Named(name);
        Distribution = Guard.NotNull(distribution);
        Group = group is null ? null : Guard.Named(group);
    }

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>How it is spread.</summary>
    public Distribution Distribution { get; }

    /// <summary>With which others it moves; <see langword="null"/> when with none.</summary>
    public string? Group { get; }

    /// <summary>Name and distribution.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ": " + Distribution;
}

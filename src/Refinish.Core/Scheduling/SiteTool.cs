namespace Refinish.Scheduling;

/// <summary>A tool that steps occupy while they last, such as the spray gun, and how many of it are on site.</summary>
/// <example><code>
/// SiteTool gun = new("spray gun", 1);
/// </code></example>
public sealed record SiteTool
{
    /// <summary>Makes a tool.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="count">How many there are, 1 to 100.</param>
    /// <exception cref="System.ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="System.ArgumentOutOfRangeException"><paramref name="count"/> is outside its range.</exception>
    public SiteTool(string name, int count)
    {
        Name = Guard.Named(name);
        Count = Guard.Count(count, 1, 100);
    }

    /// <summary>What it is called.</summary>
    public string Name { get; }

    /// <summary>How many there are.</summary>
    public int Count { get; }

    /// <summary>The name and the number.</summary>
    /// <returns>Text such as <c>1 × spray gun</c>.</returns>
    public override string ToString() => Figures.Fixed(Count, 0) + " × " + Name;
}

namespace Refinish.Scheduling;

/// <summary>How far a schedule is searched. Counts, not seconds, so that the same work gives the same schedule on every machine.</summary>
/// <example><code>
/// SearchEffort thorough = SearchEffort.Standard with { Nodes = 500_000 };
/// </code></example>
public sealed record SearchEffort
{
    /// <summary>
    /// 20 000 nodes for the whole, 300 for one bathroom among many, 6 orders of bathrooms (invented defaults, chosen so that a bathroom
    /// takes milliseconds).
    /// </summary>
    public static SearchEffort Standard { get; } = new();

    /// <summary>
    /// 2 000 nodes for the whole, 100 for one bathroom among many, 2 orders (invented), for a plan within a quote that has to be there at
    /// once.
    /// </summary>
    public static SearchEffort Quick { get; } = new() { Nodes = 2_000, NodesPerGroup = 100, Orders = 2 };

    /// <summary>Most nodes of a search that can prove an optimum, 1 to 100 million.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public int Nodes { get; init => field = Guard.Count(value, 1, 100_000_000); } = 20_000;

    /// <summary>Most nodes for placing one bathroom into the time that others leave, 1 to 100 million.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public int NodesPerGroup { get; init => field = Guard.Count(value, 1, 100_000_000); } = 300;

    /// <summary>How many orders of bathrooms are tried, 1 to 10 000.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public int Orders { get; init => field = Guard.Count(value, 1, 10_000); } = 6;

    /// <summary>Steps up to which the whole is searched for a proof after a good schedule is known, 1 to 200.</summary>
    /// <exception cref="System.ArgumentOutOfRangeException">Outside the range.</exception>
    public int StepsForProof { get; init => field = Guard.Count(value, 1, 200); } = 60;

    /// <summary>The limits.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Figures.Fixed(Nodes, 0) + " nodes, " + Figures.Fixed(NodesPerGroup, 0) + " per group, " + Figures.Fixed(Orders, 0)
            + " orders, proof up to " + Figures.Fixed(StepsForProof, 0) + " steps";
}

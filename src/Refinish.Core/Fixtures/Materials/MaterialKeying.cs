namespace Refinish.Fixtures;

/// <summary>How a material is roughened so that a coat holds: what the crew reads, and the grits.</summary>
/// <example><code>
/// MaterialKeying wet = new("abrade wet, lightly and evenly, no acid and no strong solvent", 320, 320);
/// int coarsest = wet.CoarsestGrit;   // 320
/// </code></example>
public sealed record MaterialKeying
{
    /// <summary>Makes it.</summary>
    /// <param name="instruction">What the crew reads, without rinsing and drying, which are added.</param>
    /// <param name="coarsestGrit">Coarsest grit, 16 to 5000.</param>
    /// <param name="finestGrit">Finest grit, <paramref name="coarsestGrit"/> to 5000.</param>
    /// <exception cref="System.ArgumentException"><paramref name="instruction"/> is empty.</exception>
    /// <exception cref="System.ArgumentOutOfRangeException">A grit is outside its range.</exception>
    public MaterialKeying(string instruction, int coarsestGrit, int finestGrit)
    {
        Instruction = Guard.Named(instruction);
        CoarsestGrit = Guard.Count(coarsestGrit, 16, 5000);
        FinestGrit = Guard.Count(finestGrit, coarsestGrit, 5000);
    }

    /// <summary>What the crew reads.</summary>
    public string Instruction { get; }

    /// <summary>Coarsest grit; a greater number is finer.</summary>
    public int CoarsestGrit { get; }

    /// <summary>Finest grit.</summary>
    public int FinestGrit { get; }

    /// <summary>The instruction and the grits.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Instruction + " (" + Figures.Fixed(CoarsestGrit, 0) + " to " + Figures.Fixed(FinestGrit, 0) + ")";
}

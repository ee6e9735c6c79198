namespace Refinish.Substrates;

/// <summary>One step of the preparation, in the order in which it is done.</summary>
public sealed record PreparationStep
{
    internal PreparationStep(string code, PreparationKind kind, string instruction, Source source, int? coarsestGrit = null, int? finestGrit = null)
    {
        Code = code;
        Kind = kind;
        Instruction = instruction;
        Source = source;
        CoarsestGrit = coarsestGrit;
        FinestGrit = finestGrit;
    }

    /// <summary>Code of this library's own, such as "P-30".</summary>
    public string Code { get; }

    /// <summary>What the step does.</summary>
    public PreparationKind Kind { get; }

    /// <summary>What to do, in a sentence.</summary>
    public string Instruction { get; }

    /// <summary>Coarsest grit of the P series to abrade with; <see langword="null"/> where nothing is abraded.</summary>
    public int? CoarsestGrit { get; }

    /// <summary>Finest grit of the P series to abrade with; <see langword="null"/> where nothing is abraded.</summary>
    public int? FinestGrit { get; }

    /// <summary>What the step rests on.</summary>
    public Source Source { get; }

    /// <summary>Code and instruction.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Code + " " + Instruction;
}

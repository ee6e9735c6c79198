namespace Refinish.Inspection;

/// <summary>One pencil of a hardness test and what it did.</summary>
/// <param name="Pencil">The pencil.</param>
/// <param name="Mark">The worst of its marks.</param>
public readonly record struct PencilTrial(PencilGrade Pencil, PencilMark Mark);

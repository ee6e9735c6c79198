namespace Refinish.Inspection;

/// <summary>One pencil of a hardness test and what it did.</summary>
/// <param name="Pencil">The pencil.</param>
/// <param name="Mark">The worst of its marks.</param>
public readonly record struct PencilTrial(PencilGrade Pencil, PencilMark Mark)
{
    /// <summary>Pencil and mark.</summary>
    /// <returns>Text such as <c>2H: scratch</c>.</returns>
    public override string ToString() =>
        PencilTest.InWords(Pencil) + ": " + (Mark == PencilMark.None ? "no mark" : Mark == PencilMark.Scratch ? "scratch" : "gouge");
}

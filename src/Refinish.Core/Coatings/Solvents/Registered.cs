namespace Refinish.Coatings;

/// <summary>
/// What a substance is known by in every table: its registry number and its name. Those of a solvent stand once, with it.
/// </summary>
internal readonly record struct Registered(string CasNumber, string Name)
{
    public static implicit operator Registered(Solvent solvent) => new(solvent.CasNumber, solvent.Name);
}

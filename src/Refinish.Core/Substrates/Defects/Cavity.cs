namespace Refinish.Substrates;

/// <summary>A hollow.</summary>
/// <param name="Volume">Its volume in m³, with its formula where a derivation is made.</param>
/// <param name="Depth">m.</param>
/// <param name="Source">Where the formula comes from.</param>
internal readonly record struct Cavity(Num Volume, double Depth, Source Source);

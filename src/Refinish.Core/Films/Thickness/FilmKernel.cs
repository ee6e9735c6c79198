namespace Refinish.Films;

/// <summary>
/// Film arithmetic in SI, with or without a derivation. Symbols: DFT dry film, WFT wet film (m); VS volume solids, R reducer per volume of
/// mixed coating (fractions).
/// </summary>
internal static class FilmKernel
{
    /// <summary>Of a pass; keeps the rounding of a division from adding or taking one.</summary>
    private const double Slack = 1e-9;

    /// <summary>VS′ = VS / (1 + R).</summary>
    public static Num ReducedSolids(Num volumeSolids, Num reducer) => volumeSolids / (1 + reducer);

    /// <summary>WFT = DFT (1 + R) / VS.</summary>
    public static Num WetFilm(Num dryFilm, Num volumeSolids, Num reducer) => dryFilm * (1 + reducer) / volumeSolids;

    /// <summary>DFT = WFT VS / (1 + R).</summary>
    public static Num DryFilm(Num wetFilm, Num volumeSolids, Num reducer) => wetFilm * volumeSolids / (1 + reducer);

    /// <summary>How many films of a given thickness a total needs; a whole number to within rounding counts as whole.</summary>
    public static Num PassesUpwards(Num total, Num film) => Num.Ceiling((total / film) - Slack);

    /// <summary>How many films of a given thickness a total holds; a whole number to within rounding counts as whole.</summary>
    public static Num PassesDownwards(Num total, Num film) => Num.Floor((total / film) + Slack);
}

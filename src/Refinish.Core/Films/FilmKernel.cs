namespace Refinish.Films;

/// <summary>
/// Film arithmetic in SI. Symbols: DFT dry film, WFT wet film (m); VS volume solids, R reducer per volume of mixed coating (fractions).
/// </summary>
internal static class FilmKernel
{
    /// <summary>VS′ = VS / (1 + R).</summary>
    public static double ReducedSolids(double volumeSolids, double reducer) => volumeSolids / (1 + reducer);

    /// <summary>WFT = DFT (1 + R) / VS.</summary>
    public static double WetFilm(double dryFilm, double volumeSolids, double reducer) => dryFilm * (1 + reducer) / volumeSolids;
}

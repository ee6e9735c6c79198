namespace Refinish.Coverage;

/// <summary>
/// Quantities in SI. Symbols: A area, WFT wet film, TE transfer efficiency, w part of the mix left in cup, hose and filter,
/// R reducer per volume of mixed coating, f_A and f_B the components' parts of the mixed volume.
/// </summary>
internal static class CoverageKernel
{
    /// <summary>V_film = A · WFT.</summary>
    public static double FilmVolume(double area, double wetFilm) => area * wetFilm;

    /// <summary>V_gun = V_film / TE.</summary>
    public static double SprayedVolume(double filmVolume, double transferEfficiency) => filmVolume / transferEfficiency;

    /// <summary>V_pour = V_gun / (1 − w).</summary>
    public static double PouredVolume(double sprayedVolume, double residue) => sprayedVolume / (1 - residue);

    /// <summary>V_mix = V_pour / (1 + R).</summary>
    public static double MixedVolume(double pouredVolume, double reducer) => pouredVolume / (1 + reducer);
}

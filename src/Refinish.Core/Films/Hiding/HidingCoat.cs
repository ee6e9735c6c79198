using UnitsNet;
using Refinish.Colours;

namespace Refinish.Films;

/// <summary>What is seen after a number of coats over an old colour.</summary>
public sealed record HidingCoat
{
    internal HidingCoat(int coats, double reflectance, double ratio, double deltaL, CieLab? colour, double? deltaE)
    {
        Coats = coats;
        Reflectance = Ratio.FromDecimalFractions(reflectance);
        Share = ratio;
        LightnessDifference = deltaL;
        Colour = colour;
        Difference = deltaE;
    }

    /// <summary>How many coats of the topcoat lie on the old colour, or on the primer over it.</summary>
    public int Coats { get; }

    /// <summary>Reflectance Y.</summary>
    public Ratio Reflectance { get; }

    /// <summary>Reflectance against that of the full colour, the smaller per the larger: 1 when the old colour is gone.</summary>
    public Ratio Ratio => Ratio.FromDecimalFractions(Share);

    /// <summary>L* of what is seen less L* of the full colour.</summary>
    public double LightnessDifference { get; }

    /// <summary>The colour seen; <see langword="null"/> when only the reflectance was calculated.</summary>
    public CieLab? Colour { get; }

    /// <summary>ΔE00 to the full colour; <see langword="null"/> when only the reflectance was calculated.</summary>
    public double? Difference { get; }

    internal double Share { get; }

    /// <summary>The coat in one line.</summary>
    /// <returns>Text such as <c>2 coats: 97.9 % of the full colour, ΔL* -0.79</c>.</returns>
    public override string ToString() =>
        Figures.Fixed(Coats, 0) + (Coats == 1 ? " coat: " : " coats: ")
        + Measure.Percent.Format(Share, DisplayUnits.Si, 3) + " of the full colour, "
        + (Difference is double e ? "ΔE00 " + Figures.Significant(e, 3) : "ΔL* " + Figures.Significant(LightnessDifference, 3));
}

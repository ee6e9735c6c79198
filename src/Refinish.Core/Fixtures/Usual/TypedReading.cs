using System;

namespace Refinish.Fixtures;

/// <summary>
/// A reading as it was typed, beside what is usual. The action measures the whole with another length in its place, and refuses what cannot
/// be.
/// </summary>
internal sealed record TypedReading(string Path, string Words, UsualReading Usual, double Metres, Action<double> Measured)
{
    public bool IsUsual => Usual.Holds(Metres);

    /// <summary>How far outside the band, as the natural logarithm of a ratio; 0 inside.</summary>
    public double Off => Math.Log(Math.Max(1, Math.Max(Metres / Usual.GreatestMetres, Usual.LeastMetres / Metres)));

    /// <summary>How far a length lies from the middle of the band.</summary>
    public double FromMiddle(double metres) => Math.Abs(Math.Log(metres / Math.Sqrt(Usual.LeastMetres * Usual.GreatestMetres)));

    /// <summary>Whether the other readings allow that length.</summary>
    public bool Fits(double metres)
    {
        try
        {
            Measured(metres);
            return true;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }
}

using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>
/// A slip that would explain a reading in doubt, and what would then have been meant. It is a guess: only measuring again tells.
/// </summary>
public sealed record LikelySlip
{
    internal LikelySlip(ReadingSlip slip, double metres)
    {
        Slip = slip;
        Metres = metres;
    }

    /// <summary>The slip.</summary>
    public ReadingSlip Slip { get; }

    /// <summary>What was probably meant.</summary>
    public Length Meant => Length.FromMeters(Metres);

    /// <summary>Whether the slip is a mix-up of units, or may be one.</summary>
    public bool IsUnitMixUp => Slip is not (ReadingSlip.DigitsSwapped or ReadingSlip.DigitDoubled);

    internal double Metres { get; }

    /// <summary>The value that was meant and the slip in words.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>Text such as <c>1524 mm (inches typed as centimetres)</c>.</returns>
    public string Describe(DisplayUnits system) => Measure.Length.Format(Metres, system, 4) + " (" + Slips.InWords(Slip) + ")";

    /// <summary>The value and the slip, in metric units.</summary>
    /// <returns>See <see cref="Describe"/>.</returns>
    public override string ToString() => Describe(DisplayUnits.Si);
}

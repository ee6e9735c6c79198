using UnitsNet;

namespace Refinish.Coverage;

/// <summary>One batch: how much, in which cup.</summary>
public sealed record CupBatch
{
    internal CupBatch(MixingCup cup, int graduations)
    {
        Cup = cup;
        Graduations = graduations;
        Volume = Volume.FromCubicMeters(graduations * cup.Step);
    }

    /// <summary>The cup.</summary>
    public MixingCup Cup { get; }

    /// <summary>The fill line, in graduations.</summary>
    public int Graduations { get; }

    /// <summary>Reduced coating in it.</summary>
    public Volume Volume { get; }

    internal double CubicMeters => Volume.CubicMeters;

    /// <summary>Volume and cup.</summary>
    /// <returns>Text such as <c>435 mL in the 600 mL cup, to 5 mL</c>.</returns>
    public override string ToString() => Measure.Liquid.Format(Volume.CubicMeters) + " in the " + Cup;
}

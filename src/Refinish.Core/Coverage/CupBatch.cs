using UnitsNet;

namespace Refinish.Coverage;

/// <summary>One batch: how much, in which cup.</summary>
public sealed record CupBatch
{
    private readonly double volume;

    internal CupBatch(MixingCup cup, int graduations)
    {
        Cup = cup;
        Graduations = graduations;
        volume = graduations * cup.Step;
    }

    /// <summary>The cup.</summary>
    public MixingCup Cup { get; }

    /// <summary>The fill line, in graduations.</summary>
    public int Graduations { get; }

    /// <summary>Reduced coating in it.</summary>
    public Volume Volume => Volume.FromCubicMeters(volume);

    internal double CubicMeters => volume;

    /// <summary>Volume and cup.</summary>
    /// <returns>Text such as <c>435 mL in the 600 mL cup, to 5 mL</c>.</returns>
    public override string ToString() => Measure.Liquid.Format(volume) + " in the " + Cup;
}

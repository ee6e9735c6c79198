namespace Refinish.Coverage;

/// <summary>A cup that can be used for a plan: its graduation, and the least and most graduations of one batch.</summary>
internal readonly struct UsableCup(MixingCup cup, int least, int most)
{
    public MixingCup Cup { get; } = cup;

    public double Step { get; } = cup.Step;

    public int Least { get; } = least;

    public int Most { get; } = most;
}

/// <summary>What a plan mixes in one cup: how many batches, and how many graduations they hold together.</summary>
internal readonly struct CupShare(int cup, int batches, long graduations)
{
    /// <summary>Index of the cup among the usable ones.</summary>
    public int Cup { get; } = cup;

    public int Batches { get; } = batches;

    public long Graduations { get; } = graduations;
}

using Refinish.Fixtures;

namespace Refinish.Jobs;

/// <summary>What is taken off a fixture before work and put back after it, by its kind: nobody looks for a drain in a tiled wall.</summary>
internal static class ClearingText
{
    /// <summary>The instruction for clearing.</summary>
    public static string Of(IFixture fixture) => FixtureKind.Of(fixture)?.Clearing(FixtureKind.Measured(fixture))
        ?? "take off what is fixed to it and comes off; " + ClearingWords.CutOut("round it");

    /// <summary>The instruction for putting back.</summary>
    public static string Back(IFixture fixture) =>
        FixtureKind.Of(fixture)?.PuttingBack(FixtureKind.Measured(fixture)) ?? ClearingWords.CaulkAndRefit;
}

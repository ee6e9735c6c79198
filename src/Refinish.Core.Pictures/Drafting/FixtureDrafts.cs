using Refinish.Fixtures;

namespace Refinish.Pictures.Drafting;

/// <summary>Which drawing belongs to which kind of fixture.</summary>
internal static class FixtureDrafts
{
    public static Blueprint Of(IFixture fixture, DisplayUnits units) => fixture switch
    {
        RecessedBathtub tub => TubDrafts.Of(tub, units),
        _ => new Blueprint([], [], []),
    };
}

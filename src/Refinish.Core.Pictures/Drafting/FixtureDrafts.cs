using Refinish.Fixtures;

namespace Refinish.Pictures.Drafting;

/// <summary>Which drawing belongs to which kind of fixture.</summary>
internal static class FixtureDrafts
{
    public static Blueprint Of(IFixture fixture, DisplayUnits units) => (fixture is RoughFixture rough ? rough.Likely : fixture) switch
    {
        RecessedBathtub tub => TubDrafts.Of(tub, units),
        FreestandingTub tub => TubDrafts.Of(tub, units),
        OvalTub tub => TubDrafts.Of(tub, units),
        CornerTub tub => CornerTubDraft.Of(tub, units),
        PedestalSink sink => SinkDrafts.Of(sink, units),
        CounterSink sink => SinkDrafts.Of(sink, units),
        ShowerPan pan => FlatDrafts.Of(pan, units),
        Countertop counter => FlatDrafts.Of(counter, units),
        FlatPanel panel => FlatDrafts.Of(panel, units),
        TiledSurround surround => FlatDrafts.Of(surround, units),
        ZonedFixture zoned => ZonedDrafts.Of(zoned, units),
        ComposedFixture made => ComposedDraft.Of(made, units),
        _ => new Blueprint([], [], []),
    };
}

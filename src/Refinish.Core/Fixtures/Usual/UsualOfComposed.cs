using System.Linq;
using UnitsNet;
using static Refinish.Fixtures.ClearingWords;

namespace Refinish.Fixtures;

/// <summary>What is known of fixtures put together from parts, whose bands stand in their kinds, and of fixtures of zones.</summary>
internal static class UsualOfComposed
{
    /// <summary>A fixture of zones has no lengths of its own, and may be anything.</summary>
    public static FixtureKind Zones { get; } = new KnownKind<ZonedFixture, ZonedFixture>(
        null, nameof(ZonedFixture), new Form<ZonedFixture>("fixture of zones", _ => true))
    {
        Id = "zoned",
        Name = "fixture of zones",
        RoughKinds = [],
        Materials = [],
        TakenOff = own => (own.WaterCapacity is null ? string.Empty : "take off drain and overflow parts; ")
            + "take off what is fixed to it and comes off" + (own.MaskedEdge > Length.Zero ? "; " + CutOut("round it") : string.Empty),
        PutBack = own => own.MaskedEdge > Length.Zero ? CaulkAndRefit : "put back what was taken off",
        Tape = fixture => fixture, Make = fixture => fixture, OnTheFloor = _ => null, };

    public static FixtureKind Kind(ComposedKind kind) => new KnownKind<ComposedFixture, ComposedFixture>(
        null, kind.Id, new Form<ComposedFixture>(
            kind.Name, _ => true, [.. kind.Readings.Where(reading => reading.Usual is not null).Select(Row)]))
    {
        Id = kind.Id,
        Name = kind.Name,
        RoughKinds = [],
        Materials = kind.Materials,
        TakenOff = made => Basin(Taken(made, "DrainDiameter"), Taken(made, "OverflowDiameter"))
            + Faucet(Taken(made, "FaucetHoleDiameter") > Length.Zero) + kind.Clearing,
        PutBack = _ => kind.PuttingBack,
        Only = fixture => ReferenceEquals(fixture.Kind, kind),
        Tape = fixture => fixture,
        Make = fixture => fixture,
        OnTheFloor = fixture => kind.StandsOnTheFloor ? Footprint.Of(fixture.Value(kind.Size.First), fixture.Value(kind.Size.Second))
            : null, };

    private static Length Taken(ComposedFixture made, string reading) =>
        Length.FromMeters(made.Taken.FirstOrDefault(one => one.Name == reading)?.Value ?? 0);

    private static ReadingRow<ComposedFixture> Row(InputField reading)
    {
        (double least, double greatest, Source source) = reading.Usual!.Value;
        return new(
            reading.Name, reading.Meaning, least, greatest, source, fixture => Length.FromMeters(fixture.Value(reading.Name)),
            (fixture, length) => fixture.With(new TakenReading(reading.Name, length)));
    }
}

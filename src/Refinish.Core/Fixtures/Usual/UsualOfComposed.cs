using System.Linq;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>What is known of fixtures that are put together from parts: the bands stand in their kinds.</summary>
internal static class UsualOfComposed
{
    public static KnownKind Kind(ComposedKind kind) => new KnownKind<ComposedFixture, ComposedFixture>(
        kind.Id, new Form<ComposedFixture>(
            kind.Name, [.. kind.Readings.Where(reading => reading.Usual is not null).Select(Row)]))
    {
        Materials = kind.Materials,
        Only = fixture => ReferenceEquals(fixture.Kind, kind),
        Tape = fixture => fixture,
        Make = fixture => fixture,
        OnTheFloor = fixture => kind.StandsOnTheFloor ? Footprint.Of(fixture.Value(kind.Size.First), fixture.Value(kind.Size.Second))
            : null,
    };

    private static ReadingRow<ComposedFixture> Row(ComposedReading reading)
    {
        (double least, double greatest, Source source) = reading.Usual!.Value;
        return new(
            reading.Name, reading.Words, least, greatest, source, fixture => Length.FromMeters(fixture.Value(reading.Name)),
            (fixture, length) => fixture.With(new TakenReading(reading.Name, length)));
    }
}

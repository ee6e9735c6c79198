using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>The size of a room: against what rooms are, and against the fixtures that stand in it.</summary>
internal static class RoomDoubts
{
    // Tape goes along skirtings, tile and plaster.
    private const double Slack = 0.05;

    private static readonly Source Sizes =
        Source.CommonPractice("rooms with fixtures are 2.5 to 30 ft long and wide and 6.5 to 13 ft high");
    private static readonly Source Inside = Source.Derived("what stands in a room is no larger than the room; 50 mm are left for the tape");

    private static readonly UsualReading Length = new("Room", "room", "Room.Length", "length of the room", 0.75, 9.2, Sizes);
    private static readonly UsualReading Width = new("Room", "room", "Room.Width", "width of the room", 0.75, 9.2, Sizes);
    private static readonly UsualReading Height = new("Room", "room", "Room.Height", "height of the room", 1.95, 4, Sizes);

    public static IEnumerable<Doubt> Of(SiteRoom site, IReadOnlyList<FixtureJob> inside)
    {
        Room room = site.Room;
        Doubt[] own =
        [
            .. TapeDoubts.OfReadings(
                site.Id,
                [
                    Reading(Length, room.Length, x => _ = room with { Length = x }),
                    Reading(Width, room.Width, x => _ = room with { Width = x }),
                    Reading(Height, room.Height, x => _ = room with { Height = x }),
                ]),
        ];
        return own.Length > 0 ? own : [.. inside.SelectMany(entry => OfFixture(entry, room)), .. OfFloor(site, inside)];
    }

    private static TypedReading Reading(UsualReading usual, Length found, Action<Length> made) =>
        new(usual.Name, usual.Words, usual, found.Meters, metres => made(UnitsNet.Length.FromMeters(metres)));

    private static IEnumerable<Doubt> OfFixture(FixtureJob entry, Room room)
    {
        double along = Math.Max(room.Length.Meters, room.Width.Meters) + Slack;
        double across = Math.Min(room.Length.Meters, room.Width.Meters) + Slack;
        IFixture fixture = FixtureKind.Measured(entry.Fixture);
        if (fixture is TiledSurround walls)
        {
            // Walls round a corner of a room may be as long as the room; none is longer, and tile ends at the ceiling.
            double longest = walls.Measurements.Walls.Max(wall => wall.Length.Meters);
            double highest = walls.Measurements.Walls.Max(wall => wall.Height.Meters);
            return [.. Beyond("Walls.Length", "the longest tiled wall", longest, along),
                .. Beyond("Walls.Height", "the highest tile", highest, room.Height.Meters + Slack)];
        }

        if (fixture is ZonedFixture own)
        {
            return own.Parts.SelectMany((part, i) => OfPart(entry, room, part, "Parts[" + Figures.Fixed(i, 0) + "].Area"));
        }

        return FixtureKind.Of(fixture)?.Footprint(fixture) is Footprint floor
            ?
            [
                .. Beyond("Length", "the longer side on the floor", Math.Max(floor.Length, floor.Width), along),
                .. Beyond("Width", "the shorter side on the floor", Math.Min(floor.Length, floor.Width), across),
            ]
            : [];

        IEnumerable<Doubt> Beyond(string reading, string words, double value, double greatest) => Exceeding.Of(
            new Doubt(DoubtKind.Room, entry.Id, reading, words,
                "Measure the room and the fixture again, or look whether it stands in this room.", Inside), value, greatest);
    }

    // Square feet typed as square metres are ten times too many, and of a part nothing but its area is known.
    private static IEnumerable<Doubt> OfPart(FixtureJob entry, Room room, ZonePart part, string reading)
    {
        double length = room.Length.Meters + Slack;
        double width = room.Width.Meters + Slack;
        double slope = part.SlopeFromHorizontal.Radians;
        double level = part.Area.SquareMeters * Math.Abs(Math.Cos(slope));
        double upright = part.Area.SquareMeters * Math.Sin(slope);
        double walls = 2 * (length + width) * (room.Height.Meters + Slack);
        bool floor = level > length * width;
        return Exceeding.Of(
            new Doubt(
                DoubtKind.Room, entry.Id, reading, "the area of '" + part.Name + "' beside " + (floor ? "the floor" : "all walls")
                    + " of its room", "Measure the part again, or look which unit its area was typed in.", Inside),
            floor ? level : upright, floor ? length * width : walls, Measure.Area);
    }

    private static IEnumerable<Doubt> OfFloor(SiteRoom site, IReadOnlyList<FixtureJob> inside)
    {
        double taken = inside.Select(entry => FixtureKind.Measured(entry.Fixture)).Sum(fixture =>
            FixtureKind.Of(fixture)?.Footprint(fixture)?.Area ?? 0);
        return Exceeding.Of(
            new Doubt(
                DoubtKind.Room, site.Id, "Floor", "the floor that the fixtures take together",
                "Measure the room again, or look whether all of them stand in it.", Inside),
            taken, site.Room.Length.Meters * site.Room.Width.Meters, Measure.Area);
    }
}

using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Fixtures;
using Refinish.Jobs;
using UnitsNet;
using With = System.Func<Refinish.Fixtures.RecessedBathtubMeasurements, UnitsNet.Length, Refinish.Fixtures.RecessedBathtubMeasurements>;

namespace Refinish.Samples.BrowserBath;

/// <summary>
/// What is written into the form, and what the library says against it. The tub and the room it starts with are invented.
/// </summary>
public sealed class Worksheet
{
    private static readonly Length Metre = Length.FromMeters(1);

    private static readonly RecessedBathtubMeasurements Sound = new()
    {
        OverallLength = Metre, OverallWidth = Metre, ApronHeight = default, RimLength = Metre, RimWidth = Metre,
        RimCornerRadius = default, Depth = Metre / 2,
        FloorLength = Metre, FloorWidth = Metre, FloorCornerRadius = default, HeadRun = default, FootRun = default, CoveRadius = default,
        DrainDiameter = default, OverflowDiameter = default,
    };

    private static readonly (string Name, string Label, string Help, double Millimetres, With With)[] Lengths =
    [
        ("OverallLength", "Whole tub, length", "over the deck", 1524, (tape, length) => tape with { OverallLength = length }),
        ("OverallWidth", "Whole tub, width", "over the deck", 762, (tape, length) => tape with { OverallWidth = length }),
        ("ApronHeight", "Front panel, height", "0 when there is none", 368, (tape, length) => tape with { ApronHeight = length }),
        ("RimLength", "Mouth, length", "inside the rim", 1346, (tape, length) => tape with { RimLength = length }),
        ("RimWidth", "Mouth, width", "inside the rim", 597, (tape, length) => tape with { RimWidth = length }),
        ("RimCornerRadius", "Mouth, corner radius", "seen from above", 152, (tape, length) => tape with { RimCornerRadius = length }),
        ("Depth", "Depth", "from the rim straight down", 337, (tape, length) => tape with { Depth = length }),
        ("FloorLength", "Floor, length", "to where the walls begin", 1118, (tape, length) => tape with { FloorLength = length }),
        ("FloorWidth", "Floor, width", "to where the walls begin", 495, (tape, length) => tape with { FloorWidth = length }),
        ("FloorCornerRadius", "Floor, corner radius", "seen from above", 127, (tape, length) => tape with { FloorCornerRadius = length }),
        ("HeadRun", "Backrest, run", "level, from floor to rim", 178, (tape, length) => tape with { HeadRun = length }),
        ("FootRun", "Drain end, run", "level, from floor to rim", 50, (tape, length) => tape with { FootRun = length }),
        ("CoveRadius", "Rounding of the floor line", "radius; 0 when sharp", 64, (tape, length) => tape with { CoveRadius = length }),
        ("DrainDiameter", "Drain, diameter", "0 when it is coated over", 51, (tape, length) => tape with { DrainDiameter = length }),
        ("OverflowDiameter", "Overflow, diameter", "0 when there is none", 76, (tape, length) => tape with { OverflowDiameter = length }),
    ];

    public Worksheet(DateTime start)
    {
        Tape = [.. Lengths.Select(line =>
            new Entry(line.Name, line.Label, line.Help, Measure.Length, line.Millimetres.ToString(CultureInfo.InvariantCulture)))];
        Room =
        [
            new Entry("length", "Room, length", "", Measure.Distance, "2.6"),
            new Entry("width", "Room, width", "", Measure.Distance, "2.1"),
            new Entry("height", "Room, height", "floor to ceiling", Measure.Distance, "2.5"),
            new Entry("LabelFlow", "Fan, airflow", "as its label says", Measure.Airflow, "1700"),
            new Entry("dryBulb", "Air temperature", "near the tub", Measure.Temperature, "22"),
            new Entry("relativeHumidity", "Relative humidity", "near the tub", Measure.Percent, "48"),
            new Entry("surface", "Surface temperature", "where the tub is coldest", Measure.Temperature, "20"),
            new Entry("start", "Work not before", "Monday to Friday, 8 to 17", null,
                start.ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture)),
        ];
    }

    public DisplayUnits Units { get; private set; }

    public IReadOnlyList<Entry> Tape { get; }

    public IReadOnlyList<Entry> Room { get; }

    /// <summary>What the library says against the sheet that belongs to no line.</summary>
    public IReadOnlyList<string> Others { get; private set; } = [];

    public bool IsWrong => Others.Count > 0 || All.Any(entry => entry.Error is not null);

    public IEnumerable<Entry> All => Tape.Concat(Room);

    public void Show(DisplayUnits units)
    {
        foreach (Entry entry in All)
        {
            entry.Convert(Units, units);
        }

        Units = units;
    }

    /// <summary>Works the sheet out, or leaves an error beside every entry that cannot be.</summary>
    public Bath? WorkOut()
    {
        Others = [];
        foreach (Entry entry in All)
        {
            entry.Error = null;
        }

        // Each length is tried on a tub that is sound, so that one wrong entry does not hide the next; the tub then tries them together.
        RecessedBathtubMeasurements tape = Sound;
        for (int i = 0; i < Lengths.Length; i++)
        {
            With with = Lengths[i].With;
            Number(
                Tape[i],
                number => tape = with(tape, Units == DisplayUnits.Si ? Length.FromMillimeters(number) : Length.FromInches(number)));
        }

        Dictionary<string, double> read = [];
        foreach (Entry entry in Room.Where(entry => entry.Measure is not null))
        {
            Number(entry, number => read[entry.Name] = entry.Si(number, Units));
        }

        Entry last = Room[^1];
        if (!DateTime.TryParse(last.Text, CultureInfo.InvariantCulture, out DateTime start) || start.Year is < 1900 or > 2200)
        {
            last.Error = "“" + last.Text + "” is no date and time of these years.";
        }

        RecessedBathtub? tub = Tape.Any(entry => entry.Error is not null) ? null : Held(() => new RecessedBathtub(tape));
        SiteRoom? room = Room.Any(entry => entry.Error is not null) ? null : Held(() => RoomOf(read));
        return tub is null || room is null ? null
            : Held(() => new Bath(tub, room, new DateTimeOffset(DateTime.SpecifyKind(start, DateTimeKind.Unspecified), TimeSpan.Zero)));
    }

    private static SiteRoom RoomOf(Dictionary<string, double> read) => new()
    {
        Id = "bathroom",
        Room = new Room { Length = Length.FromMeters(read["length"]), Width = Length.FromMeters(read["width"]), Height = Length.FromMeters(read["height"]) },
        Exhaust = new Exhaust { LabelFlow = VolumeFlow.FromCubicMetersPerSecond(read["LabelFlow"]) },
        Climate = RoomClimate.Held(
            new MoistAir(Temperature.FromKelvins(read["dryBulb"]), Ratio.FromDecimalFractions(read["relativeHumidity"])),
            Temperature.FromKelvins(read["surface"])),
    };

    private static string Sentence(ArgumentException refused) => refused.Message.Split(" (Parameter '")[0];

    private static void Number(Entry entry, Action<double> take)
    {
        if (!double.TryParse(entry.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number))
        {
            entry.Error = "“" + entry.Text + "” is no number; write it like 12.5.";
            return;
        }

        try
        {
            take(number);
        }
        catch (ArgumentException refused)
        {
            entry.Error = Sentence(refused);
        }
    }

    private T? Held<T>(Func<T> make)
        where T : class
    {
        try
        {
            return make();
        }
        catch (ArgumentException refused)
        {
            if (All.FirstOrDefault(entry => entry.Name == refused.ParamName) is Entry named)
            {
                named.Error = Sentence(refused);
            }
            else
            {
                Others = [.. Others, Sentence(refused)];
            }

            return null;
        }
    }
}

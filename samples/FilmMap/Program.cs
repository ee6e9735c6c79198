// Sprays a bathtub before a drop is mixed: a habit, a proposal, and two overlaps on a flat panel.
// dotnet run --project samples/FilmMap -- docs/pictures
using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using Refinish;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Pictures;
using UnitsNet;

string folder = args.Length > 0 ? args[0] : "artifacts/pictures";
Directory.CreateDirectory(folder);

// Invented for the demonstration: gun, fan, hand and limits. Take your own from a stripe on paper, a stop-watch and the data sheet.
SprayGun gun = new() { FluidRate = VolumeFlow.FromMillilitersPerMinute(180), TransferEfficiency = Ratio.FromPercent(65) };
FanPattern fan = FanPattern.Beta(Length.FromMillimeters(220), Length.FromMillimeters(60), Length.FromMillimeters(180), 2);
StrokeSettings hand = new()
{
    Distance = Length.FromMillimeters(180), Speed = Speed.FromCentimetersPerSecond(45),
    Overlap = Ratio.FromPercent(50), TriggerLead = Length.FromMillimeters(40),
};
SprayFilmLimits limits = new(Length.FromMicrometers(60), Length.FromMicrometers(140));

RecessedBathtub tub = new(new RecessedBathtubMeasurements
{
    RimLength = Length.FromInches(53), RimWidth = Length.FromInches(23.5), RimCornerRadius = Length.FromInches(6),
    FloorLength = Length.FromInches(44), FloorWidth = Length.FromInches(19.5), FloorCornerRadius = Length.FromInches(5),
    Depth = Length.FromInches(13.25), HeadRun = Length.FromInches(7), FootRun = Length.FromInches(2), CoveRadius = Length.FromInches(2.5),
    OverallLength = Length.FromInches(60), OverallWidth = Length.FromInches(30), ApronHeight = Length.FromInches(14.5),
    DrainDiameter = Length.FromInches(2), OverflowDiameter = Length.FromInches(3),
});
TriangleMesh mesh = tub.Tessellate(Length.FromMillimeters(10));
Length edge = Length.FromMillimeters(20);

// A habit: the gun straight down over everything, 180 mm above the rim, two coats. Walls see it at a grazing angle, the apron not at all.
List<SprayStroke> above = [];
for (int coat = 0; coat < 2; coat++)
{
    for (double y = -0.385; y <= 0.39; y += 0.11)
    {
        above.Add(new() { Start = new(-0.8, y, 0.52), End = new(0.8, y, 0.52), Aim = new(0, 0, -1),
            Speed = Speed.FromCentimetersPerSecond(20) });
    }
}

FilmMap habit = new StrokePlan(gun, fan, above).SprayOnto(mesh, edge, limits);
Print("Gun straight down, two coats", habit);
Draw("tub-from-above.svg", habit, "A tub sprayed straight down, two coats");

// A proposal: least coating, no more than 2 % of the area under the minimum.
StrokeSearch search = new()
{
    Gun = gun, Pattern = fan, Hand = hand, LongestEdge = edge, ToleratedUnder = Ratio.FromPercent(2),
    SlowestSpeed = Speed.FromCentimetersPerSecond(12), FastestSpeed = Speed.FromCentimetersPerSecond(90),
};
StrokeProposal proposal = search.Propose(mesh, limits);
if (proposal.Map is FilmMap proposed)
{
    Print("Proposal: " + proposal, proposed);
    foreach (StrokeSide side in proposal.Sides)
    {
        Console.WriteLine("  " + side);
    }

    foreach (StrokeShortfall place in proposal.Shortfalls)
    {
        Console.WriteLine("  Short: " + place);
    }

    foreach (string way in proposal.Tried)
    {
        Console.WriteLine("  Tried: " + way);
    }

    Draw("tub-proposal.svg", proposed, "The same tub, strokes proposed for the least coating");
    using FileStream ply = File.Create(Path.Combine(folder, "tub-proposal.ply"));
    new FilmMapDrawing(proposed, "tub-proposal").WritePly(ply);
}

// A parabolic fan on a flat panel: 33 % overlap is evener than 50 %.
MeshPoint[] corners = [new(0, 0, 0), new(1.2, 0, 0), new(1.2, 0.6, 0), new(0, 0.6, 0)];
TriangleMesh panel = new(corners, [new(0, 1, 2, FixtureZoneKind.Top), new(0, 2, 3, FixtureZoneKind.Top)]);
foreach (double percent in new[] { 100.0 / 3, 50 })
{
    // As slow as makes the means alike.
    StrokeSettings led = hand with { Overlap = Ratio.FromPercent(percent), Speed = Speed.FromCentimetersPerSecond(percent > 40 ? 20 : 15) };
    StrokeOverlap closed = new(gun, fan, led);
    FilmMap flat = StrokePlan.OverPanel(gun, fan, led, Length.FromMeters(1.2), Length.FromMeters(0.6))
        .SprayOnto(panel, Length.FromMillimeters(5), limits);
    Print("Panel, " + Measure.Percent.Format(led.Overlap.DecimalFractions, DisplayUnits.Si, 3) + " overlap; closed form " + closed, flat);
    Draw(percent > 40 ? "panel-50.svg" : "panel-33.svg", flat, "A parabolic fan on a flat panel, "
        + Measure.Percent.Format(led.Overlap.DecimalFractions, DisplayUnits.Si, 3) + " overlap");
}

foreach (Caution caution in habit.Cautions)
{
    Console.WriteLine("! " + caution);
}

return 0;

void Print(string title, FilmMap map)
{
    Console.WriteLine(title);
    Console.WriteLine("  " + map.Balance);
    foreach (FilmMapZone zone in map.Zones.Append(map.Whole))
    {
        Console.WriteLine("  " + zone);
    }
}

void Draw(string name, FilmMap map, string title)
{
    using FileStream file = File.Create(Path.Combine(folder, name));
    new FilmMapDrawing(map, title).WriteSvg(file, DisplayUnits.Si);
}

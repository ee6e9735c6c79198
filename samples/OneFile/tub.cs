#:project ../../src/Refinish.Core
#:property PublishAot=false
// One tub, one file: `dotnet run samples/OneFile/tub.cs`. The tub, the gun and the day are invented.
using System;
using System.Linq;
using Refinish;
using Refinish.Climate;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Films;
using Refinish.Fixtures;
using UnitsNet;

// The tape.
RecessedBathtub tub = new(new RecessedBathtubMeasurements
{
    RimLength = Length.FromInches(53), RimWidth = Length.FromInches(23.5), RimCornerRadius = Length.FromInches(6),
    FloorLength = Length.FromInches(44), FloorWidth = Length.FromInches(19.5), FloorCornerRadius = Length.FromInches(5),
    Depth = Length.FromInches(13.25), HeadRun = Length.FromInches(7), FootRun = Length.FromInches(2), CoveRadius = Length.FromInches(2.5),
    OverallLength = Length.FromInches(60), OverallWidth = Length.FromInches(30), ApronHeight = Length.FromInches(14.5),
    DrainDiameter = Length.FromInches(2), OverflowDiameter = Length.FromInches(3),
});
Console.WriteLine($"{tub.Description}: {Measure.Area.Format(tub.CoatedArea.SquareMeters)} to coat");

// What to mix, coat by coat.
SprayGun gun = new() { FluidRate = VolumeFlow.FromMillilitersPerMinute(160), TransferEfficiency = Ratio.FromPercent(60) };
ApplicationLosses losses = new() { Residue = Ratio.FromPercent(8) };
foreach (CoatingLayer layer in GenericCatalogue.EpoxyUrethaneSystem.Layers)
{
    CoatDemand coat = new(tub.CoatedArea, layer, gun, losses);
    Console.WriteLine($"{layer.Product}, each of {layer.Coats}: {new PouredMix(layer.Product, coat.Total, layer.Reducer)}");
}

// The air, and the iron where it is coldest.
MoistAir air = new(Temperature.FromDegreesCelsius(20), Ratio.FromPercent(70));
SprayWindow window = new(air, Temperature.FromDegreesCelsius(16), GenericCatalogue.EpoxyPrimer.SprayLimits);
Console.WriteLine(window);

foreach (Caution caution in Cautions.ForSpraying.Union(Cautions.ForIsocyanates).Union(window.Cautions))
{
    Console.WriteLine("! " + caution);
}

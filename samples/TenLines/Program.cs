using System;
using Refinish;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Films;
using UnitsNet;

SprayGun gun = new() { FluidRate = VolumeFlow.FromMillilitersPerMinute(160), TransferEfficiency = Ratio.FromPercent(60) };
CoatingLayer primer = new(GenericCatalogue.EpoxyPrimer, Length.FromMicrometers(30), 1, Ratio.FromPercent(10));
CoatDemand coat = new(Area.FromSquareMeters(2.57), primer, gun, new ApplicationLosses { Residue = Ratio.FromPercent(8) });
PouredMix cup = new(primer.Product, coat.Total, primer.Reducer);
Console.WriteLine(coat);
Console.WriteLine(cup);
Console.WriteLine(coat.Workings().ToPlainText(DisplayUnits.Si));

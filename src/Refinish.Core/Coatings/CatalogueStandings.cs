using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>What each figure of the generic catalogue rests on: common practice, memory, or nothing but invention.</summary>
internal static class CatalogueStandings
{
    private static readonly Source Cans = Source.Invented("within what such cans weigh and hold, tuned so that the figures of one product agree with each other");
    private static readonly Source Ratios = Source.CommonPractice("mix ratios of 2 : 1 for epoxies and 4 : 1 for urethanes are among the usual ones");
    private static readonly Source Films = Source.FromMemory("typical dry film of such a coat, 25 to 40 µm, and volume solids of 35 to 55 %");
    private static readonly Source Reducers = Source.CommonPractice("reducer of 10 to 20 % for a small gun");
    private static readonly Source Times = Source.FromMemory("typical times at 25 °C of such products");
    private static readonly Source Tolerance = Source.FromMemory("5 % off ratio as the point at which to worry");
    private static readonly Source Chemistry = Source.FromMemory("equivalents of such cans; primer at 0.9 amine hydrogen an epoxide, urethane at 1.05 isocyanate a hydroxyl");
    private static readonly Source Kits = Source.Invented("sizes for the demonstration");
    private static readonly Source Wipes = Source.FromMemory("5 to 10 mL/m² of wipe, dry in 10 to 30 min, coated within 1 to 4 h");
    private static readonly Source Carriers = Source.Invented("what carries such wipes, in round figures; the safety data sheet names it");
    private static readonly Source Silane = Source.FromMemory("aqueous silane keeps for up to about a day at pH 4 to 4.5; read once, the page was not kept");
    private static readonly Source Grains = Source.FromMemory("10 to 40 g/m² of grains about as large as two coats are thick");

    public static IReadOnlyList<ValueStanding> All()
    {
        List<ValueStanding> all = [];
        foreach (CoatingProduct product in new[] { GenericCatalogue.EpoxyPrimer, GenericCatalogue.AcrylicUrethaneTopcoat, GenericCatalogue.AcrylicUrethaneClear, GenericCatalogue.HighSolidsPrimer, GenericCatalogue.HighSolidsTopcoat })
        {
            Add(all, product);
        }

        foreach (AdhesionPromoter wipe in new[] { GenericCatalogue.SilanePromoter, GenericCatalogue.PlasticPromoter })
        {
            all.Add(new(wipe.Name, "spreading rate", wipe.SpreadingRate.ToString(), Wipes));
            all.Add(new(wipe.Name, "drying", Measure.Minutes.Format(wipe.Flash.TotalSeconds), Wipes));
            all.Add(new(wipe.Name, "open time", Measure.Minutes.Format(wipe.OpenTime.TotalSeconds), Wipes));
            foreach (SolventShare share in wipe.Solvents)
            {
                all.Add(new(wipe.Name, share.Solvent.Name, Measure.Percent.Format(share.MassFraction.DecimalFractions), Carriers));
            }

            if (wipe.MixedLife is TimeSpan life)
            {
                all.Add(new(wipe.Name, "life once mixed", Measure.Hours.Format(life.TotalSeconds), Silane));
            }
        }

        SlipAdditive beads = GenericCatalogue.PolymerBeads;
        all.Add(new(beads.Name, "diameter", Measure.Film.Format(beads.Diameter.Meters), Grains));
        all.Add(new(beads.Name, "density of a grain", Measure.Density.Format(beads.Density.KilogramsPerCubicMeter), Grains));
        foreach (CoatingSystem system in GenericCatalogue.Systems)
        {
            all.Add(new(system.Name, "most dry film", Measure.Film.Format(system.MaximumTotalDryFilm!.Value.Meters), Films));
            foreach (SystemStep step in system.Steps)
            {
                if (step.BroadcastRate is AreaDensity rate)
                {
                    all.Add(new(system.Name, "grains per area", Measure.ArealMass.Format(rate.KilogramsPerSquareMeter), Grains));
                }

                if (step.Layer is CoatingLayer layer)
                {
                    all.Add(new(system.Name, "layer", layer.ToString(), Films));
                }
            }
        }

        return new ValueList<ValueStanding>(all);
    }

    private static void Add(List<ValueStanding> all, CoatingProduct product)
    {
        void Figure(string figure, string value, Source source) => all.Add(new(product.Name, figure, value, source));
        void Time(string figure, TimeSpan? time)
        {
            if (time is TimeSpan given)
            {
                Figure(figure, Measure.Hours.Format(given.TotalSeconds), Times);
            }
        }

        Figure("mix ratio by volume", product.MixRatio, Ratios);
        Figure("tolerance of the ratio", Measure.Percent.Format(product.RatioTolerance!.Value.DecimalFractions), Tolerance);
        Figure("volume solids", Measure.Percent.Format(product.VolumeSolids.DecimalFractions), Films);
        Figure("least dry film", Measure.Film.Format(product.MinimumDryFilm.Meters), Films);
        Figure("most dry film", Measure.Film.Format(product.MaximumDryFilm.Meters), Films);
        Figure("most reducer", Measure.Percent.Format(product.MaximumReducer.DecimalFractions), Reducers);
        Figure("polyisocyanate in the mix", Measure.Percent.Format(product.IsocyanateFraction.DecimalFractions), Cans);
        foreach (SolventShare share in product.Solvents)
        {
            Figure("share of the volatiles", share.ToString(), Cans);
        }

        foreach (Volume size in product.KitSizes)
        {
            Figure("kit", Measure.Capacity.Format(size.CubicMeters), Kits);
        }

        CureTimes cure = product.Cure;
        Figure("temperature of the times", Measure.Temperature.Format(cure.ReferenceTemperature.Kelvins), Times);
        Figure("least temperature", Measure.Temperature.Format(cure.MinimumTemperature.Kelvins), Times);
        Figure("most temperature", Measure.Temperature.Format(cure.MaximumTemperature.Kelvins), Times);
        Time("induction", cure.Induction);
        Time("pot life", cure.PotLife);
        Time("touch dry", cure.TouchDry);
        Time("recoat from", cure.RecoatOpens);
        Time("recoat until", cure.RecoatCloses);
        Time("water from", cure.WaterService);
        Time("full cure", cure.FullCure);
        Figure("spray window", product.SprayLimits.ToString(), Times);
        foreach (CoatingComponent can in product.Parts.Select(part => part.Component).Concat([product.Reducer!]))
        {
            AddCan(can, (figure, value, source) => Figure(can.Name + ", " + figure, value, source));
        }
    }

    private static void AddCan(CoatingComponent can, Action<string, string, Source> figure)
    {
        InputValues values = CoatingComponent.Inputs.ValuesOf(can);
        foreach (InputField input in CoatingComponent.Inputs)
        {
            if (values.Value(input.Name) is double si)
            {
                figure(input.Meaning, input.Measure.Format(si), IsOfChemistry(input.Name) ? Chemistry : Cans);
            }
        }

        foreach (Volume size in can.ShippingSizes)
        {
            figure("size", Measure.Capacity.Format(size.CubicMeters), Kits);
        }
    }

    private static bool IsOfChemistry(string figure) => figure is nameof(CoatingComponent.EpoxideEquivalent)
        or nameof(CoatingComponent.AmineHydrogenEquivalent) or nameof(CoatingComponent.HydroxylNumber)
        or nameof(CoatingComponent.IsocyanateContent);
}

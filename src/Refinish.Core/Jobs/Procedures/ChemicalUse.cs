using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// The chemicals of the preparation on the operations that use them: what is bought, what evaporates, what can hurt, how long they work.
/// </summary>
internal static class ChemicalUse
{
    /// <summary>The operation with the shop's chemicals for its kind of work.</summary>
    public static Operation On(Operation operation, Procedure procedure)
    {
        List<MaterialNeed> materials = [];
        List<Evaporation> vapours = [];
        List<Caution> cautions = [];
        foreach ((PrepChemical chemical, Volume amount) in Poured(procedure, operation.Kind))
        {
            materials.Add(new MaterialNeed(chemical.Id, chemical.Name, amount, chemical.Density.KilogramsPerCubicMeter));
            cautions.AddRange(chemical.Cautions);
            if (chemical.Vapour(amount) is Evaporation vapour)
            {
                vapours.Add(vapour);
            }
        }

        if (operation.Kind == WorkKind.Strip && procedure.OldCoat.ComesOff)
        {
            // What was laid on goes on evaporating while it is scraped off.
            vapours.AddRange(Poured(procedure, WorkKind.LayOnStripper).Select(laid => laid.Chemical.Vapour(laid.Amount))
                .OfType<Evaporation>().Select(vapour => vapour with { TakenOffAfter = TimeSpan.Zero }));
        }

        return materials.Count + vapours.Count == 0 ? operation : operation with
        {
            Materials = [.. operation.Materials, .. materials],
            Vapours = [.. operation.Vapours, .. vapours],
            Cautions = [.. operation.Cautions.Concat(cautions).Distinct()],
        };
    }

    // A second wipe before the promoter takes what the first took.
    private static bool Serves(PrepChemical chemical, WorkKind kind) =>
        chemical.For == kind || (kind == WorkKind.WipeAgain && chemical.For == WorkKind.Tack);

    /// <summary>Whether an operation uses a chemical.</summary>
    public static bool Uses(Operation operation, PrepChemical chemical) =>
        Serves(chemical, operation.Kind) && operation.Materials.Any(need => need.Item == chemical.Id);

    /// <summary>
    /// How long the chemicals of an operation work before the next may begin, and the one that works longest; <see langword="null"/> when
    /// none has to.
    /// </summary>
    public static PrepChemical? WorksLongest(Operation operation, Shop shop) =>
        shop.Chemicals.Where(chemical => chemical.Dwell > TimeSpan.Zero && Uses(operation, chemical))
            .OrderByDescending(chemical => chemical.Dwell).FirstOrDefault();

    private static IEnumerable<(PrepChemical Chemical, Volume Amount)> Poured(Procedure procedure, WorkKind kind)
    {
        foreach (PrepChemical chemical in procedure.Shop.Chemicals)
        {
            if (Serves(chemical, kind) && (chemical.Surfaces.Count == 0 || procedure.Surface.IsNamedIn(chemical.Surfaces))
                && chemical.Amount(procedure.CoatedArea, Joint(procedure)) is { CubicMeters: > 0 } amount)
            {
                yield return (chemical, amount);
            }
        }
    }

    private static Length Joint(Procedure procedure) =>
        Length.FromMeters(procedure.Defects.OfType<SiliconeResidue>().Sum(residue => residue.Joint.Meters));
}

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
        (PrepChemical Chemical, Volume Amount)[] poured = [.. Poured(procedure, operation.Kind)];
        bool scrapes = operation.Kind == WorkKind.Strip && procedure.OldCoat.ComesOff;
        if (poured.Length == 0 && !scrapes)
        {
            return operation;
        }

        // What was laid on goes on evaporating while it is scraped off.
        IEnumerable<Evaporation> still = scrapes ? Vapours(Poured(procedure, WorkKind.LayOnStripper)) : [];
        return operation with
        {
            Materials =
            [
                .. operation.Materials, .. poured.Select(one => new MaterialNeed(
                    one.Chemical.Id, one.Chemical.Name, one.Amount, one.Chemical.Density.KilogramsPerCubicMeter)),
            ],
            Vapours = [.. operation.Vapours, .. Vapours(poured), .. still.Select(vapour => vapour with { TakenOffAfter = TimeSpan.Zero })],
            Cautions = [.. operation.Cautions.Concat(poured.SelectMany(one => one.Chemical.Cautions)).Distinct()],
        };
    }

    private static IEnumerable<Evaporation> Vapours(IEnumerable<(PrepChemical Chemical, Volume Amount)> poured) =>
        poured.Select(one => one.Chemical.Vapour(one.Amount)).OfType<Evaporation>();

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

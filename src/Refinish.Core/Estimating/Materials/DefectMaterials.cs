using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>A generic set of what defects take beside filler: invented or from memory, to be replaced by a shop's own records.</summary>
public static class DefectMaterials
{
    private static readonly Source Invented =
        Source.Invented("material for defects, from memory of usual practice; replace by own records and data sheets");

    /// <summary>
    /// Spot primer on rust, a further primer coat that seals crazing, grout, resin with the fabric that goes over a crack where it is
    /// reinforced (two strips of 10 cm, each soaked with 0.75 L/m²). Items: <c>spot-primer</c>, <c>sealing-primer</c>, <c>grout</c>,
    /// <c>laminating-resin</c>. Stripper and silicone remover are not here: they are chemicals of the preparation, of which a shop keeps
    /// its own list.
    /// </summary>
    public static IReadOnlyList<DefectMaterial> Generic { get; } = new ValueList<DefectMaterial>(
    [
        Of(DefectKind.RustSpot, "spot-primer", "spot primer", 5, SpreadingRate.FromSquareFeetPerUsGallon(150)),
        Of(DefectKind.Crazing, "sealing-primer", "primer for a sealing coat", 0, SpreadingRate.FromSquareFeetPerUsGallon(150)),
        Of(DefectKind.GroutFailure, "grout", "grout", 30, SpreadingRate.FromSquareMetersPerLiter(0.4)),
        Of(
            DefectKind.Crack, "laminating-resin", "laminating resin with glass fabric", 30,
            SpreadingRate.FromSquareMetersPerLiter(1 / 1.5)) with
        {
            Work = WorkKind.ReinforceCrack,
        },
    ]);

    /// <summary>What the defects of one fixture take by the generic standards.</summary>
    /// <param name="defects">What was found.</param>
    /// <param name="fixtureArea">Coated area of the fixture, of which crazing is a share; more than 0 and at most 10 000 m².</param>
    /// <returns>See <see cref="For(IReadOnlyList{Defect}, Area, IReadOnlyList{DefectMaterial})"/>.</returns>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="defects"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="fixtureArea"/> is outside its range.</exception>
    public static IReadOnlyList<MaterialNeed> For(IReadOnlyList<Defect> defects, Area fixtureArea) => For(defects, fixtureArea, Generic);

    /// <summary>What the defects of one fixture take, one need for each item, in the order of the standards.</summary>
    /// <param name="defects">What was found.</param>
    /// <param name="fixtureArea">Coated area of the fixture, of which crazing is a share; more than 0 and at most 10 000 m².</param>
    /// <param name="standards">Standards to look in; an item is named as its first standard names it.</param>
    /// <returns>Needs with more than nothing in them. The order of the defects does not matter.</returns>
    /// <remarks>
    /// Area of a defect: rust with the grinding margin of the generic filler policy around it; a peeling coat, pitting, a liner and a low
    /// spot their own;
    /// crazing its share of the fixture; joints of silicone and grout their length times 10 mm, a crack its length times 100 mm of fabric
    /// (both invented). Other kinds have no area here. What another kind of work takes than the one that mends the defect
    /// (<see cref="DefectMaterial.Work"/>) is left out: whether a crack is reinforced depends on what the fixture is made of, and belongs
    /// to its procedure.
    /// </remarks>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    /// <exception cref="ArgumentNullException">A list is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="fixtureArea"/> is outside its range.</exception>
    public static IReadOnlyList<MaterialNeed> For(IReadOnlyList<Defect> defects, Area fixtureArea, IReadOnlyList<DefectMaterial> standards) =>
        Taken(defects, fixtureArea, standards, standard => standard.TakenBy == LabourStandards.WorkOf(standard.Repairs));

    /// <summary>What one kind of work on the defects takes.</summary>
    internal static IReadOnlyList<MaterialNeed> For(
        WorkKind work, IReadOnlyList<Defect> defects, Area fixtureArea, IReadOnlyList<DefectMaterial> standards) =>
        Taken(defects, fixtureArea, standards, standard => standard.TakenBy == work);

    private static ValueList<MaterialNeed> Taken(
        IReadOnlyList<Defect> defects, Area fixtureArea, IReadOnlyList<DefectMaterial> standards, Func<DefectMaterial, bool> which)
    {
        double whole = Guard.Within(fixtureArea, Bounds.Positive(Measure.Area, 1e4));
        ValueList<Defect> found = Guard.List(defects);
        ValueList<DefectMaterial> materials = Guard.List(standards);
        List<MaterialNeed> needs = [];
        foreach (IGrouping<string, DefectMaterial> item in materials
            .Where(which).GroupBy(standard => standard.Item, StringComparer.Ordinal))
        {
            // Summed from the smallest, so that the order of the survey cannot matter.
            double volume = item
                .SelectMany(standard => found
                    .Where(defect => defect.Kind == standard.Repairs)
                    .Select(defect => VolumeOf(standard, defect, whole)))
                .OrderBy(part => part)
                .Sum();
            if (volume > 0)
            {
                DefectMaterial first = item.First();
                needs.Add(new MaterialNeed(item.Key, first.Name, Volume.FromCubicMeters(volume), first.KilogramsPerCubicMeter));
            }
        }

        return new ValueList<MaterialNeed>(needs);
    }

    private static DefectMaterial Of(DefectKind kind, string item, string name, double millilitresEach, SpreadingRate coverage) => new()
    {
        Repairs = kind,
        Item = item,
        Name = name,
        Each = Volume.FromMilliliters(millilitresEach),
        Coverage = coverage,
        Source = Invented,
    };

    private static double VolumeOf(DefectMaterial standard, Defect defect, double fixtureArea) =>
        (standard.Each.CubicMeters * (defect.Kind.IsOwn ? defect.Number : 1))
        + (standard.Coverage is SpreadingRate rate ? defect.MendedArea(fixtureArea) / rate.SquareMetersPerCubicMeter : 0);
}

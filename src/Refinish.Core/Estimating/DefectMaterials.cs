using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>A generic set of what defects take beside filler: invented or from memory, to be replaced by a shop's own records.</summary>
public static class DefectMaterials
{
    private static readonly Source Invented = Source.Invented("material for defects, from memory of usual practice; replace by own records and data sheets");

    /// <summary>
    /// Spot primer on rust, stripper for a peeling coat (a US gallon for 100 ft², taken one and a half times), a further
    /// primer coat on crazing, grout.
    /// </summary>
    public static IReadOnlyList<DefectMaterial> Generic { get; } = new ValueList<DefectMaterial>(
    [
        new() { Repairs = DefectKind.RustSpot, Item = "spot primer", Each = Volume.FromMilliliters(5), Coverage = SpreadingRate.FromSquareFeetPerUsGallon(150), Source = Invented },
        new() { Repairs = DefectKind.PeelingCoat, Item = "stripper", Coverage = SpreadingRate.FromSquareFeetPerUsGallon(100 / 1.5), Source = Invented },
        new() { Repairs = DefectKind.Crazing, Item = "primer for a further coat", Coverage = SpreadingRate.FromSquareFeetPerUsGallon(150), Source = Invented },
        new() { Repairs = DefectKind.SiliconeResidue, Item = "silicone remover", Each = Volume.FromMilliliters(20), Coverage = SpreadingRate.FromSquareMetersPerLiter(0.2), Source = Invented },
        new() { Repairs = DefectKind.GroutFailure, Item = "grout", Each = Volume.FromMilliliters(30), Coverage = SpreadingRate.FromSquareMetersPerLiter(0.1), Source = Invented },
    ]);

    /// <summary>What the defects of one fixture take, one need for each material, in the order of the standards.</summary>
    /// <param name="defects">What was found.</param>
    /// <param name="fixtureArea">Coated area of the fixture, of which crazing is a share; more than 0 and at most 10 000 m².</param>
    /// <param name="standards">Standards to look in; <see cref="Generic"/> when omitted.</param>
    /// <returns>Needs with more than nothing in them. The order of the defects does not matter.</returns>
    /// <remarks>
    /// Area of a defect: rust with the grinding margin of the generic filler policy around it; a peeling coat and pitting their own; crazing its share of
    /// the fixture; joints of silicone and grout their length times 10 mm (invented). Other kinds have no area here.
    /// </remarks>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="defects"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="fixtureArea"/> is outside its range.</exception>
    public static IReadOnlyList<MaterialNeed> For(IReadOnlyList<Defect> defects, Area fixtureArea, IReadOnlyList<DefectMaterial>? standards = null)
    {
        double whole = Guard.Within(fixtureArea, Bounds.Positive(Measure.Area, 1e4), nameof(fixtureArea));
        Defect[] found = [.. Guard.List(defects, nameof(defects))];
        return new ValueList<MaterialNeed>((standards ?? Generic)
            .GroupBy(standard => standard.Item, StringComparer.Ordinal)
            .Select(item => (Item: item.Key, Volume: item.SelectMany(standard => found.Where(defect => defect.Kind == standard.Repairs).Select(defect => VolumeOf(standard, defect, whole))).OrderBy(volume => volume).Sum()))
            .Where(need => need.Volume > 0)
            .Select(need => new MaterialNeed(need.Item, Volume.FromCubicMeters(need.Volume))));
    }

    private static double VolumeOf(DefectMaterial standard, Defect defect, double fixtureArea) =>
        standard.Each.CubicMeters + (standard.Coverage is SpreadingRate rate ? AreaOf(defect, fixtureArea) / rate.SquareMetersPerCubicMeter : 0);

    private static double AreaOf(Defect defect, double fixtureArea)
    {
        const double JointWidth = 0.01;
        double margin = FillerPolicy.Generic.RustGrindingMargin.Meters;
        return defect switch
        {
            RustSpot rust => Math.PI * Math.Pow((rust.Diameter.Meters / 2) + margin, 2),
            PeelingCoat coat => coat.Area.SquareMeters,
            Pitting pitting => pitting.Area.SquareMeters,
            Crazing crazing => crazing.OfArea.DecimalFractions * fixtureArea,
            SiliconeResidue silicone => silicone.Joint.Meters * JointWidth,
            GroutFailure grout => grout.Joint.Meters * JointWidth,
            _ => 0,
        };
    }
}

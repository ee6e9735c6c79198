using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>A generic set of labour standards for one five-foot tub and a crew of one: invented or from memory, to be replaced by a shop's own time sheets.</summary>
public static class LabourStandards
{
    private static readonly Source Invented = Source.Invented("hours for a five-foot tub and a crew of one, from memory of usual practice; replace by own time sheets");

    /// <summary>Travel there and back and loading, for each trip.</summary>
    public static LabourStandard Travel { get; } = PerUnit("L-01", "travel and loading, there and back", "trip", 0.75, 1.0, 2.0) with { IsOnSite = false };

    /// <summary>Setting up the exhaust, protecting the room and masking, for each fixture.</summary>
    public static LabourStandard Setup { get; } = PerUnit("L-10", "set up exhaust, protect and mask", "fixture", 0.5, 0.75, 1.25);

    /// <summary>Taking off hardware and cutting out caulk, for each fixture.</summary>
    public static LabourStandard Clear { get; } = PerUnit("L-11", "take off hardware, cut out caulk", "fixture", 0.25, 0.4, 0.75);

    /// <summary>Cleaning and degreasing; scaled by the area of a tub of 2.6 m².</summary>
    public static LabourStandard Clean { get; } = PerArea("L-20", "clean and degrease", 0.4, 0.5, 0.8);

    /// <summary>Etching or abrading, rinsing and drying; scaled by area.</summary>
    public static LabourStandard Key { get; } = PerArea("L-21", "etch or abrade, rinse and dry", 0.75, 1.0, 1.75);

    /// <summary>Setting up for repairs, for each fixture that has any.</summary>
    public static LabourStandard RepairSetup { get; } = PerUnit("L-30", "set up for repairs", "fixture", 0.25, 0.25, 0.25);

    /// <summary>Final sanding and tacking; scaled by area.</summary>
    public static LabourStandard Tack { get; } = PerArea("L-40", "sand and tack", 0.25, 0.3, 0.4);

    /// <summary>Wiping on the promoter; scaled by area.</summary>
    public static LabourStandard Promote { get; } = PerArea("L-41", "wipe on promoter", 0.1, 0.1, 0.1);

    /// <summary>Spraying primer; for each square metre and coat.</summary>
    public static LabourStandard Prime { get; } = PerArea("L-50", "spray primer, one coat", 0.15, 0.175, 0.2);

    /// <summary>Spraying topcoat; for each square metre and coat.</summary>
    public static LabourStandard Topcoat { get; } = PerArea("L-51", "spray topcoat, one coat", 0.12, 0.15, 0.2);

    /// <summary>Taking off the masking and cleaning up, for each fixture.</summary>
    public static LabourStandard Demask { get; } = PerUnit("L-60", "demask and clean up", "fixture", 0.3, 0.4, 0.5);

    /// <summary>Coming back to caulk, fit the hardware and inspect, for each fixture.</summary>
    public static LabourStandard Return { get; } = PerUnit("L-61", "caulk, refit and inspect", "fixture", 0.5, 0.6, 0.75);

    /// <summary>All of them, with those that mend defects.</summary>
    public static IReadOnlyList<LabourStandard> Generic { get; } = new ValueList<LabourStandard>(
    [
        Travel, Setup, Clear, Clean, Key, RepairSetup, Tack, Promote, Prime, Topcoat, Demask, Return,
        Repair("L-31", "fill and sand a chip", DefectKind.Chip, "each", 0.06, 0.08, 0.15),
        Repair("L-44", "fill and sand a chip of 25 mm (1 in) or more", DefectKind.Chip, "each", 0.1, 0.15, 0.3) with { FromSize = Length.FromMillimeters(25) },
        Repair("L-32", "fill and sand a worn patch", DefectKind.WornPatch, "each", 0.15, 0.2, 0.35),
        Repair("L-33", "grind, spot prime and fill a rust spot", DefectKind.RustSpot, "each", 0.2, 0.25, 0.4),
        Repair("L-34", "open, reinforce and fill a crack", DefectKind.Crack, "m", 0.8, 1.0, 1.5, each: 0.25),
        Repair("L-35", "strip an old coat", DefectKind.PeelingCoat, "m²", 0.4, 0.54, 0.9),
        Repair("L-36", "remove silicone", DefectKind.SiliconeResidue, "m", 0.07, 0.1, 0.2),
        Repair("L-37", "rake out and replace grout", DefectKind.GroutFailure, "m", 0.1, 0.15, 0.3),
        Repair("L-38", "fix a loose tile again", DefectKind.LooseTiles, "tile", 0.15, 0.25, 0.5),
        Repair("L-39", "cut out and fill a burn", DefectKind.Burn, "each", 0.15, 0.25, 0.4),
        Repair("L-45", "clean out, fill and sand pitting", DefectKind.Pitting, "m²", 0.8, 1.2, 2.0, each: 0.1),
        Repair("L-42", "abrade and seal crazing", DefectKind.Crazing, "each", 0.15, 0.2, 0.3),
    ]);

    /// <summary>The tasks that the defects of a survey add, in the order of the survey.</summary>
    /// <param name="defects">What was found.</param>
    /// <param name="standards">Standards to look in; <see cref="Generic"/> when omitted.</param>
    /// <returns>
    /// One task for each defect that has a standard. A hole or a flexing floor has none here: mending what carries the fixture is another trade's work.
    /// <see cref="WithoutStandard"/> names what was left out.
    /// </returns>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="defects"/> is missing.</exception>
    public static IReadOnlyList<LabourTask> ForDefects(IReadOnlyList<Defect> defects, IReadOnlyList<LabourStandard>? standards = null) =>
        new ValueList<LabourTask>(Guard.List(defects, nameof(defects))
            .Select(defect => (Defect: defect, Standard: Find(defect, standards)))
            .Where(pair => pair.Standard is not null)
            .Select(pair => new LabourTask(pair.Standard!, units: Units(pair.Defect))));

    /// <summary>The defects of a survey for which no standard is given.</summary>
    /// <param name="defects">What was found.</param>
    /// <param name="standards">Standards to look in; <see cref="Generic"/> when omitted.</param>
    /// <returns>Those that <see cref="ForDefects"/> leaves out.</returns>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="defects"/> is missing.</exception>
    public static IReadOnlyList<Defect> WithoutStandard(IReadOnlyList<Defect> defects, IReadOnlyList<LabourStandard>? standards = null) =>
        new ValueList<Defect>(Guard.List(defects, nameof(defects)).Where(defect => Find(defect, standards) is null));

    // The standard for the largest size that the defect reaches; the first among equals.
    private static LabourStandard? Find(Defect defect, IReadOnlyList<LabourStandard>? standards) =>
        (standards ?? Generic)
            .Where(standard => standard.Repairs == defect.Kind && Size(defect) >= standard.FromSize.Meters)
            .OrderByDescending(standard => standard.FromSize.Meters)
            .FirstOrDefault();

    private static double Size(Defect defect) => defect switch
    {
        Chip chip => chip.Diameter.Meters,
        WornPatch patch => patch.Length.Meters,
        RustSpot rust => rust.Diameter.Meters,
        Burn burn => burn.Diameter.Meters,
        Crack crack => crack.Length.Meters,
        _ => 0,
    };

    // What the unit of the generic standard for this kind counts.
    private static double Units(Defect defect) => defect switch
    {
        Crack crack => crack.Length.Meters,
        PeelingCoat coat => coat.Area.SquareMeters,
        Pitting pitting => pitting.Area.SquareMeters,
        SiliconeResidue silicone => silicone.Joint.Meters,
        GroutFailure grout => grout.Joint.Meters,
        LooseTiles tiles => tiles.Count,
        _ => 1,
    };

    private static LabourStandard PerUnit(string code, string description, string unit, double least, double likely, double most) =>
        new() { Code = code, Description = description, PerUnit = new(least, likely, most), Unit = unit, Source = Invented };

    // The hours are those of a tub of 2.6 m² (28 ft²).
    private static LabourStandard PerArea(string code, string description, double least, double likely, double most) =>
        new() { Code = code, Description = description, PerSquareMeter = new(least / 2.6, likely / 2.6, most / 2.6), Source = Invented };

    private static LabourStandard Repair(string code, string description, DefectKind kind, string unit, double least, double likely, double most, double each = 0) =>
        new()
        {
            Code = code,
            Description = description,
            Fixed = ThreePoint.Exactly(each),
            PerUnit = new(least, likely, most),
            Unit = unit,
            Repairs = kind,
            Source = Invented,
        };
}

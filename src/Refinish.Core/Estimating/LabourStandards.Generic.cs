using System.Collections.Generic;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Estimating;

/// <content>The generic standards.</content>
public static partial class LabourStandards
{
    // The five-foot tub of the invented hours, in m² (28 ft²).
    private const double Tub = 2.6;

    /// <summary>Travel there and back and loading, for each trip; off site.</summary>
    public static LabourStandard Travel { get; } = PerUnit(
        WorkKind.Travel, "L-01", "travel and loading, there and back", "trip", 0.75, 1.0, 2.0,
        "half an hour each way and loading; up to twice that in traffic") with
    {
        IsOnSite = false,
    };

    /// <summary>Setting up exhaust and covering the floor, for each room.</summary>
    public static LabourStandard SetUp { get; } = PerUnit(
        WorkKind.SetUp, "L-10", "set up exhaust, protect the room", "room", 0.3, 0.45, 0.75,
        "three fifths of 45 min for setting up and masking a bathroom with one tub");

    /// <summary>Taking off hardware and cutting out caulk, for each fixture.</summary>
    public static LabourStandard Clear { get; } = PerUnit(
        WorkKind.Clear, "L-11", "take off hardware, cut out caulk", "fixture", 0.25, 0.4, 0.75,
        "drain, overflow and two metres of joint");

    /// <summary>Masking, for each fixture.</summary>
    public static LabourStandard Mask { get; } = PerUnit(
        WorkKind.Mask, "L-12", "mask", "fixture", 0.2, 0.3, 0.5,
        "two fifths of 45 min for setting up and masking a bathroom with one tub");

    /// <summary>Dissolving lime; by area.</summary>
    public static LabourStandard Descale { get; } = PerArea(
        WorkKind.Descale, "L-22", "descale", 0.15, 0.2, 0.35,
        "two fifths of half an hour for cleaning a tub, most of it at the water line");

    /// <summary>Degreasing; by area.</summary>
    public static LabourStandard Degrease { get; } = PerArea(
        WorkKind.Degrease, "L-20", "degrease", 0.25, 0.3, 0.45,
        "three fifths of half an hour for cleaning a tub, as it is scrubbed twice all over");

    /// <summary>Etching or abrading, with rinsing and drying; by area.</summary>
    public static LabourStandard Key { get; } = PerArea(
        WorkKind.Key, "L-21", "etch or abrade, rinse and dry", 0.75, 1.0, 1.75,
        "an hour a tub, a third of it rinsing and drying");

    /// <summary>Opening a crack and laminating fabric over it; by metre of crack.</summary>
    public static LabourStandard ReinforceCrack { get; } = PerUnit(
        WorkKind.ReinforceCrack, "L-46", "open and reinforce a crack", "m", 0.5, 0.6, 0.9,
        "36 min a metre for opening it and laying two strips of fabric in resin, nine minutes for cutting fabric and mixing") with
    {
        Fixed = ThreePoint.Exactly(0.15),
    };

    /// <summary>Setting up for repairs and sanding all filler flush, for each fixture that has any.</summary>
    public static LabourStandard SandFiller { get; } = PerUnit(
        WorkKind.SandFiller, "L-30", "set up for repairs, sand filler flush", "fixture", 0.25, 0.25, 0.25,
        "a quarter of an hour beside what each defect takes");

    /// <summary>Final sanding and tacking; by area.</summary>
    public static LabourStandard Tack { get; } = PerArea(
        WorkKind.Tack, "L-40", "sand and tack", 0.25, 0.3, 0.4,
        "one light pass and two wipes of a tub");

    /// <summary>Wiping on the promoter; by area.</summary>
    public static LabourStandard Promote { get; } = PerArea(
        WorkKind.Promote, "L-41", "wipe on promoter", 0.1, 0.1, 0.1,
        "six minutes a tub");

    /// <summary>Spraying primer; by area, for each coat.</summary>
    public static LabourStandard SprayPrimer { get; } = PerArea(
        WorkKind.SprayPrimer, "L-50", "spray primer, one coat", 0.15, 0.175, 0.2,
        "ten minutes a tub with mixing and loading the gun");

    /// <summary>Spraying topcoat; by area, for each coat.</summary>
    public static LabourStandard SprayTopcoat { get; } = PerArea(
        WorkKind.SprayTopcoat, "L-51", "spray topcoat, one coat", 0.12, 0.15, 0.2,
        "nine minutes a tub with mixing and loading the gun");

    /// <summary>Scattering grains into a wet coat, for each floor.</summary>
    public static LabourStandard Broadcast { get; } = PerUnit(
        WorkKind.Broadcast, "L-52", "broadcast slip-resistant grains", "floor", 0.05, 0.1, 0.15,
        "six minutes a floor with masking its edge");

    /// <summary>Cleaning the gun, each time.</summary>
    public static LabourStandard CleanGun { get; } = PerUnit(
        WorkKind.CleanGun, "L-53", "clean the gun", "gun", 0.1, 0.15, 0.25,
        "nine minutes for stripping, flushing and wiping one gun");

    /// <summary>Taking off the masking and cleaning up, for each fixture.</summary>
    public static LabourStandard Demask { get; } = PerUnit(
        WorkKind.Demask, "L-60", "demask and clean up", "fixture", 0.3, 0.4, 0.5,
        "about as long as masking, and the waste bagged");

    /// <summary>Fitting drain and overflow trim, for each set.</summary>
    public static LabourStandard FitTrim { get; } = PerUnit(
        WorkKind.FitTrim, "L-62", "fit new trim", "set", 0.2, 0.3, 0.5,
        "a drain and an overflow, twice nine minutes");

    /// <summary>Caulking and putting the hardware back, for each fixture.</summary>
    public static LabourStandard Caulk { get; } = PerUnit(
        WorkKind.Caulk, "L-61", "caulk and refit", "fixture", 0.35, 0.4, 0.5,
        "two thirds of 36 min for caulking, refitting and inspecting");

    /// <summary>Inspecting the finished work, for each fixture.</summary>
    public static LabourStandard Inspect { get; } = PerUnit(
        WorkKind.Inspect, "L-63", "inspect", "fixture", 0.15, 0.2, 0.25,
        "one third of 36 min for caulking, refitting and inspecting");

    /// <summary>All of them, with those that mend defects.</summary>
    public static IReadOnlyList<LabourStandard> Generic { get; } = new ValueList<LabourStandard>(
    [
        Travel, SetUp, Clear, Descale, Degrease, Key, ReinforceCrack, SandFiller, Tack, Mask, Promote, SprayPrimer, SprayTopcoat,
        Broadcast, CleanGun, Demask, FitTrim, Caulk, Inspect,
        Repair("L-31", "fill and sand a chip", DefectKind.Chip, "each", 0.06, 0.08, 0.15),
        Repair("L-44", "fill and sand a chip of 25 mm (1 in) or more", DefectKind.Chip, "each", 0.1, 0.15, 0.3) with
        {
            FromSize = Length.FromMillimeters(25),
        },
        Repair("L-32", "fill and sand a worn patch", DefectKind.WornPatch, "each", 0.15, 0.2, 0.35),
        Repair("L-33", "grind, spot prime and fill a rust spot", DefectKind.RustSpot, "each", 0.2, 0.25, 0.4),
        Repair("L-34", "open and fill a crack", DefectKind.Crack, "m", 0.3, 0.4, 0.6) with
        {
            Fixed = ThreePoint.Exactly(0.1),
        },
        Repair("L-35", "strip an old coat", DefectKind.PeelingCoat, "m²", 0.4, 0.54, 0.9),
        Repair("L-36", "remove silicone", DefectKind.SiliconeResidue, "m", 0.07, 0.1, 0.2),
        Repair("L-37", "rake out and replace grout", DefectKind.GroutFailure, "m", 0.1, 0.15, 0.3),
        Repair("L-38", "fix a loose tile again", DefectKind.LooseTiles, "tile", 0.15, 0.25, 0.5),
        Repair("L-39", "cut out and fill a burn", DefectKind.Burn, "each", 0.15, 0.25, 0.4),
        Repair("L-45", "clean out, fill and sand pitting", DefectKind.Pitting, "m²", 0.8, 1.2, 2.0) with
        {
            Fixed = ThreePoint.Exactly(0.1),
        },
        Repair("L-42", "abrade and seal crazing", DefectKind.Crazing, "each", 0.15, 0.2, 0.3),
    ]);

    private static LabourStandard PerUnit(
        WorkKind work, string code, string description, string unit, double least, double likely, double most, string reason) => new()
    {
        Code = code,
        Description = description,
        PerUnit = new(least, likely, most),
        Unit = unit,
        Work = work,
        Source = Invented(reason),
    };

    private static LabourStandard PerArea(
        WorkKind work, string code, string description, double least, double likely, double most, string reason) => new()
    {
        Code = code,
        Description = description,
        PerSquareMeter = new(least / Tub, likely / Tub, most / Tub),
        Work = work,
        Source = Invented(reason),
    };

    private static LabourStandard Repair(
        string code, string description, DefectKind kind, string unit, double least, double likely, double most) => new()
    {
        Code = code,
        Description = description,
        PerUnit = new(least, likely, most),
        Unit = unit,
        Repairs = kind,
        Source = Invented("minutes at the bench, from memory of usual practice"),
    };

    private static Source Invented(string reason) =>
        Source.Invented("hours of one person for a five-foot tub of 2.6 m²: " + reason + "; replace by own time sheets");
}

using System;
using System.Collections.Generic;
using System.Linq;
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
        WorkKind.Travel, "L-01", "travel and loading, there and back", "trip", new(45, 60, 120),
        "half an hour each way and loading; up to twice that in traffic") with
    {
        IsOnSite = false,
    };

    /// <summary>Setting up exhaust and covering the floor, once for each room however many fixtures it has.</summary>
    public static LabourStandard SetUp { get; } = PerUnit(
        WorkKind.SetUp, "L-10", "set up exhaust, protect the room", "room", new(20, 27, 45),
        "fan, duct to the window and make-up opening 12 min, floor and way in covered 10, flames and plugs 5; once a room");

    /// <summary>Taking off hardware and cutting out caulk, for each fixture.</summary>
    public static LabourStandard Clear { get; } = PerUnit(
        WorkKind.Clear, "L-11", "take off hardware, cut out caulk", "fixture", new(12, 18, 35),
        "drain, overflow and stops 6 min, two to four metres of caulk at 3 to 6 min a metre");

    /// <summary>Masking, for each fixture.</summary>
    public static LabourStandard Mask { get; } = PerUnit(
        WorkKind.Mask, "L-12", "mask", "fixture", new(12, 18, 30),
        "paper and tape around the edge, about 2 min a metre, film over what stands near");

    /// <summary>Laying on stripper and covering it; by area.</summary>
    public static LabourStandard LayOnStripper { get; } = PerArea(
        WorkKind.LayOnStripper, "L-23", "lay on stripper, cover it", new(4, 5, 6), new(8, 10, 18),
        "5 min for gloves, cans and film whatever the size, and 10 with the brush for a tub");

    /// <summary>Wiping with solvent and testing with water once more after a night; by area.</summary>
    public static LabourStandard WipeAgain { get; } = PerArea(
        WorkKind.WipeAgain, "L-24", "wipe again, water-break test", new(2, 3, 4), new(4, 6, 8),
        "3 min for cloths and water, and 6 for one wipe, one test and drying a tub");

    /// <summary>Dissolving lime; for each fixture and by area.</summary>
    public static LabourStandard Descale { get; } = PerArea(
        WorkKind.Descale, "L-22", "descale", new(3, 4, 6), new(6, 8, 14),
        "4 min for wetting, waiting and rinsing whatever the size, and 8 of scrubbing for a tub, most of it at the water line");

    /// <summary>Degreasing; for each fixture and by area.</summary>
    public static LabourStandard Degrease { get; } = PerArea(
        WorkKind.Degrease, "L-20", "degrease", new(4, 5, 7), new(11, 13, 20),
        "5 min for fresh cloths and the water-break test whatever the size, and 13 for scrubbing a tub all over twice");

    /// <summary>Etching or abrading, with rinsing and drying; for each fixture and by area.</summary>
    public static LabourStandard Key { get; } = PerArea(
        WorkKind.Key, "L-21", "etch or abrade, rinse and dry", new(12, 15, 25), new(20, 27, 50),
        "15 min for dwell, neutralising and drying joints and drain whatever the size, and 27 for going over a tub and rinsing it");

    /// <summary>Opening a crack and laminating fabric over it; by metre of crack.</summary>
    public static LabourStandard ReinforceCrack { get; } = PerUnit(
        WorkKind.ReinforceCrack, "L-46", "open and reinforce a crack", "m", new(30, 36, 54),
        "36 min a metre for opening it and laying two strips of fabric in resin, nine minutes for cutting fabric and mixing") with
    {
        Fixed = ThreePoint.Exactly(0.15),
    };

    /// <summary>Setting up for repairs and sanding all filler flush, for each fixture that has any.</summary>
    public static LabourStandard SandFiller { get; } = PerUnit(
        WorkKind.SandFiller, "L-30", "set up for repairs, sand filler flush", "fixture", new(10, 15, 20),
        "block, paper and vacuum fetched and put away, and a few spots sanded, beside what each defect takes");

    /// <summary>Final sanding and tacking; for each fixture and by area.</summary>
    public static LabourStandard Tack { get; } = PerArea(
        WorkKind.Tack, "L-40", "sand and tack", new(4, 5, 6), new(8, 10, 14),
        "5 min for blowing out drain, overflow and edges whatever the size, and 10 for one light pass and two wipes of a tub");

    /// <summary>Wiping on the promoter; for each fixture and by area.</summary>
    public static LabourStandard Promote { get; } = PerArea(
        WorkKind.Promote, "L-41", "wipe on promoter", new(3, 3, 4), new(3, 3, 4),
        "3 min for gloves, cloth and pouring, and 3 for one pass over a tub");

    /// <summary>Spraying primer; for each fixture and by area, for each coat.</summary>
    public static LabourStandard SprayPrimer { get; } = PerArea(
        WorkKind.SprayPrimer, "L-50", "spray primer, one coat", new(4, 5, 6), new(5, 6, 8),
        "5 min for straining, loading and setting the gun and for getting to the fixture, and 6 of strokes for a tub");

    /// <summary>Spraying topcoat; for each fixture and by area, for each coat.</summary>
    public static LabourStandard SprayTopcoat { get; } = PerArea(
        WorkKind.SprayTopcoat, "L-51", "spray topcoat, one coat", new(3, 4, 5), new(4, 5, 7),
        "4 min for straining, loading and getting to the fixture, and 5 of strokes for a tub, as the gun is set already");

    /// <summary>Scattering grains into a wet coat, for each floor.</summary>
    public static LabourStandard Broadcast { get; } = PerUnit(
        WorkKind.Broadcast, "L-52", "broadcast slip-resistant grains", "floor", new(3, 6, 9),
        "weighing out, one even pass over a floor and its masked edge");

    /// <summary>Cleaning the gun, each time.</summary>
    public static LabourStandard CleanGun { get; } = PerUnit(
        WorkKind.CleanGun, "L-53", "clean the gun", "gun", new(6, 9, 15),
        "stripping, flushing and wiping one gun");

    /// <summary>Taking off the masking and cleaning up, for each fixture.</summary>
    public static LabourStandard Demask { get; } = PerUnit(
        WorkKind.Demask, "L-60", "demask and clean up", "fixture", new(10, 15, 20),
        "a little less than masking took, the waste bagged and the floor vacuumed");

    /// <summary>Fitting drain and overflow trim, for each set.</summary>
    public static LabourStandard FitTrim { get; } = PerUnit(
        WorkKind.FitTrim, "L-62", "fit new trim", "set", new(12, 18, 30),
        "a drain and an overflow, 9 min each");

    /// <summary>Caulking and putting the hardware back, for each fixture.</summary>
    public static LabourStandard Caulk { get; } = PerUnit(
        WorkKind.Caulk, "L-61", "caulk and refit", "fixture", new(15, 20, 30),
        "two to four metres of joint taped, caulked and smoothed at 4 min a metre, and drain and stops refitted");

    /// <summary>Inspecting the finished work, for each fixture.</summary>
    public static LabourStandard Inspect { get; } = PerUnit(
        WorkKind.Inspect, "L-63", "inspect", "fixture", new(6, 10, 15),
        "side light, film where a gauge reads it, care and waits explained");

    /// <summary>All of them, with those that mend defects.</summary>
    public static IReadOnlyList<LabourStandard> Generic { get; } = new ValueList<LabourStandard>(
    [
        Travel, SetUp, Clear, LayOnStripper, Descale, Degrease, Key, ReinforceCrack, SandFiller, Tack, Mask, WipeAgain, Promote,
        SprayPrimer, SprayTopcoat, Broadcast, CleanGun,
        Demask, FitTrim, Caulk, Inspect,
        Repair("L-31", "fill and sand a chip", DefectKind.Chip, "each", 0.06, 0.08, 0.15, "mixing apart, 5 min to clean, fill and feather one chip"),
        Repair("L-44", "fill and sand a chip of 25 mm (1 in) or more", DefectKind.Chip, "each", 0.1, 0.15, 0.3, "as a small chip, in two lifts") with
        {
            FromSize = Length.FromMillimeters(25),
        },
        Repair("L-32", "fill and sand a worn patch", DefectKind.WornPatch, "each", 0.15, 0.2, 0.35, "12 min to feather, skim and sand a patch as large as a hand"),
        Repair("L-33", "grind, spot prime and fill a rust spot", DefectKind.RustSpot, "each", 0.2, 0.25, 0.4, "grinding 5 min, treating and spot priming 5, filling 5"),
        Repair("L-34", "open and fill a crack", DefectKind.Crack, "m", 0.3, 0.4, 0.6, "24 min a metre to open and fill, and six minutes to set up") with
        {
            Fixed = ThreePoint.Exactly(0.1),
        },
        Repair("L-35", "scrape off an old coat, neutralise, rinse", DefectKind.PeelingCoat, "m²", 0.4, 0.54, 0.9, "scraping, neutralising and rinsing about 2 m² an hour; the dwell is a wait"),
        Repair("L-36", "remove silicone", DefectKind.SiliconeResidue, "m", 0.07, 0.1, 0.2, "6 min a metre to digest, scrape and wipe twice"),
        Repair("L-37", "rake out and replace grout", DefectKind.GroutFailure, "m", 0.1, 0.15, 0.3, "9 min a metre to rake out, fill and wash off"),
        Repair("L-38", "fix a loose tile again", DefectKind.LooseTiles, "tile", 0.15, 0.25, 0.5, "a quarter of an hour a tile to lift, clean the bed and set it again"),
        Repair("L-39", "cut out and fill a burn", DefectKind.Burn, "each", 0.15, 0.25, 0.4, "cutting out 5 min, filling in lifts 10"),
        Repair("L-45", "clean out, fill and sand pitting", DefectKind.Pitting, "m²", 0.8, 1.2, 2.0, "a little over an hour a square metre of pits, and six minutes to set up") with
        {
            Fixed = ThreePoint.Exactly(0.1),
        },
        Repair("L-47", "skim a low spot and sand it", DefectKind.LowSpot, "each", 0.2, 0.3, 0.5,
            "18 min to lay on, draw off and sand a skim as large as a sheet of paper"),
        Repair("L-48", "take off a liner and its glue", DefectKind.Liner, "m²", 0.5, 0.8, 1.5,
            "48 min a square metre to cut, lift and bag it and to scrape off the glue, and half an hour to set up") with
        {
            Fixed = ThreePoint.Exactly(0.5),
        },
        Repair("L-42", "abrade and seal crazing", DefectKind.Crazing, "each", 0.15, 0.2, 0.3, "12 min to abrade and seal the spots of a fixture"),
    ]);

    /// <summary>
    /// The generic standards with some of your own in place of those for the same work, or the same defect from the same size.
    /// </summary>
    /// <param name="own">Your own standards.</param>
    /// <returns>Yours, and the generic ones that yours do not replace.</returns>
    /// <exception cref="ArgumentException">
    /// An entry is missing, names neither or both of work and defect, has a rate that cannot be honoured, or has the code of another or of
    /// a generic one that stays.
    /// </exception>
    /// <exception cref="ArgumentNullException"><paramref name="own"/> is missing.</exception>
    public static IReadOnlyList<LabourStandard> GenericWith(params LabourStandard[] own)
    {
        IReadOnlyList<LabourStandard> list = Distinct(own, nameof(own));
        LabourStandard[] kept = [.. Generic.Where(standard => !list.Any(mine => IsForTheSame(mine, standard)))];
        foreach (LabourStandard standard in kept)
        {
            if (list.FirstOrDefault(mine => mine.Code == standard.Code) is LabourStandard mine)
            {
                throw new ArgumentException(
                    "own: the code of " + mine + " is also that of the generic standard " + standard
                        + ", which it does not replace. Give yours another code.",
                    nameof(own));
            }
        }

        return new ValueList<LabourStandard>([.. list, .. kept]);
    }

    // Minutes of a unit.
    private static LabourStandard PerUnit(WorkKind work, string code, string description, string unit, ThreePoint minutes, string reason) => new()
    {
        Code = code,
        Description = description,
        PerUnit = minutes.Times(1.0 / 60),
        Unit = unit,
        Work = work,
        Source = Invented(reason),
    };

    // Minutes for each fixture, which are the floor under a small one, and minutes beyond them for the area of a tub.
    private static LabourStandard PerArea(WorkKind work, string code, string description, ThreePoint each, ThreePoint tub, string reason) => new()
    {
        Code = code,
        Description = description,
        PerUnit = each.Times(1.0 / 60),
        PerSquareMeter = tub.Times(1.0 / 60 / Tub),
        Unit = "fixture",
        Work = work,
        Source = Invented(reason),
    };

    private static LabourStandard Repair(
        string code, string description, DefectKind kind, string unit, double least, double likely, double most, string reason) => new()
    {
        Code = code,
        Description = description,
        PerUnit = new(least, likely, most),
        Unit = unit,
        Repairs = kind,
        Source = Invented(reason),
    };

    private static Source Invented(string reason) =>
        Source.Invented("minutes of one person, as for a five-foot tub of 2.6 m²: " + reason + "; replace by own time sheets");
}

using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Substrates;

namespace Refinish.Jobs;

/// <summary>
/// The kinds of work in the order of the trade: one table from which keys, labels, places, reasons and cautions are read.
/// </summary>
internal static class WorkOrder
{
    /// <summary>Why a gun is cleaned between products.</summary>
    public static readonly Source GunCleaning = Source.CommonPractice("the gun is cleaned before the mix sets in it");

    private static readonly Source Practice = Source.CommonPractice("order of work in refinishing in place; the data sheets of the products go first");
    private static readonly Source NearerHazard = Source.CommonPractice("exhaust runs and what can spark is out before the first can is opened");
    private static readonly Source Bare = Source.CommonPractice("bare metal rusts again within hours, sooner where etchant was rinsed off it");

    // In the order of the trade; the place of a kind is its position here.
    private static readonly WorkRule[] Ordered =
    [
        new(WorkKind.SetUp, "set-up", "set up exhaust, protect the floor",
            "before any work in the room: floor and exhaust protect people and house", NearerHazard)
        {
            Cautions =
            [
                Cautions.IgnitionSources, Cautions.ExplosionProofFan, Cautions.GunAir, Cautions.FireExtinguisher,
                Cautions.DetectorsAndSprinklers, Cautions.MakeUpAir, Cautions.Rescue, Cautions.ConfinedSpace, Cautions.HazardCommunication,
                Cautions.WetElectricity, Cautions.Occupants, Cautions.EyeWash, Cautions.WetSheeting,
            ],
        },
        new(WorkKind.Clear, "clear", "take off hardware, cut out caulk",
            "first on the fixture: nothing can be cleaned or coated under hardware and caulk", Practice),
        new(WorkKind.Warm, "warm", "warm the fixture",
            "on arrival, and it goes on by itself while the fixture is cleaned: filler, promoter and coats need the warm surface", Practice)
        {
            People = 0,
            Cautions = Cautions.ForHeating,
        },
        new(WorkKind.RemoveSilicone, "remove-silicone", "remove silicone",
            "before any abrading, which would spread silicone over the surface", Practice) { Cautions = WorkCautions.Wiping },
        new(WorkKind.LayOnStripper, "lay-on-stripper", "lay on stripper",
            "before cleaning: the surface under the old coat is what has to be cleaned", Practice)
        {
            IsWatched = true,
            Cautions =
            [
                Cautions.Strippers, Cautions.NeverAlone, Cautions.MakeUpAir, Cautions.Rescue, Cautions.IgnitionSources, Cautions.Occupants,
                Cautions.EyeWash,
            ],
        },
        new(WorkKind.Strip, "strip", "strip the old coat, rinse",
            "after the stripper has worked; its residue is neutralised and rinsed off before anything else touches the surface", Practice)
        {
            IsWatched = true,
            Cautions =
            [
                Cautions.Strippers, Cautions.NeverAlone, Cautions.MakeUpAir, Cautions.Rescue, Cautions.IgnitionSources, Cautions.Occupants,
                Cautions.Dust, Cautions.EyeWash, Cautions.RinseWater, Cautions.Drains, Cautions.WasteOwner,
            ],
        },
        new(WorkKind.Descale, "descale", "clean off lime and soap film",
            "the first of the two cleaning steps: lime keeps a degreaser from the surface", Practice),
        new(WorkKind.Degrease, "degrease", "degrease",
            "the second cleaning step, before abrading, which would rub grease into the surface", Practice)
        {
            Cautions = WorkCautions.Wiping,
        },
        new(WorkKind.Regrout, "regrout", "replace grout, fix loose tiles",
            "on the clean surface, and dry before it is abraded or coated", Practice) { Cautions = [Cautions.Dust] },
        new(WorkKind.Key, "key", "etch or abrade, rinse and dry",
            "on the clean surface; everything that lasts goes on over it", Practice)
        {
            Cautions = [Cautions.WetElectricity, Cautions.Dust],
        },
        new(WorkKind.RinseAndDry, "rinse", "rinse and dry",
            "after etchant or dust, before anything that must not get wet", Practice)
        {
            Cautions = [Cautions.WetElectricity, Cautions.WetSheeting],
        },
        new(WorkKind.GrindRust, "rust", "treat rust",
            "after etching and rinsing, whose water would rust the bright metal again", Bare)
        {
            Cautions = [Cautions.IgnitionSources, Cautions.WetElectricity, Cautions.Dust],
        },
        new(WorkKind.SpotPrime, "spot-prime", "spot prime", "within the hour after grinding, before the metal rusts again", Bare)
        {
            Cautions = WorkCautions.Wiping,
        },
        new(WorkKind.ReinforceCrack, "reinforce", "open and reinforce cracks",
            "before filling: filler alone opens again over a crack in sheet that flexes", Practice)
        {
            Cautions = [.. SurveyCautions.Filler(FillerChemistry.Unknown), Cautions.EyeWash],
        },
        new(WorkKind.Fill, "fill", "fill repairs", "on the abraded, dry surface and under the promoter and the coats", Practice),
        new(WorkKind.SandFiller, "sand-filler", "sand the filler flush", "once the filler is hard", Practice)
        {
            Cautions = [Cautions.WetElectricity, Cautions.Dust],
        },
        new(WorkKind.SealCrazing, "seal-crazing", "abrade and seal crazing",
            "after the filler beside it is sanded, under promoter and coats", Practice)
        {
            Cautions = [.. WorkCautions.Wiping, Cautions.EpoxyHardener, Cautions.Dust, Cautions.EyeWash],
        },
        new(WorkKind.Tack, "tack", "vacuum and tack off",
            "after the last sanding: its dust is wiped off before promoter and coat", Practice) { Cautions = [Cautions.Dust] },
        new(WorkKind.Mask, "mask", "mask",
            "on the dry surface after the last rinse and the last dust: tape does not hold on either", Practice),
        new(WorkKind.WipeAgain, "wipe-again", "wipe again, water-break test",
            "after a night between abrading and promoter: hands, dust and damp may have come on", Practice)
        {
            Cautions = WorkCautions.Wiping,
        },
        new(WorkKind.Promote, "promote", "wipe on promoter",
            "just before the first coat, which has to go on within its open time", Practice) { IsWatched = true },
        new(WorkKind.SprayPrimer, "coat", "spray primer", "on promoter or keyed surface", Practice)
        {
            IsWatched = true,
            Cautions = WorkCautions.Spray,
        },
        new(WorkKind.SprayTopcoat, "coat", "spray topcoat", "within the recoat window of the coat below", Practice)
        {
            IsWatched = true,
            Cautions = WorkCautions.Spray,
        },
        new(WorkKind.Broadcast, "broadcast", "broadcast grains", "into the wet coat that holds them", Practice)
        {
            IsWatched = true,
            Cautions = [Cautions.SlipGrains],
        },
        new(WorkKind.Demask, "demask", "demask and clean up", "once the coat is dry to the touch", Practice)
        {
            Cautions = [Cautions.DetectorsAndSprinklers, Cautions.Rags, Cautions.WasteOwner],
        },
        new(WorkKind.FitTrim, "fit-trim", "fit drain trim", "once the coat is hard enough to bear a tool", Practice),
        new(WorkKind.Caulk, "caulk", "caulk, refit hardware",
            "once the coat has given off its solvent, after trim that is set in sealant", Practice),
        new(WorkKind.Inspect, "inspect", "inspect and hand over", "last", Practice)
        {
            Cautions = [Cautions.CuringVapour, Cautions.Relight],
        },
    ];

    private static readonly WorkRule[] Anywhere =
    [
        new(WorkKind.Notice, "notice", "tell residents and neighbours", "before anything can be smelled", Practice)
        {
            Cautions = [Cautions.Occupants],
        },
        new(WorkKind.Travel, "travel", "travel", "once for each visit", Practice),
        new(WorkKind.CleanGun, "clean-gun", "clean the gun outdoors",
            "before the mix sets in it, and before another product", GunCleaning)
        {
            Cautions =
            [
                Cautions.IgnitionSources, Cautions.BondingAndGrounding, Cautions.Rags, Cautions.Drains, Cautions.ReactiveWaste,
                Cautions.WasteOwner,
            ],
        },
        new(WorkKind.StandBy, "stand-by", "stand by outside",
            "from opening the cans until the sprayer is out of the room", Practice) { Cautions = [Cautions.NeverAlone, Cautions.Rescue] },
        new(WorkKind.Other, "other", "other work", "where its author puts it", Practice),
    ];

    /// <summary>All rules in the order of the trade.</summary>
    public static IReadOnlyList<WorkRule> Rules { get; } =
        new ValueList<WorkRule>(Ordered.Select((rule, i) => rule with { Place = i + 1 }).Concat(Anywhere));

    private static readonly WorkRule[] ByKind = [.. Rules.OrderBy(rule => rule.Kind)];

    /// <summary>Kinds of work on one fixture before promoter and coats, as they follow each other.</summary>
    public static readonly WorkKind[] BeforeCoats =
        [.. Ordered.SkipWhile(rule => rule.Kind != WorkKind.Clear).TakeWhile(rule => rule.Kind != WorkKind.Promote).Select(rule => rule.Kind)];

    /// <summary>Kinds of work after the last coat.</summary>
    public static readonly WorkKind[] AfterCoats =
        [.. Ordered.SkipWhile(rule => rule.Kind != WorkKind.Demask).Select(rule => rule.Kind)];

    public static WorkRule Of(WorkKind kind) => ByKind[(int)kind];

    /// <summary>An operation with what holds for all work of its kind.</summary>
    public static Operation Begun(WorkKind kind, string id, string? room, string instruction)
    {
        WorkRule rule = Of(kind);
        return new Operation
        {
            Id = id, Kind = kind, Name = rule.Label, Instruction = instruction, Room = room, Cautions = rule.Cautions, Source = rule.Source,
        };
    }

    public static string Key(WorkKind kind) => Of(kind).Key;

    public static string Label(WorkKind kind) => Of(kind).Label;

    /// <summary>
    /// The place of a kind in the order; kinds without one may stand anywhere. Grains fall between coats, so that topcoats share their
    /// place.
    /// </summary>
    public static int? Rank(WorkKind kind) => kind == WorkKind.Broadcast ? Of(WorkKind.SprayTopcoat).Place : Of(kind).Place;
}

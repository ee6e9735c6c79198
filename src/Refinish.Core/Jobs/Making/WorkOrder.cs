using System;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>The kinds of work in the order of the trade, with their keys for identifiers and their labels for timelines.</summary>
internal static class WorkOrder
{
    /// <summary>Kinds of work before the first coat, as they follow each other on one fixture.</summary>
    public static readonly WorkKind[] BeforeCoats =
    [
        WorkKind.Clear, WorkKind.RemoveSilicone, WorkKind.Strip, WorkKind.Descale, WorkKind.Degrease, WorkKind.Regrout, WorkKind.Key,
        WorkKind.RinseAndDry, WorkKind.GrindRust, WorkKind.SpotPrime, WorkKind.ReinforceCrack, WorkKind.Fill, WorkKind.SealCrazing,
        WorkKind.SandFiller, WorkKind.Tack, WorkKind.Mask, WorkKind.Warm,
    ];

    /// <summary>Kinds of work after the last coat.</summary>
    public static readonly WorkKind[] AfterCoats = [WorkKind.Demask, WorkKind.FitTrim, WorkKind.Caulk, WorkKind.Inspect];

    public static string Key(WorkKind kind) => kind switch
    {
        WorkKind.Notice => "notice",
        WorkKind.Travel => "travel",
        WorkKind.SetUp => "set-up",
        WorkKind.Clear => "clear",
        WorkKind.RemoveSilicone => "remove-silicone",
        WorkKind.Strip => "strip",
        WorkKind.Descale => "descale",
        WorkKind.Degrease => "degrease",
        WorkKind.Regrout => "regrout",
        WorkKind.GrindRust => "rust",
        WorkKind.Key => "key",
        WorkKind.RinseAndDry => "rinse",
        WorkKind.SpotPrime => "spot-prime",
        WorkKind.ReinforceCrack => "reinforce",
        WorkKind.Fill => "fill",
        WorkKind.SealCrazing => "seal-crazing",
        WorkKind.SandFiller => "sand-filler",
        WorkKind.Tack => "tack",
        WorkKind.Warm => "warm",
        WorkKind.Mask => "mask",
        WorkKind.Promote => "promote",
        WorkKind.SprayPrimer or WorkKind.SprayTopcoat => "coat",
        WorkKind.Broadcast => "broadcast",
        WorkKind.CleanGun => "clean-gun",
        WorkKind.StandBy => "stand-by",
        WorkKind.Demask => "demask",
        WorkKind.FitTrim => "fit-trim",
        WorkKind.Caulk => "caulk",
        WorkKind.Inspect => "inspect",
        _ => "other",
    };

    public static string Label(WorkKind kind) => kind switch
    {
        WorkKind.SetUp => "set up exhaust, protect the floor",
        WorkKind.Clear => "take off hardware, cut out caulk",
        WorkKind.RemoveSilicone => "remove silicone",
        WorkKind.Strip => "strip the old coat",
        WorkKind.Descale => "clean off mineral and rust",
        WorkKind.Degrease => "clean off oils and soap",
        WorkKind.Regrout => "fix tiles, replace grout",
        WorkKind.GrindRust => "grind rust, spot prime",
        WorkKind.Key => "etch or abrade, rinse and dry",
        WorkKind.RinseAndDry => "rinse and dry",
        WorkKind.SpotPrime => "spot prime",
        WorkKind.ReinforceCrack => "open and reinforce cracks",
        WorkKind.Fill => "fill chips and wear",
        WorkKind.SealCrazing => "abrade and seal crazing",
        WorkKind.SandFiller => "sand the filler",
        WorkKind.Tack => "sand and tack",
        WorkKind.Warm => "warm the fixture",
        WorkKind.Mask => "mask",
        WorkKind.Promote => "wipe on promoter",
        WorkKind.Broadcast => "broadcast grains",
        WorkKind.CleanGun => "clean the gun outdoors",
        WorkKind.StandBy => "stand by",
        WorkKind.Demask => "demask and clean up",
        WorkKind.FitTrim => "fit drain trim",
        WorkKind.Caulk => "caulk and refit",
        WorkKind.Inspect => "inspect and hand over",
        _ => Key(kind),
    };

    /// <summary>The place of a kind in the order; kinds without one may stand anywhere.</summary>
    public static int? Rank(WorkKind kind)
    {
        int before = Array.IndexOf(BeforeCoats, kind);
        if (before >= 0)
        {
            return before;
        }

        int after = Array.IndexOf(AfterCoats, kind);
        return after >= 0 ? 100 + after : kind switch
        {
            WorkKind.SetUp => -1,
            WorkKind.Promote => 50,
            WorkKind.SprayPrimer => 51,
            WorkKind.SprayTopcoat or WorkKind.Broadcast => 52,
            _ => null,
        };
    }
}

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
        WorkKind.RinseAndDry, WorkKind.GrindRust, WorkKind.SpotPrime, WorkKind.Fill, WorkKind.SandFiller, WorkKind.Tack, WorkKind.Mask, WorkKind.Warm,
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
        WorkKind.Fill => "fill",
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

    /// <summary>What a kind of work is called on a timeline, as true of every fixture; a rule may name it more closely.</summary>
    public static string Label(WorkKind kind) => kind switch
    {
        WorkKind.Notice => "tell residents and neighbours",
        WorkKind.Travel => "travel",
        WorkKind.SetUp => "set up exhaust, protect the floor",
        WorkKind.Clear => "take off hardware, cut out caulk",
        WorkKind.RemoveSilicone => "remove silicone",
        WorkKind.Strip => "strip the old coat",
        WorkKind.Descale => "clean off lime and soap film",
        WorkKind.Degrease => "degrease",
        WorkKind.Regrout => "replace grout, fix loose tiles",
        WorkKind.GrindRust => "treat rust",
        WorkKind.Key => "etch or abrade, rinse and dry",
        WorkKind.RinseAndDry => "rinse and dry",
        WorkKind.SpotPrime => "spot prime",
        WorkKind.Fill => "fill or seal repairs",
        WorkKind.SandFiller => "sand the filler flush",
        WorkKind.Tack => "vacuum and tack off",
        WorkKind.Warm => "warm the fixture",
        WorkKind.Mask => "mask",
        WorkKind.Promote => "wipe on promoter",
        WorkKind.SprayPrimer => "spray primer",
        WorkKind.SprayTopcoat => "spray topcoat",
        WorkKind.Broadcast => "broadcast grains",
        WorkKind.CleanGun => "clean the gun outdoors",
        WorkKind.StandBy => "stand by outside",
        WorkKind.Demask => "demask and clean up",
        WorkKind.FitTrim => "fit drain trim",
        WorkKind.Caulk => "caulk, refit hardware",
        WorkKind.Inspect => "inspect and hand over",
        _ => "other work",
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

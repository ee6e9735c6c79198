using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Fixtures;

/// <summary>Phrases of what is taken off a fixture before work and put back after it.</summary>
internal static class ClearingWords
{
    /// <summary>What most fixtures get back.</summary>
    public const string CaulkAndRefit = "caulk the joints, refit the hardware";

    public static string Basin(Length drain, Length overflow) => (drain > Length.Zero, overflow > Length.Zero) switch
    {
        (true, true) => "take off drain trim, stopper and overflow plate; ",
        (true, false) => "take off drain trim and stopper; ", (false, true) => "take off the overflow plate; ", _ => string.Empty, };

    public static string Faucet(bool hasOne) => hasOne ? "take off the faucet or lift it free; " : string.Empty;

    public static string Openings(IReadOnlyList<RectangularOpening> cutOuts) =>
        cutOuts.Count > 0 ? "take out what sits in the cut-outs, or free its rim and lift it; " : string.Empty;

    public static string CutOut(string where) => "cut out all caulk " + where;
}

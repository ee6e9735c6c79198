using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Substrates;

/// <summary>
/// A kind of defect, by its code: labour standards, materials and rules refer to it. The ready kinds are on this type;
/// <see cref="Own"/> makes the kind of a caller's own defect.
/// </summary>
/// <example><code>
/// DefectKind inlay = DefectKind.Own("loose-inlay");
/// bool own = inlay.IsOwn;   // true
/// </code></example>
public sealed record DefectKind
{
    private DefectKind(string code) => Code = code;

    /// <summary>See <see cref="Substrates.Chip"/>.</summary>
    public static DefectKind Chip { get; } = new(nameof(Chip)) { HasSize = true, HasDepth = true, HasOutline = true };

    /// <summary>See <see cref="Substrates.WornPatch"/>.</summary>
    public static DefectKind WornPatch { get; } = new(nameof(WornPatch)) { HasSize = true, HasDepth = true, HasOutline = true };

    /// <summary>See <see cref="Substrates.RustSpot"/>.</summary>
    public static DefectKind RustSpot { get; } = new(nameof(RustSpot)) { HasSize = true, HasOutline = true };

    /// <summary>See <see cref="Substrates.Crack"/>.</summary>
    public static DefectKind Crack { get; } = new(nameof(Crack)) { HasSize = true, HasDepth = true };

    /// <summary>See <see cref="Substrates.Perforation"/>.</summary>
    public static DefectKind Perforation { get; } = new(nameof(Perforation)) { IsAnotherTrades = true, HasOutline = true };

    /// <summary>See <see cref="Substrates.FlexingFloor"/>.</summary>
    public static DefectKind FlexingFloor { get; } = new(nameof(FlexingFloor)) { IsAnotherTrades = true };

    /// <summary>See <see cref="Substrates.Crazing"/>.</summary>
    public static DefectKind Crazing { get; } = new(nameof(Crazing));

    /// <summary>See <see cref="Substrates.PeelingCoat"/>.</summary>
    public static DefectKind PeelingCoat { get; } = new(nameof(PeelingCoat)) { HasArea = true, HasOutline = true };

    /// <summary>See <see cref="Substrates.SiliconeResidue"/>.</summary>
    public static DefectKind SiliconeResidue { get; } = new(nameof(SiliconeResidue));

    /// <summary>See <see cref="Substrates.GroutFailure"/>.</summary>
    public static DefectKind GroutFailure { get; } = new(nameof(GroutFailure));

    /// <summary>See <see cref="Substrates.LooseTiles"/>.</summary>
    public static DefectKind LooseTiles { get; } = new(nameof(LooseTiles));

    /// <summary>See <see cref="Substrates.Burn"/>.</summary>
    public static DefectKind Burn { get; } = new(nameof(Burn)) { HasSize = true, HasOutline = true };

    /// <summary>See <see cref="Substrates.Pitting"/>.</summary>
    public static DefectKind Pitting { get; } = new(nameof(Pitting)) { HasArea = true, HasDepth = true, HasOutline = true };

    /// <summary>See <see cref="Substrates.LowSpot"/>.</summary>
    public static DefectKind LowSpot { get; } = new(nameof(LowSpot)) { HasSize = true, HasOutline = true };

    /// <summary>See <see cref="Substrates.Liner"/>.</summary>
    public static DefectKind Liner { get; } = new(nameof(Liner)) { HasArea = true, HasOutline = true };

    /// <summary>All ready kinds.</summary>
    public static IReadOnlyList<DefectKind> All { get; } = new ValueList<DefectKind>(
    [
        Chip, WornPatch, RustSpot, Crack, Perforation, FlexingFloor, Crazing, PeelingCoat, SiliconeResidue, GroutFailure, LooseTiles, Burn,
        Pitting, LowSpot, Liner,
    ]);

    /// <summary>Its code; of a ready kind the name of its type.</summary>
    public string Code { get; }

    /// <summary>Whether it is a caller's own.</summary>
    public bool IsOwn { get; private init; }

    /// <summary>The kind of a caller's own defect.</summary>
    /// <param name="code">Its code; none of a ready kind, in capitals or not.</param>
    /// <returns>The kind; two of one code are equal.</returns>
    /// <exception cref="ArgumentException">
    /// No identity: empty, longer than 80 characters, or with a '/'; or the code of a ready kind.
    /// </exception>
    public static DefectKind Own(string code)
    {
        // Codes of labour are formed from it, which is why it is shorter than other identities.
        if (Guard.Id(code).Length > 80)
        {
            throw new ArgumentException("code has more than 80 characters.", nameof(code));
        }

        return All.FirstOrDefault(kind => kind.Code.Equals(code, StringComparison.OrdinalIgnoreCase)) is DefectKind ready
            ? throw new ArgumentException("code is " + code + ", which the ready kind " + ready.Code + " has; give yours another.",
                nameof(code))
            : new DefectKind(code) { IsOwn = true, HasDepth = true };
    }

    /// <summary>The code.</summary>
    /// <returns><see cref="Code"/>.</returns>
    public override string ToString() => Code;

    // Whether it is mended for its area, goes by a size, has a depth that is measured, an outline; whether it is no work of this trade.
    internal bool HasArea { get; private init; }

    internal bool HasSize { get; private init; }

    internal bool HasDepth { get; private init; }

    internal bool HasOutline { get; private init; }

    internal bool IsAnotherTrades { get; private init; }
}

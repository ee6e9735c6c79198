using System;
using System.Linq;
using UnitsNet;

namespace Refinish.Fixtures;

/// <content>One fixture of each kind from the readings that it needs, as they are said: ± <see cref="SaidPlusMinus"/>.</content>
public sealed partial record RoughFixture
{
    /// <summary>A recessed bathtub with deck and apron.</summary>
    /// <param name="length">Length of the whole tub over the deck, 1.1 to 2.1 m.</param>
    /// <param name="width">Width of the whole tub over the deck, 0.6 to 1.2 m.</param>
    /// <returns>The fixture.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside what the proportions are made for.</exception>
    public static RoughFixture RecessedBathtub(Length length, Length width) => Said("recessedBathtub", length, width);

    /// <summary>A freestanding tub with a rolled rim.</summary>
    /// <param name="length">Length of the mouth, inside the roll, 0.9 to 2.1 m.</param>
    /// <param name="width">Width of the mouth, inside the roll, 0.45 to 1.2 m.</param>
    /// <param name="allRound">Whether outside and underside are coated too.</param>
    /// <returns>The fixture.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside what the proportions are made for.</exception>
    public static RoughFixture FreestandingTub(Length length, Length width, bool allRound) =>
        Said(allRound ? "freestandingTubAllRound" : "freestandingTub", length, width);

    /// <summary>An oval tub in a level deck with an apron along the front; take <c>ApronHeight</c> as 0 where there is none.</summary>
    /// <param name="length">Length of the deck, 1.1 to 2.5 m.</param>
    /// <param name="width">Width of the deck, 0.6 to 1.8 m.</param>
    /// <returns>The fixture.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside what the proportions are made for.</exception>
    public static RoughFixture OvalTub(Length length, Length width) => Said("ovalTub", length, width);

    /// <summary>A tub in the corner of a room.</summary>
    /// <param name="leftWall">Length of the deck along the left wall, 0.9 to 2 m.</param>
    /// <param name="rightWall">Length of the deck along the right wall, 0.9 to 2 m.</param>
    /// <returns>The fixture.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside what the proportions are made for.</exception>
    public static RoughFixture CornerTub(Length leftWall, Length rightWall) => Said("cornerTub", leftWall, rightWall);

    /// <summary>A pedestal sink; take <c>ColumnHeight</c> as 0 where the column is not coated.</summary>
    /// <param name="length">Length over the rim, 0.3 to 1 m.</param>
    /// <param name="width">Width over the rim, from the wall to the front, 0.25 to 0.75 m.</param>
    /// <returns>The fixture.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside what the proportions are made for.</exception>
    public static RoughFixture PedestalSink(Length length, Length width) => Said("pedestalSink", length, width);

    /// <summary>A sink on, in or under a counter, with a bowl that is half an ellipsoid.</summary>
    /// <param name="mounting">How it sits at the counter.</param>
    /// <param name="length">
    /// Length: over the rim of a drop-in sink (0.3 to 1.1 m), of the mouth of the others (0.25 m to 0.9 m, for a vessel 0.8 m).
    /// </param>
    /// <param name="width">Width, in the same way: 0.25 to 0.75 m, for the others 0.2 to 0.6 m.</param>
    /// <returns>The fixture.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A length is outside what the proportions are made for, or <paramref name="mounting"/> is not a named value.
    /// </exception>
    public static RoughFixture CounterSink(SinkMounting mounting, Length length, Length width) => Said(
        Guard.Defined(mounting) switch
        {
            SinkMounting.DropIn => "dropInSink",
            SinkMounting.Vessel => "vesselSink",
            _ => "undermountSink",
        },
        length,
        width);

    /// <summary>A shower pan in an alcove.</summary>
    /// <param name="length">Length of the whole pan along the curb, 0.6 to 2 m.</param>
    /// <param name="width">Width of the whole pan from the curb's front to the back, 0.6 to 1.6 m.</param>
    /// <returns>The fixture.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside what the proportions are made for.</exception>
    public static RoughFixture ShowerPan(Length length, Length width) => Said("showerPan", length, width);

    /// <summary>The three tiled walls of an alcove, without window or niche.</summary>
    /// <param name="backWall">Length of the wall at the back, 0.6 to 3 m.</param>
    /// <param name="height">Height of the tile, 0.3 to 3 m.</param>
    /// <returns>The fixture.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside what the proportions are made for.</exception>
    public static RoughFixture TiledSurround(Length backWall, Length height) => Said("tiledSurround", backWall, height);

    /// <summary>A straight counter with one sink, one end against a wall; take <c>CutOutLength</c> as 0 where there is no sink.</summary>
    /// <param name="length">Length along the wall, 0.9 to 6 m.</param>
    /// <returns>The fixture.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside what the proportions are made for.</exception>
    public static RoughFixture Countertop(Length length) => Said("countertop", length);

    /// <summary>A counter round a corner with one sink, one end against a wall.</summary>
    /// <param name="left">Length along the left wall, the corner included, 1.5 to 6 m.</param>
    /// <param name="right">Length along the right wall, the corner included, 1.5 to 6 m.</param>
    /// <returns>The fixture.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside what the proportions are made for.</exception>
    public static RoughFixture CornerCountertop(Length left, Length right) => Said("cornerCountertop", left, right);

    /// <summary>A plain panel without upstand and cut-out.</summary>
    /// <param name="length">Length, 0.2 to 6 m.</param>
    /// <param name="width">Width, 0.15 to 2.5 m.</param>
    /// <returns>The fixture.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside what the proportions are made for.</exception>
    public static RoughFixture FlatPanel(Length length, Length width) => Said("flatPanel", length, width);

    /// <summary>A vanity top with an upstand and the cut-out for one sink.</summary>
    /// <param name="length">Length, 0.45 to 3 m.</param>
    /// <param name="width">Depth, 0.4 to 0.8 m.</param>
    /// <returns>The fixture.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside what the proportions are made for.</exception>
    public static RoughFixture VanityTop(Length length, Length width) => Said("vanityTop", length, width);

    private static RoughFixture Said(string id, params Length[] lengths)
    {
        RoughKind kind = RoughKind.Of(id);
        return Of(kind, kind.Needed.Zip(lengths, static (name, length) => new TakenReading(name, length, SaidPlusMinus)));
    }
}

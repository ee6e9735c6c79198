using System.Collections.Generic;

namespace Refinish.Fixtures;

/// <content>The kinds of this library.</content>
public sealed partial class ComposedKind
{
    /// <summary>All kinds.</summary>
    public static IReadOnlyList<ComposedKind> Kinds => field ??= new ValueList<ComposedKind>(
    [
        DoubleBowlSink, FarmSink, CornerSink, Vanity, Toilet, Bidet, Urinal, TubFeet, ShowerBaseWithSeat, PrefabricatedSurround,
            ShowerCeiling,
        CabinetDoors, DrawerFronts, WindowSill,
    ]);

    /// <summary>A kitchen sink with two bowls in a deck, let into a counter, with or without a front that shows.</summary>
    public static ComposedKind DoubleBowlSink => ComposedSinks.DoubleBowl;

    /// <summary>A kitchen sink with one bowl and an apron front.</summary>
    public static ComposedKind FarmSink => ComposedSinks.Farm;

    /// <summary>A wash basin in the corner of a room, its front straight or bowed out to a quarter round.</summary>
    public static ComposedKind CornerSink => ComposedSinks.Corner;

    /// <summary>A vanity top with bowls of one piece, a backsplash and loose side splashes.</summary>
    public static ComposedKind Vanity => ComposedSinks.Vanity;

    /// <summary>A toilet from without; the inside of its bowl is not coated.</summary>
    public static ComposedKind Toilet => ComposedSanitary.Toilet;

    /// <summary>A bidet, its bowl included.</summary>
    public static ComposedKind Bidet => ComposedSanitary.Bidet;

    /// <summary>A urinal on a wall from without; its wetted inside is not coated.</summary>
    public static ComposedKind Urinal => ComposedSanitary.Urinal;

    /// <summary>The feet of a freestanding tub and the pads under them, which often get a coat of their own.</summary>
    public static ComposedKind TubFeet => ComposedSanitary.TubFeet;

    /// <summary>A shower base with a curb in front and a seat across one end.</summary>
    public static ComposedKind ShowerBaseWithSeat => ComposedShowers.BaseWithSeat;

    /// <summary>Wall panels of a tub or shower with returns, shelves, niches and a window.</summary>
    public static ComposedKind PrefabricatedSurround => ComposedShowers.Surround;

    /// <summary>The ceiling of a shower: work overhead.</summary>
    public static ComposedKind ShowerCeiling => ComposedShowers.Ceiling;

    /// <summary>Doors of cabinets, all of one size.</summary>
    public static ComposedKind CabinetDoors => ComposedBoards.CabinetDoors;

    /// <summary>Drawer fronts, all of one size.</summary>
    public static ComposedKind DrawerFronts => ComposedBoards.DrawerFronts;

    /// <summary>A window sill.</summary>
    public static ComposedKind WindowSill => ComposedBoards.WindowSill;
}

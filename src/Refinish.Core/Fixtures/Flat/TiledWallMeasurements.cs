using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;
using static Refinish.Fixtures.TapeRules;

namespace Refinish.Fixtures;

/// <summary>What a tape measure gives for tiled walls that meet in a row, such as the three walls of an alcove.</summary>
/// <remarks>
/// The ranges are generous limits that catch a length typed in the wrong unit (invented); whether the lengths fit each other is checked by
/// <see cref="TiledSurround"/>.
/// </remarks>
/// <example><code>
/// Length height = Length.FromInches(60);
/// TiledWallMeasurements tape = new()
/// {
///     Walls = [new(Length.FromInches(30), height), new(Length.FromInches(60), height), new(Length.FromInches(30), height)],
///     TileLength = Length.FromInches(4.25), TileWidth = Length.FromInches(4.25),
///     JointWidth = Length.FromInches(0.125), JointDepth = Length.FromInches(0.0625), JointProfile = JointProfile.Sharp,
///     Openings = [],
/// };
/// </code></example>
public sealed record TiledWallMeasurements
{
    /// <summary>What the tape gives, as a table.</summary>
    public static RecordInputs<TiledWallMeasurements> Inputs { get; } = new(
        tape => tape.Tape,
        (tape, readings) => tape with { Tape = readings },
        InputField.Tape(nameof(TileLength), "length of a tile", 5e-3, 2),
        InputField.Tape(nameof(TileWidth), "width of a tile", 5e-3, 2),
        InputField.Tape(nameof(JointWidth), "width of a joint", 0.5e-3, 25e-3),
        InputField.Tape(nameof(JointDepth), "depth of a joint", 0, 15e-3));

    /// <summary>Measurements that are given one by one.</summary>
    public TiledWallMeasurements()
    {
    }

    /// <summary>Measurements of readings by name.</summary>
    /// <param name="readings">Values of <see cref="Inputs"/>; none missing that has to be given.</param>
    /// <param name="walls">The walls from left to right.</param>
    /// <param name="jointProfile">The shape of the recess.</param>
    /// <param name="openings">What is not coated.</param>
    /// <exception cref="ArgumentException">An argument is missing, the values are of other inputs, or one is missing.</exception>
    [SetsRequiredMembers]
    public TiledWallMeasurements(
        InputValues readings, IReadOnlyList<WallRun> walls, JointProfile jointProfile, IReadOnlyList<RectangularOpening> openings)
    {
        Tape = Inputs.Whole(readings, nameof(readings));
        Walls = walls;
        JointProfile = jointProfile;
        Openings = openings;
    }

    private InputValues Tape { get; init; } = Inputs.Empty;

    /// <summary>The walls in the order in which they meet, from left to right; at least one.</summary>
    /// <exception cref="ArgumentException">Empty, or an entry is missing.</exception>
    public required IReadOnlyList<WallRun> Walls { get; init => field = Guard.List(value, 1); }

    /// <summary>One side of a tile, 5 mm to 2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length TileLength { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>The other side of a tile, 5 mm to 2 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length TileWidth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Width of a joint, 0.5 to 25 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length JointWidth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>How deep a joint lies below the tile, 0 to 15 mm; at most half its width where it is concave.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length JointDepth { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>The shape of the recess.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public required JointProfile JointProfile { get; init => field = Guard.Defined(value); }

    /// <summary>Windows, niches, dishes and plates that are not coated; may be empty.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public required IReadOnlyList<RectangularOpening> Openings { get; init => field = Guard.List(value); }

    /// <summary>Niches, window reveals and soap dishes that are coated too; none unless it is set.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<WallRecess> Recesses { get; init => field = Guard.List(value); } = ValueList<WallRecess>.Empty;

    internal TileJoint Joint => new(TileLength.Meters, TileWidth.Meters, JointWidth.Meters, JointDepth.Meters, JointProfile);

    /// <summary>The walls and the tile in one line, in metric units.</summary>
    /// <returns>Text such as <c>3 walls, tile 107.95 mm × 107.95 mm, joint 3.175 mm</c>.</returns>
    public override string ToString() =>
        $"{Walls.Count} {(Walls.Count == 1 ? "wall" : "walls")}, tile {Shown(TileLength)} × {Shown(TileWidth)}, joint {Shown(JointWidth)}";

    internal Num WallArea(Trace? t = null) =>
        Walls.Total(t, static (t, wall, i) => t.Tape("L_", i, wall.Length) * t.Tape("H_", i, wall.Height));

    internal Num Mouths(Trace? t = null) => Recesses.Total(t, static (t, recess, i) => recess.Mouth(t, i));

    /// <summary>The faces of the recesses that have tile and joints, or those that are smooth.</summary>
    internal Num RecessFaces(bool tiled, Trace? t = null) =>
        Recesses.Total((t, tiled), static (of, recess, i) => recess.IsTiled == of.tiled ? recess.Faces(of.t, i) : 0);

    /// <summary>
    /// Rules between two lengths; each refusal names the one that cannot be. Nothing is put into words while all is well.
    /// </summary>
    internal void CheckConsistency()
    {
        if (JointProfile == JointProfile.Concave && JointDepth.Meters > JointWidth.Meters / 2 * (1 + PlaneShapes.LastDigits))
        {
            Guard.Rule(false, nameof(JointDepth), JointDepth.Meters, Measure.Length,
                "at most " + Measure.Length.Format(JointWidth.Meters / 2) + ", half of JointWidth, for a concave joint");
        }

        for (int i = 0; i < Openings.Count; i++)
        {
            if (!FitsAWall(Openings[i]))
            {
                Guard.Rule(false, nameof(Openings), Openings[i].Length.Meters, Measure.Length,
                    "an opening (" + Openings[i] + ") that fits one of the walls");
            }
        }

        for (int i = 0; i < Recesses.Count; i++)
        {
            if (!FitsAWall(Recesses[i].Opening))
            {
                Guard.Rule(false, nameof(Recesses), Recesses[i].Opening.Length.Meters, Measure.Length,
                    "a recess (" + Recesses[i] + ") that fits one of the walls");
            }
        }

        double flat = WallArea().Value;
        double open = (RectangularOpening.AreaOf(Openings) + Mouths()).Value;
        if (open > flat)
        {
            Guard.Rule(false, Recesses.Count == 0
                ? nameof(Openings) : nameof(Recesses), open, Measure.Area,
                "at most " + Measure.Area.Format(flat) + ", the area of all walls");
        }
    }

    private bool FitsAWall(RectangularOpening opening)
    {
        bool fits = false;
        for (int i = 0; i < Walls.Count; i++)
        {
            fits |= opening.FitsInto(Walls[i].Length.Meters, Walls[i].Height.Meters);
        }

        return fits;
    }
}

using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using static Refinish.Fixtures.TapeRules;

namespace Refinish.Fixtures;

/// <summary>What a tape measure gives for a straight counter or a plain panel.</summary>
/// <remarks>
/// Length and width are level, from the bare wall, what an upstand covers included, to the outermost line of the edge. Where the tape meets
/// the face of the upstand, add its thickness. The ranges are generous limits that catch a length typed in the wrong unit (invented);
/// whether the lengths fit each other is checked by <see cref="FlatPanel"/>.
/// </remarks>
/// <example><code>
/// FlatPanelMeasurements tape = new()
/// {
///     Length = Length.FromInches(96), Width = Length.FromInches(25.5),
///     ExposedEdge = Length.FromInches(96), EdgeHeight = Length.FromInches(1.5),
///     BacksplashLength = Length.FromInches(96), BacksplashHeight = Length.FromInches(4), BacksplashThickness = Length.FromInches(0.75),
///     CutOuts = [new(Length.FromInches(32), Length.FromInches(21))],
/// };
/// </code></example>
public sealed record FlatPanelMeasurements
{
    /// <summary>What the tape gives, as a table.</summary>
    public static RecordInputs<FlatPanelMeasurements> Inputs { get; } = new(
        tape => tape.Tape,
        (tape, readings) => tape with { Tape = readings },
        InputField.Tape(nameof(Length), "length", 0.1, 10),
        InputField.Tape(nameof(Width), "width", 0.1, 3),
        InputField.Tape(nameof(ExposedEdge), "length of the edge that shows", 0, 26),
        InputField.Tape(nameof(EdgeHeight), "height of the edge", 0, 0.5),
        InputField.Tape(nameof(BacksplashLength), "length of the upstand", 0, 26),
        InputField.Tape(nameof(BacksplashHeight), "height of the upstand", 0, 1.5),
        InputField.Tape(nameof(BacksplashThickness), "thickness of the upstand", 0, 0.1));

    /// <summary>Measurements that are given one by one.</summary>
    public FlatPanelMeasurements()
    {
    }

    /// <summary>Measurements of readings by name.</summary>
    /// <param name="readings">Values of <see cref="Inputs"/>; none missing that has to be given.</param>
    /// <param name="cutOuts">Cut-outs in the top.</param>
    /// <exception cref="ArgumentException">An argument is missing, the values are of other inputs, or one is missing.</exception>
    [SetsRequiredMembers]
    public FlatPanelMeasurements(InputValues readings, IReadOnlyList<RectangularOpening> cutOuts)
    {
        Tape = Inputs.Whole(readings, nameof(readings));
        CutOuts = cutOuts;
    }

    private InputValues Tape { get; init; } = Inputs.Empty;

    /// <summary>Length of the top, 0.1 to 10 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required UnitsNet.Length Length { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Width (depth) of the top, 0.1 to 3 m; from the wall, the strip below an upstand included.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required UnitsNet.Length Width { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Length of edge that shows and is coated, 0 up to the whole perimeter.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required UnitsNet.Length ExposedEdge { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Developed height of that edge, measured round its profile, 0 to 0.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required UnitsNet.Length EdgeHeight { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Length of the upstand along the walls, 0 up to the whole perimeter; 0 when there is none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required UnitsNet.Length BacksplashLength { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Height of the upstand above the top, 0 to 1.5 m.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required UnitsNet.Length BacksplashHeight { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>
    /// How far the upstand stands out from the wall, 0 to 0.1 m: that much of the top is below it and not coated, its own top edge is. 0
    /// where it covers nothing, such as tile or a sheet on the wall.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required UnitsNet.Length BacksplashThickness { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Cut-outs in the top, such as for a sink; may be empty.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public required IReadOnlyList<RectangularOpening> CutOuts { get; init => field = Guard.List(value); }

    /// <summary>The size in one line, in metric units.</summary>
    /// <returns>Text such as <c>2438.4 mm × 647.7 mm</c>.</returns>
    public override string ToString() => $"{Shown(Length)} × {Shown(Width)}";

    /// <summary>Rules between two lengths; each refusal names the one that cannot be.</summary>
    internal void CheckConsistency()
    {
        double perimeter = 2 * (Length.Meters + Width.Meters);
        AtMost(ExposedEdge.Meters, perimeter, nameof(ExposedEdge), "the whole perimeter");
        AtMost(BacksplashLength.Meters, perimeter, nameof(BacksplashLength), "the whole perimeter");
        double covered = BacksplashLength.Meters > 0 ? BacksplashThickness.Meters : 0;
        AtMost(covered, Width.Meters / 2, nameof(BacksplashThickness), "half of the width");
        for (int i = 0; i < CutOuts.Count; i++)
        {
            if (!CutOuts[i].FitsInto(Length.Meters, Width.Meters - covered))
            {
                Guard.Rule(false, nameof(CutOuts), CutOuts[i].Length.Meters, Measure.Length,
                    "a cut-out (" + CutOuts[i] + ") that fits the top of " + this);
            }
        }

        AtMost(RectangularOpening.AreaOf(CutOuts).Value,
            (Length.Meters * Width.Meters) - (BacksplashLength.Meters * BacksplashThickness.Meters), nameof(CutOuts),
            "the area of the top before the upstand", Measure.Area);
    }
}

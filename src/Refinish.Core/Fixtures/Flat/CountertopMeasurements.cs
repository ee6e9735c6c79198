using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using System.Linq;
using UnitsNet;
using static Refinish.Fixtures.TapeRules;

namespace Refinish.Fixtures;

/// <summary>
/// What a tape measure gives for a counter of one, two or three runs along walls that meet at right angles: straight, L or U.
/// </summary>
/// <remarks>
/// The ranges are generous limits that catch a length typed in the wrong unit (invented); whether the lengths fit each other is checked by
/// <see cref="Countertop"/>. Lengths and depths are level, from the bare wall, what a backsplash covers included, to the outermost line of
/// the edge. Where the tape meets the face of the backsplash, add its thickness.
/// </remarks>
/// <example><code>
/// CountertopMeasurements tape = new()
/// {
///     Runs = [new(Length.FromInches(96), Length.FromInches(25.5)), new(Length.FromInches(72), Length.FromInches(25.5))],
///     Thickness = Length.FromInches(1.5), Profile = EdgeProfile.Bullnose, LeftEndIsOpen = true, RightEndIsOpen = true,
///     BacksplashHeight = Length.FromInches(4), BacksplashThickness = Length.FromInches(0.75),
///     CutOuts = [new(Length.FromInches(32), Length.FromInches(21))],
/// };
/// </code></example>
public sealed record CountertopMeasurements
{
    /// <summary>What the tape gives, as a table.</summary>
    public static RecordInputs<CountertopMeasurements> Inputs { get; } = new(
        tape => tape.Tape,
        (tape, readings) => tape with { Tape = readings },
        InputField.Tape(nameof(Thickness), "thickness", 0.005, 0.2),
        InputField.Tape(nameof(EdgeRadius), "radius of the edge", 0, 0.2, 0),
        InputField.Tape(nameof(BacksplashHeight), "height of the upstand", 0, 1.5),
        InputField.Tape(nameof(BacksplashThickness), "thickness of the upstand", 0, 0.1));

    /// <summary>Measurements that are given one by one.</summary>
    public CountertopMeasurements()
    {
    }

    /// <summary>Measurements of readings by name.</summary>
    /// <param name="readings">Values of <see cref="Inputs"/>; none missing that has to be given.</param>
    /// <param name="runs">The runs from left to right.</param>
    /// <param name="profile">The profile of the edge that shows.</param>
    /// <param name="leftEndIsOpen">Whether the left end shows an edge.</param>
    /// <param name="rightEndIsOpen">Whether the right end shows an edge.</param>
    /// <param name="cutOuts">Cut-outs in the top.</param>
    /// <exception cref="ArgumentException">An argument is missing, the values are of other inputs, or one is missing.</exception>
    [SetsRequiredMembers]
    public CountertopMeasurements(
        InputValues readings, IReadOnlyList<CounterRun> runs, EdgeProfile profile, bool leftEndIsOpen, bool rightEndIsOpen,
            IReadOnlyList<RectangularOpening> cutOuts)
    {
        Tape = Inputs.Whole(readings, nameof(readings));
        Runs = runs;
        Profile = profile;
        LeftEndIsOpen = leftEndIsOpen;
        RightEndIsOpen = rightEndIsOpen;
        CutOuts = cutOuts;
    }

    private InputValues Tape { get; init; } = Inputs.Empty;

    /// <summary>The runs from left to right, one to three; each is as long as its wall.</summary>
    /// <exception cref="ArgumentException">Missing, too few, or an entry is missing.</exception>
    public required IReadOnlyList<CounterRun> Runs { get; init => field = Guard.List(value, 1); }

    /// <summary>Thickness of the edge that shows, 5 to 200 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length Thickness { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>The profile of that edge.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public required EdgeProfile Profile { get; init => field = Guard.Defined(value); }

    /// <summary>Radius of an eased edge, 0 up to the thickness; 0 for the other profiles.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length EdgeRadius { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Whether the left end shows an edge instead of standing against a wall.</summary>
    public required bool LeftEndIsOpen { get; init; }

    /// <summary>Whether the right end shows an edge instead of standing against a wall.</summary>
    public required bool RightEndIsOpen { get; init; }

    /// <summary>Height of the backsplash above the top, 0 to 1.5 m; 0 when there is none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length BacksplashHeight { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>
    /// How far the backsplash stands out from the wall, 0 to 0.1 m: that much of the top is below it and not coated, its own top edge is. 0
    /// where it covers nothing, such as tile or a sheet on the wall.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length BacksplashThickness { get => Tape.Length(); init => Tape = Tape.Set(value); }

    /// <summary>Cut-outs in the top, such as for a sink; may be empty.</summary>
    /// <exception cref="ArgumentException">Missing, too few, or an entry is missing.</exception>
    public required IReadOnlyList<RectangularOpening> CutOuts { get; init => field = Guard.List(value, 0); }

    /// <summary>The runs and the profile in one line, in metric units.</summary>
    /// <returns>Text such as <c>2438.4 mm × 647.7 mm + 1828.8 mm × 647.7 mm, Bullnose edge</c>.</returns>
    public override string ToString() => string.Join(" + ", Runs) + ", " + $"{Profile} edge";

    /// <summary>Rules between two lengths; each refusal names the one that cannot be.</summary>
    internal void CheckConsistency()
    {
        if (Runs.Count > 3)
        {
            Guard.Count(Runs.Count, 1, 3, nameof(Runs));
        }

        AtMost(EdgeRadius.Meters, Profile == EdgeProfile.Eased
            ? Thickness.Meters : 0, nameof(EdgeRadius), "the thickness for an eased edge, 0 otherwise");
        double reach = Edge.Reach().Value;
        for (int i = 0; i < Runs.Count; i++)
        {
            CounterRun run = Runs[i];
            AtMost(reach, run.Depth.Meters, nameof(Thickness), "so thin that the profile is no wider than the counter is deep");
            AtMost(Covered + reach, run.Depth.Meters, nameof(BacksplashThickness), "so thin that top is left between it and the edge");
            double front = Front(i);
            if (front < 2 * reach)
            {
                Guard.Rule(false, nameof(Runs), run.Length.Meters, Measure.Length,
                    "long enough to show a front edge beside the runs it meets (" + Measure.Length.Format(front) + " is left of it)");
            }
        }

        double open = RectangularOpening.AreaOf(CutOuts).Value;
        double most = (Gross() - Strip()).Value;
        if (open > most)
        {
            Guard.Rule(false, nameof(CutOuts), open, Measure.Area,
                "at most " + Measure.Area.Format(most) + ", the area of the top before the backsplash");
        }

        if (CutOuts.FirstOrDefault(cutOut => !Fits(cutOut)) is RectangularOpening odd)
        {
            Guard.Rule(false, nameof(CutOuts), odd.Length.Meters, Measure.Length, "a cut-out (" + odd + ") that fits one of the runs");
        }
    }

    internal EdgeShape Edge => new(Profile, Thickness.Meters, EdgeRadius.Meters);

    /// <summary>The top to the outermost line, corners counted once.</summary>
    internal Num Gross(Trace? t = null) => Runs.Total((t, Runs), static (of, run, i) =>
    {
        Num length = of.t.Tape("L_", i, run.Length);
        return (i == 0 ? length : length - of.t.Tape("D_", i - 1, of.Runs[i - 1].Depth)) * of.t.Tape("D_", i, run.Depth);
    });

    /// <summary>Front of a run between the fronts of the runs it meets.</summary>
    internal double Front(int run) =>
        Runs[run].Length.Meters - (run == 0 ? 0 : Runs[run - 1].Depth.Meters) - (run == Runs.Count - 1 ? 0 : Runs[run + 1].Depth.Meters);

    /// <summary>The outermost line of the edge: fronts and open ends.</summary>
    internal Num EdgeLine(Trace? t = null)
    {
        Num line = Runs.Total((t, Tape: this), static (of, _, i) => of.t.Tape("f_", i, Length.FromMeters(of.Tape.Front(i))));
        line = LeftEndIsOpen ? line + t.Tape("D_left", Runs[0].Depth) : line;
        line = RightEndIsOpen ? line + t.Tape("D_right", Runs[Runs.Count - 1].Depth) : line;
        return t.Step("line of the edge", "L_e", Measure.Length, PlaneShapes.Elementary, line);
    }

    internal Num WallLine(Trace? t = null) => t.Step("walls", "L_w", Measure.Length, PlaneShapes.Elementary,
        Runs.Total(t, static (t, run, i) => t.Tape("L_", i, run.Length)));

    /// <summary>Corners of the edge's line that stand out, less those that turn in.</summary>
    internal Num OutwardCorners(Trace? t = null) => t.Given("k", OpenEnds - (Runs.Count - 1), Measure.Number);

    /// <summary>How far a backsplash stands out; 0 where there is none.</summary>
    internal double Covered => BacksplashHeight.Meters == 0 ? 0 : BacksplashThickness.Meters;

    internal Num Deep(Trace? t = null) => t.Given("t_b", Covered, Measure.Length);

    /// <summary>The flat top below the backsplash, corners counted once; the profile of an open end is no part of it.</summary>
    internal Num Strip(Trace? t = null) => (Deep(t) * (WallLine(t) - (Open(t) * Edge.Reach(t)))) - (Turns(t) * Num.Square(Deep(t)));

    internal Num Open(Trace? t = null) => t.Given("e", OpenEnds, Measure.Number);

    internal Num Turns(Trace? t = null) => t.Given("n", Runs.Count, Measure.Number) - 1;

    private int OpenEnds => (LeftEndIsOpen ? 1 : 0) + (RightEndIsOpen ? 1 : 0);

    private bool Fits(RectangularOpening opening) => Runs.Any(run => opening.FitsInto(run.Length.Meters, run.Depth.Meters - Covered));
}

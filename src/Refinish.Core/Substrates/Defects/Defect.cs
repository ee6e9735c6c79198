using System.Collections.Generic;
using Refinish.Fixtures;

namespace Refinish.Substrates;

/// <summary>
/// One thing found wrong with a fixture, with its size. The ready kinds are the sealed records of this namespace; a kind of a caller's own
/// is an <c>OwnDefect</c> of <c>Refinish.Jobs</c>.
/// </summary>
/// <remarks>Sizes are held in SI, so two equal defects are equal whatever unit they were measured in.</remarks>
/// <example><code>
/// Defect[] found = [new Chip(Length.FromMillimeters(20), Length.FromMillimeters(2)), new RustSpot(Length.FromMillimeters(15))];
/// </code></example>
public abstract record Defect
{
    /// <summary>How wide a joint is worked on, in metres (invented).</summary>
    private protected const double JointWidth = 0.01;

    // For a kind whose name and code are data.
    private protected Defect() => (Kind, Name) = (null!, null!);

    // Closed on purpose: what is open about a defect is data of the own one.
    private protected Defect(DefectKind kind, string name)
    {
        Kind = kind;
        Name = name;
    }

    /// <summary>Which kind it is.</summary>
    public DefectKind Kind { get; private protected init; }

    /// <summary>What it is called, in the trade's words.</summary>
    public string Name { get; private protected init; }

    /// <summary>The defect with its sizes as text.</summary>
    /// <param name="system">Metric or US customary.</param>
    /// <returns>Text such as <c>chip 20 mm across, 2 mm deep</c>.</returns>
    public abstract string Describe(DisplayUnits system);

    /// <summary>The defect with its sizes, in metric units.</summary>
    /// <returns>See <see cref="Describe"/>.</returns>
    public sealed override string ToString() => Describe(DisplayUnits.Si);

    /// <summary>Longest extent by which it is told large or small (m); 0 for what has none.</summary>
    internal virtual double Size => 0;

    /// <summary>Part of the surface that it covers (m²); 0 for what is counted or measured along a line.</summary>
    internal virtual double FlatArea => 0;

    /// <summary>Depth that somebody measured (m); the depth of a cut that is still to be made is no finding.</summary>
    internal virtual double? MeasuredDepth => null;

    /// <summary>How many there are of it.</summary>
    internal virtual int Number => 1;

    /// <summary>How many units of its labour standard it counts for: metres, square metres or pieces.</summary>
    internal virtual double Units => Number;

    /// <summary>Whether such a defect cannot be on a known material.</summary>
    internal virtual bool Contradicts(FixtureMaterial material) => false;

    /// <summary>The area that materials by area go on when it is mended (m²); 0 for what takes none.</summary>
    internal virtual double MendedArea(double fixtureArea) => 0;

    /// <summary>What it makes of the fixture by itself; <see langword="null"/> where the rules of the survey say that.</summary>
    internal virtual SurveyRule? OwnRule => null;

    /// <summary>What can hurt because it is there.</summary>
    internal virtual IReadOnlyList<Caution> Brings => [];

    /// <summary>The hollow that filler has to take up; <see langword="null"/> when this is not mended with filler.</summary>
    internal virtual Cavity? CavityUnder(FillerPolicy policy, Trace? t = null) => null;

    /// <summary>What can be a depth of a hollow: below a micrometre there is nothing to fill, and no lift that could be laid.</summary>
    internal static Bounds Depths(double maximum = double.PositiveInfinity) => Bounds.Between(1e-6, maximum, Measure.Length);

    internal static string Mm(double metres, DisplayUnits system) => Measure.Length.Format(metres, system, 4);
}

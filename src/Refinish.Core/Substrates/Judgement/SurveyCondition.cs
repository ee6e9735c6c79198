using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Substrates;

/// <summary>
/// When a rule of a caller's own applies, as data that can be stored: everything that is given has to hold. For "or" make two rules.
/// </summary>
/// <remarks>
/// A year or an age that nobody knows neither holds nor fails: the rule is then told as a condition that cannot be judged, and never
/// forbids the work.
/// </remarks>
/// <example><code>
/// SurveyCondition manyChips = new() { Surfaces = [MaterialSurface.Polymer], Defect = DefectKind.Chip, MoreThan = 6 };
/// </code></example>
public sealed record SurveyCondition
{
    private readonly double? larger;
    private readonly double? deeper;
    private readonly double? area;

    /// <summary>One of these materials, by identifier; any when left out.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<Fixtures.FixtureMaterial> Materials { get; init => field = Guard.List(value); }
    = ValueList<Fixtures.FixtureMaterial>.Empty;

    /// <summary>One of these kinds of surface; any when left out.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public IReadOnlyList<Fixtures.MaterialSurface> Surfaces
    {
        get;
        init => field = new ValueList<Fixtures.MaterialSurface>(Guard.NotNull(value));
    }
    = ValueList<Fixtures.MaterialSurface>.Empty;

    /// <summary>All of these facts of the survey are so; none needs to be when left out.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public IReadOnlyList<SurveyFact> Facts { get; init => field = new ValueList<SurveyFact>(Guard.NotNull(value)); }
    = ValueList<SurveyFact>.Empty;

    /// <summary>All of these are among <see cref="Survey.OwnFacts"/>; none needs to be when left out.</summary>
    /// <exception cref="ArgumentException">An entry is missing or no identity.</exception>
    public IReadOnlyList<string> OwnFacts { get; init => field = Survey.Codes(value, nameof(OwnFacts)); }
    = ValueList<string>.Empty;

    /// <summary>The building was finished before this year, 1500 to 2200; any year when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int? BuiltBefore { get; init => field = value is int year ? Guard.Count(year, 1500, 2200, nameof(BuiltBefore)) : null; }

    /// <summary>The fixture is older than so many years, 0 to 300; any age when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int? OlderThanYears { get; init => field = value is int years ? Guard.Count(years, 0, 300, nameof(OlderThanYears)) : null; }

    /// <summary>A defect of this kind was found, ready or of one's own; none needs to be when left out.</summary>
    public DefectKind? Defect { get; init; }

    /// <summary>More than so many of <see cref="Defect"/>, 0 to 10 000; one is enough when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int? MoreThan { get; init => field = value is int count ? Guard.Count(count, 0, 10_000, nameof(MoreThan)) : null; }

    /// <summary>
    /// <see cref="Defect"/> is longer or wider than this, more than 0 and at most 5 m; for chips, patches, low spots, cracks, rust, burns.
    /// Any size when left out.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length? LargerThan
    {
        get => larger is double metres ? Length.FromMeters(metres) : null;
        init => larger = value is Length size ? Guard.Within(size, Bounds.Positive(Measure.Length, 5), nameof(LargerThan)) : null;
    }

    /// <summary>
    /// <see cref="Defect"/> is deeper than this, more than 0 and at most 50 mm; for chips, patches, cracks, pitting and defects of one's
    /// own. Any depth when left out.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length? DeeperThan
    {
        get => deeper is double metres ? Length.FromMeters(metres) : null;
        init => deeper = value is Length depth ? Guard.Within(depth, Bounds.Positive(Measure.Length, 0.05), nameof(DeeperThan)) : null;
    }

    /// <summary>
    /// <see cref="Defect"/> covers more than this, more than 0 and at most 100 m²; for all ready kinds with an outline. Any area when left
    /// out.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Area? WiderThan
    {
        get => area is double squareMetres ? Area.FromSquareMeters(squareMetres) : null;
        init => area = value is Area wide ? Guard.Within(wide, Bounds.Positive(Measure.Area, 100), nameof(WiderThan)) : null;
    }

    /// <summary>What has to hold, in metric units.</summary>
    /// <returns>Text such as <c>acrylic sheet; older than 25 years</c>.</returns>
    public override string ToString()
    {
        List<string> parts = [];
        void Say(bool given, string words)
        {
            if (given)
            {
                parts.Add(words);
            }
        }

        Say(Materials.Count > 0, string.Join(" or ", Materials));
        Say(Surfaces.Count > 0, string.Join(" or ", Surfaces));
        Say(Facts.Count > 0, string.Join(" and ", Facts));
        Say(OwnFacts.Count > 0, string.Join(" and ", OwnFacts));
        Say(BuiltBefore is not null, "built before " + Figures.Fixed(BuiltBefore ?? 0, 0));
        Say(OlderThanYears is not null, "older than " + Figures.Fixed(OlderThanYears ?? 0, 0) + " years");
        Say(Defect is not null, (MoreThan is int most ? "more than " + Figures.Fixed(most, 0) + " " : string.Empty) + Defect);
        Say(larger is not null, "larger than " + Measure.Length.Format(larger ?? 0));
        Say(deeper is not null, "deeper than " + Measure.Length.Format(deeper ?? 0));
        Say(area is not null, "wider than " + Measure.Area.Format(area ?? 0));
        return string.Join("; ", parts);
    }

    /// <summary>What of it could never hold or says nothing; <see langword="null"/> when all is well.</summary>
    internal string? Contradiction() =>
        Defect is null && (MoreThan is not null || IsMeasured) ? "limits a defect and names none; give it Defect"
        : Defect is DefectKind kind && larger is not null && !kind.HasSize ? "has a LargerThan, and a " + kind + " has no size"
        : Defect is DefectKind deep && deeper is not null && !deep.HasDepth ? "has a DeeperThan, and of a " + deep + " no depth is measured"
        : Defect is DefectKind wide && area is not null && !wide.HasOutline ? "has a WiderThan, and a " + wide + " has no outline"
        : Defect is null && BuiltBefore is null && OlderThanYears is null
            && Materials.Count + Surfaces.Count + Facts.Count + OwnFacts.Count == 0
            ? "says nothing, so that the rule would always apply" : null;

    internal bool IsMeasured => larger is not null || deeper is not null || area is not null;

    internal double? Larger => larger;

    internal double? Deeper => deeper;

    internal double? SquareMetres => area;
}

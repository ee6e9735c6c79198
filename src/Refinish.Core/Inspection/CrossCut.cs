using System;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Inspection;

/// <summary>A cross-cut test: how much of the lattice came off, graded by both common standards.</summary>
/// <remarks>
/// <para>ASTM D3359, method B: 5B nothing, 4B less than 5 %, 3B 5 to 15 %, 2B 15 to 35 %, 1B 35 to 65 %, 0B more than 65 % (read on a
/// university page). ISO 2409: class 0 nothing, 1 up to 5 %, 2 up to 15 %, 3 up to 35 %, 4 up to 65 %, 5 beyond (read on instrument
/// makers' pages). Where a boundary belongs to two ASTM grades, 15, 35 and 65 %, the worse is given for 15 and 35 and the better for
/// 65, as "more than 65 %" says; ISO gives each boundary to the better class, so the two scales part there.</para>
/// <para>The test cuts through the coating: on a witness panel, or where a patch does not matter. Tape type, angle and dwell are the
/// standard's.</para>
/// </remarks>
/// <example><code>
/// CrossCut test = new(Ratio.FromPercent(3), Length.FromMicrometers(80));
/// AdhesionGrade grade = test.Grade;            // Grade4B
/// int iso = test.IsoClass;                     // 1
/// </code></example>
public sealed record CrossCut
{
    private static readonly Source Astm = Source.Published("ASTM D3359, method B", "grades by area removed (second-hand, from a university's page)");
    private static readonly Source Spacing = Source.FromMemory("ASTM D3359 and ISO 2409, cut spacing by film thickness");

    /// <summary>Takes the result on a film whose thickness is not known.</summary>
    /// <param name="removed">Part of the lattice that came off, 0 to 100 %.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public CrossCut(Ratio removed)
        : this(removed, null)
    {
    }

    /// <summary>Takes the result.</summary>
    /// <param name="removed">Part of the lattice that came off, 0 to 100 %.</param>
    /// <param name="dryFilm">Dry film, more than 0 and at most 5 mm, where known: it decides the spacing of the cuts.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public CrossCut(Ratio removed, Length? dryFilm)
    {
        Removed = Guard.Checked(removed, Bounds.Between(0, 1, Measure.Percent));
        DryFilm = dryFilm is Length given
            ? Guard.Checked(given, Bounds.Positive(Measure.Film, 5e-3), nameof(dryFilm)) : null;
    }

    /// <summary>Part of the lattice that came off.</summary>
    public Ratio Removed { get; }

    /// <summary>Dry film; <see langword="null"/> when not known.</summary>
    public Length? DryFilm { get; }

    /// <summary>Grade of ASTM D3359, method B.</summary>
    public AdhesionGrade Grade => Removed.DecimalFractions switch
    {
        0 => AdhesionGrade.Grade5B,
        < 0.05 => AdhesionGrade.Grade4B,
        < 0.15 => AdhesionGrade.Grade3B,
        < 0.35 => AdhesionGrade.Grade2B,
        <= 0.65 => AdhesionGrade.Grade1B,
        _ => AdhesionGrade.Grade0B,
    };

    /// <summary>Class of ISO 2409, 0 the best and 5 the worst.</summary>
    public int IsoClass => Removed.DecimalFractions switch
    {
        0 => 0,
        <= 0.05 => 1,
        <= 0.15 => 2,
        <= 0.35 => 3,
        <= 0.65 => 4,
        _ => 5,
    };

    /// <summary>
    /// Cut spacing of ASTM D3359, method B: 1 mm up to 50 µm, 2 mm up to 125 µm; <see langword="null"/> above, where method A (an X)
    /// takes over, or when the film is not known.
    /// </summary>
    public Length? AstmSpacing => DryFilm?.Meters switch
    {
        null or > 125e-6 => null,
        <= 50e-6 => Length.FromMillimeters(1),
        _ => Length.FromMillimeters(2),
    };

    /// <summary>
    /// Cut spacing of ISO 2409 on a hard substrate: 1 mm up to 60 µm, 2 mm up to 120 µm, 3 mm up to 250 µm; on a soft one 2 mm up to
    /// 120 µm; <see langword="null"/> above or when the film is not known.
    /// </summary>
    /// <param name="softSubstrate">Wood, plaster, plastics.</param>
    /// <returns>The spacing.</returns>
    public Length? IsoSpacing(bool softSubstrate) => DryFilm?.Meters switch
    {
        null or > 250e-6 => null,
        > 120e-6 => Length.FromMillimeters(3),
        > 60e-6 => Length.FromMillimeters(2),
        _ => Length.FromMillimeters(softSubstrate ? 2 : 1),
    };

    /// <summary>Where the spacings come from.</summary>
    public Source SpacingSource { get; } = Spacing;

    /// <summary>The grade against a least grade.</summary>
    /// <param name="least">Least grade wanted.</param>
    /// <returns>The comparison, on the digits of the grades: 5 for 5B.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public LimitComparison Against(AdhesionGrade least) => new(
        "cross-cut adhesion grade, ASTM D3359 B", (int)Grade, (int)Guard.Defined(least), LimitSense.AtLeast, Measure.Number, Astm,
            "find out which layer parted; strip and prepare again");

    /// <summary>The grades in one line.</summary>
    /// <returns>Text such as <c>3 % removed: 4B (ASTM D3359 B), class 1 (ISO 2409)</c>.</returns>
    public override string ToString() =>
        Measure.Percent.Format(Removed.DecimalFractions) + " removed: " + Figures.Significant((int)Grade) + "B (ASTM D3359 B), class "
            + Figures.Significant(IsoClass) + " (ISO 2409)";
}

using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;

namespace Refinish.Substrates;

/// <summary>
/// What was found at one fixture: material, earlier coats, age, lead, defects and the few site facts that can forbid the work.
/// </summary>
/// <remarks>
/// A flag that is left out means "looked at and not found". What nobody can tell has its own value: <see cref="FixtureMaterial.Unknown"/>,
/// <see cref="LeadTest.NotTested"/>, <see cref="AsbestosTest.NotTested"/>, a missing <see cref="YearBuilt"/>, an adhesion that was not
/// tested.
/// </remarks>
/// <example><code>
/// Survey survey = new()
/// {
///     Material = FixtureMaterial.EnamelledCastIron,
///     Defects = [new Chip(Length.FromMillimeters(20), Length.FromMillimeters(1)), new SiliconeResidue(Length.FromMeters(3))],
///     YearBuilt = 1955,
/// };
/// Suitability answer = new Verdict(survey).Suitability;   // SuitableWithConditions
/// </code></example>
public sealed record Survey
{
    /// <summary>What the fixture is made of at its surface, under any old coat; never <see cref="FixtureMaterial.OldCoating"/>.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An old coating.</exception>
    public required FixtureMaterial Material
    {
        get;
        init => field = !Guard.NotNull(value).IsOldCoating
            ? value
            : throw new ArgumentOutOfRangeException(
                nameof(Material),
                value,
                "Material is OldCoating; allowed: what the fixture is made of, or Unknown. "
                    + "PreviouslyRefinished and OldCoatAdhesion tell of an old coat.");
    }

    /// <summary>Everything found wrong with it; empty when nothing was.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public required IReadOnlyList<Defect> Defects { get; init => field = Guard.List(value); }

    /// <summary>
    /// Age of the fixture in years, 0 to 300; <see langword="null"/> when nobody knows. Only rules of a caller's own read it.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int? FixtureAge { get; init => field = value is int years ? Guard.Count(years, 0, 300, nameof(FixtureAge)) : null; }

    /// <summary>
    /// Facts of a caller's own that were found to be so, by codes that rules of their own read; none when left out. One that no rule reads
    /// is told as a condition.
    /// </summary>
    /// <exception cref="ArgumentException">An entry is missing or no identity.</exception>
    public IReadOnlyList<string> OwnFacts { get; init => field = Codes(value, nameof(OwnFacts)); }
    = ValueList<string>.Empty;

    /// <summary>Whether it was refinished before.</summary>
    public bool PreviouslyRefinished { get; init; }

    /// <summary>Worst grade of a tape test on an old coat that does not visibly peel; <see langword="null"/> when not tested.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public AdhesionGrade? OldCoatAdhesion
    {
        get;
        init => field = value is AdhesionGrade grade ? Guard.Defined(grade, nameof(OldCoatAdhesion)) : null;
    }

    /// <summary>
    /// Year in which the building was finished, 1500 to 2200; the earliest that it may be where only that is known; <see langword="null"/>
    /// when nobody knows. Built before 1978 it counts for lead, built in 1980 or before for asbestos.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int? YearBuilt { get; init => field = value is int year ? Guard.Count(year, 1500, 2200, nameof(YearBuilt)) : null; }

    /// <summary>What is known about lead in the surface.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public LeadTest LeadTest { get; init => field = Guard.Defined(value); }

    /// <summary>
    /// Whether lead in enamel, glaze or an old coat is suspected for another reason than the building's age, as in a salvaged tub put into
    /// a new house.
    /// </summary>
    public bool LeadSuspected { get; init; }

    /// <summary>Whether the crew holds the certificate for lead work that local law asks for.</summary>
    public bool CertifiedForLead { get; init; }

    /// <summary>
    /// What is known about asbestos in what holds, backs or carries the fixture: old adhesive, backing board, flooring, pads or coatings
    /// under a steel tub.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public AsbestosTest AsbestosTest { get; init => field = Guard.Defined(value); }

    /// <summary>
    /// Whether asbestos is suspected for another reason than the building's age, as where old board or a salvaged tub was built into a
    /// newer house.
    /// </summary>
    public bool AsbestosSuspected { get; init; }

    /// <summary>Whether those who would disturb asbestos hold the training and licence that local law asks for.</summary>
    public bool CertifiedForAsbestos { get; init; }

    /// <summary>Whether there is no permitted way to strip the old coat here.</summary>
    public bool NoPermittedStrippingRoute { get; init; }

    /// <summary>Cleaning cycles after which a water-break test still failed, 0 to 100.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int FailedCleaningCycles { get; init => field = Guard.Count(value, 0, 100); }

    /// <summary>Whether a drip or leak onto the surface cannot be stopped.</summary>
    public bool LeakCannotBeStopped { get; init; }

    /// <summary>Whether the wall or board behind the surface is wet.</summary>
    public bool SubstrateWet { get; init; }

    /// <summary>Whether board or laminate is swollen or coming apart.</summary>
    public bool SwollenOrDelaminated { get; init; }

    /// <summary>Whether rust or other stains bleed through the surface.</summary>
    public bool StainsBleed { get; init; }

    /// <summary>Whether knives, hot pots or unwrapped food are to go on the finished surface.</summary>
    public bool CuttingOrFoodContactExpected { get; init; }

    /// <summary>Whether there is no way to lead exhaust air outdoors.</summary>
    public bool NoExhaustPath { get; init; }

    /// <summary>Whether an open flame or pilot cannot be shut off.</summary>
    public bool FlameCannotBeShutOff { get; init; }

    /// <summary>Whether people who must not breathe the vapour cannot leave.</summary>
    public bool SensitiveOccupantsCannotLeave { get; init; }

    /// <summary>Whether the customer does not accept the time before water may run.</summary>
    public bool CureTimeRefused { get; init; }

    internal static ValueList<string> Codes(IReadOnlyList<string> codes, string name) =>
        new(Guard.List(codes, name: name).Select(code => Guard.Id(code, name)).Distinct(StringComparer.Ordinal));

    /// <summary>The material and the number of defects.</summary>
    /// <returns>Text such as <c>enamelled cast iron, 2 defects</c>.</returns>
    public override string ToString() => Material + ", " + Figures.Fixed(Defects.Count, 0) + (Defects.Count == 1 ? " defect" : " defects");
}

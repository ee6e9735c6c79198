using System;
using System.Collections.Generic;
using System.Linq;
using System.Runtime.CompilerServices;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// A chemical that is used up while a fixture is prepared: stripper, silicone digester, descaler, degreaser, solvent wipe. It says how much
/// is used, so that it is bought, and what of it evaporates, so that the air of the room knows of it. <see cref="PrepChemicals.Generic"/>
/// is an invented set.
/// </summary>
/// <example><code>
/// PrepChemical wipe = new()
/// {
///     Id = "ketone-wipe", Name = "ketone wipe", For = WorkKind.Tack, Coverage = SpreadingRate.FromSquareMetersPerLiter(40),
///     Density = Density.FromGramsPerMilliliter(0.79), VolatileFraction = Ratio.FromPercent(100),
///     Solvents = [new SolventShare(Solvents.Acetone, Ratio.FromPercent(100))], Source = Source.Invented("an example"),
/// };
/// </code></example>
public sealed record PrepChemical
{
    /// <summary>40 CFR 751 subpart B, as far as it was read.</summary>
    internal static readonly Source NoMethyleneChloride =
        Source.Published(
            "40 CFR 751 subpart B, 89 FR 39254 (8 May 2024)",
            "its definition of paint and coating removal covers a paid refinisher; that no exception covers this use is from memory");

    private static readonly Bounds Volumes = Bounds.NotNegative(Measure.Capacity, 0.01);

    private readonly double perMeterOfJoint;
    private readonly double each;
    private readonly double density;
    private readonly double? volatiles;

    /// <summary>
    /// Identity by which it is found and priced; 1 to 100 characters, no '/', no control characters, no white space at either end.
    /// </summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    /// <exception cref="ArgumentException">Not an identity.</exception>
    public required string Id { get; init => field = Guard.Id(value); }

    /// <summary>What people call it.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>The kind of work that uses it, one that stands before the coats and has hands at it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// Another kind: coats and promoters state what they give off themselves, and a gun is cleaned outdoors.
    /// </exception>
    public required WorkKind For
    {
        get;
        init => field = Guard.Defined(value) != WorkKind.Warm && Array.IndexOf(WorkOrder.BeforeCoats, value) >= 0 ? value
            : throw new ArgumentOutOfRangeException(
                nameof(For),
                value,
                "For is " + value.ToString("G") + "; allowed: the kinds of work that prepare a fixture, from Clear to Mask. "
                + "Coats and promoters state what they give off themselves.");
    }

    /// <summary>Surfaces that it may touch; empty, which is any, unless given.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public IReadOnlyList<FixtureMaterial> Surfaces { get; init => field = Guard.List(value); } = ValueList<FixtureMaterial>.Empty;

    /// <summary>
    /// Area worked per volume, all passes and what stays in cloths included, 0.01 m²/L or more; <see langword="null"/>, no use by area,
    /// when left out.
    /// </summary>
    /// <remarks>The area is the coated one; of a stripper that of the coat that comes off.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Less than 0.01 m²/L.</exception>
    public SpreadingRate? Coverage
    {
        get;
        init
        {
            if (value is SpreadingRate rate)
            {
                Guard.Within(rate.SquareMetersPerCubicMeter, SpreadingRate.OfUse, nameof(Coverage));
            }

            field = value;
        }
    }

    /// <summary>Volume for each metre of joint with silicone residue, 0 to 10 L; none when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Volume PerMeterOfJoint
    {
        get => Volume.FromCubicMeters(perMeterOfJoint);
        init => perMeterOfJoint = Guard.Within(value, Volumes);
    }

    /// <summary>Volume for each fixture on which it is used, 0 to 10 L; none when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Volume Each { get => Volume.FromCubicMeters(each); init => each = Guard.Within(value, Volumes); }

    /// <summary>Density of the liquid or gel, 0.3 to 5 g/mL.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Density Density
    {
        get => Density.FromKilogramsPerCubicMeter(density);
        init => density = Guard.Within(value, Bounds.Between(300, 5000, Measure.Density));
    }

    /// <summary>
    /// Part of its mass that <see cref="Solvents"/> make up, 0 to 100 %: organic solvent, with water only where they name it;
    /// <see langword="null"/> when not stated, and then its vapour cannot be judged.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio? VolatileFraction
    {
        get => volatiles is double fraction ? Ratio.FromDecimalFractions(fraction) : null;
        init => volatiles = value is Ratio fraction
            ? Guard.Within(fraction, Bounds.NotNegative(Measure.Percent, 1), nameof(VolatileFraction))
            : null;
    }

    /// <summary>
    /// The solvents, as shares of that part that add up to 100 %; what is not volatile among them is not given off;
    /// empty for a chemical without solvent, or when not stated.
    /// </summary>
    /// <exception cref="ArgumentException">
    /// An entry is missing, or one is methylene chloride, which has killed bathtub refinishers and may not be used for this work (40 CFR
    /// 751 subpart B).
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">The shares do not add up to 100 % within 0.1 %.</exception>
    public IReadOnlyList<SolventShare> Solvents
    {
        get;
        init => field = Permitted(SolventShare.Blend(value, nameof(Solvents)));
    } = ValueList<SolventShare>.Empty;

    /// <summary>
    /// Time constant with which what is put on dries, 1 s to 30 days; 2 min unless given (invented). A gel dries in hours or days.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan TimeConstant { get; init => field = Guard.Time(value, Evaporation.Constants); } = WipeEmission.AssumedEvaporationTime;

    /// <summary>
    /// How long it works after the last of it is on before it is taken off, 0 to 24 h; zero for one that is taken off as the work goes on;
    /// <see langword="null"/> for one that is left to evaporate, as a wipe is. The next work on the fixture waits for it.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan? Dwell { get; init => field = Guard.Time(value, Bounds.NotNegative(Measure.Hours, 24 * 3600)); }

    /// <summary>What can hurt in using it beside its vapour; none unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<Caution> Cautions { get; init => field = Guard.List(value); } = ValueList<Caution>.Empty;

    /// <summary>Where the figures come from.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>Whether what it gives off is known: no solvent at all, or a fraction and the solvents it is made of.</summary>
    public bool IsVapourStated => volatiles is double fraction && (fraction == 0 || Solvents.Count > 0);

    /// <summary>The name and its use.</summary>
    /// <returns>Text such as <c>stripper for LayOnStripper</c>.</returns>
    public override string ToString() => Name + " for " + For.ToString("G");

    /// <summary>The solvents, unless one of them may not be used for this work.</summary>
    internal static ValueList<SolventShare> Permitted(ValueList<SolventShare> solvents, [CallerMemberName] string name = "") =>
        !solvents.Any(share => share.Solvent.CasNumber == Coatings.Solvents.MethyleneChloride.CasNumber) ? solvents
            : throw new ArgumentException(
                name + " holds methylene chloride. Its vapour has killed at least fourteen bathtub refinishers, "
                + "and its use in this work is to be taken as prohibited: " + NoMethyleneChloride + ". Choose a product without it.",
                name);

    /// <summary>
    /// The list, if each entry has an amount and does not say both that it holds solvents and that nothing of it evaporates.
    /// </summary>
    internal static ValueList<PrepChemical> Checked(ValueList<PrepChemical> list, string name)
    {
        foreach (PrepChemical chemical in list)
        {
            if (chemical.Coverage is null && chemical.each == 0 && chemical.perMeterOfJoint == 0)
            {
                throw new ArgumentException(name + ": '" + chemical.Id + "' has neither Coverage nor Each nor PerMeterOfJoint, so that it would never be used.", name);
            }

            if (chemical.volatiles == 0 && chemical.Solvents.Count > 0)
            {
                throw new ArgumentException(
                    name + ": '" + chemical.Id + "' names Solvents and has a VolatileFraction of 0 %. Leave out the one that is wrong; leave out VolatileFraction when it is not known.", name);
            }
        }

        return list;
    }

    /// <summary>How much of it one fixture takes.</summary>
    /// <param name="area">Area worked, 0 to 10 000 m².</param>
    /// <param name="joint">Length of joints with silicone residue, 0 to 10 km.</param>
    /// <returns>The volume.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public Volume Amount(Area area, Length joint)
    {
        double worked = Guard.Within(area, Bounds.NotNegative(Measure.Area, 1e4));
        double meters = Guard.Within(joint, Bounds.NotNegative(Measure.Distance, 1e4));
        double byArea = Coverage is SpreadingRate rate ? worked / rate.SquareMetersPerCubicMeter : 0;
        return Volume.FromCubicMeters(each + (meters * perMeterOfJoint) + byArea);
    }

    /// <summary>What an amount of it gives off.</summary>
    /// <param name="amount">Volume that is put on, 0 to 10 m³.</param>
    /// <returns>
    /// The solvent in it; <see langword="null"/> when there is none or when that is not stated, see <see cref="IsVapourStated"/>.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range, or more than 100 kg of solvent.</exception>
    public Evaporation? Vapour(Volume amount)
    {
        double volume = Guard.Within(amount, Bounds.NotNegative(Measure.Capacity, 10));
        double mass = volume * density * (volatiles ?? 0);
        return mass > 0 && Solvents.Count > 0
            ? new Evaporation
            {
                Name = Name, Mass = Mass.FromKilograms(mass), Solvents = Solvents, TimeConstant = TimeConstant, TakenOffAfter = Dwell,
            }
            : null;
    }
}

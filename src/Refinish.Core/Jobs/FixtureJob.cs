using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Colours;
using Refinish.Coverage;
using Refinish.Curing;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// One fixture of a job: where it stands, its shape, what the survey found and what is wanted. A fixture whose parts differ in
/// material, old coat, colour or system is entered once for each part, with the zones or the share that belong to it.
/// </summary>
public sealed record FixtureJob
{
    // Invented: of a wall of 40 m² the least is 0.4 cm².
    private static readonly Bounds Shares = Bounds.Between(1e-6, 1, Measure.Percent);

    private readonly double? weight;
    private readonly double? wall;

    /// <summary>Identifier, unique within the job.</summary>
    /// <exception cref="ArgumentException">Empty, longer than 100 characters, or with a slash.</exception>
    public required string Id { get; init => field = Guard.Id(value); }

    /// <summary>Name for job sheets; the identifier unless given.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public string Name { get => field ?? Id; init => field = Guard.Named(value); }

    /// <summary>Identifier of the room it stands in.</summary>
    /// <exception cref="ArgumentException">Empty, longer than 100 characters, or with a slash.</exception>
    public required string Room { get; init => field = Guard.Id(value); }

    /// <summary>The measured fixture.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required IFixture Fixture { get; init => field = Guard.NotNull(value); }

    /// <summary>What the survey found.</summary>
    /// <exception cref="ArgumentException">Two defects of one own code are mended in different ways.</exception>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required Survey Survey
    {
        get;
        init
        {
            if (FixtureMaterial.TryFind(Guard.NotNull(value).Material.Id) is FixtureMaterial ready
                && (ready.Name != value.Material.Name || ready.Surface != value.Material.Surface))
            {
                throw new ArgumentException(
                    "Survey names " + value.Material.Name + " by the identity of " + ready.Name
                        + "; give a material of your own an identity of its own.",
                    nameof(Survey));
            }

            foreach (IGrouping<string, OwnDefect> same in Guard.NotNull(value).Defects.OfType<OwnDefect>().GroupBy(own => own.Code))
            {
                if (same.Any(other => !other.IsMendedAs(same.First())))
                {
                    throw new ArgumentException(
                        "Survey holds two defects with the code " + same.Key
                            + " and another name, work or caution; give them codes of their own.", nameof(Survey));
                }
            }

            field = value;
        }
    }

    /// <summary>The zones that this entry speaks of; all zones unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named kind of zone.</exception>
    public IReadOnlyList<FixtureZoneKind>? Zones
    {
        get;
        init => field = value is null ? null : new ValueList<FixtureZoneKind>(value.Select(kind => Guard.Defined(kind, nameof(Zones))).Distinct());
    }

    /// <summary>Part of those zones that this entry speaks of, 0.0001 to 100 %; all unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio Share
    {
        get => Ratio.FromDecimalFractions(ShareFraction);
        init => ShareFraction = Guard.Within(value, Shares);
    }

    /// <summary>Coating system; the shop's usual one unless given.</summary>
    public CoatingSystem? System { get; init; }

    /// <summary>Gun setting for this fixture; the shop's usual one unless given.</summary>
    public SprayGun? Gun { get; init; }

    /// <summary>Losses for this fixture; the shop's usual ones unless given.</summary>
    public ApplicationLosses? Losses { get; init; }

    /// <summary>Transfer efficiency by zone where it differs from the gun's; none unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing, or a zone is named twice.</exception>
    public IReadOnlyList<ZoneEfficiency> Efficiencies
    {
        get;
        init
        {
            ValueList<ZoneEfficiency> list = Guard.List(value);
            field = list.Select(one => one.Zone).Distinct().Count() == list.Count ? list : throw new ArgumentException("Efficiencies names a zone twice.", nameof(Efficiencies));
        }
    }
    = ValueList<ZoneEfficiency>.Empty;

    /// <summary>Temperature of this fixture's surface where it is colder than the room's, −20 to 60 °C; the room's unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Temperature? Surface
    {
        get => SurfaceKelvins is double kelvins ? Temperature.FromKelvins(kelvins) : null;
        init => SurfaceKelvins = value is Temperature given ? Guard.Within(given, TemperatureShift.Thermometer, nameof(Surface)) : null;
    }

    /// <summary>
    /// Weight of the fixture for warming it, more than 0 and at most 1000 kg; from area, usual wall and density of the material unless
    /// given.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Mass? Weight
    {
        get => weight is double mass ? Mass.FromKilograms(mass) : null;
        init => weight = value is Mass given ? Guard.Within(given, Bounds.Positive(Measure.Weight, 1000), nameof(Weight)) : null;
    }

    /// <summary>Thickness of its wall for warming it, more than 0 and at most 0.5 m; usual for its material unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length? WallThickness
    {
        get => wall is double metres ? Length.FromMeters(metres) : null;
        init => wall = value is Length given ? Guard.Within(given, Bounds.Positive(Measure.Length, 0.5), nameof(WallThickness)) : null;
    }

    /// <summary>Colour before, where it was measured.</summary>
    public CieLab? OldColour { get; init; }

    /// <summary>Colour wanted, where it is known.</summary>
    public CieLab? NewColour { get; init; }

    /// <summary>Extras on this fixture; none unless given.</summary>
    /// <exception cref="ArgumentException">
    /// An entry is missing, or two have one code, or two are slip-resistant floors or drain trims.
    /// </exception>
    public IReadOnlyList<FixtureOption> Options
    {
        get;
        init
        {
            ValueList<FixtureOption> options = Unique.Ids(Guard.List(value), option => option.Code, nameof(Options));
            foreach (FixtureOptionKind kind in new[] { FixtureOptionKind.SlipResistantFloor, FixtureOptionKind.DrainTrim })
            {
                if (options.Count(option => option.Kind == kind) > 1)
                {
                    throw new ArgumentException("Options orders " + (kind == FixtureOptionKind.DrainTrim ? "new drain trim" : "a slip-resistant floor") + " twice; one fixture takes it once.", nameof(Options));
                }
            }

            field = options;
        }
    }
    = ValueList<FixtureOption>.Empty;

    /// <summary>Name and material.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ", " + Survey.Material.Name;

    internal double ShareFraction { get; private init; } = 1;

    /// <summary>Factor on the area, where a range of the job is drawn.</summary>
    internal double AreaFactor { get; init; } = 1;

    internal double? SurfaceKelvins { get; private init; }
}

using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Films;
using Refinish.Scheduling;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// Everything that is known and chosen for one bathroom, of which <see cref="Plan"/> makes one plan. All fixtures get the same coating
/// system; a fixture that needs another is a job of its own.
/// </summary>
/// <remarks>See <c>samples/BathroomJob</c> for a whole invented job and <c>samples/TenLines</c> for the smallest calculation.</remarks>
public sealed record BathroomJob
{
    private readonly double residue;
    private readonly double difficulty = 1;

    /// <summary>What the job is called.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name
    {
        get;
        init => field = Guard.Named(value, nameof(Name));
    }

    /// <summary>The fixtures, at least one, with unique names.</summary>
    /// <exception cref="ArgumentException">None is given, an entry is missing, or two have one name.</exception>
    public required IReadOnlyList<FixtureJob> Fixtures
    {
        get;
        init
        {
            ValueList<FixtureJob> fixtures = Guard.List(value, nameof(Fixtures), 1);
            if (fixtures.Select(fixture => fixture.Name).Distinct(StringComparer.Ordinal).Count() != fixtures.Count)
            {
                throw new ArgumentException("Fixtures holds two fixtures of one name; each needs its own.", nameof(Fixtures));
            }

            field = fixtures;
        }
    }

    /// <summary>The coating system.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required CoatingSystem System
    {
        get;
        init => field = Guard.NotNull(value, nameof(System));
    }

    /// <summary>The spray gun as it is set.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required SprayGun Gun
    {
        get;
        init => field = Guard.NotNull(value, nameof(Gun));
    }

    /// <summary>Part of the poured mix that stays in cup, hose and filter, 0 to 50 %; commonly 5 to 15 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio Residue
    {
        get => Ratio.FromDecimalFractions(residue);
        init => residue = Guard.Within(value, Bounds.NotNegative(Measure.Percent, 0.5), nameof(Residue));
    }

    /// <summary>How mixing is done.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required BatchRules Batches
    {
        get;
        init => field = Guard.NotNull(value, nameof(Batches));
    }

    /// <summary>The room on the day.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required SiteConditions Site
    {
        get;
        init => field = Guard.NotNull(value, nameof(Site));
    }

    /// <summary>Work starts not before this instant, in the years 1900 to 2200; its offset is the clock of the working hours.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside those years.</exception>
    public required DateTimeOffset Start
    {
        get;
        init
        {
            Guard.Count(value.Year, 1900, 2200, nameof(Start));
            field = value;
        }
    }

    /// <summary>Weekdays, days off, breaks and the clock of the site; <see langword="null"/> for <see cref="Hours"/> on every day at the offset of <see cref="Start"/>.</summary>
    /// <remarks>A clock with changes keeps elapsed times whole over the night in which it is put forward or back.</remarks>
    public WorkCalendar? Calendar { get; init; }

    /// <summary>Hours in which someone is on site; their length is also how long a person is in the room on one day.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required WorkingHours Hours
    {
        get;
        init => field = Guard.NotNull(value, nameof(Hours));
    }

    /// <summary>The shop's rates and prices.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required PriceBook Prices
    {
        get;
        init => field = Guard.NotNull(value, nameof(Prices));
    }

    /// <summary>The warranty that goes with the job.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required WarrantyTerms Warranty
    {
        get;
        init => field = Guard.NotNull(value, nameof(Warranty));
    }

    /// <summary>What replacing would take; <see langword="null"/> when it is not to be compared.</summary>
    public ReplacementOffer? Replacement { get; init; }

    /// <summary>Labour standards, found by the codes of <see cref="LabourStandards"/>; the generic, invented ones unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<LabourStandard> Labour
    {
        get;
        init => field = Guard.List(value, nameof(Labour));
    }
    = LabourStandards.Generic;

    /// <summary>Factor on all labour at the site for an occupied home, stairs or no window, 0.5 to 3; 1 unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double Difficulty
    {
        get => difficulty;
        init => difficulty = Guard.Within(value, Bounds.Between(0.5, 3, Measure.Number), nameof(Difficulty));
    }

    /// <summary>Extras that the customer chose, by the codes of the price book.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<OptionOrder> Options
    {
        get;
        init => field = Guard.List(value, nameof(Options));
    }
    = ValueList<OptionOrder>.Empty;

    /// <summary>What defects take beside filler, such as spot primer and stripper; nothing when left out. <see cref="Estimating.DefectMaterials.Generic"/> is an invented start.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<DefectMaterial> DefectMaterials
    {
        get;
        init => field = Guard.List(value, nameof(DefectMaterials));
    }
    = ValueList<DefectMaterial>.Empty;

    /// <summary>Thresholds of the survey; the generic, invented ones unless given.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public SurveyPolicy SurveyPolicy
    {
        get;
        init => field = Guard.NotNull(value, nameof(SurveyPolicy));
    }
    = SurveyPolicy.Generic;

    /// <summary>Filler and how it is used; a generic epoxy filler unless given.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public FillerPolicy Filler
    {
        get;
        init => field = Guard.NotNull(value, nameof(Filler));
    }
    = FillerPolicy.Generic with { Product = FillerProduct.GenericEpoxy };

    /// <summary>How long new grout has to dry before it is etched, abraded or coated, 0 to 14 days; 24 h unless given (from memory, unverified: the grout's data sheet decides).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan GroutWait
    {
        get;
        init
        {
            Guard.Within(value, Bounds.NotNegative(Measure.Hours, 14 * 86400), nameof(GroutWait));
            field = value;
        }
    }
    = TimeSpan.FromHours(24);

    /// <summary>How long new caulk has to stand before water, 0 to 14 days; 24 h unless given (from memory, unverified: the sealant's data sheet decides).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan CaulkWait
    {
        get;
        init
        {
            Guard.Within(value, Bounds.NotNegative(Measure.Hours, 14 * 86400), nameof(CaulkWait));
            field = value;
        }
    }
    = TimeSpan.FromHours(24);

    /// <summary>How long drain trim set in sealant has to stand before water, 0 to 14 days; as long as <see cref="CaulkWait"/> when left out.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan? DrainTrimWait
    {
        get;
        init
        {
            if (value is TimeSpan wait)
            {
                Guard.Within(wait, Bounds.NotNegative(Measure.Hours, 14 * 86400), nameof(DrainTrimWait));
            }

            field = value;
        }
    }

    /// <summary>Makes the plan.</summary>
    /// <returns>The plan; what stands in the way of the job is among its <see cref="BathroomPlan.Objections"/>.</returns>
    public BathroomPlan Plan() => new(this);

    /// <summary>Name and number of fixtures.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ", " + Figures.Fixed(Fixtures.Count, 0) + " fixtures";
}

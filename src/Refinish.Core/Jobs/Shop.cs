using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Films;
using Refinish.Scheduling;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// What a refinishing shop brings to every job: people, hours, prices, gun, cups, policies and limits. It changes about once a year;
/// <see cref="Generic"/> is an invented shop to start from with a <c>with</c> expression.
/// </summary>
/// <example><code>
/// Shop shop = Shop.Generic with { Name = "Ferry Street Refinishing (invented)", Crew = [new Worker { Id = "Ada", Wage = 30m }, new Worker { Id = "Ben" }] };
/// int people = shop.Crew.Count;   // 2
/// </code></example>
public sealed record Shop
{
    private static readonly Bounds HalfDays = Bounds.Positive(Measure.Hours, 12 * 3600);
    private static readonly Bounds Waits = Bounds.NotNegative(Measure.Hours, 14 * 86400);

    private readonly double? airborneFraction;
    private readonly double flashOfLanded = SolventEmission.AssumedFlashOfLanded.DecimalFractions;

    /// <summary>
    /// An invented shop of two people with generic products, hours and prices in US dollars; every figure is invented unless its own source
    /// says otherwise.
    /// </summary>
    public static Shop Generic { get; } = GenericShop.Make();

    /// <summary>Name of the shop.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>The crew, 1 to 20 people with unique identifiers. Work is dealt out by number, so put whoever sprays first.</summary>
    /// <exception cref="ArgumentException">Nobody, or two people of one identifier.</exception>
    /// <exception cref="ArgumentOutOfRangeException">More than 20.</exception>
    public required IReadOnlyList<Worker> Crew
    {
        get;
        init
        {
            ValueList<Worker> crew = Guard.List(value, 1);
            Guard.Count(crew.Count, 1, 20, nameof(Crew));
            field = Unique.Ids(crew, worker => worker.Id, nameof(Crew));
        }
    }

    /// <summary>Working hours by weekday, days off, and the clock on the wall of the site.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required WorkCalendar Calendar { get; init => field = Guard.NotNull(value); }

    /// <summary>Rates and prices.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required PriceBook Prices { get; init => field = Guard.NotNull(value); }

    /// <summary>
    /// The most that may be asked for before the work has begun, where the shop states a limit; <see langword="null"/>, none stated, unless
    /// given. Beyond it a plan objects.
    /// </summary>
    public DepositLimit? DepositLimit { get; init; }

    /// <summary>The warranty that goes with every fixture.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required WarrantyTerms Warranty { get; init => field = Guard.NotNull(value); }

    /// <summary>Coating system of fixtures that name none of their own.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required CoatingSystem System { get; init => field = Guard.NotNull(value); }

    /// <summary>The spray gun as it is usually set.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required SprayGun Gun { get; init => field = Guard.NotNull(value); }

    /// <summary>
    /// What is lost between cup and surface apart from the gun's own transfer efficiency; an invented start unless given.
    /// </summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public ApplicationLosses Losses { get; init => field = Guard.NotNull(value); } = ApplicationLosses.Generic;

    /// <summary>Cups and mixing; an invented start unless given.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public CupRules Cups { get; init => field = Guard.NotNull(value); } = CupRules.Generic;

    /// <summary>Number of spray guns on site, 1 to 20; 1 unless given. Each coat takes one while it is sprayed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int Guns { get; init => field = Guard.Count(value, 1, 20); } = 1;

    /// <summary>
    /// Labour standards, one for each kind of work and of defect; the generic, invented ones unless given, and
    /// <see cref="LabourStandards.GenericWith"/> puts some of your own in their place.
    /// </summary>
    /// <exception cref="ArgumentException">
    /// An entry is missing or names neither work nor defect, or two have one code or are for the same work.
    /// </exception>
    public IReadOnlyList<LabourStandard> Labour { get; init => field = LabourStandards.Distinct(Guard.List(value), nameof(Labour)); }
    = LabourStandards.Generic;

    /// <summary>
    /// Chemicals of the preparation: stripper, silicone remover, cleaners, wipes. All that are for a kind of work are used in it, on the
    /// surfaces that each allows; the generic, invented ones unless given.
    /// </summary>
    /// <exception cref="ArgumentException">
    /// An entry is missing, two have one identifier, or one contradicts itself: it has no amount of any kind, or names solvents and has no
    /// volatile part.
    /// </exception>
    public IReadOnlyList<PrepChemical> Chemicals
    {
        get;
        init => field = Unique.Ids(PrepChemical.Checked(Guard.List(value), nameof(Chemicals)), chemical => chemical.Id, nameof(Chemicals));
    }
    = PrepChemicals.Generic;

    /// <summary>
    /// What defects take beside filler and chemicals, such as spot primer and grout; the generic, invented list unless given.
    /// </summary>
    /// <exception cref="ArgumentException">
    /// An entry is missing, or one for an own defect names a kind of work or a rate by area.
    /// </exception>
    public IReadOnlyList<DefectMaterial> DefectMaterials
    {
        get;
        init
        {
            ValueList<DefectMaterial> list = Guard.List(value);
            field = list.FirstOrDefault(material => material.Contradiction() is not null) is DefectMaterial odd
                ? throw new ArgumentException("DefectMaterials: " + odd.Item + " " + odd.Contradiction() + ".", nameof(DefectMaterials))
                : list;
        }
    }
    = Estimating.DefectMaterials.Generic;

    /// <summary>Thresholds of the survey; generic and invented unless given.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public SurveyPolicy Survey { get; init => field = Guard.NotNull(value); } = SurveyPolicy.Generic;

    /// <summary>Filler and how it is used; a generic epoxy filler unless given.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public FillerPolicy Filler { get; init => field = Guard.NotNull(value); }
    = FillerPolicy.Generic with { Product = FillerProduct.GenericEpoxy };

    /// <summary>Which hours of a visit are paid; time on site unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named rule.</exception>
    public PaidTimeRule Paid { get; init => field = Guard.Defined(value); }

    /// <summary>
    /// Length of a half-day for <see cref="PaidTimeRule.HalfDays"/>, more than 0 and at most 12 h; 4 h unless given (invented).
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan HalfDay { get; init => field = Guard.Time(value, HalfDays); } = TimeSpan.FromHours(4);

    /// <summary>
    /// Which paid hours of a person's day and week cost more than the wage; <see langword="null"/>, none, unless given. The premium is
    /// burdened as wages are. Only the hours of one job are known here: whoever works elsewhere in the same week may earn more.
    /// </summary>
    /// <exception cref="ArgumentException">A rule without any step.</exception>
    public OvertimeRule? Overtime
    {
        get;
        init => field = value?.IsEmpty == true
            ? throw new ArgumentException(
                "Overtime has neither a daily nor a weekly step; leave it out when no overtime is paid.", nameof(Overtime))
            : value;
    }

    /// <summary>
    /// Whether a second person stands by outside the room, paid, while a coat is sprayed (from the opening of the cans until the sprayer is
    /// out), an old coat is stripped, a promoter is wiped on or other solvent is at work that could bring the closed room to a tenth of its
    /// lower flammable limit; <see langword="true"/> unless given.
    /// </summary>
    /// <remarks>
    /// Deaths in this trade had in common that somebody worked alone in a small bathroom (OSHA/NIOSH hazard alert, January 2013).
    /// </remarks>
    public bool StandsBy { get; init; } = true;

    /// <summary>Fewest visits first, or the earliest end first.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named preference.</exception>
    public SchedulePreference Prefers { get; init => field = Guard.Defined(value); }

    /// <summary>How far the schedule is searched; a quick search unless given.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public SearchEffort Effort { get; init => field = Guard.NotNull(value); } = SearchEffort.Quick;

    /// <summary>
    /// How long new grout dries before it is etched, abraded or coated, 0 to 14 days; 24 h unless given (from memory, unverified: the
    /// grout's data sheet decides).
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan GroutWait { get; init => field = Guard.Time(value, Waits); } = TimeSpan.FromHours(24);

    /// <summary>
    /// How long new caulk stands before water, 0 to 14 days; 24 h unless given (from memory, unverified: the sealant's data sheet decides).
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan CaulkWait { get; init => field = Guard.Time(value, Waits); } = TimeSpan.FromHours(24);

    /// <summary>
    /// How long drain trim set in sealant stands before water, 0 to 14 days; 24 h unless given (from memory, unverified: the sealant's data
    /// sheet decides).
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan DrainTrimWait { get; init => field = Guard.Time(value, Waits); } = TimeSpan.FromHours(24);

    /// <summary>
    /// How long spot primer on bare metal dries before it is filled or coated, 0 to 14 days; 30 min unless given (invented: its data sheet
    /// decides).
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan SpotPrimerWait { get; init => field = Guard.Time(value, Waits); } = TimeSpan.FromMinutes(30);

    /// <summary>
    /// How long an abraded or etched surface may wait for its promoter or first coat, 0 to 14 days; <see langword="null"/>, unless given,
    /// for any time, with a wipe and a new water-break test after a night.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan? LongestAfterKey { get; init => field = Guard.Time(value, Waits); }

    /// <summary>
    /// How long after the last stroke the gun may wait to be cleaned, 0 to 14 days; 30 min unless given (common practice, no source: before
    /// the mix sets).
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan GunCleaningWithin { get; init => field = Guard.Time(value, Waits); } = TimeSpan.FromMinutes(30);

    /// <summary>
    /// The limits that the shop's plans are held against: exposure, flammability, volatile organic compounds, slip, noise;
    /// <see cref="LimitSets.Default"/> unless given. Comparisons say whose they are. A product beyond a VOC limit of the set, and vapour
    /// beyond its flammable share, stand in the way of a plan.
    /// </summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The design line of flammability is above its limit.</exception>
    public LimitSet Limits { get; init => field = LimitSet.Checked(value, nameof(Limits)); } = LimitSets.Default;

    /// <summary>
    /// How loud kinds of work are at the ear, one for each kind; levels of like tools, second-hand, unless given. Loud work without a level
    /// "cannot be judged".
    /// </summary>
    /// <exception cref="ArgumentException">An entry is missing, or two are for one kind of work.</exception>
    public IReadOnlyList<WorkNoise> Noise
    {
        get;
        init => field = Unique.Ids(Guard.List(value), noise => noise.Work.ToString("G"), nameof(Noise));
    }
    = WorkNoises.Generic;

    /// <summary>
    /// Part of the overspray that stays in the air, more than 0 and at most 100 %; <see langword="null"/> means that mist "cannot be
    /// judged". Nobody has measured it in general; 5 to 30 % is a guess.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio? AirborneFraction
    {
        get => airborneFraction is double fraction ? Ratio.FromDecimalFractions(fraction) : null;
        init => airborneFraction = value is Ratio fraction ? Guard.Within(fraction, Bounds.Positive(Measure.Percent, 1), nameof(AirborneFraction)) : null;
    }

    /// <summary>Time constant with which a wet film gives off its solvent, 1 s to 30 days; 15 min unless given (invented).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan FilmTimeConstant { get; init => field = Guard.Time(value, Evaporation.Constants); }
        = SolventEmission.AssumedFilmTimeConstant;

    /// <summary>
    /// Part of the solvent of what lands that is gone by then or at once after, in flight and while the wet film spreads, 0 to 100 %; 25 %
    /// unless given (from memory: handbooks of finishing give 10 to 40 % for air spray). What misses the fixture flashes altogether.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio FlashOfLanded
    {
        get => Ratio.FromDecimalFractions(flashOfLanded);
        init => flashOfLanded = Guard.Within(value, Bounds.NotNegative(Measure.Percent, 1));
    }

    /// <summary>
    /// Largest colour difference from the colour wanted at which the old colour counts as hidden, CIEDE2000, 0.05 to 20; 1 unless given
    /// (invented).
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double HidingTolerance { get; init => field = Guard.Within(value, Bounds.Between(0.05, 20, Measure.Number)); } = 1;

    /// <summary>Name and number of people.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ", " + Figures.Fixed(Crew.Count, 0) + (Crew.Count == 1 ? " person" : " people");
}

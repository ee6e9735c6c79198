using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Climate;
using Refinish.Colours;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// A sprayed or wiped product as its data sheet describes it. Film, mixing, cure and vapour calculations all read from here.
/// </summary>
/// <remarks>
/// Volumes are taken as additive on mixing. Values come from the caller's data sheet or, marked as generic and invented, from
/// <see cref="GenericCatalogue"/>.
/// </remarks>
public sealed partial record CoatingProduct
{
    internal static readonly Bounds Scatterings = Bounds.Between(1, 1e8, Measure.PerFilm);

    // Invented: below it a film of 10 µm would take 10 mm of wet coat.
    private const double LeastSolids = 1e-3;

    private static readonly Bounds Films = Bounds.NotNegative(Measure.Film, 5e-3);

    private readonly double volumeSolids;
    private readonly double maximumReducer;
    private readonly double minimumDryFilm;
    private readonly double maximumDryFilm;
    private readonly double isocyanateFraction;
    private readonly double minimumReducer;
    private readonly double? ratioTolerance;
    private readonly double? scattering;

    /// <summary>
    /// Identity by which it is found and joined; 1 to 100 characters, no '/', no control characters, no white space at either end.
    /// </summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    /// <exception cref="ArgumentException">Not an identity.</exception>
    public required string Id { get; init => field = Guard.Id(value); }

    /// <summary>Generic name, such as "two-part epoxy primer".</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Name { get; init => field = Guard.Named(value); }

    /// <summary>What it is for.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public required CoatingRole Role { get; init => field = Guard.Defined(value); }

    /// <summary>The cans that are mixed, in the order of pouring, A first; one to ten, and one alone for a product in one part.</summary>
    /// <exception cref="ArgumentException">The list is empty, an entry is missing, or two cans share an identity.</exception>
    /// <exception cref="ArgumentOutOfRangeException">More than ten.</exception>
    public required IReadOnlyList<MixPart> Parts
    {
        get;
        init
        {
            ValueList<MixPart> parts = Guard.List(value, 1);
            Guard.Count(parts.Count, 1, 10, nameof(Parts));
            field = Unique.Ids(parts, part => part.Component.Id, nameof(Parts));
        }
    }

    /// <summary>The reducer that goes with it; <see langword="null"/> when it must not be reduced.</summary>
    public required CoatingComponent? Reducer { get; init; }

    /// <summary>Volume solids of the mixed, unreduced product, 0.1 to 100 %; or 0, only for a wipe that leaves no film.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio VolumeSolids
    {
        get => Ratio.FromDecimalFractions(volumeSolids);
        init
        {
            volumeSolids = Guard.Within(value, Bounds.NotNegative(Measure.Percent, 1));
            Guard.Rule(volumeSolids is 0 or >= LeastSolids, nameof(VolumeSolids), volumeSolids, Measure.Percent, "0 %, or at least ",
                LeastSolids);
        }
    }

    /// <summary>Most reducer per volume of mixed product, 0 to 100 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio MaximumReducer
    {
        get => Ratio.FromDecimalFractions(maximumReducer);
        init => maximumReducer = Guard.Within(value, Bounds.NotNegative(Measure.Percent, 1));
    }

    /// <summary>Least dry film of one coat, 0 to 5 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length MinimumDryFilm { get => Length.FromMeters(minimumDryFilm); init => minimumDryFilm = Guard.Within(value, Films); }

    /// <summary>Most dry film of one coat, 0 to 5 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length MaximumDryFilm { get => Length.FromMeters(maximumDryFilm); init => maximumDryFilm = Guard.Within(value, Films); }

    /// <summary>
    /// What evaporates beside water, exempt compounds among it, as shares of that mass that add up to 100 %; empty when nothing but water
    /// evaporates, or nothing at all.
    /// </summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The shares do not add up to 100 % within 0.1 %.</exception>
    public required IReadOnlyList<SolventShare> Solvents { get; init => field = SolventShare.WithoutWater(value, nameof(Solvents)); }

    /// <summary>Polyisocyanate in the mixed product, by mass; 0 when there is none.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 100 %.</exception>
    public required Ratio IsocyanateFraction
    {
        get => Ratio.FromDecimalFractions(isocyanateFraction);
        init => isocyanateFraction = Guard.Within(value, Bounds.NotNegative(Measure.Percent, 1));
    }

    /// <summary>Times at the reference temperature.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The times contradict each other.</exception>
    public required CureTimes Cure
    {
        get;
        init
        {
            Guard.NotNull(value).CheckOrder();
            field = value;
        }
    }

    /// <summary>Air and surface conditions for application.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A lowest value is above the highest.</exception>
    public required SprayLimits SprayLimits
    {
        get;
        init
        {
            Guard.NotNull(value).CheckOrder();
            field = value;
        }
    }

    /// <summary>The materials it may go on directly; empty when it only goes over another coat.</summary>
    public required IReadOnlyList<FixtureMaterial> Materials { get; init => field = Guard.List(value); }

    /// <summary>The sizes in which mixed product can be bought (all parts together), each as mixed volume.</summary>
    public required IReadOnlyList<Volume> KitSizes
    {
        get;
        init
        {
            // Kept in one unit, because the units library compares by unit as well as by size.
            Bounds sizes = Bounds.Positive(Measure.Capacity, 1);
            field = new ValueList<Volume>(Guard.List(value, 1)
                .Select(size => Volume.FromCubicMeters(Guard.Within(size, sizes, nameof(KitSizes)))));
        }
    }

    /// <summary>
    /// How far the ratio of one part to another may be off, more than 0 and at most 50 %; <see langword="null"/> when the data sheet does
    /// not say, and then an error cannot be judged.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio? RatioTolerance
    {
        get => ratioTolerance is double tolerance ? Ratio.FromDecimalFractions(tolerance) : null;
        init => ratioTolerance = value is Ratio given ? Guard.Within(given, Bounds.Positive(Measure.Percent, 0.5), nameof(RatioTolerance)) : null;
    }

    /// <summary>Least reducer per volume of mixed product, 0 to 100 %; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio MinimumReducer
    {
        get => Ratio.FromDecimalFractions(minimumReducer);
        init => minimumReducer = Guard.Within(value, Bounds.NotNegative(Measure.Percent, 1));
    }

    /// <summary>
    /// What it may go over, by role; empty when the data sheet does not say, and then only the order of roles is checked.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public IReadOnlyList<CoatingRole> GoesOver
    {
        get;
        init => field = new ValueList<CoatingRole>(Guard.NotNull(value).Select(role => Guard.Defined(role, nameof(GoesOver))));
    }
    = ValueList<CoatingRole>.Empty;

    /// <summary>
    /// The times as tabulated at several temperatures; <see langword="null"/> when the data sheet gives one temperature only.
    /// </summary>
    public CureTable? CureTable { get; init; }

    /// <summary>
    /// How strongly the dry film scatters light, from 10⁻⁶ to 100 per µm; <see langword="null"/> when nobody measured it, and then hiding
    /// cannot be judged.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public ReciprocalLength? Scattering
    {
        get => scattering is double value ? ReciprocalLength.FromInverseMeters(value) : null;
        init => scattering = value is ReciprocalLength given ? Guard.Within(given.InverseMeters, Scatterings, nameof(Scattering)) : null;
    }

    /// <summary>
    /// Colour of the film where it hides fully, as of a primer; <see langword="null"/> when not known, or when it is chosen for each job.
    /// </summary>
    public CieLab? Colour { get; init; }

    /// <summary>
    /// How the wet film flows before it sets; <see langword="null"/> when not known, and then sag and levelling cannot be judged.
    /// </summary>
    public FlowFigures? Flow { get; init; }

    /// <summary>Where the figures come from.</summary>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>Liquid unless given; a powder is objected to by every system that holds it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public CoatingForm Form { get; init => field = Guard.Defined(value); }

    /// <summary>What can hurt with this product beyond what its parts, solvents and isocyanate bring; none unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<Caution> Cautions { get; init => field = Guard.List(value); }
    = ValueList<Caution>.Empty;

    /// <summary>What every coat of it needs once it is on, in order, such as a pass of a lamp; none unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing, or two share an identity.</exception>
    public IReadOnlyList<CoatOperation> Operations
    {
        get;
        init => field = Unique.Ids(Guard.List(value), operation => operation.Id, nameof(Operations));
    }
    = ValueList<CoatOperation>.Empty;

    /// <summary>
    /// The times that stand nearest to a temperature: interpolated within <see cref="CureTable"/>, its nearest row outside,
    /// <see cref="Cure"/> without a table.
    /// </summary>
    /// <param name="temperature">The temperature asked for, −20 to 60 °C.</param>
    /// <returns>Times with their own reference temperature and limits, to be shifted from there.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public CureTimes CureNear(Temperature temperature) => CureTable?.Near(temperature) ?? Cure;

    /// <summary>The name.</summary>
    /// <returns><see cref="Name"/>.</returns>
    public override string ToString() => Name;
}

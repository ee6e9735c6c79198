using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Colours;
using Refinish.Coverage;
using Refinish.Estimating;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// What is done to one fixture, from taking off the hardware to the last inspection, by the rules of the trade: from the verdict, from what
/// will really lie under the new coat, from the coating system and from the options.
/// </summary>
/// <remarks>
/// A kept old coat is an organic surface: it is abraded, never etched, and gets only a promoter that the system states for it. Where the
/// survey demands that the old coat comes off, all of it is stripped, and the bare material is what lies under the new coat.
/// </remarks>
/// <example><code>
/// FixtureJob top = new()
/// {
///     Id = "counter", Room = "kitchen",
///     Fixture = new FlatPanel(new FlatPanelMeasurements
///     {
///         Length = Length.FromMeters(2), Width = Length.FromMeters(0.6), ExposedEdge = Length.Zero, EdgeHeight = Length.Zero,
///         BacksplashLength = Length.Zero, BacksplashHeight = Length.Zero, BacksplashThickness = Length.Zero, CutOuts = [],
///     }),
///     Survey = new Survey { Material = FixtureMaterial.Laminate, Defects = [], YearBuilt = 1995 },
/// };
/// Procedure procedure = new(top, Shop.Generic);
/// string first = procedure.Operations[0].Id;   // "counter/clear"
/// </code></example>
public sealed class Procedure
{
    private static readonly Source Share = Source.Supplied("the zones and the share of the fixture");

    /// <summary>Makes the procedure.</summary>
    /// <param name="fixture">The fixture.</param>
    /// <param name="shop">The shop with its usual system, policies and labour standards.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The fixture has no coated area among the zones it names, or more than 1000 m².
    /// </exception>
    public Procedure(FixtureJob fixture, Shop shop)
    {
        Fixture = Guard.NotNull(fixture);
        Shop = Guard.NotNull(shop);
        System = fixture.System ?? shop.System;
        Gun = fixture.Gun ?? shop.Gun;
        Losses = fixture.Losses ?? shop.Losses;
        FillerPolicy filler = shop.Filler with { TotalDryFilm = System.TotalDryFilm };
        SurveyPolicy policy = shop.Survey with { Filler = filler };
        Verdict = new Verdict(fixture.Survey, policy);
        OldCoat = new OldCoatDecision(fixture.Survey, policy);
        Surface = OldCoat.IsKept ? FixtureMaterial.OldCoating : fixture.Survey.Material;
        SystemObjections = System.ObjectionsFor(Surface);
        Promoter = System.PromoterFor(Surface);
        Surfaces = new ValueList<CoatedSurface>(SurfacesOf(fixture));
        SquareMeters = Surfaces.Sum(surface => surface.Area.SquareMeters);
        FixtureZoneKind[] coated = [.. fixture.Fixture.Zones.Select(zone => zone.Kind).Where(kind => fixture.Zones?.Contains(kind) != false)];
        CoatsFloor = coated.Contains(FixtureZoneKind.Floor) || coated.Contains(FixtureZoneKind.Seat);
        LooksDown = CoatedSlopes.AreOverhead(fixture);
        IsOverhead = LooksDown || coated.Contains(FixtureZoneKind.Tile);
        Defects = new ValueList<Defect>(OldCoat.Effective(fixture.Survey, CoatedArea));
        Filler = new FillerEstimate(Defects, filler);
        ColourChange = fixture.OldColour is CieLab old && fixture.NewColour is CieLab wanted ? new ColourDifference(old, wanted) : null;
        Hiding = ColourJudgement.Of(this);
        CoatList coats = new(this);
        coats.Make();
        Coats = new ValueList<PlannedCoat>(coats.Coats);
        SlipFloor = coats.SlipFloor;
        Refusals = new ValueList<string>([.. coats.Refusals, .. LeftBare(fixture)]);
        ProcedureLabour labour = new(this);
        ProcedureRules rules = new(this, policy, coats, labour);
        rules.Make();
        Operations = new ValueList<Operation>(rules.Operations);
        Mendings = new ValueList<Operation>(rules.Mendings);
        Common = rules.Common;
        LabourGaps = new ValueList<PlanObjection>(labour.Gaps);
    }

    /// <summary>The fixture as it was measured and surveyed.</summary>
    public FixtureJob Fixture { get; }

    /// <summary>The shop that does the work.</summary>
    public Shop Shop { get; }

    /// <summary>The coating system it gets.</summary>
    public CoatingSystem System { get; }

    /// <summary>The gun as it is set for this fixture.</summary>
    public SprayGun Gun { get; }

    /// <summary>The losses for this fixture.</summary>
    public ApplicationLosses Losses { get; }

    /// <summary>Whether it may be refinished, with reasons.</summary>
    public Verdict Verdict { get; }

    /// <summary>Why the system may not go on what lies under it; empty when nothing was found against it.</summary>
    public IReadOnlyList<string> SystemObjections { get; }

    /// <summary>Options that cannot be done, with the reason; empty when all can.</summary>
    public IReadOnlyList<string> Refusals { get; }

    /// <summary>Whether the fixture is planned: the verdict allows it, and system and options suit it.</summary>
    public bool IsPlanned => Verdict.MayBePlanned && SystemObjections.Count == 0 && Refusals.Count == 0;

    /// <summary>What will lie under the new coat.</summary>
    public FixtureMaterial Surface { get; }

    /// <summary>Whether an old coat is there, is kept or comes off.</summary>
    public OldCoatDecision OldCoat { get; }

    /// <summary>The defects that are worked on: as surveyed, but one strip of the whole where all of the old coat comes off.</summary>
    public IReadOnlyList<Defect> Defects { get; }

    /// <summary>Area that gets coated.</summary>
    public Area CoatedArea => Area.FromSquareMeters(SquareMeters);

    /// <summary>The surfaces that get coated, one for each zone where transfer efficiency differs by zone.</summary>
    public IReadOnlyList<CoatedSurface> Surfaces { get; }

    /// <summary>Filler for the defects.</summary>
    public FillerEstimate Filler { get; }

    /// <summary>The promoter for what lies under the coat; <see langword="null"/> when the system has none for it.</summary>
    public AdhesionPromoter? Promoter { get; }

    /// <summary>The coats in order.</summary>
    public IReadOnlyList<PlannedCoat> Coats { get; }

    /// <summary>From the old colour to the new; <see langword="null"/> when one of them is not known.</summary>
    public ColourDifference? ColourChange { get; }

    /// <summary>Whether the coats hide the old colour; <see langword="null"/> when no colour change is known.</summary>
    public ColourJudgement? Hiding { get; }

    /// <summary>The grains of a slip-resistant floor; <see langword="null"/> when none is ordered.</summary>
    public SlipResistantFloor? SlipFloor { get; }

    /// <summary>The operations in order, as they would be for this fixture alone.</summary>
    public IReadOnlyList<Operation> Operations { get; }

    /// <summary>Work for which the shop has no usable labour standard.</summary>
    public IReadOnlyList<PlanObjection> LabourGaps { get; }

    /// <summary>What has to be done or found out before the fixture may be coated.</summary>
    public IReadOnlyList<PlanCondition> Conditions => new ValueList<PlanCondition>(ProcedureConditions.Of(this));

    /// <summary>What can hurt in this procedure: what the survey found, and what its operations bring.</summary>
    public IReadOnlyList<Caution> Cautions =>
        new ValueList<Caution>(SurveyCautions.Found(Fixture.Survey).Concat(Operations.SelectMany(operation => operation.Cautions)).Distinct());

    /// <summary>Whether a floor that people stand on, or a seat that they sit on, gets coated.</summary>
    internal bool CoatsFloor { get; }

    /// <summary>
    /// Whether some of what gets coated is worked on from below, so that everything wet or loose falls towards whoever does it.
    /// </summary>
    internal bool LooksDown { get; }

    /// <summary>Whether it is sprayed above the head: it looks down, or it is a tiled wall.</summary>
    internal bool IsOverhead { get; }

    /// <summary>Whether lead was found in the surface or nothing rules it out.</summary>
    internal bool MayHoldLead => Fixture.Survey.LeadTest == LeadTest.Positive || SurveyRules.LeadIsOpen(Fixture.Survey);

    /// <summary>How area, filler, colour difference and coats to hide follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        Workings?[] parts =
        [
            Fixture.Fixture.Workings(), Filler.Items.Count > 0
                ? Filler.Workings() : null, ColourChange?.Workings(), Hiding?.Plan?.Workings(),
            SlipFloor?.Workings(),
        ];
        return Fixture.Zones is null && Fixture.ShareFraction == 1
            ? Trace.Of(Fixture.Name, parts) : Trace.Of(Fixture.Name, parts, t => t.Step(
            "area of this entry", "A", Measure.Area, Share,
            t.Given("A_zones", SquareMeters / Fixture.ShareFraction, Measure.Area) * t.Given("s", Fixture.ShareFraction, Measure.Percent)));
    }

    /// <summary>Name, verdict and area in one line, in metric units.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Fixture.Name + ": " + Verdict + "; " + Measure.Area.Format(SquareMeters, DisplayUnits.Si, 3);

    internal double SquareMeters { get; }

    /// <summary>Those of the operations that mend a defect apart from all others of their kind, so that no room merges them.</summary>
    internal IReadOnlyList<Operation> Mendings { get; }

    /// <summary>Those of the operations that a room takes together: of the rules, neither a mending nor an option's own work.</summary>
    internal IReadOnlyList<Operation> Common { get; }

    /// <summary>
    /// Hours of one person for the work on this fixture by the shop's standards, as if it were done alone; travel and setting up left out.
    /// </summary>
    internal double HoursAlone
    {
        get
        {
            double hours = 0;
            foreach (Operation operation in Operations)
            {
                // Options are priced by themselves: ordering one moves no part of another fixture.
                hours += operation.Kind is WorkKind.Broadcast or WorkKind.FitTrim
                    || Fixture.Options.Any(option => option.Operation?.Id == operation.Id) ? 0 : operation.HoursAt(1);
            }

            foreach (PlannedCoat coat in Coats)
            {
                hours += LabourStandards.For(coat.Kind, Shop.Labour) is LabourStandard standard
                    ? new LabourTask { Standard = standard, Area = CoatedArea, Units = 1 }.Hours.Mean : 0;
                hours += coat.Layer.Product.Operations.Sum(operation => operation.People * operation.TimeFor(CoatedArea).TotalHours);
            }

            return hours;
        }
    }

    // Zones that somebody asked for and that such a fixture does not get coated.
    private static IEnumerable<string> LeftBare(FixtureJob fixture) =>
        RoughFixture.Behind(fixture.Fixture) is ComposedFixture made && fixture.Zones is not null
        ? made.Kind.NotCoated.Where(surface => surface.Zone is FixtureZoneKind zone && fixture.Zones.Contains(zone)).Select(surface =>
            surface.ToString())
        : [];

    private static IEnumerable<CoatedSurface> SurfacesOf(FixtureJob fixture)
    {
        if (fixture.Zones is null && fixture.Efficiencies.Count == 0)
        {
            yield return new CoatedSurface(fixture.Id, Area.FromSquareMeters(fixture.Fixture.CoatedArea.SquareMeters * fixture.ShareFraction * fixture.AreaFactor));
            yield break;
        }

        FixtureZone[] zones = [.. fixture.Fixture.Zones.Where(zone => fixture.Zones is null || fixture.Zones.Contains(zone.Kind))];
        double sum = zones.Sum(zone => zone.Area.SquareMeters);
        Guard.Rule(sum > 0, nameof(FixtureJob.Zones), sum, Measure.Area,
            string.Join("; ", ["zones of the fixture with an area", .. LeftBare(fixture)]));
        foreach (IGrouping<FixtureZoneKind, FixtureZone> zone in zones.GroupBy(zone => zone.Kind))
        {
            Area part = Area.FromSquareMeters(zone.Sum(one => one.Area.SquareMeters) * fixture.ShareFraction * fixture.AreaFactor);
            string id = fixture.Id + "-" + zone.Key.ToString("G").ToLowerInvariant();
            yield return fixture.Efficiencies.FirstOrDefault(one => one.Zone == zone.Key) is ZoneEfficiency efficiency
                ? new CoatedSurface(id, part, efficiency.Efficiency)
                : new CoatedSurface(id, part);
        }
    }
}

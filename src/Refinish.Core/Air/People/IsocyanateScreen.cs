using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Air;

/// <summary>
/// A screening of the polyisocyanate mist while a two-part urethane is sprayed: C = φ · (1 − TE) · m · w / (T · F), and the protection
/// factor that a limit then asks for.
/// </summary>
/// <remarks>
/// No measured airborne fraction is known for this trade; the input is the caller's, and the result is as uncertain as it is. Mist
/// beside the gun is denser than the room's average. Without airflow the mist adds up: C = φ · (1 − TE) · m · w / V. HDI has no OSHA
/// limit; NIOSH gives 0.005 ppm and 0.020 ppm ceiling for the monomer, Oregon limits for its polymers (see
/// <see cref="PublishedLimits"/>).
/// </remarks>
/// <example><code>
/// IsocyanateScreen screen = new()
/// {
///     Room = new Room { Length = Length.FromFeet(8), Width = Length.FromFeet(5), Height = Length.FromFeet(8) }, Exhaust = new Exhaust() { LabelFlow = VolumeFlow.FromCubicFeetPerMinute(250) },
///     CoatingMass = Mass.FromGrams(400), SprayTime = TimeSpan.FromMinutes(6), IsocyanateFraction = Ratio.FromPercent(12),
///     TransferEfficiency = Ratio.FromPercent(55), AirborneFraction = Ratio.FromPercent(10),
///     Limit = MassConcentration.FromMilligramsPerCubicMeter(1), LimitSource = Source.Supplied("state limit, ceiling"),
/// };
/// double? ratio = screen.HazardRatio;
/// </code></example>
public sealed record IsocyanateScreen
{
    private static readonly Source Box = Source.Derived("steady mist in a well-mixed room; losses to walls are not counted");
    private static readonly Source Stated = Source.Supplied("airborne fraction and transfer efficiency");
    private static readonly Source Factor = Source.Published("29 CFR 1910.134", "(d)(3)(i)(B): maximum use concentration is protection factor times limit; paragraph from memory");

    private readonly double coatingMass;
    private readonly double isocyanateFraction;
    private readonly double transferEfficiency;
    private readonly double airborneFraction;
    private readonly double? limit;

    /// <summary>The room.</summary>
    public required Room Room { get; init => field = Guard.NotNull(value); }

    /// <summary>Its exhaust.</summary>
    public required Exhaust Exhaust { get; init => field = Guard.NotNull(value); }

    /// <summary>Mixed product sprayed, without reducer; more than 0 and at most 10 000 kg.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Mass CoatingMass
    {
        get => Mass.FromKilograms(coatingMass);
        init => coatingMass = Guard.Within(value, Bounds.Positive(Measure.Mass, 1e4));
    }

    /// <summary>How long spraying lasts, more than 0 and at most 100 days.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required TimeSpan SprayTime { get; init => field = Guard.Time(value, SolventEmission.SprayTimes); }

    /// <summary>Polyisocyanate in the mixed product, by mass; more than 0 and at most 100 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio IsocyanateFraction
    {
        get => Ratio.FromDecimalFractions(isocyanateFraction);
        init => isocyanateFraction = Guard.Within(value, Bounds.Positive(Measure.Percent, 1));
    }

    /// <summary>
    /// Part of the sprayed solids that lands on the fixture, 0 to 100 %. With 100 % there is no overspray and so no mist by this model; no
    /// gun is known to do that.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio TransferEfficiency
    {
        get => Ratio.FromDecimalFractions(transferEfficiency);
        init => transferEfficiency = Guard.Within(value, Bounds.NotNegative(Measure.Percent, 1));
    }

    /// <summary>
    /// Part of the overspray that stays in the air; more than 0 and at most 100 %. There is no default, because there is no measured
    /// value.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio AirborneFraction
    {
        get => Ratio.FromDecimalFractions(airborneFraction);
        init => airborneFraction = Guard.Within(value, Bounds.Positive(Measure.Percent, 1));
    }

    /// <summary>The limit for polyisocyanates to hold it against, 1 pg/m³ to 1 kg/m³; <see langword="null"/> when none is known.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required MassConcentration? Limit
    {
        get => limit is double l ? MassConcentration.FromKilogramsPerCubicMeter(l) : null;
        init => limit = value is MassConcentration l
            ? Guard.Within(l, Bounds.Between(1e-15, 1, Measure.MassConcentration), nameof(Limit))
            : null;
    }

    /// <summary>Whose limit that is, or why there is none.</summary>
    public required Source LimitSource { get; init => field = Guard.NotNull(value); }

    /// <summary>Whose limit that is, where and as of when, in words; <see langword="null"/> unless given.</summary>
    public string? Whose { get; init; }

    /// <summary>Polyisocyanate that stays in the air over the whole spray.</summary>
    public Mass AirborneMass => Mass.FromKilograms(Airborne().Value);

    /// <summary>The mist while spraying: the steady value with airflow, all of it in the room without.</summary>
    public MassConcentration Concentration => MassConcentration.FromKilogramsPerCubicMeter(Mist().Value);

    /// <summary>Concentration over limit; <see langword="null"/> when there is no limit.</summary>
    public double? HazardRatio => limit is null ? null : OverLimit().Value;

    /// <summary>The mist against the limit.</summary>
    public LimitComparison Comparison => new(
        "polyisocyanate mist while spraying" + (transferEfficiency == 1 ? ": none, since all of it is said to land" : string.Empty),
        Mist().Value, limit, LimitSense.AtMost, Measure.MassConcentration, LimitSource,
        "supplied air under a respiratory protection programme")
    {
        Digits = AirStudy.ScreeningDigits,
        Whose = Whose,
    };

    /// <summary>
    /// The kinds that supply air and whose assigned protection factor is at least the hazard ratio, smallest factor first; empty when none
    /// is, or when there is no limit. Kinds that only filter are left out: NIOSH lists none for hexamethylene diisocyanate.
    /// </summary>
    public IReadOnlyList<RespiratorClass> Respirators => new ValueList<RespiratorClass>(
        HazardRatio is double ratio ? RespiratorClass.AtLeast(ratio).Where(kind => kind.SuppliesAir) : []);

    /// <summary>
    /// The common kinds held against the mist, smallest factor first: by how much each falls short, and those that only filter excluded.
    /// </summary>
    public IReadOnlyList<RespiratorCheck> Checks => new ValueList<RespiratorCheck>(
        RespiratorClass.Common.Select(kind => new RespiratorCheck(kind, Comparison, asksForAir: true, isImmediatelyDangerous: false)));

    /// <summary>What to warn of; supplied air in every case.</summary>
    public IReadOnlyList<Caution> Cautions => limit is null
        ? new ValueList<Caution>([Refinish.Cautions.LimitUnknown, .. Refinish.Cautions.ForIsocyanates])
        : Refinish.Cautions.ForIsocyanates;

    /// <summary>How the mist and the hazard ratio follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of(
        "Polyisocyanate mist", [Room.Workings(), Exhaust.Workings()],
        [Airborne, Mist, .. Trace.When(limit is not null, OverLimit)]);

    /// <summary>The comparison with the limit.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Comparison.ToString();

    private Num Airborne(Trace? t = null) => t.Step("polyisocyanate that stays in the air", "m_a", Measure.Mass, Stated,
        t.Given("φ", airborneFraction, Measure.Percent) * (1 - t.Given("TE", transferEfficiency, Measure.Percent))
            * t.Given("m", coatingMass, Measure.Mass) * t.Given("w", isocyanateFraction, Measure.Percent));

    private Num Mist(Trace? t = null) => t.Step("mist while spraying", "C", Measure.MassConcentration, Box, Airborne(t) / Taking(t));

    // The air that takes up the mist: all the fresh air of the spraying, or that of the room.
    private Num Taking(Trace? t) => Exhaust.FreshAirFlow.CubicMetersPerSecond is double flow && flow > 0
        ? t.Given("T", SprayTime.TotalSeconds, Measure.Minutes) * t.Given("F", flow, Measure.Airflow)
        : t.Given("V", Room.Volume.CubicMeters, Measure.RoomVolume);

    private Num OverLimit(Trace? t = null) => t.Step("hazard ratio, the least protection factor", "HR", Measure.Number, Factor,
        Mist(t) / t.Given("L", limit!.Value, Measure.MassConcentration));
}

namespace Refinish.Air;

/// <summary>
/// Two well-mixed zones in SI: the near field around the source, N, and the rest of the room, F, which the fresh air flushes. V_N dC_N/dt =
/// G + β (C_F − C_N), V_F dC_F/dt = β (C_N − C_F) − F C_F.
/// </summary>
/// <remarks>
/// With p = β/V_N, r = β/V_F and q = (β + F)/V_F the rates are the roots of μ² − (p + q) μ + p F/V_F = 0, both real and not negative. A
/// unit of mass released in the near field gives C_N = a₁ e^(−μ₁t) + a₂ e^(−μ₂t) with a₁ = (μ₁ − q)/((μ₁ − μ₂) V_N), a₂ = (q − μ₂)/((μ₁ −
/// μ₂) V_N), and C_F = c (e^(−μ₂t) − e^(−μ₁t)) with c = β/(V_N V_F (μ₁ − μ₂)). So each zone is a sum of two one-box rooms with air changes
/// μ₁ and μ₂. Differences that would cancel are written by (μ − p)(μ − q) = p r.
/// </remarks>
internal sealed class Zones
{
    private static readonly Source TwoZones = Source.Derived(
        "two well-mixed zones, V_N dC_N/dt = G + β (C_F − C_N), V_F dC_F/dt = β (C_N − C_F) − F C_F: eigenvalues and residues of the 2×2 system");

    private readonly AirStudy study;
    private readonly NearField near;

    public Zones(AirStudy study, NearField near)
    {
        this.study = study;
        this.near = near;
        AirShapes fast = new(study.Load.Timeline, Fast().Value, "μ_1", "f");
        AirShapes slow = new(study.Load.Timeline, Slow().Value, "μ_2", "s");
        FastAnswers = fast.Answers;
        SlowAnswers = slow.Answers;
        Near = Zone("N", new ZoneAnswer(NearFast().Value, NearSlow().Value, (1 / NearVolume(null)).Value, (Q() / NearVolume(null)).Value));
        Far = Zone("F", new ZoneAnswer(FarFast().Value, FarSlow().Value, 0, (R() / NearVolume(null)).Value));

        AirPlace.Zone Zone(string symbol, ZoneAnswer answer) => new(study, fast, slow, answer, symbol);
    }

    public AirPlace.Zone Near { get; }

    public AirPlace.Zone Far { get; }

    /// <summary>The room at the fast rate μ₁.</summary>
    public TermAnswers FastAnswers { get; }

    /// <summary>The room at the slow rate μ₂, which is 0 without airflow.</summary>
    public TermAnswers SlowAnswers { get; }

    public Workings Workings() => Trace.Of("Zones", FarVolume, P, R, Q, Flushed, Fast, Slow, NearFast, NearSlow, FarFast, FarSlow);

    public Num FarVolume(Trace? t = null) =>
        t.Step("rest of the room", "V_F", Measure.RoomVolume, TwoZones, study.Volume(t) - NearVolume(t));

    private Num P(Trace? t = null) => t.Step("near field, exchanges", "p", Measure.AirChanges, TwoZones, Exchange(t) / NearVolume(t));

    private Num R(Trace? t = null) => t.Step("rest of the room, exchanges", "r", Measure.AirChanges, TwoZones, Exchange(t) / FarVolume(t));

    private Num Q(Trace? t = null) => t.Step(
        "rest of the room, exchanges and fresh air", "q", Measure.AirChanges, TwoZones, (Exchange(t) + FreshAir(t)) / FarVolume(t));

    private Num Flushed(Trace? t = null) =>
        t.Step("rest of the room, fresh air", "λ_F", Measure.AirChanges, TwoZones, FreshAir(t) / FarVolume(t));

    private Num Fast(Trace? t = null) => t.Step("fast rate", "μ_1", Measure.AirChanges, TwoZones,
        (P(t) + Q(t) + Num.Sqrt(((P(t) - Q(t)) * (P(t) - Q(t))) + (4 * P(t) * R(t)))) / 2);

    private Num Slow(Trace? t = null) => t.Step("slow rate", "μ_2", Measure.AirChanges, TwoZones, P(t) * Flushed(t) / Fast(t));

    private Num NearFast(Trace? t = null) => t.Step("near field, at the fast rate", "a_N1", Measure.PerRoomVolume, TwoZones,
        (NearIsFaster ? Fast(t) - Q(t) : P(t) * R(t) / (Fast(t) - P(t))) / Apart(t));

    private Num NearSlow(Trace? t = null) => t.Step("near field, at the slow rate", "a_N2", Measure.PerRoomVolume, TwoZones,
        (NearIsFaster ? P(t) * R(t) / (P(t) - Slow(t)) : Q(t) - Slow(t)) / Apart(t));

    private Num FarFast(Trace? t = null) =>
        t.Step("rest of the room, at the fast rate", "a_F1", Measure.PerRoomVolume, TwoZones, -(R(t) / Apart(t)));

    private Num FarSlow(Trace? t = null) =>
        t.Step("rest of the room, at the slow rate", "a_F2", Measure.PerRoomVolume, TwoZones, R(t) / Apart(t));

    private Num Apart(Trace? t) => (Fast(t) - Slow(t)) * NearVolume(t);

    private bool NearIsFaster => P().Value >= Q().Value;

    private Num NearVolume(Trace? t) => t.Given("V_N", near.Volume.CubicMeters, Measure.RoomVolume);

    private Num Exchange(Trace? t) => t.Given("β", near.InterzonalFlow.CubicMetersPerSecond, Measure.Airflow);

    private Num FreshAir(Trace? t) => t.Given("F", study.FreshAirFlow.CubicMetersPerSecond, Measure.Airflow);
}

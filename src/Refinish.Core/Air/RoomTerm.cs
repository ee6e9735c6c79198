namespace Refinish.Air;

/// <summary>
/// The well-mixed room with one term in it, in SI, as the part of the term's mass that is in the air. Symbols: λ air changes (1/s);
/// f flash fraction; T spray time, τ time constant of the film (s); x time since spraying began, y since it ended.
/// </summary>
/// <remarks>
/// dm/dt = e(x) − λ m with e = [f + (1 − f)(1 − e^(−x/τ))]/T while spraying and (1 − f) φ₁(−T/τ) e^(−y/τ)/τ afterwards.
/// The solutions are written with φ₁ and φ₂ so that they hold without airflow (λ = 0) and when λ and 1/τ come together.
/// </remarks>
internal readonly struct RoomTerm(Num changes, Num flash, Num spray, Num tau)
{
    /// <summary>Airborne part when the last of it is on.</summary>
    public Num AtEnd => Spraying(spray);

    /// <summary>Time integral of the airborne part up to then.</summary>
    public Num UntilEnd => SprayingTime(spray);

    /// <summary>Airborne part at x while spraying.</summary>
    public Num Spraying(Num x) => ((x * Num.Phi1(-(changes * x))) - ((1 - flash) * Lag(x))) / spray;

    /// <summary>Time integral of <see cref="Spraying"/> from 0 to x.</summary>
    public Num SprayingTime(Num x) => ((x * x * Num.Phi2(-(changes * x))) - ((1 - flash) * LagTime(x))) / spray;

    /// <summary>Airborne part at y after spraying, with what was in the air at its end.</summary>
    public Num Drying(Num held, Num y) => (held * Num.Exp(-(changes * y))) + (FilmRate() * Lag(y));

    /// <summary>Time integral of <see cref="Drying"/> from 0 to y.</summary>
    public Num DryingTime(Num held, Num y) => (held * (y * Num.Phi1(-(changes * y)))) + (FilmRate() * LagTime(y));

    /// <summary>What is released per second at x, if all that is sprayed flashed at once and what lands dried beside it.</summary>
    public Num Release(Num x) => x.Value < spray.Value ? 1 / spray : FilmRate() * Num.Exp(-((x - spray) / tau));

    /// <summary>Part of the mass still in the film at x.</summary>
    public Num Film(Num x) => x.Value <= spray.Value
        ? (1 - flash) * x * Num.Phi1(-(x / tau)) / spray
        : (1 - flash) * Num.Phi1(-(spray / tau)) * Num.Exp(-((x - spray) / tau));

    // What the film releases per second when spraying ends.
    private Num FilmRate() => (1 - flash) * Num.Phi1(-(spray / tau)) / tau;

    // (e^(−x/τ) − e^(−λx))/(λ − 1/τ): what one unit of film gives to the room's air, over the film's rate.
    private Num Lag(Num x) => FilmIsFaster
        ? x * Num.Exp(-(changes * x)) * Num.Phi1(-(((1 / tau) - changes) * x))
        : x * Num.Exp(-(x / tau)) * Num.Phi1(-((changes - (1 / tau)) * x));

    // Its integral from 0 to x, by the balance of the faster of the two processes.
    private Num LagTime(Num x) => FilmIsFaster
        ? ((x * Num.Phi1(-(changes * x))) - Lag(x)) * tau
        : ((x * Num.Phi1(-(x / tau))) - Lag(x)) / changes;

    private bool FilmIsFaster => changes.Value <= 1 / tau.Value;
}

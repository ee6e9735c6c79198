using System;
using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// How the viscosity of a lying film rises as solvent leaves it, and the fluidity Φ = ∫ dt/η that is left for sagging and levelling
/// before it sets.
/// </summary>
/// <remarks>
/// Points in time, straight in ln η between them, so that ∫ dt/η over a stretch is Δt/η₁ · φ₁(ln(η₁/η₂)) exactly, φ₁(x) = (eˣ − 1)/x.
/// Sag and levelling share this one number: a film that thickens e-fold every τ from η₀ on has Φ = τ/η₀ in all. After the last point
/// nothing is known and nothing is added.
/// </remarks>
/// <example><code>
/// ViscosityHistory history = ViscosityHistory.Thickening(DynamicViscosity.FromPascalSeconds(0.3), TimeSpan.FromSeconds(60), TimeSpan.FromMinutes(10));
/// double fluidity = history.Fluidity;               // 199.99 per Pa, of 200 in the end
/// </code></example>
public sealed record ViscosityHistory
{
    private static readonly Source Integral = Source.Derived("∫ dt/η with ln η straight between the points");

    private readonly ValueList<ViscosityPoint> points;

    /// <summary>Makes a history.</summary>
    /// <param name="points">Points in order of time, at least two, the first at time zero.</param>
    /// <exception cref="ArgumentException">Fewer than two points.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The first point is not at zero, or a time does not come after the one before.
    /// </exception>
    public ViscosityHistory(IEnumerable<ViscosityPoint> points)
    {
        this.points = Guard.List(points, 2);
        Guard.Rule(this.points[0].Time == TimeSpan.Zero, nameof(points), this.points[0].Time.TotalSeconds, Measure.Seconds, "a first point at 0 s");
        for (int i = 1; i < this.points.Count; i++)
        {
            double before = this.points[i - 1].Time.TotalSeconds;
            double time = this.points[i].Time.TotalSeconds;
            Guard.Rule(time > before, nameof(points), time, Measure.Seconds, "after the point before, at ", before);
        }
    }

    /// <summary>The points.</summary>
    public IReadOnlyList<ViscosityPoint> Points => points;

    /// <summary>Time of the last point.</summary>
    public TimeSpan End => points[points.Count - 1].Time;

    /// <summary>Φ up to the last point, in 1/Pa.</summary>
    public double Fluidity => Phi().Value;

    /// <summary>One viscosity for a time.</summary>
    /// <param name="viscosity">Viscosity at slow shear.</param>
    /// <param name="until">When it sets, more than 0 and at most 7 days.</param>
    /// <returns>The history.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ViscosityHistory Constant(DynamicViscosity viscosity, TimeSpan until) =>
        new([new(TimeSpan.Zero, viscosity), new(until, viscosity)]);

    /// <summary>A viscosity that rises e-fold (2.718 times) in every fold time.</summary>
    /// <param name="atFirst">Viscosity as laid.</param>
    /// <param name="foldTime">Time in which it rises e-fold, more than 0.</param>
    /// <param name="until">When it sets; the viscosity may not pass 10 000 Pa·s by then.</param>
    /// <returns>The history.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static ViscosityHistory Thickening(DynamicViscosity atFirst, TimeSpan foldTime, TimeSpan until)
    {
        double first = Guard.Within(atFirst, FlowRanges.Viscosity);
        double fold = Guard.Within(foldTime, FlowRanges.Duration);
        double end = Guard.Within(until, FlowRanges.Duration);
        double last = first * Math.Exp(end / fold);
        if (last > 1e4)
        {
            string allowed = "at most " + Measure.Seconds.Format(fold * Math.Log(1e4 / first)) + ", when 10 000 Pa·s is reached";
            Guard.Rule(false, nameof(until), end, Measure.Seconds, allowed);
        }

        return new([new(TimeSpan.Zero, atFirst), new(until, DynamicViscosity.FromPascalSeconds(last))]);
    }

    /// <summary>Viscosity at a time.</summary>
    /// <param name="time">0 to the last point.</param>
    /// <returns>The viscosity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">After the last point or below zero.</exception>
    public DynamicViscosity ViscosityAt(TimeSpan time)
    {
        double t = Guard.Within(time, Bounds.NotNegative(Measure.Seconds, End.TotalSeconds));
        int i = 1;
        while (points[i].Time.TotalSeconds < t)
        {
            i++;
        }

        double start = points[i - 1].Time.TotalSeconds;
        double share = (t - start) / (points[i].Time.TotalSeconds - start);
        return DynamicViscosity.FromPascalSeconds(points[i - 1].PascalSeconds * Math.Pow(points[i].PascalSeconds / points[i - 1].PascalSeconds, share));
    }

    /// <summary>How the fluidity follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Fluidity over time", Phi);

    /// <summary>The history in one line.</summary>
    /// <returns>Text such as <c>300 mPa·s to 6.6 Pa·s in 600 s: 200 1/Pa</c>.</returns>
    public override string ToString() =>
        Measure.DynamicViscosity.Format(points[0].PascalSeconds) + " to "
        + Measure.DynamicViscosity.Format(points[points.Count - 1].PascalSeconds)
        + " in " + Measure.Seconds.Format(End.TotalSeconds) + ": " + Measure.Fluidity.Format(Fluidity);

    /// <summary>∫ (η₀/η)^(1/n) dt: the time for which the first viscosity would have to last.</summary>
    internal Num Sum(double index, Trace? t = null)
    {
        Num n = t.Given("n", index, Measure.Number);
        Num sum = 0;
        for (int i = 1; i < points.Count; i++)
        {
            Num step = Time(i, t) - Time(i - 1, t);
            Num fold = Num.Ln(Eta(i - 1, t) / Eta(i, t));
            Num scale = Eta(0, t) / Eta(i - 1, t);
            Num scaled = i == 1 ? step : step * (index == 1 ? scale : Num.Power(scale, 1 / n));
            sum += scaled * Num.Phi1(index == 1 ? fold : fold / n);
        }

        return sum;
    }

    private Num Phi(Trace? t = null) => t.Step("fluidity over time", "Φ", Measure.Fluidity, Integral, Sum(1, t) / Eta(0, t));

    private Num Time(int i, Trace? t) => t.Given("t_", i, points[i].Time.TotalSeconds, Measure.Seconds);

    private Num Eta(int i, Trace? t) => t.Given("η_", i, points[i].PascalSeconds, Measure.DynamicViscosity);
}

using System;
using System.Threading;

namespace Refinish.Curing;

/// <summary>
/// Conversion α and temperature T of a reacting mass over time, step by step: dα/dt = r(T, α), dT/dt = ΔT_ad r − (T − T_a)/τ.
/// For a film the last two are zero and T stays.
/// </summary>
/// <remarks>
/// J. R. Dormand and P. J. Prince, "A family of embedded Runge–Kutta formulae", Journal of Computational and Applied Mathematics 6 (1980) 19: fifth order with a
/// fourth-order error estimate and a step that follows it. A struct; no step allocates.
/// </remarks>
internal struct CureStepper
{
    /// <summary>Error allowed a step, in conversion and in kelvins over <see cref="Scale"/>.</summary>
    private const double Tolerance = 1e-11;
    private const double Scale = 100;

    /// <summary>What is left when a reaction counts as complete; of an order below one it would end, in a time of no interest from here.</summary>
    private const double Complete = 1e-10;

    private readonly CureReaction reaction;

    private double adiabaticRise;
    private double lossRate;
    private double ambient;
    private double constantsAt;
    private double k1;
    private double k2;
    private double candidateAlpha;
    private double candidateKelvins;
    private double step;

    public CureStepper(CureReaction reaction, double alpha, double kelvins)
        : this()
    {
        this.reaction = reaction;
        Alpha = alpha;
        Kelvins = kelvins;
    }

    /// <summary>Seconds since the beginning.</summary>
    public double Time { get; private set; }

    public double Alpha { get; private set; }

    public double Kelvins { get; private set; }

    /// <summary>dT/dt of a batch at its present state.</summary>
    public double HeatingRate => (adiabaticRise * Rate(Alpha, Kelvins)) - (lossRate * (Kelvins - ambient));

    /// <summary>Puts the film at another temperature.</summary>
    public void SetTemperature(double kelvins) => Kelvins = kelvins;

    /// <summary>Makes it a batch that heats itself and loses heat to the air.</summary>
    public void SetHeat(double rise, double loss, double air)
    {
        adiabaticRise = rise;
        lossRate = loss;
        ambient = air;
    }

    public double Rate(double alpha, double kelvins)
    {
        double left = 1 - alpha;
        if (left <= Complete)
        {
            // Beyond complete by more than the tolerance is a step to be taken back.
            return left < -1e-9 ? double.NaN : 0;
        }

        if (kelvins != constantsAt)
        {
            constantsAt = kelvins;
            k1 = reaction.First(kelvins).Value;
            k2 = reaction.Second(kelvins).Value;
        }

        return reaction.Rate(k1, k2, alpha, kelvins).Value;
    }

    /// <summary>Goes on to a time.</summary>
    public void AdvanceTo(double time, CancellationToken cancellation)
    {
        while (Time < time)
        {
            Advance(time, cancellation);
        }
    }

    /// <summary>Goes on to a conversion, at most to a time.</summary>
    /// <returns>Whether the conversion was reached; the time is then that at which it was.</returns>
    public bool AdvanceToConversion(double target, double time, CancellationToken cancellation)
    {
        while (Alpha < target)
        {
            if (Time >= time)
            {
                return false;
            }

            CureStepper before = this;
            Advance(time, cancellation);
            if (Alpha >= target)
            {
                // The same step made just as long as it takes.
                double seconds = Roots.Rising(
                    (before, target), static (state, h) => h == 0 ? state.before.Alpha - state.target : state.before.AlphaAfter(h) - state.target, 0, Time - before.Time);
                double next = step;
                this = before;
                AdvanceBy(seconds);
                step = next;
                return true;
            }
        }

        return true;
    }

    /// <summary>One accepted step, at most to a time.</summary>
    public void Advance(double time, CancellationToken cancellation)
    {
        double rate = Rate(Alpha, Kelvins);
        if (rate == 0 && adiabaticRise == 0 && (1 - Alpha <= Complete || Alpha == 0))
        {
            // Nothing moves any more, or nothing ever starts.
            Time = time;
            return;
        }

        double h = step > 0 ? step : 1e-4 / Math.Max(rate, 1e-12);
        while (true)
        {
            cancellation.ThrowIfCancellationRequested();
            bool last = h >= time - Time;
            double tried = last ? time - Time : h;
            double error = Estimate(tried) / Tolerance;
            if (error <= 1)
            {
                Accept(tried);
                if (last)
                {
                    Time = time;
                }

                double longer = tried * Math.Min(5, 0.9 * Math.Pow(Math.Max(error, 1e-10), -0.2));
                step = last ? Math.Max(h, longer) : longer;
                return;
            }

            h = tried * (double.IsNaN(error) ? 0.25 : Math.Max(0.2, 0.9 * Math.Pow(error, -0.2)));
        }
    }

    private double AlphaAfter(double h)
    {
        Estimate(h);
        return candidateAlpha;
    }

    /// <summary>dT/dt after a step of h.</summary>
    public double HeatingAfter(double h)
    {
        if (h > 0)
        {
            Estimate(h);
            Accept(h);
        }

        return HeatingRate;
    }

    /// <summary>Goes on by exactly h, which is at most the step just taken.</summary>
    public void AdvanceBy(double h)
    {
        Estimate(h);
        Accept(h);
    }

    private void Accept(double h)
    {
        Time += h;
        Alpha = candidateAlpha;
        Kelvins = candidateKelvins;
    }

    private double Derivative(double alpha, double kelvins, out double heating)
    {
        double rate = Rate(alpha, kelvins);
        heating = adiabaticRise == 0 ? 0 : (adiabaticRise * rate) - (lossRate * (kelvins - ambient));
        return rate;
    }

    private double Estimate(double h)
    {
        double a = Alpha;
        double t = Kelvins;
        double a1 = Derivative(a, t, out double t1);
        double a2 = Derivative(a + (h * a1 / 5), t + (h * t1 / 5), out double t2);
        double a3 = Derivative(a + (h * ((3 * a1) + (9 * a2)) / 40), t + (h * ((3 * t1) + (9 * t2)) / 40), out double t3);
        double a4 = Derivative(
            a + (h * ((44.0 / 45 * a1) - (56.0 / 15 * a2) + (32.0 / 9 * a3))),
            t + (h * ((44.0 / 45 * t1) - (56.0 / 15 * t2) + (32.0 / 9 * t3))),
            out double t4);
        double a5 = Derivative(
            a + (h * ((19372.0 / 6561 * a1) - (25360.0 / 2187 * a2) + (64448.0 / 6561 * a3) - (212.0 / 729 * a4))),
            t + (h * ((19372.0 / 6561 * t1) - (25360.0 / 2187 * t2) + (64448.0 / 6561 * t3) - (212.0 / 729 * t4))),
            out double t5);
        double a6 = Derivative(
            a + (h * ((9017.0 / 3168 * a1) - (355.0 / 33 * a2) + (46732.0 / 5247 * a3) + (49.0 / 176 * a4) - (5103.0 / 18656 * a5))),
            t + (h * ((9017.0 / 3168 * t1) - (355.0 / 33 * t2) + (46732.0 / 5247 * t3) + (49.0 / 176 * t4) - (5103.0 / 18656 * t5))),
            out double t6);
        candidateAlpha = a + (h * ((35.0 / 384 * a1) + (500.0 / 1113 * a3) + (125.0 / 192 * a4) - (2187.0 / 6784 * a5) + (11.0 / 84 * a6)));
        candidateKelvins = t + (h * ((35.0 / 384 * t1) + (500.0 / 1113 * t3) + (125.0 / 192 * t4) - (2187.0 / 6784 * t5) + (11.0 / 84 * t6)));
        double a7 = Derivative(candidateAlpha, candidateKelvins, out double t7);
        double alphaError = h * ((71.0 / 57600 * a1) - (71.0 / 16695 * a3) + (71.0 / 1920 * a4) - (17253.0 / 339200 * a5) + (22.0 / 525 * a6) - (1.0 / 40 * a7));
        double kelvinError = h * ((71.0 / 57600 * t1) - (71.0 / 16695 * t3) + (71.0 / 1920 * t4) - (17253.0 / 339200 * t5) + (22.0 / 525 * t6) - (1.0 / 40 * t7));
        return Math.Abs(alphaError) + (Math.Abs(kelvinError) / Scale);
    }
}

using System;
using System.Threading;
using Refinish.Numerics;

namespace Refinish.Curing;

/// <summary>
/// Conversion α and temperature T of a reacting mass over time, step by step: dα/dt = r(T, α), dT/dt = ΔT_ad r − (T − T_a)/τ.
/// For a film the last two are zero and T stays.
/// </summary>
/// <remarks>Steps of <see cref="DormandPrince"/> whose length follows their error. A struct; no step allocates.</remarks>
internal struct CureStepper : IPlaneMotion
{
    /// <summary>Error allowed a step, in conversion and in kelvins over <see cref="Scale"/>.</summary>
    private const double Tolerance = 1e-11;
    private const double Scale = 100;

    /// <summary>
    /// What is left when a reaction counts as complete; of an order below one it would end, in a time of no interest from here.
    /// </summary>
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

    public CureStepper(CureReaction reaction, double alpha, double kelvins) : this()
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

                double longer = DormandPrince.Next(tried, error);
                step = last ? Math.Max(h, longer) : longer;
                return;
            }

            h = DormandPrince.Next(tried, error);
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

    double IPlaneMotion.Rates(double alpha, double kelvins, out double heating)
    {
        double rate = Rate(alpha, kelvins);
        heating = adiabaticRise == 0 ? 0 : (adiabaticRise * rate) - (lossRate * (kelvins - ambient));
        return rate;
    }

    private double Estimate(double h) => DormandPrince.Step(ref this, h, Alpha, Kelvins, Scale, out candidateAlpha, out candidateKelvins);
}

using System;

namespace Refinish.Air;

/// <summary>
/// Two well-mixed zones in SI: the near field around the source, N, and the rest of the room, F, which the fresh air flushes.
/// V_N dC_N/dt = G + β (C_F − C_N), V_F dC_F/dt = β (C_N − C_F) − F C_F.
/// </summary>
/// <remarks>
/// With p = β/V_N, r = β/V_F and q = (β + F)/V_F the rates are the roots of μ² − (p + q) μ + p F/V_F = 0, both real and not negative.
/// A unit of mass released in the near field gives C_N = a₁ e^(−μ₁t) + a₂ e^(−μ₂t) with a₁ = (μ₁ − q)/((μ₁ − μ₂) V_N), a₂ = (q − μ₂)/((μ₁ − μ₂) V_N),
/// and C_F = c (e^(−μ₂t) − e^(−μ₁t)) with c = β/(V_N V_F (μ₁ − μ₂)). So each zone is a sum of two one-box rooms with air changes μ₁ and μ₂.
/// Differences that would cancel are written by (μ − p)(μ − q) = p r.
/// </remarks>
internal static class NearFieldKernel
{
    public static double Exchange(double surface, double speed) => surface * speed / 2;

    public static double Fast(double p, double q, double r) => (p + q + Math.Sqrt(((p - q) * (p - q)) + (4 * p * r))) / 2;

    public static double Slow(double p, double changesOfFar, double fast) => p * changesOfFar / fast;

    public static double NearFast(double p, double q, double r, double fast, double slow, double nearVolume) =>
        (p >= q ? fast - q : p * r / (fast - p)) / ((fast - slow) * nearVolume);

    public static double NearSlow(double p, double q, double r, double fast, double slow, double nearVolume) =>
        (p >= q ? p * r / (p - slow) : q - slow) / ((fast - slow) * nearVolume);

    public static double Far(double r, double fast, double slow, double nearVolume) => r / ((fast - slow) * nearVolume);
}

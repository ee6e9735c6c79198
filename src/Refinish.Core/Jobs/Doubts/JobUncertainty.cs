using System;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// What is not known for sure before a job is done: areas by the tape, what lands of the spray, hours, and whether somebody has to come
/// back.
/// </summary>
/// <remarks>The defaults are invented; replace them by the shop's own records.</remarks>
public sealed record JobUncertainty
{
    private static readonly Bounds Factors = Bounds.Between(0.1, 10, Measure.Number);

    private readonly double comesBack = 0.1;

    /// <summary>
    /// Factor on the area of each fixture, drawn for each on its own; triangular 0.95, 1, 1.1 unless given (invented).
    /// <see langword="null"/> for areas that are sure. One draw in a thousand may lie below 0.1 or above 10, where it is kept within 0.01
    /// or becomes an area that cannot be planned.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">More of it lies below 0.1 or above 10.</exception>
    public Distribution? Area
    {
        get;
        init
        {
            if (value is not null)
            {
                Guard.Within(value.Quantile(Ratio.FromPercent(0.1)), Factors, nameof(Area));
                Guard.Within(value.Quantile(Ratio.FromPercent(99.9)), Factors, nameof(Area));
            }

            field = value;
        }
    }
    = new TriangularDistribution(0.95, 1, 1.1);

    /// <summary>
    /// Factor on the gun's transfer efficiency; beta-PERT 0.75, 1, 1.17 unless given (invented). <see langword="null"/> for a gun that is
    /// sure. What it makes of the efficiency is kept within 5 and 100 %.
    /// </summary>
    public Distribution? TransferEfficiency { get; init; } = new PertDistribution(0.75, 1, 1.17);

    /// <summary>How the three points of a labour standard are read; beta-PERT unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named reading.</exception>
    public ThreePointReading Hours { get; init => field = Guard.Defined(value); }

    /// <summary>Chance that somebody has to come back for touching up, 0 to 100 %; 10 % unless given (invented).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio ComesBack
    {
        get => Ratio.FromDecimalFractions(comesBack);
        init => comesBack = Guard.Within(value, Bounds.NotNegative(Measure.Percent, 1));
    }

    /// <summary>How long touching up takes when somebody comes back, more than 0 and at most 8 h; 1 h unless given (invented).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public TimeSpan TouchUp { get; init => field = Guard.Time(value, Bounds.Positive(Measure.Hours, 8 * 3600)); } = TimeSpan.FromHours(1);

    /// <summary>What is in doubt.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => "area " + (Area?.ToString() ?? "sure") + "; transfer efficiency " + (TransferEfficiency?.ToString() ?? "sure") + "; comes back " + Measure.Percent.Format(comesBack);
}

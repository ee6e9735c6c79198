using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Films;

namespace Refinish.Inspection;

/// <summary>
/// Readings of a slip test on a floor held against a published class. It names method and criterion, and never says that a surface is
/// non-slip.
/// </summary>
/// <remarks>
/// Most classes are criteria for hard floors walked on with shoes. A bathtub or a shower floor stands under bare, wet, soapy feet: the one
/// test for tubs, ASTM F462, was withdrawn in July 2016 (seen in the society's catalogue) and has no successor here. A comparison that
/// falls short tells something; one that holds tells little.
/// </remarks>
/// <example><code>
/// SlipComparison floor = new([0.47, 0.44, 0.49, 0.46], SlipClasses.HardFloors[1], measuredWet: true, "digital tribometer, slightly soapy water");
/// LimitComparison result = floor.Comparison;
/// </code></example>
public sealed record SlipComparison
{
    private static readonly Source Average = Source.Derived("mean of the readings");

    private readonly ValueList<double> readings;

    /// <summary>Takes the readings.</summary>
    /// <param name="readings">
    /// Readings in the scale of the class, at least one; one for each direction of the test: coefficients from 0 to 2, pendulum values from
    /// 0 to 150, or angles from 0 to 45 degrees.
    /// </param>
    /// <param name="against">The class.</param>
    /// <param name="measuredWet">Whether they were measured wet.</param>
    /// <param name="method">Instrument, slider and liquid.</param>
    /// <exception cref="ArgumentException">No reading is given or the method is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is outside its range.</exception>
    public SlipComparison(IEnumerable<double> readings, SlipClass against, bool measuredWet, string method)
    {
        Class = Guard.NotNull(against);
        this.readings = new(Guard.List(readings, 1).Select(one =>
        {
            against.Check(one, nameof(readings));
            return one;
        }));
        MeasuredWet = measuredWet;
        Method = Guard.Named(method);
    }

    /// <summary>The readings.</summary>
    public IReadOnlyList<double> Readings => readings;

    /// <summary>The class.</summary>
    public SlipClass Class { get; }

    /// <summary>Whether they were measured wet.</summary>
    public bool MeasuredWet { get; }

    /// <summary>Instrument, slider and liquid.</summary>
    public string Method { get; }

    /// <summary>Mean of the readings.</summary>
    public double Mean => MeanOf().Value;

    /// <summary>The mean against the class; not to be judged when a wet class is asked of dry readings or the other way round.</summary>
    public LimitComparison Comparison => new(
        Class.ScaleInWords + " against " + Class.Name + " (floors)",
        MeasuredWet == Class.IsWet ? Mean * Class.Factor : null,
        Class.Least * Class.Factor,
        LimitSense.AtLeast,
        Class.Measure,
        Class.Source,
        MeasuredWet == Class.IsWet ? "a slip-resistant additive in the floor zone" : Class.IsWet ? "measure it wet" : "measure it dry")
    {
        Whose = Class.Whose,
    };

    /// <summary>What can hurt; always there, whatever the comparison says.</summary>
    public IReadOnlyList<Caution> Cautions { get; } = new ValueList<Caution>([Refinish.Cautions.NotATubTest, Refinish.Cautions.FrictionWears]);

    /// <summary>How the mean follows.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => Trace.Of("Slip test", MeanOf);

    /// <summary>The result in one line.</summary>
    /// <returns>
    /// Text such as <c>0.465 wet by digital tribometer; 0.42 for ANSI A326.3 Interior, Wet floors; not a bathtub test</c>.
    /// </returns>
    public override string ToString() =>
        Class.Format(Mean) + (MeasuredWet ? " wet" : " dry") + " by " + Method + "; "
            + Class.Format(Class.Least) + " for " + Class.Name + " floors; not a bathtub test";

    private Num MeanOf(Trace? t = null) =>
        t.Step("mean", "µ_m", Measure.Number, Average, StatisticsKernel.Mean(readings, t, "µ_", Measure.Number));
}

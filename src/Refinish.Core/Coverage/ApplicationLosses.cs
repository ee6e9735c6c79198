using System;
using System.Diagnostics.CodeAnalysis;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>
/// Where coating goes that does not become film, each loss by itself. What the gun blows off the piece is the gun's own transfer
/// efficiency.
/// </summary>
/// <remarks>
/// Every loss is none unless given, so that nothing is added that nobody measured. Commonly 5 to 15 % stays in cup, hose and filter (common
/// practice, no source).
/// </remarks>
/// <example><code>
/// ApplicationLosses losses = new()
/// {
///     EdgeOverspray = Ratio.FromPercent(8), Residue = Ratio.FromPercent(5), HoldUp = Volume.FromMilliliters(40),
/// };
/// </code></example>
public sealed record ApplicationLosses
{
    /// <summary>What is given, as a table.</summary>
    public static RecordInputs<ApplicationLosses> Inputs { get; } = new(
        record => record.Values,
        (record, values) => record with { Values = values },
        InputField.Of(nameof(EdgeOverspray), "part that passes the edges of the piece", Bounds.NotNegative(Measure.Percent, 0.5), 0),
        InputField.Of(nameof(HoldUp), "what stays in hose and gun, once a coat", Bounds.NotNegative(Measure.Liquid, 5e-3), 0),
        InputField.Of(nameof(Residue), "part that clings to cups, sticks and filter", Bounds.NotNegative(Measure.Percent, 0.5), 0),
        InputField.Of(
            nameof(ProfileDepth), "depth of the roughness that the first coat fills", Bounds.NotNegative(Measure.Film, 500e-6), 0),
        InputField.Of(nameof(ProfileFill), "part of that depth that is empty on average", Bounds.NotNegative(Measure.Percent, 1), 1),
        InputField.Of(nameof(UnusedPot), "part that is mixed and not used", Bounds.NotNegative(Measure.Percent, 0.5), 0));

    /// <summary>Values that are given one by one.</summary>
    public ApplicationLosses()
    {
    }

    /// <summary>Values by name.</summary>
    /// <param name="values">Values of <see cref="Inputs"/>; none missing that has to be given.</param>
    /// <exception cref="ArgumentException">The argument is missing, the values are of other inputs, or one is missing.</exception>
    [SetsRequiredMembers]
    public ApplicationLosses(InputValues values) => Values = Inputs.Whole(values, nameof(values));

    private InputValues Values { get; init; } = Inputs.Empty;

    /// <summary>
    /// A start that a shop replaces by its own measurements: 8 % residue and 15 mL in hose and gun, both invented; no other loss.
    /// </summary>
    public static ApplicationLosses Generic { get; } = new() { Residue = Ratio.FromPercent(8), HoldUp = Volume.FromMilliliters(15) };

    /// <summary>
    /// Part of what leaves the gun that passes the edges of the piece, lead and lag of each stroke, 0 to 50 %; none unless given.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio EdgeOverspray { get => Values.Ratio(); init => Values = Values.Set(value); }

    /// <summary>Coating that fills hose and gun and is not sprayed out, once a coat, 0 to 5 L; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Volume HoldUp { get => Values.Volume(); init => Values = Values.Set(value); }

    /// <summary>Part of what is poured that clings to cups, sticks and filter, 0 to 50 %; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio Residue { get => Values.Ratio(); init => Values = Values.Set(value); }

    /// <summary>Depth of the roughness, peak to valley, that the first coat has to fill, 0 to 500 µm; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length ProfileDepth { get => Values.Length(); init => Values = Values.Set(value); }

    /// <summary>
    /// Part of that depth that is empty on average, 0 to 100 %; 100 % unless given, which overstates it (a blasting trade note counts
    /// the full depth).
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio ProfileFill { get => Values.Ratio(); init => Values = Values.Set(value); }

    /// <summary>Part of what is mixed that is thrown away unused, 0 to 50 %; none unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Ratio UnusedPot { get => Values.Ratio(); init => Values = Values.Set(value); }

    /// <summary>The shares in one line.</summary>
    /// <returns>Text such as <c>8 % past the edges, 40 mL in the hose, 5 % clings, 0 % unused</c>.</returns>
    public override string ToString() =>
        Measure.Percent.Format(EdgeOverspray.DecimalFractions) + " past the edges, "
        + Measure.Liquid.Format(HoldUp.CubicMeters) + " in the hose, "
        + Measure.Percent.Format(Residue.DecimalFractions) + " clings, " + Measure.Percent.Format(UnusedPot.DecimalFractions) + " unused";
}

using System;
using System.Linq;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Estimating;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Samples.Portfolio;

/// <summary>One bathroom of the portfolio, made of what its row holds; everything else is the same for all and invented.</summary>
internal static class Bathroom
{
    private static readonly DateTimeOffset Start = new(2027, 3, 1, 8, 0, 0, TimeSpan.Zero);
    private static readonly Room Room = new() { Length = Length.FromMeters(2.6), Width = Length.FromMeters(2.1), Height = Length.FromMeters(2.5) };
    private static readonly Exhaust Exhaust = new() { LabelFlow = VolumeFlow.FromCubicMetersPerHour(1700) };

    /// <summary>
    /// The net price in minor units of the currency, a whole number so that no order of adding changes a sum; none for a plan in whose way something stands, and
    /// for a bad row.
    /// </summary>
    public static long? Cents(int? length, int? depth, int? chips, int? humidity) =>
        TryPlan(length, depth, chips, humidity, out _) is { IsPossible: true, Price.Net: decimal net } ? (long)(net / Shop.Generic.Prices.Currency.SmallestAmount) : null;

    /// <summary>
    /// Why a row has no price: the kinds of what stands in the way of its plan, or the number of the row that the library refuses.
    /// </summary>
    public static string WhyNot(int? length, int? depth, int? chips, int? humidity) =>
        TryPlan(length, depth, chips, humidity, out string refused) is JobPlan plan
            ? "objections: " + string.Join(", ",
                plan.Objections.Select(objection => objection.Kind.ToString("G")).Distinct().Order(StringComparer.Ordinal))
            : "bad row: " + refused;

    /// <summary>The whole plan of one bathroom: operations, cups, times, people, air, price, handover.</summary>
    /// <exception cref="ArgumentException">A number of the row is outside what the library takes.</exception>
    public static JobPlan Plan(int length, int depth, int chips, int humidity) => new Job
    {
        Id = "bathroom",
        Shop = Shop.Generic,
        Start = Start,
        Premises = new Premises
        {
            Id = "building",
            Rooms =
            [
                new SiteRoom
                {
                    Id = "bath", Room = Room, Exhaust = Exhaust,
                    Climate = RoomClimate.Held(new MoistAir(Temperature.FromDegreesCelsius(22), Ratio.FromPercent(humidity)),
                        Temperature.FromDegreesCelsius(20)),
                },
            ],
        },
        Fixtures =
        [
            new FixtureJob
            {
                Id = "tub", Name = "bathtub", Room = "bath", Fixture = Tub(Length.FromMillimeters(length), Length.FromMillimeters(depth)),
                Survey = new Survey
                {
                    Material = FixtureMaterial.EnamelledCastIron,
                    YearBuilt = 1955,
                    LeadTest = LeadTest.Negative,
                    Defects = [.. Enumerable.Repeat<Defect>(new Chip(Length.FromMillimeters(14), Length.FromMillimeters(1.2)), chips)],
                },
            },
        ],
    }.Plan();

    // A row of which no bathroom can be made costs that row, not the query.
    private static JobPlan? TryPlan(int? length, int? depth, int? chips, int? humidity, out string refused)
    {
        if ((length, depth, chips, humidity) is not (int millimetres, int deep, int chipped, int damp))
        {
            refused = "a number that is missing";
            return null;
        }

        try
        {
            refused = string.Empty;
            return Plan(millimetres, deep, chipped, damp);
        }
        catch (ArgumentException wrong)
        {
            refused = wrong.ParamName ?? "a number";
            return null;
        }
    }

    // What the two lengths leave open is taken in proportion to them; the proportions are invented.
    private static RecessedBathtub Tub(Length overall, Length deep) => new(new RecessedBathtubMeasurements
    {
        OverallLength = overall, OverallWidth = overall * 0.5, Depth = deep, ApronHeight = deep * 1.1,
        RimLength = overall * 0.88, RimWidth = overall * 0.39, RimCornerRadius = overall * 0.1,
        FloorLength = overall * 0.73, FloorWidth = overall * 0.325, FloorCornerRadius = overall * 0.08,
        HeadRun = overall * 0.12, FootRun = overall * 0.03, CoveRadius = deep * 0.19,
        DrainDiameter = Length.FromMillimeters(51), OverflowDiameter = Length.FromMillimeters(76),
    });
}

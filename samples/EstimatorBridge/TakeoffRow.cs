using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Samples.EstimatorBridge;

/// <summary>One row of the takeoff: a fixture, how often it is there, what it measures, what was seen on it.</summary>
internal sealed record TakeoffRow
{
    public static readonly string[] Columns =
        ["room", "fixture", "kind", "count", "unit", "length", "width", "depth", "material", "built", "condition", "options"];

    // More than anybody writes about one fixture; each of them is worked out.
    private const int MostDefects = 200;

    private static readonly Dictionary<string, Length> Units = new(StringComparer.Ordinal)
    {
        ["mm"] = Length.FromMillimeters(1), ["cm"] = Length.FromCentimeters(1), ["m"] = Length.FromMeters(1),
        ["in"] = Length.FromInches(1), ["ft"] = Length.FromFeet(1),
    };

    public required string Fixture { get; init; }

    public required IFixture Shape { get; init; }

    public required int Count { get; init; }

    public required Survey Survey { get; init; }

    public required IReadOnlyList<FixtureOption> Options { get; init; }

    /// <summary>Reads a row.</summary>
    /// <exception cref="RowException">A field is missing or wrong.</exception>
    public static TakeoffRow Parse(IReadOnlyDictionary<string, string> fields)
    {
        Named("room");
        string unit = Field("unit");
        Length one = Units.TryGetValue(unit, out Length known) ? known
            : throw new RowException("unit", "'" + unit + "' is none of " + string.Join(", ", Units.Keys));
        return new TakeoffRow
        {
            Fixture = Named("fixture"),
            Shape = Taped(() => Shapes.Of(Field("kind"), Measured("length"), Measured("width"), Measured("depth"))),
            Count = Whole("count", 1, 1000),
            Survey = new Survey
            {
                Material = FixtureMaterial.All.FirstOrDefault(one => one.Id.Equals(Field("material"), StringComparison.OrdinalIgnoreCase))
                    ?? throw new RowException("material",
                        "'" + Field("material") + "' is none of " + string.Join(", ", FixtureMaterial.All.Select(one => one.Id))),
                Defects = Defects(),
                YearBuilt = Field("built").Length == 0 ? null : Whole("built", 1700, 2100),
            },
            Options =
            [
                .. Words("options").Select(code => Assumed.Options.TryGetValue(code, out FixtureOption? option)
                    ? option
                    : throw new RowException("options", "'" + code + "' is none of " + string.Join(", ", Assumed.Options.Keys))),
            ],
        };

        string Field(string column) => fields.TryGetValue(column, out string? field) ? field : throw new RowException(column, "is missing");

        string Named(string column) => Field(column).Length == 0 ? throw new RowException(column, "is empty")
            : Field(column).Any(char.IsControl) ? throw new RowException(column, "holds a control character")
            : Field(column);

        // Point, no thousands: 1,5 is no number here, rather than fifteen.
        Length Measured(string column) =>
            double.TryParse(Field(column), NumberStyles.Float, CultureInfo.InvariantCulture, out double number)
            ? number * one
            : throw new RowException(column, "'" + Field(column) + "' is not a number; write it like 12.5");

        int Whole(string column, int least, int most) =>
            int.TryParse(Field(column), NumberStyles.None, CultureInfo.InvariantCulture, out int number)
                && number >= least && number <= most
                ? number
                : throw new RowException(column,
                    string.Create(CultureInfo.InvariantCulture, $"'{Field(column)}' is not a whole number from {least} to {most}"));

        Defect[] Defects()
        {
            Defect[] defects = [.. Words("condition").SelectMany(Conditions.Of).Take(MostDefects + 1)];
            return defects.Length <= MostDefects
                ? defects
                : throw new RowException("condition", "has more than " + MostDefects.ToString(CultureInfo.InvariantCulture) + " defects");
        }

        string[] Words(string column) => Field(column).Split(' ', StringSplitOptions.RemoveEmptyEntries);
    }

    /// <summary>The fixture as a job of its own in the room that is assumed.</summary>
    public Job ToJob(int row) => new()
    {
        Id = "row-" + row.ToString(CultureInfo.InvariantCulture),
        Shop = Assumed.Shop,
        Premises = Assumed.Premises,
        Start = Assumed.Start,
        Fixtures =
        [
            new FixtureJob
            {
                Id = "fixture", Name = Fixture, Room = Assumed.Premises.Rooms[0].Id, Fixture = Shape, Survey = Survey, Options = Options,
            },
        ],
    };

    /// <summary>The sentence of a refusal, without what the framework appends.</summary>
    public static string Sentence(Exception refused) => refused.Message.Split(" (Parameter")[0];

    // The library refuses a measurement by the name it has there; this is the column from which it was taken.
    private static IFixture Taped(Func<IFixture> make)
    {
        try
        {
            return make();
        }
        catch (ArgumentException refused)
        {
            string column = refused.ParamName switch
            {
                string name when name.EndsWith("depth", StringComparison.OrdinalIgnoreCase) => "depth",
                string name when name.EndsWith("height", StringComparison.OrdinalIgnoreCase) => "depth",
                string name when name.EndsWith("width", StringComparison.OrdinalIgnoreCase) => "width",
                string name when name.EndsWith("length", StringComparison.OrdinalIgnoreCase) => "length",
                _ => "length, width or depth",
            };
            throw new RowException(column, Sentence(refused));
        }
    }
}

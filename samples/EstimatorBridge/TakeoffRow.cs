using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Fixtures;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Samples.EstimatorBridge;

/// <summary>One row of the takeoff: a fixture, how often it is there, what it measures, what was seen on it.</summary>
internal sealed record TakeoffRow
{
    public static readonly string[] Columns = ["room", "fixture", "kind", "count", "unit", "length", "width", "depth", "material", "built", "condition", "options"];

    private static readonly Dictionary<string, Length> Units = new(StringComparer.Ordinal)
    {
        ["mm"] = Length.FromMillimeters(1), ["cm"] = Length.FromCentimeters(1), ["m"] = Length.FromMeters(1), ["in"] = Length.FromInches(1), ["ft"] = Length.FromFeet(1),
    };

    public required string Room { get; init; }

    public required string Fixture { get; init; }

    public required IFixture Shape { get; init; }

    public required int Count { get; init; }

    public required Survey Survey { get; init; }

    public required IReadOnlyList<string> Options { get; init; }

    /// <summary>Reads a row; the fields are found by the names of <see cref="Columns"/>.</summary>
    public static TakeoffRow Parse(Func<string, string> field)
    {
        string unit = field("unit");
        Length one = Units.TryGetValue(unit, out Length known) ? known : throw new RowException("unit", "'" + unit + "' is none of " + string.Join(", ", Units.Keys));
        Length Measured(string column) => double.TryParse(field(column), CultureInfo.InvariantCulture, out double number)
            ? number * one
            : throw new RowException(column, "'" + field(column) + "' is not a number");

        string kind = field("kind");
        return new TakeoffRow
        {
            Room = Named("room"),
            Fixture = Named("fixture"),
            Shape = Taped(() => Shapes.Of(kind, Measured("length"), Measured("width"), Measured("depth"))),
            Count = Whole("count", 1, 1000),
            Survey = new Survey
            {
                Material = Enum.TryParse(field("material"), out FixtureMaterial material) && Enum.IsDefined(material)
                    ? material
                    : throw new RowException("material", "'" + field("material") + "' is none of " + string.Join(", ", Enum.GetNames<FixtureMaterial>())),
                Defects = Words("condition").SelectMany(Conditions.Of).ToArray(),
                BuiltBefore1978 = field("built").Length == 0 ? null : Whole("built", 1700, 2100) < 1978,
            },
            Options = Words("options"),
        };

        string Named(string column) => field(column).Length > 0 ? field(column) : throw new RowException(column, "is empty");

        int Whole(string column, int least, int most) => int.TryParse(field(column), CultureInfo.InvariantCulture, out int number) && number >= least && number <= most
            ? number
            : throw new RowException(column, "'" + field(column) + "' is not a whole number from " + least.ToString(CultureInfo.InvariantCulture) + " to " + most.ToString(CultureInfo.InvariantCulture));

        string[] Words(string column) => field(column).Split(' ', StringSplitOptions.RemoveEmptyEntries);
    }

    // The library refuses a measurement by the name it has there; this is the column from which it was taken.
    private static IFixture Taped(Func<IFixture> make)
    {
        try
        {
            return make();
        }
        catch (ArgumentOutOfRangeException refused)
        {
            string column = refused.ParamName switch
            {
                string name when name.EndsWith("depth", StringComparison.OrdinalIgnoreCase) || name.EndsWith("height", StringComparison.OrdinalIgnoreCase) => "depth",
                string name when name.EndsWith("width", StringComparison.OrdinalIgnoreCase) => "width",
                string name when name.EndsWith("length", StringComparison.OrdinalIgnoreCase) => "length",
                _ => "length, width or depth",
            };
            throw new RowException(column, refused.Message.Split(" (Parameter")[0]);
        }
    }
}

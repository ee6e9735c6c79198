using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using CsvHelper;

namespace Refinish.Samples.EstimatorBridge;

/// <summary>One line for the estimating program. Numbers stand before texts, and no text can be taken for a formula.</summary>
internal sealed record ExportLine(string Item, string Description)
{
    private static readonly string[] Columns =
    [
        "row", "key", "item", "category", "quantity", "unit", "unit cost", "cost", "price", "currency", "taxes", "hazards", "room",
        "fixture", "description",
    ];

    /// <summary>Line of the takeoff; 0 for what belongs to all.</summary>
    public int Row { get; init; }

    public string Room { get; init; } = string.Empty;

    public string Fixture { get; init; } = string.Empty;

    public decimal Quantity { get; init; }

    public string Unit { get; init; } = string.Empty;

    public decimal UnitCost { get; init; }

    /// <summary>What it costs the shop.</summary>
    public decimal Cost { get; init; }

    /// <summary>Its part of what the customer pays.</summary>
    public decimal Price { get; init; }

    /// <summary>Key of the line within its row; the same in every run. Empty for what is no line of money.</summary>
    public string Key { get; init; } = string.Empty;

    public string Category { get; init; } = string.Empty;

    /// <summary>Codes of the taxes that apply.</summary>
    public string Taxes { get; init; } = string.Empty;

    /// <summary>What can hurt in the work of this row; the sentences stand in the CAUTION lines at the end.</summary>
    public string Hazards { get; init; } = string.Empty;

    public static void WriteHeader(CsvWriter csv) => Record(csv, Columns);

    public void Write(CsvWriter csv) => Record(
        csv,
        [
            Row.ToString(CultureInfo.InvariantCulture), Plain(Key), Plain(Item), Category,
            Quantity.ToString("0.00##", CultureInfo.InvariantCulture), Plain(Unit), Currency.Rate(UnitCost),
            Currency.Number(Cost), Currency.Number(Price), Currency.Code, Plain(Taxes), Hazards, Plain(Room),
            Plain(Fixture), Plain(Description),
        ]);

    // A spreadsheet takes a cell for a formula that begins with one of these; an apostrophe before it makes it text. Control characters
    // are no text at all.
    private static string Plain(string text)
    {
        string printed = string.Concat(text.Where(letter => !char.IsControl(letter)));
        return printed.Length > 0 && "=+-@＝＋－＠".Contains(printed[0]) ? "'" + printed : printed;
    }

    private static Currency Currency => Assumed.Shop.Prices.Currency;

    private static void Record(CsvWriter csv, IEnumerable<string> fields)
    {
        foreach (string field in fields)
        {
            csv.WriteField(field);
        }

        csv.NextRecord();
    }
}

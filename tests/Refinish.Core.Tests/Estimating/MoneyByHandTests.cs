using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Estimating;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Estimating;

/// <summary>Estimates in five currencies against <c>money_by_hand.py</c>, which works them without this library.</summary>
public class MoneyByHandTests
{
    private static readonly List<Table.Row> Rows = [.. Table.Read("money_by_hand.csv").Rows];

    [Theory]
    [InlineData("yen", 22)]
    [InlineData("dinar", 22)]
    [InlineData("franc", 22)]
    [InlineData("us", 29)]
    [InlineData("us exempt", 29)]
    [InlineData("us county exempt", 29)]
    [InlineData("euro sum", 27)]
    [InlineData("euro lines", 36)]
    [InlineData("minimum kept", 18)]
    [InlineData("minimum undercut", 19)]
    [InlineData("minimum near", 19)]
    [InlineData("held", 21)]
    [InlineData("halves", 18)]
    [Evidence(Basis.Independent, "money_by_hand.py, Python 3 standard library: lines, margin, minimum charge, discount, tax and cash "
        + "step in decimals")]
    public void Every_line_and_result_comes_out_as_by_hand(string name, int rows)
    {
        List<Table.Row> expected = Rows.FindAll(row => row["case"] == name);
        Assert.Equal(rows, expected.Count);
        PriceEstimate estimate = MoneyByHandCases.Of(name);
        Assert.True(estimate.Total is not null, "no price: " + string.Join(" ", estimate.Gaps));
        List<Table.Row> results = expected.FindAll(row => row["row"][0] == '=');
        List<Table.Row> lines = [.. expected.Except(results)];
        List<string> off = [.. LinesOff(lines, estimate), .. TaxesOff(lines, estimate), .. ResultsOff(results, estimate)];
        Assert.True(off.Count == 0, string.Join(Environment.NewLine, off));
    }

    [Fact]
    [Evidence(Basis.Identity, "every case of the table is priced by the test above")]
    public void No_case_of_the_table_is_left_out() => Assert.Equal(MoneyByHandCases.Names, Rows.Select(row => row["case"]).Distinct());

    [Theory]
    [InlineData("yen")]
    [InlineData("franc")]
    [InlineData("euro sum")]
    [Evidence(Basis.Cited, "EN 16931 rules BR-CO-10, BR-CO-13 to BR-CO-15, BR-CO-17 and BR-S-08, validation artefacts 1.3.16")]
    public void An_invoice_from_the_lines_adds_up(string name)
    {
        PriceEstimate estimate = MoneyByHandCases.Of(name);
        EstimateLine[] lines =
            [.. estimate.Lines.Where(line => line.Price != 0 && line.Category is not (LineCategory.Discount or LineCategory.Tax))];
        decimal allowances = 0;
        foreach (TaxAmount tax in estimate.Taxes)
        {
            decimal allowance = lines.Where(line => Assert.Single(line.Taxes) == tax.Rate.Code).Sum(line => line.Price) - tax.Taxed;
            Assert.True(allowance >= 0);
            allowances += allowance;
            Assert.Equal(estimate.Book.Currency.Round(tax.Taxed * (decimal)tax.Rate.Rate.DecimalFractions), tax.Amount);
        }

        Assert.Equal(estimate.DiscountGiven, allowances);
        Assert.Equal(estimate.Net, lines.Sum(line => line.Price) - allowances);
        Assert.Equal(estimate.Total, estimate.Net + estimate.Taxes.Sum(tax => tax.Amount));
    }

    // A customer who is exempt may have a tax line of nothing. Tax by line is compared as a set: it hangs on no order.
    private static IEnumerable<string> LinesOff(List<Table.Row> expected, PriceEstimate estimate)
    {
        List<EstimateLine> actual = [.. estimate.Lines.Where(line => line.Category != LineCategory.Tax || line.Price != 0)];
        foreach (string item in actual.Select(line => line.Item).Concat(expected.Select(row => row["row"])).Distinct())
        {
            List<Table.Row> byHand = expected.FindAll(row => row["row"] == item);
            string[] rows = [.. byHand
                .Select(row => Text(row["category"], row["unit"], row["quantity"], row["rate"], row["cost"], row["price"]))
                .OrderBy(text => text, StringComparer.Ordinal)];
            bool isSum = byHand.Exists(row => row["unit"].Length == 0);
            string[] lines = [.. actual.Where(line => line.Item == item).Select(line => Text(
                line.Category.ToString(),
                isSum ? string.Empty : line.Unit.ToString(),
                isSum ? string.Empty : Text(line.Quantity),
                isSum ? string.Empty : Text(line.Rate),
                Text(line.Cost),
                Text(line.Price))).OrderBy(text => text, StringComparer.Ordinal)];
            if (!rows.SequenceEqual(lines))
            {
                yield return item + " by hand " + string.Join(" and ", rows) + ", here " + string.Join(" and ", lines);
            }
        }
    }

    private static IEnumerable<string> TaxesOff(List<Table.Row> expected, PriceEstimate estimate)
    {
        string[] exempt = [.. estimate.Taxes.Where(tax => tax.Exemption is not null).Select(tax => tax.Rate.Code)];
        foreach (Table.Row row in expected.FindAll(row => row["category"] is not ("Overhead" or "Warranty" or "Discount" or "Tax")))
        {
            string[] codes = [.. row["taxes"].Split('+').Where(code => code.Length > 0)];
            foreach (EstimateLine line in estimate.Lines.Where(line => line.Item == row["row"]))
            {
                if (!codes.Except(exempt).SequenceEqual(line.Taxes.Except(exempt)))
                {
                    yield return line.Id + " taxed by hand by " + row["taxes"] + ", here by " + string.Join("+", line.Taxes);
                }
            }
        }
    }

    private static IEnumerable<string> ResultsOff(List<Table.Row> expected, PriceEstimate estimate)
    {
        Dictionary<string, decimal?> actual = new()
        {
            ["cost"] = estimate.Cost,
            ["price at margin"] = estimate.PriceAtMargin,
            ["subtotal"] = estimate.Subtotal,
            ["discount given"] = estimate.DiscountGiven,
            ["net"] = estimate.Net,
            ["tax"] = estimate.Tax,
            ["total"] = estimate.Total,
            ["payable"] = estimate.Payable,
            ["profit"] = estimate.Profit,
        };
        foreach (TaxAmount tax in estimate.Taxes)
        {
            actual["taxed " + tax.Rate.Code] = tax.Taxed;
            actual["tax " + tax.Rate.Code] = tax.Amount;
            if (tax.Exemption is not null)
            {
                actual["exempt " + tax.Rate.Code] = 1;
            }
        }

        foreach (Table.Row row in expected)
        {
            string name = row["row"].Substring(2);
            if (!actual.TryGetValue(name, out decimal? value) || value != Number(row["price"]))
            {
                yield return name + " by hand " + row["price"] + ", here " + (value is decimal number ? Text(number) : "nothing");
            }
        }

        foreach (string name in actual.Keys.Where(key => key.IndexOf(' ') > 0 && key is not ("price at margin" or "discount given")))
        {
            if (!expected.Exists(row => row["row"] == "= " + name))
            {
                yield return name + " is not in the table";
            }
        }
    }

    private static string Text(string category, string unit, string quantity, string rate, string cost, string price) =>
        category + " " + Plain(quantity) + " " + unit + " × " + Plain(rate) + ", cost " + Plain(cost) + ", price " + Plain(price);

    private static string Plain(string number) => number.Length == 0 ? number : Text(Number(number));

    private static decimal Number(string text) => decimal.Parse(text, NumberStyles.Number, CultureInfo.InvariantCulture);

    private static string Text(decimal number) => number.ToString("0.############", CultureInfo.InvariantCulture);
}

using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Foundation;

/// <summary>Currencies against ISO 4217 list one, code by code.</summary>
public class CurrencyTests
{
    private static readonly List<(string Code, string MinorUnit)> List =
        [.. Table.Read("iso4217.csv").Rows.Select(row => (row["code"], row["minor unit"]))];

    [Fact]
    [Evidence(Basis.Cited, "ISO 4217 list one, 178 codes in use, in a public-domain reprint of 1 February 2026")]
    public void Every_code_of_the_list_with_0_2_or_3_decimals_is_known_and_no_other()
    {
        Assert.Equal(178, List.Count);
        string[] expected =
            [.. List.Where(entry => entry.MinorUnit is "0" or "2" or "3").Select(entry => entry.Code + " " + entry.MinorUnit)];
        string[] actual = [.. Currency.All.Select(currency => currency.Code + " " + Figures(currency.Decimals))];
        Assert.Empty(expected.Except(actual));
        Assert.Empty(actual.Except(expected));
        Assert.Equal(expected.Length, actual.Length);
    }

    [Fact]
    [Evidence(Basis.Cited, "ISO 4217 list one: four decimals, or no minor unit")]
    public void Other_minor_units_are_refused_with_the_reason()
    {
        List<(string Code, string MinorUnit)> refused = List.FindAll(entry => entry.MinorUnit is not ("0" or "2" or "3"));
        Assert.Equal(15, refused.Count);
        foreach ((string code, string minorUnit) in refused)
        {
            string reason = minorUnit switch
            {
                "4" => "has four decimals",
                "none" => "has no minor unit",
                _ => throw new FormatException(code + " " + minorUnit),
            };
            Assert.False(Currency.TryOf(code, out Currency? currency));
            Assert.Null(currency);
            ArgumentException refusal = Assert.Throws<ArgumentException>(() => Currency.Of(code));
            Assert.Contains("this one " + reason, refusal.Message, StringComparison.Ordinal);
        }
    }

    // Withdrawn by the same reprint: BGN 2026-01, ANG 2025-03, SLL 2023-12, HRK 2023-01, CUC 2021-06, STD 2017-12, DEM 2002-03.
    // CNH is no code of the list.
    [Theory]
    [InlineData("BGN")]
    [InlineData("ANG")]
    [InlineData("SLL")]
    [InlineData("HRK")]
    [InlineData("CUC")]
    [InlineData("STD")]
    [InlineData("DEM")]
    [InlineData("CNH")]
    [InlineData("usd")]
    [InlineData("US$")]
    [InlineData("")]
    [Evidence(Basis.Cited, "ISO 4217 list three, codes withdrawn, in the same reprint")]
    public void Withdrawn_codes_and_other_texts_are_refused(string code)
    {
        Assert.False(Currency.TryOf(code, out Currency? currency));
        Assert.Null(currency);
        Assert.Contains("'" + code + "'", Assert.Throws<ArgumentException>(() => Currency.Of(code)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("JPY", "1", "-2", "12")]
    [InlineData("KWD", "0.001", "-1.501", "12.346")]
    [InlineData("CHF", "0.01", "-1.50", "12.35")]
    [Evidence(Basis.Cited, "ISO 4217 minor units; halves away from zero, rounded by hand")]
    public void Amounts_are_rounded_to_the_minor_unit(string code, string smallest, string negative, string positive)
    {
        Currency currency = Currency.Of(code);
        Assert.Equal(Number(smallest), currency.SmallestAmount);
        Assert.Equal(Number(negative), currency.Round(-1.5005m));
        Assert.Equal(Number(positive), currency.Round(12.3456m));
        Assert.True(currency.Fits(Number(positive)));
        Assert.False(currency.Fits(Number(positive) + (Number(smallest) / 10)));
        Assert.Equal(positive + " " + code, currency.Text(12.3456m));
    }

    [Theory]
    [InlineData("USD", "36.5", "36.50")]
    [InlineData("USD", "0.0425", "0.0425")]
    [InlineData("USD", "0.04255", "0.0426")]
    [InlineData("JPY", "1200", "1200")]
    [InlineData("JPY", "0.25", "0.25")]
    [InlineData("KWD", "12.5", "12.500")]
    [InlineData("KWD", "0.12345", "0.12345")]
    [Evidence(Basis.Cited, "ISO 4217 minor units; a rate has up to two decimals more than its currency, rounded by hand")]
    public void Rates_have_the_decimals_of_the_currency_and_up_to_two_more(string code, string rate, string text) =>
        Assert.Equal(text, Currency.Of(code).Rate(Number(rate)));

    [Fact]
    [Evidence(Basis.Identity, "the least subtotal: after a rounded share of it the net is left, and one minor unit less leaves less")]
    public void What_stands_before_a_discount_is_the_least_that_leaves_the_net()
    {
        foreach (Currency currency in new[] { Currency.Of("JPY"), Currency.Of("USD"), Currency.Of("KWD") })
        {
            for (int i = 1; i < 400; i++)
            {
                decimal net = i * 37 * currency.SmallestAmount;
                decimal share = i % 95 / 100m;
                decimal before = currency.Before(share, net);
                Assert.Equal(net, before - currency.Round(before * share));
                decimal less = before - currency.SmallestAmount;
                Assert.True(less - currency.Round(less * share) < net);
            }

            Assert.Equal(currency.SmallestAmount, currency.RoundUp(currency.SmallestAmount / 7));
            Assert.Equal(5 * currency.SmallestAmount, currency.RoundUp(5 * currency.SmallestAmount));
        }
    }

    private static decimal Number(string text) => decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static string Figures(int number) => number.ToString(System.Globalization.CultureInfo.InvariantCulture);
}

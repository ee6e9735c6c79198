using System;
using System.Globalization;
using Refinish.Coverage;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Foundation;

public class GuardTests
{
    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    [Evidence(Basis.Contract, "the message names parameter, value as given, unit and range, and is the same under every culture")]
    public void Messages_name_everything_under_every_culture(string culture)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = new CultureInfo(culture);
        try
        {
            ArgumentOutOfRangeException error = Assert.Throws<ArgumentOutOfRangeException>(
                () => Guard.Within(Length.FromInches(-12.5), Bounds.Positive(Measure.Length, 3), "depth"));
            Assert.StartsWith("depth is -317.5 mm (given as -12.5 in); allowed: more than 0 mm and at most 3000 mm.", error.Message, StringComparison.Ordinal);
            Assert.Equal("depth", error.ParamName);
            Assert.Equal("-12.5 in", error.ActualValue);

            // A number that is given in the unit of the message is said once, and digits are not grouped.
            Assert.StartsWith("depth is 5300 mm; allowed", Assert.Throws<ArgumentOutOfRangeException>(
                () => Guard.Within(Length.FromMillimeters(5300), Bounds.Positive(Measure.Length, 3), "depth")).Message, StringComparison.Ordinal);
            Assert.Contains("(given as 1200 in)", Assert.Throws<ArgumentOutOfRangeException>(
                () => Guard.Within(Length.FromInches(1200), Bounds.Positive(Measure.Length, 3), "depth")).Message, StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    [Evidence(Basis.Contract, "NaN and the infinities are refused by every kind of range")]
    public void What_is_no_number_is_refused(double value)
    {
        Numbers.Refuses("x", () => Guard.Within(value, Bounds.Positive(Measure.Number), "x"));
        Numbers.Refuses("x", () => Guard.Within(value, Bounds.NotNegative(Measure.Number), "x"));
        Numbers.Refuses("x", () => Guard.Within(value, Bounds.Between(double.MinValue, double.MaxValue, Measure.Number), "x"));
        Numbers.Refuses("x", () => Guard.Within(value, Bounds.Below(0, 1, Measure.Number), "x"));
        Numbers.Refuses("x", () => Guard.Within(value, Bounds.Above(0, 1, Measure.Number), "x"));
    }

    [Fact]
    [Evidence(Basis.Contract, "open ends exclude, closed ends include")]
    public void Ends_are_open_or_closed_as_said()
    {
        Assert.Equal(1, Guard.Within(1, Bounds.Above(0, 1, Measure.Number), "x"));
        Assert.Equal(0, Guard.Within(0, Bounds.Below(0, 1, Measure.Number), "x"));
        Numbers.Refuses("x", () => Guard.Within(0, Bounds.Above(0, 1, Measure.Number), "x"));
        Numbers.Refuses("x", () => Guard.Within(1, Bounds.Below(0, 1, Measure.Number), "x"));
    }

    [Fact]
    [Evidence(Basis.Contract, "names, lists, enumerations and money are checked like numbers")]
    public void Names_lists_enumerations_and_money_are_checked()
    {
        Assert.Throws<ArgumentException>(() => Guard.Named("  ", "name"));
        Assert.Throws<ArgumentNullException>(() => Guard.Named(null, "name"));
        Assert.Throws<ArgumentException>(() => Guard.List<string>([], 1, "list"));
        Assert.Throws<ArgumentException>(() => Guard.List(["a", null!], name: "list"));
        Numbers.Refuses("hazard", () => Guard.Defined((Hazard)99, "hazard"));
        Numbers.Refuses("price", () => Guard.Money(-0.01m, name: "price"));
        Numbers.Refuses("price", () => Guard.Money(0, false, "price"));
        Numbers.Refuses("count", () => Guard.Count(0, 1, 3, "count"));
    }

    [Fact]
    [Evidence(Basis.Contract, "half of a surrogate pair is no character, so no text that is stored can hold it: refused where the text comes in, with its place")]
    public void Half_of_a_character_is_refused()
    {
        const string Tub = "\ud83d\udec1";
        Refused("bath " + Tub[0], 6);
        Refused(Tub[1] + " bath", 1);
        Refused("a" + Tub[0] + "b", 2);
        Refused(Tub + Tub[0] + Tub, 3);
        Assert.Equal("bath " + Tub, Guard.Named("bath " + Tub, "name"));
        Assert.Equal("bath " + Tub, Guard.Id("bath " + Tub, "id"));

        static void Refused(string text, int place)
        {
            ArgumentException error = Assert.Throws<ArgumentException>(() => Guard.Named(text, "name"));
            Assert.StartsWith(
                "name holds half of a character at place " + place.ToString(CultureInfo.InvariantCulture) + ",", error.Message, StringComparison.Ordinal);
            Assert.Equal("name", error.ParamName);
            Assert.Throws<ArgumentException>(() => Guard.Id(text, "id"));
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData(" tub")]
    [InlineData("tub ")]
    [InlineData("tub/sink")]
    [InlineData("tub\nsink")]
    [InlineData("tub\u0085")]
    [Evidence(Basis.Contract, "an identity has 1 to 100 characters, no slash, no control characters, no white space at either end")]
    public void Refuses_what_is_no_identity(string id)
    {
        ArgumentException error = Assert.Throws<ArgumentException>(() => new CoatedSurface(id, Area.FromSquareMeters(1)));
        Assert.Equal("id", error.ParamName);
        Assert.Throws<ArgumentException>(() => new CoatedSurface(new string('a', 101), Area.FromSquareMeters(1)));
        Assert.Throws<ArgumentNullException>(() => new CoatedSurface(null!, Area.FromSquareMeters(1)));
        Assert.Equal("hall bath, tub #2", new CoatedSurface("hall bath, tub #2", Area.FromSquareMeters(1)).Id);
    }
}

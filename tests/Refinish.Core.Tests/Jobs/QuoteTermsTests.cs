using System;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

public class QuoteTermsTests
{
    private static readonly QuoteTerms Terms = new()
    {
        Number = "Q-7",
        Revision = "2",
        Issued = new DateTimeOffset(2027, 2, 27, 22, 30, 0, TimeSpan.FromHours(-5)),
        ValidFor = 3,
    };

    [Fact]
    [Evidence(Basis.Independent, "by the calendar: three days after 27 February 2027 is 2 March; the last day ends at midnight on the clock of the issue, 05:00 of universal time")]
    public void A_quote_holds_to_the_end_of_its_last_day()
    {
        Assert.Equal(new DateTime(2027, 3, 2), Terms.ValidUntil);
        Assert.True(Terms.HoldsAt(new DateTimeOffset(2027, 3, 3, 4, 59, 59, TimeSpan.Zero)));
        Assert.False(Terms.HoldsAt(new DateTimeOffset(2027, 3, 3, 5, 0, 0, TimeSpan.Zero)));
        Assert.False(Terms.HoldsAt(Terms.Issued!.Value.AddSeconds(-1)));
        Assert.True(Terms.HoldsAt(Terms.Issued.Value));
        Assert.Equal("Q-7, revision 2, of 2027-02-27, holds until 2027-03-02", Terms.ToString());
    }

    [Fact]
    [Evidence(Basis.Contract, "what is not agreed is not said")]
    public void Nothing_is_agreed_unless_given()
    {
        QuoteTerms none = QuoteTerms.None;
        Assert.Null(none.ValidUntil);
        Assert.Null(none.HoldsAt(DateTimeOffset.MinValue));
        Assert.Null((Terms with { Issued = null }).HoldsAt(DateTimeOffset.MinValue));
        Assert.Empty(none.Payments);
        Assert.Equal(PricesShown.Net, none.PricesShown);
        Assert.Equal(new QuoteTerms(), none);
        Assert.Equal(Terms, Terms with { Number = "Q-7" });
        Assert.NotEqual(Terms, Terms with { Revision = "3" });
        Assert.Equal(
            Terms with { Payments = [PaymentStage.OfRest("rest", PaymentDue.OnCompletion)], Discount = Discount.Of(Ratio.FromPercent(5)) },
            Terms with { Payments = [PaymentStage.OfRest("rest", PaymentDue.OnCompletion)], Discount = Discount.Of(Ratio.FromPercent(5)) });
    }

    [Fact]
    [Evidence(Basis.Contract, "wrong terms are refused with parameter and range")]
    public void Wrong_terms_are_refused()
    {
        Numbers.Refuses("ValidFor", () => _ = new QuoteTerms { ValidFor = -1 });
        Numbers.Refuses("ValidFor", () => _ = new QuoteTerms { ValidFor = 3651 });
        Numbers.Refuses("Issued", () => _ = new QuoteTerms { Issued = new DateTimeOffset(1899, 1, 1, 0, 0, 0, TimeSpan.Zero) });
        Assert.Throws<ArgumentException>(() => _ = new QuoteTerms { Number = " " });
        Assert.Throws<ArgumentException>(() => _ = new QuoteTerms { Revision = string.Empty });
        Assert.Throws<ArgumentOutOfRangeException>(() => _ = new QuoteTerms { PricesShown = (PricesShown)7 });
        Assert.Throws<ArgumentNullException>(() => _ = new QuoteTerms { Payments = null! });
    }
}

using System;
using Refinish.Estimating;
using Refinish.Jobs;
using UnitsNet;
using static Refinish.Json.Shapes.Quantities;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>What is agreed with the customer.</summary>
internal static class QuoteShapes
{
    private static readonly Shape<PaymentDue> Due = new WordShape<PaymentDue>();

    public static OneOfShape<Discount> Discount { get; } = new OneOfShape<Discount>("discount")
        .Or("share", ShareOff(), discount => discount.Amount is null)
        .Or("amount", AmountOff(), discount => discount.Amount is not null);

    public static OneOfShape<PaymentStage> Stage { get; } = new OneOfShape<PaymentStage>("paymentStage")
        .Or("rest", Rest(), stage => stage.IsRest)
        .Or("share", Share(), stage => stage.Share is not null)
        .Or("amount", Amount(), stage => stage.Amount is not null);

    public static ObjectShape<QuoteTerms> Terms { get; } = new Fields<QuoteTerms>("quoteTerms")
        .MaybeOf("number", Text, it => it.Number, (it, number) => it with { Number = number })
        .MaybeOf("revision", Text, it => it.Revision, (it, revision) => it with { Revision = revision })
        .Maybe("issued", Times.Instant, it => it.Issued, (it, issued) => it with { Issued = issued })
        .Maybe("validFor", Count, it => it.ValidFor, (it, days) => it with { ValidFor = days })
        .MaybeOf("discount", Discount, it => it.Discount, (it, discount) => it with { Discount = discount })
        .MaybeOf("exemption", TaxShapes.Exemption, it => it.Exemption, (it, exemption) => it with { Exemption = exemption })
        .Optional("holdMargin", YesNo, it => it.HoldMargin, (it, hold) => it with { HoldMargin = hold })
        .Optional("payments", List(Stage), it => it.Payments, (it, payments) => it with { Payments = payments })
        .Optional("pricesShown", new WordShape<PricesShown>(), it => it.PricesShown, (it, shown) => it with { PricesShown = shown })
        .Making(_ => new QuoteTerms());

    public static ObjectShape<DepositLimit> Deposit { get; } = new Fields<DepositLimit>("depositLimit")
        .With("share", Percent.OrNull(), it => it.Share, out Slot<Ratio?> share)
        .With("amount", Scalars.Money.OrNull(), it => it.Amount, out Slot<decimal?> amount)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .WithOr("until", Due, it => it.Until, PaymentDue.AtStart, out Slot<PaymentDue> until)
        .MakingTogether(
            () => new DepositLimit(Ratio.FromPercent(10), null, Source.Invented("stand-in")),
            v => new DepositLimit(share(v), amount(v), source(v), until(v)));

    private static ObjectShape<Discount> ShareOff() => Agreed(new Fields<Discount>("discountByShare")
        .With("share", Percent, it => it.Share, out Slot<Ratio> share))
        .Making(v => Estimating.Discount.Of(share(v)));

    private static ObjectShape<Discount> AmountOff() => Agreed(new Fields<Discount>("discountByAmount")
        .With("amount", Scalars.Money, it => it.Amount!.Value, out Slot<decimal> amount))
        .Making(v => Estimating.Discount.Of(amount(v)));

    private static Fields<Discount> Agreed(Fields<Discount> fields) => fields
        .Optional("mayUndercutMinimum", YesNo, it => it.MayUndercutMinimum, (it, may) => it with { MayUndercutMinimum = may })
        .Optional("reason", Text, it => it.Reason, (it, reason) => it with { Reason = reason });

    private static ObjectShape<PaymentStage> Share() => Begin("paymentByShare", out Slot<string> id, out Slot<PaymentDue> due,
        out Slot<int> days)
        .With("share", Percent, it => it.Share!.Value, out Slot<Ratio> share)
        .MakingTogether(StandIn, v => PaymentStage.OfShare(id(v), due(v), share(v)) with { Days = days(v) });

    private static ObjectShape<PaymentStage> Amount() => Begin("paymentByAmount", out Slot<string> id, out Slot<PaymentDue> due,
        out Slot<int> days)
        .With("amount", Scalars.Money, it => it.Amount!.Value, out Slot<decimal> amount)
        .MakingTogether(StandIn, v => PaymentStage.OfAmount(id(v), due(v), amount(v)) with { Days = days(v) });

    private static ObjectShape<PaymentStage> Rest() => Begin("paymentOfRest", out Slot<string> id, out Slot<PaymentDue> due,
        out Slot<int> days)
        .MakingTogether(StandIn, v => PaymentStage.OfRest(id(v), due(v)) with { Days = days(v) });

    private static PaymentStage StandIn() => PaymentStage.OfRest("stand-in", PaymentDue.OnCompletion);

    // How many days only makes sense after completion.
    private static Fields<PaymentStage> Begin(string name, out Slot<string> id, out Slot<PaymentDue> due, out Slot<int> days) =>
        new Fields<PaymentStage>(name)
        .With("id", Text, it => it.Id, out id)
        .MaybeOf("name", Text, it => Said.Name(it.Name, it.Id, it, one => one with { Name = one.Name }),
            (it, name) => it with { Name = name })
        .With("due", Due, it => it.Due, out due)
        .WithOr("days", Count, it => it.Days, 0, out days);
}

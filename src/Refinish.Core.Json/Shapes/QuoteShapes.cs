using System;
using Refinish.Estimating;
using Refinish.Jobs;
using UnitsNet;

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
        .MaybeOf("number", Scalars.Text, terms => terms.Number, (terms, number) => terms with { Number = number })
        .MaybeOf("revision", Scalars.Text, terms => terms.Revision, (terms, revision) => terms with { Revision = revision })
        .Maybe("issued", Times.Instant, terms => terms.Issued, (terms, issued) => terms with { Issued = issued })
        .Maybe("validFor", Scalars.Count, terms => terms.ValidFor, (terms, days) => terms with { ValidFor = days })
        .MaybeOf("discount", Discount, terms => terms.Discount, (terms, discount) => terms with { Discount = discount })
        .MaybeOf("exemption", TaxShapes.Exemption, terms => terms.Exemption, (terms, exemption) => terms with { Exemption = exemption })
        .Optional("holdMargin", Scalars.YesNo, terms => terms.HoldMargin, (terms, hold) => terms with { HoldMargin = hold })
        .Optional("payments", CommonShapes.List(Stage), terms => terms.Payments, (terms, payments) => terms with { Payments = payments })
        .Optional("pricesShown", new WordShape<PricesShown>(), terms => terms.PricesShown, (terms, shown) =>
            terms with { PricesShown = shown })
        .Making(_ => new QuoteTerms());

    public static ObjectShape<DepositLimit> Deposit { get; } = new Fields<DepositLimit>("depositLimit")
        .With("share", Quantities.Percent.OrNull(), limit => limit.Share, out Slot<Ratio?> share)
        .With("amount", Scalars.Money.OrNull(), limit => limit.Amount, out Slot<decimal?> amount)
        .With("source", CommonShapes.Source, limit => limit.Source, out Slot<Source> source)
        .WithOr("until", Due, limit => limit.Until, PaymentDue.AtStart, out Slot<PaymentDue> until)
        .MakingTogether(
            () => new DepositLimit(Ratio.FromPercent(10), null, Source.Invented("stand-in")),
            v => new DepositLimit(share(v), amount(v), source(v), until(v)));

    private static ObjectShape<Discount> ShareOff() => Agreed(new Fields<Discount>("discountByShare")
        .With("share", Quantities.Percent, discount => discount.Share, out Slot<Ratio> share))
        .Making(v => Estimating.Discount.Of(share(v)));

    private static ObjectShape<Discount> AmountOff() => Agreed(new Fields<Discount>("discountByAmount")
        .With("amount", Scalars.Money, discount => discount.Amount!.Value, out Slot<decimal> amount))
        .Making(v => Estimating.Discount.Of(amount(v)));

    private static Fields<Discount> Agreed(Fields<Discount> fields) => fields
        .Optional("mayUndercutMinimum", Scalars.YesNo, discount => discount.MayUndercutMinimum, (discount, may) =>
            discount with { MayUndercutMinimum = may })
        .Optional("reason", Scalars.Text, discount => discount.Reason, (discount, reason) => discount with { Reason = reason });

    private static ObjectShape<PaymentStage> Share() => Begin("paymentByShare", out Slot<string> id, out Slot<PaymentDue> due,
        out Slot<int> days)
        .With("share", Quantities.Percent, stage => stage.Share!.Value, out Slot<Ratio> share)
        .MakingTogether(StandIn, v => PaymentStage.OfShare(id(v), due(v), share(v)) with { Days = days(v) });

    private static ObjectShape<PaymentStage> Amount() => Begin("paymentByAmount", out Slot<string> id, out Slot<PaymentDue> due,
        out Slot<int> days)
        .With("amount", Scalars.Money, stage => stage.Amount!.Value, out Slot<decimal> amount)
        .MakingTogether(StandIn, v => PaymentStage.OfAmount(id(v), due(v), amount(v)) with { Days = days(v) });

    private static ObjectShape<PaymentStage> Rest() => Begin("paymentOfRest", out Slot<string> id, out Slot<PaymentDue> due,
        out Slot<int> days)
        .MakingTogether(StandIn, v => PaymentStage.OfRest(id(v), due(v)) with { Days = days(v) });

    private static PaymentStage StandIn() => PaymentStage.OfRest("stand-in", PaymentDue.OnCompletion);

    // How many days only makes sense after completion.
    private static Fields<PaymentStage> Begin(string name, out Slot<string> id, out Slot<PaymentDue> due, out Slot<int> days) =>
        new Fields<PaymentStage>(name)
        .With("id", Scalars.Text, stage => stage.Id, out id)
        .MaybeOf("name", Scalars.Text, stage => Said.Name(stage.Name, stage.Id, stage, one => one with { Name = one.Name }), (stage,
            name) => stage with { Name = name })
        .With("due", Due, stage => stage.Due, out due)
        .WithOr("days", Scalars.Count, stage => stage.Days, 0, out days);
}

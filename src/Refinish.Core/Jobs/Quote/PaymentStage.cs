using System;
using System.Globalization;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>One stage of payment: a share of the total with tax, an amount, or the rest.</summary>
/// <example><code>
/// PaymentStage deposit = PaymentStage.OfShare("deposit", PaymentDue.OnAcceptance, Ratio.FromPercent(10));
/// PaymentStage tools = PaymentStage.OfAmount("start", PaymentDue.AtStart, 200m);
/// PaymentStage rest = PaymentStage.OfRest("rest", PaymentDue.AfterCompletion) with { Days = 14 };
/// </code></example>
public sealed record PaymentStage
{

    private PaymentStage(string id, PaymentDue due, decimal? share, decimal? amount)
    {
        Id = Guard.Id(id);
        Due = Guard.Defined(due);
        Fraction = share;
        Amount = amount;
    }

    /// <summary>Identity, unique within the terms.</summary>
    public string Id { get; }

    /// <summary>When it falls due.</summary>
    public PaymentDue Due { get; }

    /// <summary>What the customer reads; the identity unless given.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public string Name { get => field ?? Id; init => field = Guard.Named(value); }

    /// <summary>Share of the total with tax; <see langword="null"/> for an amount and for the rest.</summary>
    public Ratio? Share => Fraction is decimal share ? Ratio.FromDecimalFractions((double)share) : null;

    /// <summary>Amount with tax; <see langword="null"/> for a share and for the rest.</summary>
    public decimal? Amount { get; }

    /// <summary>Whether it takes what the stages before it leave.</summary>
    public bool IsRest => Fraction is null && Amount is null;

    /// <summary>Days after completion, 0 to 3650; 0 unless given. Only where it falls due after completion.</summary>
    /// <exception cref="ArgumentException">Given for a stage that falls due at another time.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int Days
    {
        get;
        init => field = Guard.Count(value, 0, 3650) == 0 || Due == PaymentDue.AfterCompletion
            ? value
            : throw new ArgumentException("Days is " + Figures.Fixed(value, 0) + " for a stage that falls due " + InWords(Due)
                + "; allowed: 0, or a stage that falls due after completion.", nameof(Days));
    }

    /// <summary>When it falls due, in words, such as <c>14 days after completion</c>.</summary>
    public string When => Due == PaymentDue.AfterCompletion
        ? Figures.Fixed(Days, 0) + (Days == 1 ? " day" : " days") + " after completion"
        : InWords(Due);

    internal decimal? Fraction { get; }

    /// <summary>A share of the total with tax, rounded down to the currency or to its coin.</summary>
    /// <param name="id">Identity, unique within the terms.</param>
    /// <param name="due">When it falls due.</param>
    /// <param name="share">Share, 0.0001 to 100 %.</param>
    /// <returns>The stage.</returns>
    /// <exception cref="ArgumentException"><paramref name="id"/> is no identity.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="share"/> is outside its range, or <paramref name="due"/> is not a named value.
    /// </exception>
    public static PaymentStage OfShare(string id, PaymentDue due, Ratio share) =>
        new(id, due, Money.Fraction(share, Bounds.Between(1e-6, 1, Measure.Percent), nameof(share)), null);

    /// <summary>An amount with tax.</summary>
    /// <param name="id">Identity, unique within the terms.</param>
    /// <param name="due">When it falls due.</param>
    /// <param name="amount">
    /// Amount in the currency of the price book, more than 0 and at most 10¹². Whether it fits the currency and the total shows when it is
    /// quoted.
    /// </param>
    /// <returns>The stage.</returns>
    /// <exception cref="ArgumentException"><paramref name="id"/> is no identity.</exception>
    /// <exception cref="ArgumentOutOfRangeException">
    /// <paramref name="amount"/> is outside its range, or <paramref name="due"/> is not a named value.
    /// </exception>
    public static PaymentStage OfAmount(string id, PaymentDue due, decimal amount) =>
        new(id, due, null, Money.Amount(amount, nameof(amount), zeroAllowed: false));

    /// <summary>What the other stages leave; the last stage of the terms.</summary>
    /// <param name="id">Identity, unique within the terms.</param>
    /// <param name="due">When it falls due.</param>
    /// <returns>The stage.</returns>
    /// <exception cref="ArgumentException"><paramref name="id"/> is no identity.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="due"/> is not a named value.</exception>
    public static PaymentStage OfRest(string id, PaymentDue due) => new(id, due, null, null);

    /// <summary>Name, amount or share, and when it falls due.</summary>
    /// <returns>Text such as <c>deposit: 10 % on acceptance</c>.</returns>
    public override string ToString() => Name + ": "
        + (Fraction is decimal share ? Measure.Percent.Format((double)share)
            : Amount is decimal amount ? amount.ToString(CultureInfo.InvariantCulture)
            : "the rest")
        + " " + When;

    /// <summary>Whether it falls due before another.</summary>
    internal bool IsBefore(PaymentStage other) => Due == other.Due ? Days < other.Days : Due < other.Due;

    private static string InWords(PaymentDue due) => due switch
    {
        PaymentDue.OnAcceptance => "on acceptance",
        PaymentDue.AtStart => "at the start",
        PaymentDue.OnCompletion => "on completion",
        _ => "after completion",
    };
}

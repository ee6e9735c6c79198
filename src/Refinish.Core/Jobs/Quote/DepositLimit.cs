using System;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>
/// The most that may be asked for before the work has begun, as the shop states it for the place where it works: a share of the total with
/// tax, an amount, or the lesser of both. Whether a law applies to a job is for the shop and its adviser.
/// </summary>
/// <example><code>
/// DepositLimit limit = new(Ratio.FromPercent(10), 1000m, Source.Published("California Business and Professions Code", "§ 7159.5 (a)(3), read second-hand"));
/// decimal most = limit.MostOf(4200m);   // 420
/// </code></example>
public sealed record DepositLimit
{
    private readonly decimal? share;

    /// <summary>States a limit.</summary>
    /// <param name="share">Share of the total with tax, 0 to 100 %; <see langword="null"/> when only an amount counts.</param>
    /// <param name="amount">Amount, 0 to 10¹²; <see langword="null"/> when only a share counts.</param>
    /// <param name="source">What says so.</param>
    /// <exception cref="ArgumentException">Neither a share nor an amount is given.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public DepositLimit(Ratio? share, decimal? amount, Source source) : this(share, amount, source, PaymentDue.AtStart)
    {
    }

    /// <summary>States a limit that counts until another moment than the start of the work.</summary>
    /// <param name="share">Share of the total with tax, 0 to 100 %; <see langword="null"/> when only an amount counts.</param>
    /// <param name="amount">Amount, 0 to 10¹²; <see langword="null"/> when only a share counts.</param>
    /// <param name="source">What says so.</param>
    /// <param name="until">The last moment whose payments count.</param>
    /// <exception cref="ArgumentException">Neither a share nor an amount is given.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or the moment is not a named value.</exception>
    public DepositLimit(Ratio? share, decimal? amount, Source source, PaymentDue until)
    {
        Until = Guard.Defined(until);
        this.share = share is Ratio part ? Money.Fraction(part, Bounds.NotNegative(Measure.Percent, 1), nameof(share)) : null;
        Amount = Money.Amount(amount, nameof(amount));
        Source = Guard.NotNull(source);
        if (share is null && amount is null)
        {
            throw new ArgumentException("share and amount are both left out; allowed: one of them, or both for the lesser.", nameof(share));
        }
    }

    /// <summary>Share of the total with tax; <see langword="null"/> when only an amount counts.</summary>
    public Ratio? Share => share is decimal part ? Ratio.FromDecimalFractions((double)part) : null;

    /// <summary>Amount; <see langword="null"/> when only a share counts.</summary>
    public decimal? Amount { get; }

    /// <summary>What says so.</summary>
    public Source Source { get; }

    /// <summary>
    /// The last moment whose payments count; the start of the work unless given, since nothing is done by then. Payments that fall due
    /// later do not count.
    /// </summary>
    public PaymentDue Until { get; }

    /// <summary>The most that may be asked for.</summary>
    /// <param name="total">Total with tax, 0 to 10¹².</param>
    /// <returns>The lesser of share and amount, not rounded.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="total"/> is outside its range.</exception>
    public decimal MostOf(decimal total)
    {
        Money.Amount(total, nameof(total));
        return Math.Min(share is decimal part ? part * total : decimal.MaxValue, Amount ?? decimal.MaxValue);
    }

    /// <summary>Share, amount and source.</summary>
    /// <returns>Text such as <c>at most 10 % or 1000, whichever is less</c>.</returns>
    public override string ToString() => "at most "
        + (share is decimal part ? Measure.Percent.Format((double)part) : string.Empty)
        + (share is not null && Amount is not null ? " or " : string.Empty)
        + (Amount is decimal amount ? amount.ToString(System.Globalization.CultureInfo.InvariantCulture) : string.Empty)
        + (share is not null && Amount is not null ? ", whichever is less" : string.Empty)
        + " (" + Source + ")";
}

using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>
/// What is agreed with the customer beside the work: discount, exemption from tax, stages of payment, how long the quote holds. Nothing is
/// agreed unless given.
/// </summary>
/// <example><code>
/// QuoteTerms terms = new()
/// {
///     Number = "Q-1042",
///     Issued = new DateTimeOffset(2027, 3, 1, 9, 0, 0, TimeSpan.Zero),
///     ValidFor = 30,
///     Discount = Discount.Of(Ratio.FromPercent(5)),
///     Payments =
///     [
///         PaymentStage.OfShare("deposit", PaymentDue.OnAcceptance, Ratio.FromPercent(10)),
///         PaymentStage.OfRest("rest", PaymentDue.OnCompletion),
///     ],
/// };
/// DateTime? last = terms.ValidUntil;   // the 31st of March 2027
/// </code></example>
public sealed record QuoteTerms
{
    /// <summary>Nothing agreed.</summary>
    public static QuoteTerms None { get; } = new();

    /// <summary>Number of the quote in the host's books; it rides along. <see langword="null"/> unless given.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public string? Number { get; init => field = value is null ? null : Guard.Named(value); }

    /// <summary>Revision of the quote as the host counts them; it rides along. <see langword="null"/> unless given.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public string? Revision { get; init => field = value is null ? null : Guard.Named(value); }

    /// <summary>
    /// When the quote is handed out, in the years 1900 to 2200; <see langword="null"/> unless given. Its offset is the clock of the
    /// customer.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside those years.</exception>
    public DateTimeOffset? Issued
    {
        get;
        init
        {
            if (value is DateTimeOffset instant)
            {
                Guard.Count(instant.Year, 1900, 2200, nameof(Issued));
            }

            field = value;
        }
    }

    /// <summary>
    /// For how many days after the day of issue the quote holds, 0 to 3650; <see langword="null"/>, not agreed, unless given.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int? ValidFor { get; init => field = value is int days ? Guard.Count(days, 0, 3650, nameof(ValidFor)) : null; }

    /// <summary>The discount; none unless given.</summary>
    public Discount? Discount { get; init; }

    /// <summary>Why the customer pays no tax, or not every tax; <see langword="null"/> for a customer who pays all of it.</summary>
    public TaxExemption? Exemption { get; init; }

    /// <summary>
    /// Whether the price is set so that the target margin, neither less nor more, is left over every cost after the discount: a discount
    /// raises it, an option or extra whose fixed price earns more lowers it. It is not unless given.
    /// </summary>
    public bool HoldMargin { get; init; }

    /// <summary>
    /// The stages of payment in the order in which they fall due; the last takes the rest, and none before it does. Empty, nothing agreed,
    /// unless given.
    /// </summary>
    /// <exception cref="ArgumentException">
    /// An entry is missing, two have one identity, one falls due before the entry ahead of it, the last is not the rest or another is, or
    /// the shares are more than the whole.
    /// </exception>
    public IReadOnlyList<PaymentStage> Payments { get; init => field = InOrder(value, nameof(Payments)); } = ValueList<PaymentStage>.Empty;

    /// <summary>Whether prices of single items are shown net or with tax; net unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public PricesShown PricesShown { get; init => field = Guard.Defined(value); }

    /// <summary>
    /// The last day on which the quote holds, on the clock of <see cref="Issued"/>; <see langword="null"/> when day of issue or validity is
    /// not agreed.
    /// </summary>
    public DateTime? ValidUntil => Issued is DateTimeOffset issued && ValidFor is int days ? issued.Date.AddDays(days) : null;

    /// <summary>Whether the quote holds at an instant: from its issue to the end of its last day.</summary>
    /// <param name="moment">The instant.</param>
    /// <returns><see langword="null"/> when day of issue or validity is not agreed.</returns>
    public bool? HoldsAt(DateTimeOffset moment) =>
        ValidUntil is DateTime last ? moment >= Issued!.Value && moment.ToOffset(Issued.Value.Offset).Date <= last : null;

    /// <summary>Number, revision, date and validity, as far as they are agreed.</summary>
    /// <returns>One line of text; <c>quote</c> where none of them is.</returns>
    public override string ToString() => Said.Length > 0 ? Said : "quote";

    /// <summary>Number, revision, date and validity; empty where none is agreed.</summary>
    internal string Said => string.Join(", ", new[]
    {
        Number,
        Revision is null ? null : "revision " + Revision,
        Issued is DateTimeOffset issued ? "of " + issued.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : null,
        ValidUntil is DateTime last ? "holds until " + last.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : null,
    }.Where(part => part is not null));

    /// <summary>Stages of one quote, or a refusal that names the parameter.</summary>
    internal static ValueList<PaymentStage> InOrder(IReadOnlyList<PaymentStage> value, string name)
    {
        ValueList<PaymentStage> stages = Unique.Ids(Guard.List(value, name: name), stage => stage.Id, name);
        for (int i = 0; i < stages.Count; i++)
        {
            bool isLast = i == stages.Count - 1;
            if (stages[i].IsRest != isLast)
            {
                throw new ArgumentException(name + (isLast
                    ? " ends with '" + stages[i].Id + "', which asks for a share or an amount; allowed: a last stage that takes the rest."
                    : " lets '" + stages[i].Id + "' take the rest before the last stage; allowed: the last stage only."), name);
            }

            if (i > 0 && stages[i].IsBefore(stages[i - 1]))
            {
                throw new ArgumentException(name + " lists '" + stages[i].Id + "', due " + stages[i].When + ", after '" + stages[i - 1].Id
                    + "', due "
                    + stages[i - 1].When + "; allowed: stages in the order in which they fall due.", name);
            }
        }

        // Six sixths are a hair more than the whole in fifteen figures.
        decimal shares = stages.Sum(stage => stage.Fraction ?? 0);
        return shares <= 1.000000000001m
            ? stages
            : throw new ArgumentException(name + " asks for shares of " + Measure.Percent.Format((double)shares)
                + " together; allowed: at most 100 %.", name);
    }
}

using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Jobs;

/// <summary>One fixture of a customer's quote, with its options and extras under it.</summary>
public sealed record QuotedFixture
{
    internal QuotedFixture(QuoteItem work, IReadOnlyList<QuoteItem> extras)
    {
        Work = work;
        Extras = extras;
    }

    /// <summary>Id of the fixture.</summary>
    public string Id => Work.Code;

    /// <summary>What the customer calls it.</summary>
    public string Name => Work.Description;

    /// <summary>The refinishing itself.</summary>
    public QuoteItem Work { get; }

    /// <summary>Its options and what else was added for it, options first, by id.</summary>
    public IReadOnlyList<QuoteItem> Extras { get; }

    /// <summary>Work and extras before discount and tax.</summary>
    public decimal Price => Work.Price + Extras.Sum(item => item.Price);

    /// <summary>Work and extras less discount, with tax.</summary>
    public decimal WithTax => Work.WithTax + Extras.Sum(item => item.WithTax);

    /// <summary>The taxes in <see cref="WithTax"/>.</summary>
    public decimal Tax => Work.Tax + Extras.Sum(item => item.Tax);

    /// <summary>Name and price before discount and tax.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ": " + Price.ToString(System.Globalization.CultureInfo.InvariantCulture);
}

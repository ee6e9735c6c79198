using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Estimating;

/// <summary>Why a customer pays no tax, or not every tax: a reseller, a public body, a reverse charge.</summary>
/// <example><code>
/// TaxExemption reseller = new() { Reason = "resale certificate on file (invented)" };
/// </code></example>
public sealed record TaxExemption
{
    /// <summary>The reason or certificate, as it is to stand on the quote.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Reason { get; init => field = Guard.Named(value); }

    /// <summary>Codes of the rates that are not charged; <see langword="null"/>, all of them, when left out.</summary>
    /// <exception cref="ArgumentException">The list is empty, or an entry is no identity.</exception>
    public IReadOnlyList<string>? Codes
    {
        get;
        init
        {
            foreach (string code in value ?? [])
            {
                Guard.Id(code, nameof(Codes));
            }

            field = value is null ? null
                : value.Count > 0 ? new ValueList<string>(value)
                : throw new ArgumentException("Codes is empty, so that no tax would be left out; leave it out to exempt from all of them.",
                    nameof(Codes));
        }
    }

    internal bool Covers(TaxRate rate) => Codes is null || Codes.Contains(rate.Code);

    /// <summary>The reason.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Reason;
}

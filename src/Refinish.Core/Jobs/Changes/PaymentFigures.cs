using System;
using System.Globalization;

namespace Refinish.Jobs;

/// <summary>One stage of payment in figures.</summary>
public sealed record PaymentFigures
{
    /// <summary>Identity of the stage.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Id { get; init => field = Guard.Named(value); }

    /// <summary>What the customer reads; the identity unless given.</summary>
    public string Name { get => field ?? Id; init; }

    /// <summary>When it falls due, in words such as <c>on acceptance</c>; empty when it is not said.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public string When { get; init => field = Guard.NotNull(value); } = string.Empty;

    /// <summary>Amount with tax.</summary>
    public decimal Amount { get; init; }

    /// <summary>Name, when it falls due, and amount.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Told + ": " + Amount.ToString(CultureInfo.InvariantCulture);

    internal string Told => Name + (When.Length == 0 ? string.Empty : " " + When);
}

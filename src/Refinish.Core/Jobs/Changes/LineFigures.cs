using System;
using System.Globalization;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>The figures of one line of an estimate, of a plan made now or of one that was stored.</summary>
public sealed record LineFigures
{
    /// <summary>Identity of the line, such as <c>labour/L-10/tub</c> or <c>material/epoxy-primer/750</c>.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Id { get; init => field = Guard.Named(value); }

    /// <summary>What is counted, such as <c>labour/L-10</c> or <c>material/epoxy-primer/750</c>; the identity unless given.</summary>
    public string Item { get => field ?? Id; init; }

    /// <summary>What the line is for; <see langword="null"/> for a stored word that this library does not know.</summary>
    public LineCategory? Category { get; init; }

    /// <summary>Identifier of its fixture; <see langword="null"/> for the job as a whole.</summary>
    public string? Fixture { get; init; }

    /// <summary>Identifier of its room; <see langword="null"/> for several or none.</summary>
    public string? Room { get; init; }

    /// <summary>What it is; of a material its name without the kit.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public string Description { get; init => field = Guard.NotNull(value); } = string.Empty;

    /// <summary>How much.</summary>
    public decimal Quantity { get; init; }

    /// <summary>Symbol of the unit of the quantity; empty for an amount of money.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public string Unit { get; init => field = Guard.NotNull(value); } = string.Empty;

    /// <summary>Money for one unit; a share for a tax.</summary>
    public decimal Rate { get; init; }

    /// <summary>What it costs the shop.</summary>
    public decimal Cost { get; init; }

    /// <summary>Its part of what the customer pays.</summary>
    public decimal Price { get; init; }

    /// <summary>Whether its price is fixed, so that it carries nothing of overhead, warranty and margin.</summary>
    public bool IsPriceFixed { get; init; }

    /// <summary>Identity and figures.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        string.Format(CultureInfo.InvariantCulture, "{0}: {1} {2} × {3}, cost {4}, price {5}", Id, Quantity, Unit, Rate, Cost, Price);

    /// <summary>Whether its own figures are the same, whatever it carries of shared costs.</summary>
    internal bool HasOwnFiguresOf(LineFigures other) =>
        Quantity == other.Quantity && Unit == other.Unit && Rate == other.Rate && Cost == other.Cost 
        && (Price == other.Price || !(IsPriceFixed || other.IsPriceFixed));
}

using System;
using System.IO;
using System.Text.Json;
using Refinish.Jobs;
using Refinish.Json.Shapes;

namespace Refinish.Json;

/// <summary>
/// A customer's quote as a JSON document that may be handed to the customer, in format <c>refinish/quote</c>, version 1: prices, terms,
/// payments, times, conditions, cautions and warranty, and nothing of the shop's hours, wages, costs and margin.
/// </summary>
/// <remarks>
/// It is written and not read: what it was made from is the job, and <see cref="JobJson"/> keeps that. Whoever shows it to people shows its
/// cautions too.
/// </remarks>
/// <example><code>
/// static string ForTheCustomer(JobPlan plan) => QuoteJson.Write(plan.Quote!);
/// </code></example>
public static class QuoteJson
{
    /// <summary>The quote as text, in metric units and indented.</summary>
    /// <param name="quote">The quote.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="quote"/> is missing.</exception>
    public static string Write(CustomerQuote quote) => Write(quote, JsonLayout.Default);

    /// <summary>The quote as text.</summary>
    /// <param name="quote">The quote.</param>
    /// <param name="layout">Units, of the numbers in sentences, and layout.</param>
    /// <returns>The document.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static string Write(CustomerQuote quote, JsonLayout layout) => Document.Write(SheetShapes.Quote, quote, layout);

    /// <summary>Writes the quote as UTF-8, in metric units and indented.</summary>
    /// <param name="stream">Where to; it is left open.</param>
    /// <param name="quote">The quote.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(Stream stream, CustomerQuote quote) => Write(stream, quote, JsonLayout.Default);

    /// <summary>Writes the quote as UTF-8.</summary>
    /// <param name="stream">Where to; it is left open.</param>
    /// <param name="quote">The quote.</param>
    /// <param name="layout">Units, of the numbers in sentences, and layout.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(Stream stream, CustomerQuote quote, JsonLayout layout) =>
        Document.Write(SheetShapes.Quote, quote, stream, layout);

    /// <summary>Writes the quote as one value of a larger document, in metric units.</summary>
    /// <param name="json">The writer, which stands where a value may come.</param>
    /// <param name="quote">The quote.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static void Write(Utf8JsonWriter json, CustomerQuote quote) => Write(json, quote, DisplayUnits.Si);

    /// <summary>Writes the quote as one value of a larger document.</summary>
    /// <param name="json">The writer, which stands where a value may come.</param>
    /// <param name="quote">The quote.</param>
    /// <param name="units">The units of the numbers in sentences.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="units"/> is not a named value.</exception>
    public static void Write(Utf8JsonWriter json, CustomerQuote quote, DisplayUnits units) =>
        Document.Write(SheetShapes.Quote, quote, json, units);
}

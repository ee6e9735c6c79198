using System;
using System.Globalization;

namespace Refinish;

/// <summary>Where a number, a formula or a rule comes from. It travels with what it stands behind.</summary>
/// <example><code>
/// Source source = Source.Published("29 CFR 1910.1000", "(d)(2)(i)");
/// string text = source.ToString();   // "29 CFR 1910.1000, (d)(2)(i)"
/// </code></example>
public sealed record Source
{
    // The words in which a reference of this library says that it was read on another page.
    private static readonly string[] SecondHand =
    [
        "second-hand", "quoted", "as reproduced", "as printed", "as given by", "as read in", "read as", "seen in", "read once", "public copy",
        "as listed there",
    ];

    private Source(SourceKind kind, string document, string? section)
    {
        Kind = kind;
        Document = document;
        Section = section;
    }

    /// <summary>What kind of backing this is.</summary>
    public SourceKind Kind { get; }

    /// <summary>The document with its edition; for the other kinds, what is practised, recalled, derived or invented.</summary>
    public string Document { get; }

    /// <summary>Section, table or equation within <see cref="Document"/>, where it has one.</summary>
    public string? Section { get; }

    /// <summary>
    /// How it was looked up, as far as it says: of a published document from the words of its reference, <c>from memory</c> before
    /// <c>second-hand</c>, <c>quoted</c>, <c>as printed</c> and the like; <see langword="null"/> where it makes no remark, and for what is
    /// practised, derived or invented.
    /// </summary>
    public Standing? Standing => Kind switch
    {
        SourceKind.Supplied => Refinish.Standing.Supplied,
        SourceKind.FromMemory => Refinish.Standing.FromMemory,
        SourceKind.Published when Says("from memory") => Refinish.Standing.FromMemory,
        SourceKind.Published when Array.Exists(SecondHand, Says) => Refinish.Standing.SecondHand,
        _ => null,
    };

    /// <summary>A published document.</summary>
    /// <param name="document">Title or number with its edition or year.</param>
    /// <param name="section">Section, table or equation.</param>
    /// <returns>A source of kind <see cref="SourceKind.Published"/>.</returns>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    public static Source Published(string document, string section) =>
        new(SourceKind.Published, Guard.Named(document), Guard.Named(section));

    /// <summary>Algebra or a definition.</summary>
    /// <param name="how">How it follows.</param>
    /// <returns>A source of kind <see cref="SourceKind.Derived"/>.</returns>
    /// <exception cref="ArgumentException">The text is empty.</exception>
    public static Source Derived(string how) => new(SourceKind.Derived, Guard.Named(how), null);

    /// <summary>Common practice of the trade, without a document.</summary>
    /// <param name="what">What is commonly done.</param>
    /// <returns>A source of kind <see cref="SourceKind.CommonPractice"/>.</returns>
    /// <exception cref="ArgumentException">The text is empty.</exception>
    public static Source CommonPractice(string what) => new(SourceKind.CommonPractice, Guard.Named(what), null);

    /// <summary>Recalled and not verified.</summary>
    /// <param name="what">What is recalled, with the document it is thought to stand in.</param>
    /// <returns>A source of kind <see cref="SourceKind.FromMemory"/>.</returns>
    /// <exception cref="ArgumentException">The text is empty.</exception>
    public static Source FromMemory(string what) => new(SourceKind.FromMemory, Guard.Named(what), null);

    /// <summary>Invented for a demonstration or as a default to be replaced.</summary>
    /// <param name="what">What it stands in for.</param>
    /// <returns>A source of kind <see cref="SourceKind.Invented"/>.</returns>
    /// <exception cref="ArgumentException">The text is empty.</exception>
    public static Source Invented(string what) => new(SourceKind.Invented, Guard.Named(what), null);

    /// <summary>Given by the caller.</summary>
    /// <param name="by">Who or what gave it: "tape measure", "product data sheet", "price book".</param>
    /// <returns>A source of kind <see cref="SourceKind.Supplied"/>.</returns>
    /// <exception cref="ArgumentException">The text is empty.</exception>
    public static Source Supplied(string by) => new(SourceKind.Supplied, Guard.Named(by), null);

    /// <summary>The source in one line, with its standing named unless it is published.</summary>
    /// <returns>Text such as <c>common practice, no source: two cleaning steps</c>.</returns>
    public override string ToString() => Kind switch
    {
        SourceKind.Published => Document + ", " + Section,
        SourceKind.Derived => "derived: " + Document,
        SourceKind.CommonPractice => "common practice, no source: " + Document,
        SourceKind.FromMemory => "from memory, unverified: " + Document,
        SourceKind.Invented => "invented: " + Document,
        _ => "supplied: " + Document,
    };

    private bool Says(string words) => Holds(Document, words) || (Section is not null && Holds(Section, words));

    private static bool Holds(string text, string words) =>
        CultureInfo.InvariantCulture.CompareInfo.IndexOf(text, words, CompareOptions.OrdinalIgnoreCase) >= 0;
}

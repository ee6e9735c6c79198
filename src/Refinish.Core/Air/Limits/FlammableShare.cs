using System;
using UnitsNet;

namespace Refinish.Air;

/// <summary>How much of its lower flammable limit vapour may reach by a rule: whose, where, of which date.</summary>
/// <example><code>
/// FlammableShare ours = new()
/// {
///     Share = Ratio.FromPercent(20), Authority = "our insurer (invented)", Jurisdiction = "our county", AsOf = "2027-01-15",
///     Source = Source.Supplied("policy, condition 4"),
/// };
/// double percent = ours.Share.Percent;   // 20
/// </code></example>
public sealed record FlammableShare
{
    // With continuous monitoring some rules go to a half (NFPA 69 and 86, from memory); none known here goes further.
    private const double Most = 0.5;

    private readonly double share;

    /// <summary>A quarter, the line of the International Mechanical Code and of others.</summary>
    public static FlammableShare Quarter { get; } = new()
    {
        Share = Ratio.FromPercent(25),
        Authority = "International Mechanical Code",
        Jurisdiction = "where a state or county has adopted it",
        AsOf = "web copy, edition not stated",
        Source = Source.Published(
            "International Mechanical Code",
                "502.7.3.3: at most 25 % of the lower flammable limit; the same in WAC 296-835-11010 for dip tanks"),
    };

    /// <summary>A tenth, asked for by one state in ships' rooms: the line to design for.</summary>
    public static FlammableShare Tenth { get; } = new()
    {
        Share = Ratio.FromPercent(10),
        Authority = "Washington State, spray painting in ships",
        Jurisdiction = "Washington, United States",
        AsOf = "web copy, edition not stated",
        Source = Source.Published("WAC 296-304-03009", "(2): below 10 % of the lower explosive limit, spray painting in ships"),
    };

    /// <summary>Part of the lower flammable limit, more than 0 and at most 50 %.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Ratio Share
    {
        get => Ratio.FromDecimalFractions(share);
        init => share = Guard.Within(value, Bounds.Positive(Measure.Percent, Most));
    }

    /// <summary>Regulation, insurer or shop that sets the line.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Authority { get; init => field = Guard.Named(value); }

    /// <summary>State, county or policy in which the line holds.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string Jurisdiction { get; init => field = Guard.Named(value); }

    /// <summary>Date or edition of the rule, as text.</summary>
    /// <exception cref="ArgumentException">Empty.</exception>
    public required string AsOf { get; init => field = Guard.Named(value); }

    /// <summary>Where the figure comes from and how well it was looked up.</summary>
    /// <exception cref="ArgumentNullException">Missing.</exception>
    public required Source Source { get; init => field = Guard.NotNull(value); }

    /// <summary>The share and whose it is.</summary>
    /// <returns>Text such as <c>25 % of the lower flammable limit, International Mechanical Code</c>.</returns>
    public override string ToString() => Measure.Percent.Format(share, DisplayUnits.Si, 3) + " of the lower flammable limit, " + Authority;

    internal double Fraction => share;

    internal string Whose => Whom.Of(Authority, Jurisdiction, AsOf);

    /// <summary>The stricter of two.</summary>
    internal static FlammableShare? Stricter(FlammableShare? one, FlammableShare? other) =>
        one is null || (other is not null && other.share < one.share) ? other : one;
}

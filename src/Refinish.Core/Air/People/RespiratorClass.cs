using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Air;

/// <summary>A kind of respirator and the protection factor assigned to it: 29 CFR 1910.134(d)(3)(i)(A), Table 1.</summary>
/// <remarks>
/// The factor holds only inside a full programme: fit test, medical clearance, training, change of cartridges. The largest concentration a
/// class is for is the factor times the limit, never above what is immediately dangerous.
/// </remarks>
public sealed record RespiratorClass
{
    private static readonly Source Table1 = Source.Published("29 CFR 1910.134", "(d)(3)(i)(A), Table 1");

    private const string Scba = "certified for at least 30 minutes";
    private const string Escape = "with a bottle of its own to escape by";

    private RespiratorClass(
        string name, int assignedProtectionFactor, bool suppliesAir, int? withEvidence = null, string? forImmediateDanger = null)
    {
        FactorWithMakerEvidence = withEvidence;
        ForImmediateDanger = forImmediateDanger;
        Name = name;
        AssignedProtectionFactor = assignedProtectionFactor;
        SuppliesAir = suppliesAir;
    }

    /// <summary>
    /// The rows of the table. Hoods and helmets of powered and continuous-flow kinds stand with 25; 1000 needs the maker's test evidence
    /// (note 4, <see cref="FactorWithMakerEvidence"/>).
    /// </summary>
    public static IReadOnlyList<RespiratorClass> All { get; } = new ValueList<RespiratorClass>(
    [
        new("air-purifying, quarter mask", 5, false),
        new("air-purifying, half mask or filtering facepiece", 10, false),
        new("air-purifying, full facepiece", 50, false),
        new("powered air-purifying, half mask", 50, false),
        new("powered air-purifying, full facepiece", 1000, false),
        new("powered air-purifying, hood or helmet", 25, false, 1000),
        new("powered air-purifying, loose-fitting facepiece", 25, false),
        new("supplied air, demand, half mask", 10, true),
        new("supplied air, demand, full facepiece", 50, true),
        new("supplied air, continuous flow, half mask", 50, true),
        new("supplied air, continuous flow, full facepiece", 1000, true),
        new("supplied air, continuous flow, hood or helmet", 25, true, 1000),
        new("supplied air, continuous flow, loose-fitting facepiece", 25, true),
        new("supplied air, pressure demand, half mask", 50, true),
        new("supplied air, pressure demand, full facepiece", 1000, true, null, Escape),
        new("self-contained, demand, half mask", 10, true),
        new("self-contained, demand, full facepiece", 50, true),
        new("self-contained, demand, hood or helmet", 50, true),
        new("self-contained, pressure demand, full facepiece", 10000, true, null, Scba),
        new("self-contained, pressure demand, hood or helmet", 10000, true),
    ]);

    /// <summary>
    /// The classes that a small coating shop is most likely to own or to be offered, smallest factor first: which of the table's rows these
    /// are is common practice, no source.
    /// </summary>
    public static IReadOnlyList<RespiratorClass> Common { get; } = new ValueList<RespiratorClass>(new[]
    {
        "air-purifying, half mask or filtering facepiece", "powered air-purifying, hood or helmet",
        "supplied air, continuous flow, hood or helmet", "air-purifying, full facepiece",
        "supplied air, continuous flow, half mask", "supplied air, continuous flow, full facepiece",
        "supplied air, pressure demand, full facepiece", "self-contained, pressure demand, full facepiece",
    }.Select(name => All.Single(kind => kind.Name == name)));

    /// <summary>The classes whose assigned protection factor is at least a ratio, such as a concentration over its limit.</summary>
    /// <param name="factor">The ratio, 0 or more.</param>
    /// <returns>
    /// The classes, smallest factor first; empty above 10 000, where no respirator of the table is enough. Which of them may be worn is for
    /// the employer's programme and the data sheet to say; for isocyanates only those that supply air.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="factor"/> is negative, infinite or NaN.</exception>
    public static IReadOnlyList<RespiratorClass> AtLeast(double factor)
    {
        double least = Guard.Within(factor, Bounds.NotNegative(Measure.Number));
        return new ValueList<RespiratorClass>(
            All.Where(kind => kind.AssignedProtectionFactor >= least).OrderBy(kind => kind.AssignedProtectionFactor));
    }

    /// <summary>What kind it is.</summary>
    public string Name { get; }

    /// <summary>How many times lower the concentration inside is taken to be.</summary>
    public int AssignedProtectionFactor { get; }

    /// <summary>
    /// The factor where the employer holds the maker's evidence that tests of this very hood or helmet showed it; <see langword="null"/>
    /// where the table knows no second factor. Without the evidence <see cref="AssignedProtectionFactor"/> holds.
    /// </summary>
    public int? FactorWithMakerEvidence { get; }

    /// <summary>
    /// What else it has to be or have to be one of the two kinds listed for air that is immediately dangerous to life or health;
    /// <see langword="null"/> for a kind that is not listed (29 CFR 1910.134(d)(2)(i), from memory). With the bottle its factor stays 1000
    /// except while escaping (OSHA letter of interpretation, 4 November 2013).
    /// </summary>
    public string? ForImmediateDanger { get; }

    /// <summary>Whether the air comes from outside the room, by hose or bottle.</summary>
    public bool SuppliesAir { get; }

    /// <summary>Where the factor stands.</summary>
    public Source Source { get; } = Table1;

    /// <summary>The kind and its factor.</summary>
    /// <returns>Text such as <c>supplied air, continuous flow, full facepiece: 1000</c>.</returns>
    public override string ToString() => Name + ": " + Figures.Fixed(AssignedProtectionFactor, 0);
}

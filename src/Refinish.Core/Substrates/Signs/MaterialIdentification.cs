using System;
using System.Collections.Generic;
using System.Linq;
using System.Text;
using Refinish.Fixtures;

namespace Refinish.Substrates;

/// <summary>Which materials agree with what was observed, and which aid would tell those that are left apart.</summary>
/// <remarks>
/// Materials are ranked by what speaks against them, fewest first, then by what speaks for them. The signs are common practice and can
/// mislead: an old coat answers the solvent for itself and hides look and edge; acrylic and gelcoat are both backed with glass fibre.
/// One material left is still no proof.
/// </remarks>
/// <example><code>
/// MaterialIdentification tub = new(["I-01", "I-03"]);
/// FixtureMaterial likely = tub.Candidates[0].Material;   // enamelled cast iron: a magnet sticks and it sounds dull
/// </code></example>
public sealed record MaterialIdentification
{
    private readonly IReadOnlyList<MaterialSign> known;

    /// <summary>Weighs what was observed by the signs of <see cref="MaterialSigns.Generic"/>.</summary>
    /// <param name="codes">Codes of the signs observed; none is allowed and tells nothing.</param>
    /// <exception cref="ArgumentException">A code is missing or not among the signs.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="codes"/> is missing.</exception>
    public MaterialIdentification(IReadOnlyList<string> codes) : this(codes, MaterialSigns.Generic)
    {
    }

    /// <summary>Weighs what was observed.</summary>
    /// <param name="codes">Codes of the signs observed; none is allowed and tells nothing.</param>
    /// <param name="signs">The signs to look in.</param>
    /// <exception cref="ArgumentException">A code is missing or not among the signs.</exception>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public MaterialIdentification(IReadOnlyList<string> codes, IReadOnlyList<MaterialSign> signs)
    {
        known = Guard.List(signs);
        Observed = new ValueList<MaterialSign>(Guard.List(codes).Distinct(StringComparer.Ordinal).Select(code =>
            Find(code, nameof(codes))).OrderBy(sign => sign.Code, StringComparer.Ordinal));
        Candidates = new ValueList<MaterialCandidate>(known
            .SelectMany(sign => sign.SpeaksFor.Concat(sign.SpeaksAgainst))
            .Distinct()
            .OrderBy(Place)
            .ThenBy(material => material.Id, StringComparer.Ordinal)
            .Select(material => new MaterialCandidate(material, Observed))
            .OrderBy(candidate => candidate.Against.Count)
            .ThenByDescending(candidate => candidate.For.Count)
            .ThenBy(candidate => Place(candidate.Material))
            .ThenBy(candidate => candidate.Material.Id, StringComparer.Ordinal));
    }

    /// <summary>What was observed, by code.</summary>
    public IReadOnlyList<MaterialSign> Observed { get; }

    /// <summary>Every material that the signs know, the best fitting first.</summary>
    public IReadOnlyList<MaterialCandidate> Candidates { get; }

    /// <summary>Materials that something speaks for and nothing against.</summary>
    public IReadOnlyList<MaterialCandidate> Consistent => new ValueList<MaterialCandidate>(Candidates.Where(candidate => candidate.IsConsistent));

    /// <summary>Whether what was observed fits no material: an old coat, a part of two materials, or a mistake.</summary>
    public bool Contradicts => Observed.Count > 0 && Consistent.Count == 0;

    /// <summary>Aids not yet used that can tell the consistent materials apart; empty when fewer than two are left.</summary>
    public IReadOnlyList<IdentificationAid> Next
    {
        get
        {
            FixtureMaterial[] left = [.. Consistent.Select(candidate => candidate.Material)];
            return new ValueList<IdentificationAid>(known
                .Where(sign => Observed.All(seen => seen.Aid != sign.Aid))
                .Where(sign => left.Any(material => sign.SpeaksFor.Contains(material)) && left.Any(material => sign.SpeaksAgainst.Contains(material)))
                .Select(sign => sign.Aid)
                .Distinct()
                .OrderBy(aid => aid));
        }
    }

    /// <summary>What can hurt while finding out.</summary>
    public IReadOnlyList<Caution> Cautions { get; } = new ValueList<Caution>([Refinish.Cautions.LeadUntested, Refinish.Cautions.SolventRub]);

    /// <summary>The outcome as text, with every sign and what it rests on.</summary>
    /// <returns>Lines that end in a line feed.</returns>
    public string ToText()
    {
        StringBuilder text = new();
        text.Append(ToString()).Append('\n');
        foreach (MaterialCandidate candidate in Candidates.Where(candidate => candidate.For.Count > 0))
        {
            text.Append("  ").Append(candidate).Append('\n');
        }

        foreach (MaterialSign sign in Observed)
        {
            text.Append("  ").Append(sign).Append(" [").Append(sign.Source).Append("]\n");
        }

        if (Next.Count > 0)
        {
            text.Append("  to tell them apart: ").Append(string.Join(", ", Next.Select(Words))).Append('\n');
        }

        foreach (Caution caution in Cautions)
        {
            text.Append("  ! ").Append(caution).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>What is left, or that nothing is.</summary>
    /// <returns>Text such as <c>agrees with enamelled cast iron; signs, not proof</c>.</returns>
    public override string ToString() =>
        Observed.Count == 0 ? "nothing observed yet"
        : Contradicts ? "agrees with no material: look for an old coat or a second material"
        : "agrees with " + string.Join(", ", Consistent.Select(candidate => candidate.Material.Name)) + "; signs, not proof";

    /// <summary>Whether the same was observed under the same signs.</summary>
    /// <param name="other">The identification to compare with.</param>
    /// <returns><see langword="true"/> when they are alike.</returns>
    public bool Equals(MaterialIdentification? other) => other is not null && Observed.Equals(other.Observed) && known.Equals(other.known);

    /// <inheritdoc/>
    public override int GetHashCode() => Observed.GetHashCode();

    // Ready materials in their usual order, a caller's own after them.
    private static int Place(FixtureMaterial material)
    {
        int place = 0;
        while (place < FixtureMaterial.All.Count && FixtureMaterial.All[place].Id != material.Id)
        {
            place++;
        }

        return place;
    }

    private static string Words(IdentificationAid aid) => aid switch
    {
        IdentificationAid.Magnet => "magnet",
        IdentificationAid.Tap => "knock",
        IdentificationAid.Touch => "touch",
        IdentificationAid.Flex => "press",
        IdentificationAid.Edge => "look at an edge", IdentificationAid.SolventRub => "solvent rub", _ => "look at the whole", };

    private MaterialSign Find(string code, string name) =>
        known.FirstOrDefault(sign => sign.Code == code) ?? throw new ArgumentException(name + " holds " + code + ", which no sign has.", name);
}

using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;

namespace Refinish.Substrates;

/// <summary>What has to be done to a surveyed surface before the first coat, in order, for its material and its defects.</summary>
/// <remarks>Common practice of the trade without a source; the data sheet of the coating goes first wherever it says otherwise.</remarks>
/// <example><code>
/// Survey survey = new() { Material = FixtureMaterial.EnamelledSteel, Defects = [], BuiltBefore1978 = false };
/// PromoterKind promoter = new Preparation(survey).Promoter;   // Silane
/// </code></example>
public sealed record Preparation
{
    private static readonly Source Practice = Source.CommonPractice("preparation for refinishing in place; the coating's data sheet goes first");

    /// <summary>Lists the steps.</summary>
    /// <param name="survey">What was found.</param>
    /// <param name="policy">The thresholds, for whether an old coat stays; <see cref="SurveyPolicy.Generic"/> when omitted.</param>
    /// <exception cref="ArgumentNullException"><paramref name="survey"/> is missing.</exception>
    public Preparation(Survey survey, SurveyPolicy? policy = null)
    {
        Survey = Guard.NotNull(survey, nameof(survey));
        Policy = policy ?? SurveyPolicy.Generic;
        if (survey.Material is FixtureMaterial.Unknown or FixtureMaterial.Polyolefin)
        {
            WhyNone = survey.Material == FixtureMaterial.Unknown ? "the material is not known" : "nothing bonds to polyethylene or polypropylene in the field";
            Steps = ValueList<PreparationStep>.Empty;
            Cautions = new ValueList<Caution>(SubstrateCautions.Of(survey));
            return;
        }

        Promoter = SubstrateCautions.MayBeEtched(survey.Material) ? PromoterKind.Silane : PromoterKind.Plastic;
        Steps = new ValueList<PreparationStep>(StepsFor(survey, Policy));
        bool fills = Steps.Any(step => step.Kind == PreparationKind.Fill);
        Cautions = new ValueList<Caution>(SubstrateCautions.Of(survey).Concat(fills ? SubstrateCautions.Filler(Policy.Filler.Product.Chemistry) : []).Distinct());
    }

    /// <summary>What was found.</summary>
    public Survey Survey { get; }

    /// <summary>By which thresholds.</summary>
    public SurveyPolicy Policy { get; }

    /// <summary>The steps in order; empty when none can be named, see <see cref="WhyNone"/>.</summary>
    public IReadOnlyList<PreparationStep> Steps { get; }

    /// <summary>Why no steps can be named; <see langword="null"/> when they can.</summary>
    public string? WhyNone { get; }

    /// <summary>What makes the primer hold.</summary>
    public PromoterKind Promoter { get; }

    /// <summary>What can hurt.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The material and the number of steps.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        WhyNone ?? Survey.Material.InWords() + ": " + Figures.Fixed(Steps.Count, 0) + " steps of preparation";

    private static IEnumerable<PreparationStep> StepsFor(Survey survey, SurveyPolicy policy)
    {
        FixtureMaterial material = survey.Material;
        bool hard = SubstrateCautions.MayBeEtched(material);
        yield return new("P-10", PreparationKind.Clear, "take off drain trim, overflow plate and stops; cut out all caulk", Practice);
        yield return new("P-20", PreparationKind.Descale, hard
            ? "remove lime, rust stains and soap film with a descaler, rinse"
            : "remove lime and soap film with a mild cleaner, no acid; rinse", Practice);
        yield return new("P-30", PreparationKind.Degrease, material switch
        {
            FixtureMaterial.Acrylic => "degrease with a mild wipe after a spot test: solvents craze stressed acrylic; repeat until water no longer breaks",
            _ => "degrease twice with fresh cloths until water no longer breaks",
        }, Practice);
        if (survey.Defects.OfType<SiliconeResidue>().Any())
        {
            yield return new("P-31", PreparationKind.Degrease, "digest and scrape silicone from the joints, then degrease again and repeat the water-break test", Practice);
        }

        foreach (PreparationStep step in OldCoat(survey, policy))
        {
            yield return step;
        }

        if (survey.Defects.OfType<GroutFailure>().Any() || survey.Defects.OfType<LooseTiles>().Any())
        {
            yield return new("P-50", PreparationKind.Mend, "fix loose tiles, rake out and replace grout, let it dry", Practice);
        }

        if (survey.Defects.OfType<RustSpot>().Any())
        {
            yield return new("P-51", PreparationKind.Mend, "grind rust to bright metal with a margin and spot prime it the same hour", Practice);
        }

        yield return Key(material);
        yield return new("P-70", PreparationKind.RinseAndDry, hard
            ? "rinse off all etchant and dust, dry with heat and air, joints included"
            : "rinse off the dust with water, dry with air", Practice);
        if (survey.Defects.Any(defect => defect.CavityUnder(policy.Filler) is not null))
        {
            yield return new("P-80", PreparationKind.Fill, "fill hollows in lifts, let cure, sand flush and feather the edge", Practice, 120, 220);
        }

        yield return new("P-90", PreparationKind.Tack, "blow out, vacuum and tack off the dust", Practice);
        yield return new("P-95", PreparationKind.Promote, hard
            ? "wipe on silane promoter and coat within its window"
            : "wipe on the promoter that the coating's maker names for this plastic and coat within its window", Practice);
    }

    private static IEnumerable<PreparationStep> OldCoat(Survey survey, SurveyPolicy policy)
    {
        List<AdhesionGrade?> grades = [.. survey.Defects.OfType<PeelingCoat>().Select(coat => coat.Adhesion)];
        if (survey.OldCoatAdhesion is not null || (survey.PreviouslyRefinished && grades.Count == 0))
        {
            grades.Add(survey.OldCoatAdhesion);
        }

        string least = PeelingCoat.GradeName(policy.MinimumAdhesion);
        if (grades.Any(grade => grade < policy.MinimumAdhesion))
        {
            yield return new("P-40", PreparationKind.Strip, "strip the old coat, which holds less than " + least + ", by a permitted way; clean off all stripper", Practice);
        }
        else if (grades.Any(grade => grade is null))
        {
            yield return new("P-41", PreparationKind.Strip, "tape test the old coat: keep and abrade it from " + least + " upwards, otherwise strip it by a permitted way", Practice);
        }
        else if (grades.Count > 0)
        {
            yield return new("P-42", PreparationKind.Strip, "the old coat holds at least " + least + ": remove loose edges, keep the rest and abrade it", Practice);
        }
    }

    private static PreparationStep Key(FixtureMaterial material) => material switch
    {
        FixtureMaterial.EnamelledCastIron or FixtureMaterial.EnamelledSteel or FixtureMaterial.VitreousChina =>
            new("P-60", PreparationKind.Key, "abrade until no gloss is left, or etch as the etchant's sheet says and neutralise", Practice, 120, 220),
        FixtureMaterial.CeramicTile => new("P-60", PreparationKind.Key, "abrade or etch the glaze until no gloss is left; keep etchant out of the joints", Practice, 120, 220),
        FixtureMaterial.Acrylic => new("P-61", PreparationKind.Key, "abrade wet, lightly and evenly, no acid and no strong solvent", Practice, 320, 320),
        FixtureMaterial.SolidSurface => new("P-61", PreparationKind.Key, "abrade evenly", Practice, 220, 220),
        FixtureMaterial.Laminate => new("P-61", PreparationKind.Key, "abrade evenly without going through the face", Practice, 180, 220),
        _ => new("P-61", PreparationKind.Key, "abrade until no gloss is left, no acid", Practice, 220, 320),
    };
}

using System;
using System.Linq;
using Refinish.Coatings;
using Refinish.Films;

namespace Refinish.Jobs;

/// <summary>
/// Whether the coats of a system hide the old colour of a fixture: coats needed against coats planned, or "cannot be judged".
/// </summary>
public sealed record ColourJudgement
{
    private ColourJudgement(int planned, ColourHidingPlan? plan)
    {
        CoatsPlanned = planned;
        Plan = plan;
    }

    /// <summary>Coats of the hiding product that the system plans.</summary>
    public int CoatsPlanned { get; }

    /// <summary>The calculation; <see langword="null"/> when the product's sheet has no hiding figures.</summary>
    public ColourHidingPlan? Plan { get; }

    /// <summary>Coats that hide; <see langword="null"/> when that cannot be judged or when more than six would not do.</summary>
    public int? CoatsNeeded => Plan?.CoatsNeeded;

    /// <summary>Whether it can be judged at all.</summary>
    public bool IsJudged => Plan is not null && Plan.Coats.Count > 0;

    /// <summary>Whether the coats planned are known to be too few.</summary>
    public bool IsShort => IsJudged && !(CoatsNeeded <= CoatsPlanned);

    /// <summary>The outcome.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => !IsJudged
        ? "cannot be judged" + (Plan?.Objection is string why ? ": " + why : ": the product's sheet gives no hiding figures")
        : Plan!.Objection ?? Figures.Fixed(CoatsNeeded!.Value, 0) + (CoatsNeeded == 1 ? " coat hides" : " coats hide") + ", " + Figures.Fixed(CoatsPlanned, 0) + " planned";

    internal static ColourJudgement? Of(Procedure procedure)
    {
        if (procedure.Fixture.OldColour is not { } old || procedure.Fixture.NewColour is not { } wanted)
        {
            return null;
        }

        CoatingLayer[] layers = [.. procedure.System.Layers];
        CoatingLayer? top = Array.FindLast(layers, layer => layer.Product.Role == CoatingRole.Topcoat);
        if (top is null)
        {
            return new ColourJudgement(0, null);
        }

        int planned = layers.Where(layer => layer.Product.Equals(top.Product)).Sum(layer => layer.Coats);
        if (top.Product.Scattering is not { } scattering)
        {
            return new ColourJudgement(planned, null);
        }

        ColourHidingPlan plan = new()
        {
            OldColour = old, NewColour = wanted, Scattering = scattering, CoatFilm = top.DryFilmPerCoat, Tolerance = procedure.Shop.HidingTolerance,
        };
        CoatingLayer? primer = Array.Find(layers, layer => layer.Product.Role == CoatingRole.Primer && layer.Product.Colour is not null);
        return new ColourJudgement(planned, primer is null ? plan : plan with
        {
            PrimerColour = primer.Product.Colour,
            PrimerFilm = primer.TotalDryFilm,
            PrimerScattering = primer.Product.Scattering ?? scattering,
        });
    }
}

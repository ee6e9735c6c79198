using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>Everything that is done to a surface in order, from cleaning to the last coat, with what stands against it on a given material.</summary>
/// <remarks>
/// <see cref="CoatingSystem"/> holds the layers for quantities and times; this holds the whole procedure. Etching or abrading is always followed by the rest of
/// the sequence on the same material, so the steps that name materials have to name the one at hand; promoters are alternatives of which one has to fit.
/// </remarks>
/// <example><code>
/// IReadOnlyList&lt;string&gt; objections = GenericCatalogue.SlipResistantTub.ObjectionsFor(FixtureMaterial.EnamelledCastIron);   // none
/// </code></example>
public sealed record CoatingSequence
{
    private readonly double? maximumTotal;

    /// <summary>Makes a sequence.</summary>
    /// <param name="name">Generic name.</param>
    /// <param name="steps">The steps in order, with at least one layer.</param>
    /// <param name="maximumTotalDryFilm">Most dry film of all layers together, more than 0 and at most 10 mm; <see langword="null"/> when no data sheet says, and then it cannot be judged.</param>
    /// <param name="source">Where the sequence comes from.</param>
    /// <exception cref="ArgumentException">The name is empty, a step is missing, or there is no layer.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The film is outside its range.</exception>
    public CoatingSequence(string name, IEnumerable<SystemStep> steps, Length? maximumTotalDryFilm, Source source)
    {
        Name = Guard.Named(name, nameof(name));
        Steps = Guard.List(steps, nameof(steps), 1);
        maximumTotal = maximumTotalDryFilm is Length most ? Guard.Within(most, Bounds.Positive(Measure.Film, 0.01), nameof(maximumTotalDryFilm)) : null;
        Source = Guard.NotNull(source, nameof(source));
        if (Steps.All(step => step.Layer is null))
        {
            throw new ArgumentException("steps holds no layer.", nameof(steps));
        }
    }

    /// <summary>Generic name.</summary>
    public string Name { get; }

    /// <summary>The steps in order.</summary>
    public IReadOnlyList<SystemStep> Steps { get; }

    /// <summary>Most dry film of all layers together; <see langword="null"/> when not known.</summary>
    public Length? MaximumTotalDryFilm => maximumTotal is double most ? Length.FromMeters(most) : null;

    /// <summary>Where the sequence comes from.</summary>
    public Source Source { get; }

    /// <summary>Dry film of all layers together.</summary>
    public Length TotalDryFilm => Length.FromMeters(Total);

    /// <summary>The total against its limit.</summary>
    public LimitComparison TotalFilm => new(
        "dry film of the whole sequence", Total, maximumTotal, LimitSense.AtMost, Measure.Film, Source,
        Total > maximumTotal ? "Take fewer or thinner coats." : null);

    /// <summary>What can hurt in these steps beyond spraying itself.</summary>
    public IReadOnlyList<Caution> Cautions => new ValueList<Caution>(Steps.SelectMany(CoatingsCautions.Of).Distinct());

    private double Total => Steps.Sum(step => step.Layer?.TotalDryFilm.Meters ?? 0);

    /// <summary>Why this sequence may not go on a material as it stands; an empty list when nothing was found against it.</summary>
    /// <param name="material">What the fixture is made of.</param>
    /// <returns>One sentence for each objection.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public IReadOnlyList<string> ObjectionsFor(FixtureMaterial material)
    {
        Guard.Defined(material, nameof(material));
        List<string> objections = [];
        if (Steps[0].Kind != SystemStepKind.Clean)
        {
            objections.Add("The first step is not cleaning: " + Steps[0].Name + ".");
        }

        foreach (SystemStep step in Steps.Where(step => step.Promoter is null && step.Materials.Count > 0 && !step.Materials.Contains(material)))
        {
            objections.Add(step.Name + " is not stated for " + material.InWords() + ".");
        }

        SystemStep[] wipes = [.. Steps.Where(step => step.Promoter is not null)];
        if (wipes.Length > 0 && !wipes.Any(step => step.Materials.Contains(material)))
        {
            objections.Add("No adhesion promoter of this sequence is meant for " + material.InWords() + ".");
        }

        CoatingProduct first = Steps.First(step => step.Layer is not null).Layer!.Product;
        if (!first.Materials.Contains(material))
        {
            objections.Add(first.Name + " is not stated for " + material.InWords() + ".");
        }

        AddOrder(objections);
        AddRecoat(objections);
        if (Total > maximumTotal)
        {
            objections.Add(TotalFilm + ". " + TotalFilm.Remedy);
        }

        return new ValueList<string>(objections);
    }

    /// <summary>The wipes and layers, for quantities, times and jobs.</summary>
    /// <returns>A coating system of the same name.</returns>
    public CoatingSystem ToSystem() => new(
        Name,
        Steps.Select(step => step.Promoter).OfType<AdhesionPromoter>(),
        Steps.Select(step => step.Layer).OfType<CoatingLayer>(),
        Source);

    /// <summary>Name and number of steps.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Name + ", " + Figures.Fixed(Steps.Count, 0) + " steps, " + Measure.Film.Format(Total) + " dry";

    private void AddOrder(List<string> objections)
    {
        for (int i = 1; i < Steps.Count; i++)
        {
            if (Steps[i].Rank < Steps[i - 1].Rank)
            {
                objections.Add(Steps[i].Name + " comes after " + Steps[i - 1].Name + ", which goes on later.");
            }
        }

        for (int i = 0; i < Steps.Count; i++)
        {
            if (Steps[i].Kind == SystemStepKind.SlipResistantBroadcast)
            {
                if (i == 0 || Steps[i - 1].Layer is null)
                {
                    objections.Add(Steps[i].Name + " has no wet coat to fall into: it follows " + (i == 0 ? "nothing" : Steps[i - 1].Name) + ".");
                }

                if (Steps.Skip(i + 1).All(step => step.Layer is null))
                {
                    objections.Add(Steps[i].Name + " is not locked in: no coat follows it.");
                }
            }
        }
    }

    private void AddRecoat(List<string> objections)
    {
        CoatingProduct? under = null;
        foreach (CoatingLayer layer in Steps.Select(step => step.Layer).OfType<CoatingLayer>())
        {
            if (under is not null && layer.Product.GoesOver.Count > 0 && !layer.Product.GoesOver.Contains(under.Role))
            {
                objections.Add(layer.Product.Name + " is not stated to go over " + under.Name + ".");
            }

            if (layer.Coats > 1 && layer.Product.GoesOver.Count > 0 && !layer.Product.GoesOver.Contains(layer.Product.Role))
            {
                objections.Add(layer.Product.Name + " is not stated to go over itself, yet it has " + Figures.Fixed(layer.Coats, 0) + " coats.");
            }

            under = layer.Product;
        }
    }
}

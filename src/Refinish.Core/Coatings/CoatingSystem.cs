using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>
/// What goes on a fixture, in order, from the first wipe or preparation to the last coat, and what speaks against it on a given material.
/// </summary>
/// <remarks>
/// A system lists its layers and the promoters to choose from by material. It may also list the preparation that its data sheets ask for,
/// from cleaning to filler; a system that lists none leaves the preparation to what the survey finds. Preparation steps that name materials
/// have to name the one at hand; promoters are alternatives of which one has to fit.
/// </remarks>
/// <example><code>
/// CoatingSystem system = GenericCatalogue.SlipResistantTub;
/// int objections = system.ObjectionsFor(FixtureMaterial.EnamelledCastIron).Count;   // 0
/// double film = system.TotalDryFilm.Micrometers;                                    // 120
/// </code></example>
public sealed record CoatingSystem
{
    // Common practice: powders melt and cure at 160 to 200 °C of the piece, the figures from memory.
    private const string Baked =
        " is a powder coating: it melts and cures in an oven and clings by an electric field, so that it cannot be put "
        + "on a fixture where it stands. Take a liquid product.";

    private readonly double? maximumTotal;
    private readonly double total;

    /// <summary>Makes a system.</summary>
    /// <param name="id">
    /// Identity, such as "epoxy-urethane"; 1 to 100 characters, no '/', no control characters, no white space at either end.
    /// </param>
    /// <param name="name">Generic name.</param>
    /// <param name="steps">The steps in order, with at least one layer.</param>
    /// <param name="maximumTotalDryFilm">
    /// Most dry film of all layers together, more than 0 and at most 10 mm; <see langword="null"/> when no data sheet says, and then it
    /// cannot be judged.
    /// </param>
    /// <param name="source">Where the system comes from.</param>
    /// <exception cref="ArgumentException">
    /// <paramref name="id"/> is not an identity, the name is empty, a step is missing, there is no layer, or two products or promoters
    /// share an identity.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">The film is outside its range.</exception>
    public CoatingSystem(string id, string name, IEnumerable<SystemStep> steps, Length? maximumTotalDryFilm, Source source)
    {
        Id = Guard.Id(id);
        Name = Guard.Named(name);
        Steps = Guard.List(steps, 1);
        maximumTotal = maximumTotalDryFilm is Length most
            ? Guard.Within(most, Bounds.Positive(Measure.Film, 0.01), nameof(maximumTotalDryFilm))
            : null;
        Source = Guard.NotNull(source);
        Layers = new ValueList<CoatingLayer>(Steps.Select(step => step.Layer).OfType<CoatingLayer>());
        Promoters = new ValueList<AdhesionPromoter>(Steps.Select(step => step.Promoter).OfType<AdhesionPromoter>());
        Cautions = new ValueList<Caution>(Steps.SelectMany(SystemCautions.Of).Distinct());
        total = Layers.Sum(layer => layer.TotalDryFilm.Meters);
        if (Layers.Count == 0)
        {
            throw new ArgumentException("steps holds no layer.", nameof(steps));
        }

        CheckIdentities(nameof(steps));
    }

    /// <summary>Identity of the system.</summary>
    public string Id { get; }

    /// <summary>Generic name.</summary>
    public string Name { get; }

    /// <summary>The steps in order.</summary>
    public IReadOnlyList<SystemStep> Steps { get; }

    /// <summary>The layers in order of application, at least one.</summary>
    public IReadOnlyList<CoatingLayer> Layers { get; }

    /// <summary>The wipes to choose from by material; may be empty.</summary>
    public IReadOnlyList<AdhesionPromoter> Promoters { get; }

    /// <summary>Most dry film of all layers together; <see langword="null"/> when not known.</summary>
    public Length? MaximumTotalDryFilm => maximumTotal is double most ? Length.FromMeters(most) : null;

    /// <summary>Dry film of all layers together.</summary>
    public Length TotalDryFilm => Length.FromMeters(total);

    /// <summary>The total against its limit; it cannot be judged when no limit is known.</summary>
    public LimitComparison TotalFilm => new(
        "dry film of the whole system", total, maximumTotal, LimitSense.AtMost, Measure.Film, Source,
        total > maximumTotal ? "Take fewer or thinner coats." : null);

    /// <summary>What can hurt in the listed steps beyond spraying itself.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>Where the system comes from.</summary>
    public Source Source { get; }

    /// <summary>The wipe for a material.</summary>
    /// <param name="material">What lies under the new coat.</param>
    /// <returns>
    /// The first promoter meant for it, otherwise the first for what it bonds like; <see langword="null"/> when there is none.
    /// </returns>
    /// <exception cref="ArgumentNullException"><paramref name="material"/> is missing.</exception>
    public AdhesionPromoter? PromoterFor(FixtureMaterial material)
    {
        Guard.NotNull(material);
        return Promoters.FirstOrDefault(promoter => material.IsNamedIn(promoter.Materials))
            ?? Promoters.FirstOrDefault(promoter => material.BondsAsNamedIn(promoter.Materials));
    }

    /// <summary>Volatile organic compounds of each product, as applied and at the maker's greatest reducer, against a limit.</summary>
    /// <param name="limit">The limit.</param>
    /// <returns>One comparison for each product by its id, of the greater of the two.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="limit"/> is missing.</exception>
    public IReadOnlyDictionary<string, LimitComparison> Voc(VocLimit limit)
    {
        Guard.NotNull(limit);
        return Layers.GroupBy(layer => layer.Product.Id, StringComparer.Ordinal).ToDictionary(
            same => same.Key,
            same => same.Select(layer => layer.Voc(limit)).OrderByDescending(comparison => comparison.Value?.Si ?? double.PositiveInfinity).First(),
            StringComparer.Ordinal);
    }

    /// <summary>
    /// Why this system may not go on a material as it stands; an empty list when nothing was found against it. On an old coating that is
    /// kept no promoter is needed: it is abraded and primed, and the first product has to be stated for it.
    /// </summary>
    /// <param name="material">What lies under the new coat.</param>
    /// <returns>One sentence for each objection.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="material"/> is missing.</exception>
    public IReadOnlyList<string> ObjectionsFor(FixtureMaterial material)
    {
        Guard.NotNull(material);
        List<string> objections = [];
        if (Steps[0].Kind != SystemStepKind.Clean && Steps.Any(step => step.IsPreparation))
        {
            objections.Add("The first step is not cleaning: " + Steps[0].Name + ".");
        }

        foreach (SystemStep step in Steps.Where(step => step.IsPreparation))
        {
            if (step.Materials.Count > 0 && !step.Serves(material))
            {
                objections.Add(step.Name + " is not stated for " + material.Name + ".");
            }
            else if (step.Kind == SystemStepKind.Etch && !material.MayBeEtched)
            {
                objections.Add(step.Name + " is an etch, and " + material.Name + " may not be etched.");
            }
        }

        if (Promoters.Count > 0 && !material.IsOldCoating && PromoterFor(material) is null)
        {
            objections.Add("No adhesion promoter of this system is meant for " + material.Name + ".");
        }

        if (!material.BondsAsNamedIn(Layers[0].Product.Materials))
        {
            objections.Add(Layers[0].Product.Name + " is not stated for " + material.Name + ".");
        }

        objections.AddRange(Layers.Where(layer => layer.Product.Form == CoatingForm.Powder).Select(layer => layer.Product.Name + Baked));
        AddOrder(objections);
        AddRecoat(objections);
        if (total > maximumTotal)
        {
            objections.Add(TotalFilm + ". " + TotalFilm.Remedy);
        }

        return new ValueList<string>(objections.Distinct());
    }

    /// <summary>The name.</summary>
    /// <returns><see cref="Name"/>.</returns>
    public override string ToString() => Name;

    // Products are found by identity, so one identity stands for one product.
    private void CheckIdentities(string name)
    {
        for (int i = 1; i < Layers.Count; i++)
        {
            CoatingProduct product = Layers[i].Product;
            CoatingProduct first = Layers.First(layer => layer.Product.Id == product.Id).Product;
            if (!ReferenceEquals(first, product) && first != product)
            {
                throw new ArgumentException(name + " holds two products with the identity " + product.Id + ".", name);
            }
        }

        if (Promoters.Select(promoter => promoter.Id).Distinct().Count() < Promoters.Distinct().Count())
        {
            throw new ArgumentException(name + " holds two promoters with one identity.", name);
        }
    }

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
            if (Steps[i].Kind == SystemStepKind.Etch && (i + 1 == Steps.Count || Steps[i + 1].Kind != SystemStepKind.RinseAndDry))
            {
                objections.Add(Steps[i].Name + " is not neutralised, rinsed off and dried before what follows.");
            }

            if (Steps[i].Kind == SystemStepKind.SlipResistantBroadcast)
            {
                if (i == 0 || Steps[i - 1].Layer is null)
                {
                    string before = i == 0 ? "nothing" : Steps[i - 1].Name;
                    objections.Add(Steps[i].Name + " has no wet coat to fall into: it follows " + before + ".");
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
        for (int i = 0; i < Layers.Count; i++)
        {
            CoatingProduct product = Layers[i].Product;
            if (product.GoesOver.Count == 0)
            {
                continue;
            }

            if (i > 0 && !product.GoesOver.Contains(Layers[i - 1].Product.Role))
            {
                objections.Add(product.Name + " is not stated to go over " + Layers[i - 1].Product.Name + ".");
            }

            if (Layers[i].Coats > 1 && !product.GoesOver.Contains(product.Role))
            {
                string coats = Figures.Fixed(Layers[i].Coats, 0);
                objections.Add(product.Name + " is not stated to go over itself, yet it has " + coats + " coats.");
            }
        }
    }
}

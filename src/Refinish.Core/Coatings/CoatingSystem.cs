using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>The stack that goes on a fixture: a promoter wipe where the material needs one, then layers from the primer outwards.</summary>
public sealed record CoatingSystem
{
    /// <summary>Makes a system.</summary>
    /// <param name="name">Generic name.</param>
    /// <param name="promoters">The wipes to choose from by material; may be empty.</param>
    /// <param name="layers">The sprayed layers in order of application, at least one.</param>
    /// <param name="source">Where the stack comes from.</param>
    /// <exception cref="ArgumentException">The name is empty, a list holds an empty entry, or there is no layer.</exception>
    public CoatingSystem(string name, IEnumerable<AdhesionPromoter> promoters, IEnumerable<CoatingLayer> layers, Source source)
    {
        Name = Guard.Named(name, nameof(name));
        Promoters = Guard.List(promoters, nameof(promoters));
        Layers = Guard.List(layers, nameof(layers), 1);
        Source = Guard.NotNull(source, nameof(source));
    }

    /// <summary>Generic name.</summary>
    public string Name { get; }

    /// <summary>The wipes to choose from by material.</summary>
    public IReadOnlyList<AdhesionPromoter> Promoters { get; }

    /// <summary>The sprayed layers in order of application.</summary>
    public IReadOnlyList<CoatingLayer> Layers { get; }

    /// <summary>Where the stack comes from.</summary>
    public Source Source { get; }

    /// <summary>Dry film of the whole stack.</summary>
    public Length TotalDryFilm => Length.FromMeters(Layers.Sum(layer => layer.TotalDryFilm.Meters));

    /// <summary>The wipe for a material.</summary>
    /// <param name="material">What the fixture is made of.</param>
    /// <returns>The first promoter meant for it, or <see langword="null"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public AdhesionPromoter? PromoterFor(FixtureMaterial material)
    {
        Guard.Defined(material, nameof(material));
        return Promoters.FirstOrDefault(promoter => promoter.Materials.Contains(material));
    }

    /// <summary>Why this system may not go on a material as it stands; an empty list when nothing was found against it.</summary>
    /// <param name="material">What the fixture is made of.</param>
    /// <returns>One sentence for each objection.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public IReadOnlyList<string> ObjectionsFor(FixtureMaterial material)
    {
        Guard.Defined(material, nameof(material));
        List<string> objections = [];
        CoatingProduct first = Layers[0].Product;
        if (!first.Materials.Contains(material))
        {
            objections.Add(first.Name + " is not stated for " + material.InWords() + ".");
        }

        if (Promoters.Count > 0 && PromoterFor(material) is null)
        {
            objections.Add("No adhesion promoter of this system is meant for " + material.InWords() + ".");
        }

        for (int i = 1; i < Layers.Count; i++)
        {
            if (Layers[i].Product.GoesOver.Count > 0 && !Layers[i].Product.GoesOver.Contains(Layers[i - 1].Product.Role))
            {
                objections.Add(Layers[i].Product.Name + " is not stated to go over " + Layers[i - 1].Product.Name + ".");
            }

            if (Layers[i].Product.Role < Layers[i - 1].Product.Role)
            {
                objections.Add(Layers[i].Product.Name + " stands over " + Layers[i - 1].Product.Name + ", which goes on later.");
            }
        }

        return new ValueList<string>(objections);
    }

    /// <summary>The name.</summary>
    /// <returns><see cref="Name"/>.</returns>
    public override string ToString() => Name;
}

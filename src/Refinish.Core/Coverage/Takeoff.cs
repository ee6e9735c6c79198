using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Films;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>Quantities for a set of surfaces and a whole coating system in one call, product by product.</summary>
/// <remarks>
/// The roughness of <see cref="ApplicationLosses.ProfileDepth"/> is filled by the first coat of the first layer and counts nowhere
/// else. Promoters go by <see cref="PromoterQuantity"/>.
/// </remarks>
/// <example><code>
/// Takeoff takeoff = new(
///     [new("tub", Area.FromSquareMeters(2.6)), new("surround", Area.FromSquareMeters(4.5))],
///     GenericCatalogue.EpoxyUrethaneSystem,
///     new SprayGun { FluidRate = VolumeFlow.FromMillilitersPerMinute(150), TransferEfficiency = Ratio.FromPercent(60) },
///     ApplicationLosses.Generic);
/// string order = string.Join("; ", takeoff.Lines);
/// </code></example>
public sealed record Takeoff
{
    /// <summary>Calculates the quantities.</summary>
    /// <param name="surfaces">The surfaces, at least one.</param>
    /// <param name="system">The system.</param>
    /// <param name="gun">The gun, with its transfer efficiency.</param>
    /// <param name="losses">The losses of every coat.</param>
    /// <exception cref="ArgumentException">No surface, or an empty entry.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The gun is so slow that a coat takes more than 100 days.</exception>
    public Takeoff(IEnumerable<CoatedSurface> surfaces, CoatingSystem system, SprayGun gun, ApplicationLosses losses)
    {
        ValueList<CoatedSurface> all = Guard.List(surfaces, 1);
        Surfaces = all;
        System = Guard.NotNull(system);
        Gun = Guard.NotNull(gun);
        Losses = Guard.NotNull(losses);
        ApplicationLosses smooth = losses.ProfileDepth.Meters > 0 ? losses with { ProfileDepth = Length.Zero } : losses;
        List<CoatDemand> coats = [];
        foreach (CoatingLayer layer in system.Layers)
        {
            CoatDemand usual = new(all, layer, gun, smooth);
            for (int coat = 0; coat < layer.Coats; coat++)
            {
                coats.Add(coats.Count == 0 && losses.ProfileDepth.Meters > 0 ? new CoatDemand(all, layer, gun, losses) : usual);
            }
        }

        Coats = new ValueList<CoatDemand>(coats);
        Lines = new ValueList<TakeoffLine>(coats.GroupBy(coat => coat.Layer.Product.Id)
            .Select(group => new TakeoffLine(group.First().Layer.Product, new ValueList<CoatDemand>(group))));
    }

    /// <summary>The surfaces.</summary>
    public IReadOnlyList<CoatedSurface> Surfaces { get; }

    /// <summary>The system.</summary>
    public CoatingSystem System { get; }

    /// <summary>The gun.</summary>
    public SprayGun Gun { get; }

    /// <summary>The losses of every coat.</summary>
    public ApplicationLosses Losses { get; }

    /// <summary>Every coat in order.</summary>
    public IReadOnlyList<CoatDemand> Coats { get; }

    /// <summary>What each product takes.</summary>
    public IReadOnlyList<TakeoffLine> Lines { get; }

    /// <summary>How the quantities follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings() => new("Quantities of " + System.Name, [], Lines.Select(line => line.Workings()));

    /// <summary>The products in one line.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => string.Join("; ", Lines);
}

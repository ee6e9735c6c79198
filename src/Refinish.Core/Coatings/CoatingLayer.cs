using System;
using System.Globalization;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>One product of a system: how many coats of which dry film, reduced by how much.</summary>
/// <example><code>
/// CoatingLayer finish = new(GenericCatalogue.AcrylicUrethaneTopcoat, Length.FromMicrometers(30), coats: 3, Ratio.FromPercent(10));
/// double total = finish.TotalDryFilm.Micrometers;   // 90
/// </code></example>
public sealed record CoatingLayer
{
    private readonly double dryFilmPerCoat;
    private readonly double reducer;

    /// <summary>Makes a layer and holds it against its product's data sheet.</summary>
    /// <param name="product">The product; it has to have volume solids and data that do not contradict each other.</param>
    /// <param name="dryFilmPerCoat">Dry film of each coat, within the product's limits for one coat.</param>
    /// <param name="coats">Number of coats, 1 to 10.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is outside its range, or the product's data contradict each other.
    /// </exception>
    public CoatingLayer(CoatingProduct product, Length dryFilmPerCoat, int coats) : this(product, dryFilmPerCoat, coats, Ratio.Zero)
    {
    }

    /// <summary>Makes a layer and holds it against its product's data sheet.</summary>
    /// <param name="product">The product; it has to have volume solids and data that do not contradict each other.</param>
    /// <param name="dryFilmPerCoat">Dry film of each coat, within the product's limits for one coat.</param>
    /// <param name="coats">Number of coats, 1 to 10.</param>
    /// <param name="reducer">Reducer per volume of mixed product, from the product's minimum to its maximum.</param>
    /// <exception cref="ArgumentOutOfRangeException">
    /// An argument is outside its range, or the product's data contradict each other.
    /// </exception>
    public CoatingLayer(CoatingProduct product, Length dryFilmPerCoat, int coats, Ratio reducer)
    {
        Product = Guard.NotNull(product);
        product.CheckConsistency();
        Guard.Within(product.VolumeSolids, Bounds.Positive(Measure.Percent, 1), nameof(product) + "." + nameof(product.VolumeSolids));
        this.dryFilmPerCoat =
            Guard.Within(dryFilmPerCoat, Bounds.Between(product.MinimumDryFilm.Meters, product.MaximumDryFilm.Meters, Measure.Film));
        Coats = Guard.Count(coats, 1, 10);
        this.reducer = Guard.Within(reducer,
            Bounds.Between(product.MinimumReducer.DecimalFractions, product.MaximumReducer.DecimalFractions, Measure.Percent));
    }

    /// <summary>The product.</summary>
    public CoatingProduct Product { get; }

    /// <summary>Dry film of each coat.</summary>
    public Length DryFilmPerCoat => Length.FromMeters(dryFilmPerCoat);

    /// <summary>Number of coats.</summary>
    public int Coats { get; }

    /// <summary>Reducer per volume of mixed product.</summary>
    public Ratio Reducer => Ratio.FromDecimalFractions(reducer);

    /// <summary>Dry film of all coats together.</summary>
    public Length TotalDryFilm => Length.FromMeters(dryFilmPerCoat * Coats);

    /// <summary>Volatile organic compounds, as applied and at the maker's greatest reducer, against a limit.</summary>
    /// <param name="limit">The limit.</param>
    /// <returns>The comparison of the greater of the two; it cannot be judged when the cans do not state enough.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="limit"/> is missing.</exception>
    public LimitComparison Voc(VocLimit limit)
    {
        LimitComparison applied = new MixedCoating(Product, Reducer).Compare(Guard.NotNull(limit));
        LimitComparison most = MixedCoating.AtMaximumReducer(Product).Compare(limit);
        return most.Value is null || most.Value?.Si > applied.Value?.Si ? most : applied;
    }

    /// <summary>Coats, product and film in one line.</summary>
    /// <returns>Text such as <c>3 × two-part acrylic urethane, 30 µm dry each, 90 µm in all</c>.</returns>
    public override string ToString() =>
        Coats.ToString(CultureInfo.InvariantCulture) + " × " + Product.Name + ", " + Measure.Film.Format(dryFilmPerCoat)
        + (Coats == 1 ? " dry" : " dry each, " + Measure.Film.Format(TotalDryFilm.Meters) + " in all");

    /// <summary>One coat of it.</summary>
    internal CoatingLayer OneCoat() => Coats == 1 ? this : new CoatingLayer(Product, DryFilmPerCoat, 1, Reducer);
}

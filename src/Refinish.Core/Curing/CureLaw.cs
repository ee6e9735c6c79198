using System;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Curing;

/// <summary>
/// How one stage of a product quickens with warmth: as the rows of its data sheet have it, beyond them by the factor of the outer row. At
/// a temperature that holds, the times are those of a <see cref="CureForecast"/> from <see cref="CoatingProduct.CureNear"/>.
/// </summary>
internal static class CureLaw
{
    /// <summary>
    /// The law of a stage; the factor of the product's times where there are no rows, or where the stage takes no time in one.
    /// </summary>
    public static TemperatureShift Of(CoatingProduct product, Func<CureTimes, TimeSpan> stage)
    {
        if (product.CureTable is not CureTable table)
        {
            return TemperatureShift.Doubling(product.Cure.RatePerTenKelvin);
        }

        foreach (CureTimes row in table.Rows)
        {
            if (stage(row) <= TimeSpan.Zero)
            {
                return TemperatureShift.Doubling(Times(product).RatePerTenKelvin);
            }
        }

        double atReference = stage(Times(product)).TotalSeconds;
        return TemperatureShift.OfRows(
            product.CureTable + " of the data sheet", at => atReference / Seconds(table.Near(at), stage, at), Times(product).Source);
    }

    /// <summary>The times that a stage is counted in, at the temperature at which the product's own are given.</summary>
    public static CureTimes Times(CoatingProduct product) => product.CureNear(product.Cure.ReferenceTemperature);

    /// <summary>The temperatures between which a product cures: the least of its coldest row, the greatest of its warmest.</summary>
    public static (Temperature Least, Temperature Most) Range(CoatingProduct product) => product.CureTable is CureTable table
        ? (table.Rows[0].MinimumTemperature, table.Rows[table.Rows.Count - 1].MaximumTemperature)
        : (product.Cure.MinimumTemperature, product.Cure.MaximumTemperature);

    private static double Seconds(CureTimes near, Func<CureTimes, TimeSpan> stage, Temperature at) => stage(near).TotalSeconds
        / TemperatureShift.Doubling(near.RatePerTenKelvin).RateFactor(at, near.ReferenceTemperature);
}

using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>
/// A kind of quantity and its units, the SI base unit first. A number is written in the unit of the trade only if it reads back to the very
/// same SI number; otherwise in the metric one, and if that does not either, in the SI base unit, which always does.
/// </summary>
internal sealed class UnitTable<T>(string name, double[] standIns, params Unit<T>[] units)
{
    public string Name => name;

    public Unit<T> Base => units[0];

    public double[] StandIns => standIns;

    public IEnumerable<string> Symbols => units.Select(unit => unit.Symbol);

    public IEnumerable<string> Spellings => units.SelectMany(unit => unit.Spellings.Prepend(unit.Symbol));

    public Unit<T> this[string symbol] => Array.Find(units, unit => unit.Symbol == symbol)
        ?? throw new ArgumentException("There is no unit " + symbol + " of " + name + ".", nameof(symbol));

    public Unit<T>? Find(JsonElement symbol)
    {
        foreach (Unit<T> unit in units)
        {
            if (symbol.ValueEquals(unit.Symbol) || Array.Exists(unit.Spellings, symbol.ValueEquals))
            {
                return unit;
            }
        }

        return null;
    }

    /// <summary>The unit that the trade uses for this measure.</summary>
    public Unit<T> UnitOf(Measure measure, DisplayUnits system) => this[measure.Symbol(system)];

    /// <summary>The shortest number of this unit that reads back to the very same quantity, if there is one.</summary>
    public double? Exactly(T quantity, Unit<T> unit)
    {
        double si = Base.In(quantity);
        double nearest = unit.In(quantity);
        if (!double.IsFinite(nearest))
        {
            return null;
        }

        foreach (string digits in (ReadOnlySpan<string>)["E11", "E14", "E15", "E16"])
        {
            double rounded = double.Parse(nearest.ToString(digits, CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
            if (Back(rounded))
            {
                return rounded;
            }
        }

        double above = nearest;
        double below = nearest;
        for (int i = 0; i < 4; i++)
        {
            above = Math.BitIncrement(above);
            below = Math.BitDecrement(below);
            if (Back(above))
            {
                return above;
            }

            if (Back(below))
            {
                return below;
            }
        }

        return null;

        bool Back(double candidate) => double.IsFinite(candidate) && Base.In(unit.Of(candidate)) == si;
    }
}

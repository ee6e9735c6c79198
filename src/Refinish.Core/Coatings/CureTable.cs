using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Coatings;

/// <summary>A data sheet's times at several temperatures, and what they come to in between.</summary>
/// <remarks>
/// Between two rows the logarithm of each time runs straight against 1/T, as Arrhenius' law has it; a time that is zero in one row runs
/// straight against T. Outside the rows nothing is extrapolated here: <see cref="Near"/> hands back the nearest row, from which a law
/// that the caller chooses may shift within that row's own limits. Source: algebra on the caller's figures.
/// </remarks>
/// <example><code>
/// CureTimes warm = GenericCatalogue.AcrylicUrethaneTopcoat.Cure;
/// CureTimes cold = warm with { ReferenceTemperature = Temperature.FromDegreesCelsius(15), PotLife = TimeSpan.FromHours(4.5), RecoatCloses = TimeSpan.FromHours(36) };
/// CureTable table = new([cold, warm]);
/// TimeSpan? window = table.At(Temperature.FromDegreesCelsius(20)).RecoatCloses;   // 23.8 h when the warm row says 16 h
/// </code></example>
public sealed record CureTable
{
    private static readonly Source Between = Source.Derived("ln t straight against 1/T between two rows of the data sheet");

    private readonly ValueList<CureTimes> rows;

    /// <summary>Makes a table.</summary>
    /// <param name="rows">One row for each temperature, at least two, in any order.</param>
    /// <exception cref="ArgumentException">
    /// Fewer than two rows, an empty entry, or one row has a pot life or a closing window where another has none.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A row contradicts itself, or two rows have one temperature.</exception>
    public CureTable(IEnumerable<CureTimes> rows)
    {
        this.rows = new ValueList<CureTimes>(Guard.List(rows, 2).OrderBy(row => row.ReferenceTemperature.Kelvins));
        CureTimes first = this.rows[0];
        for (int i = 0; i < this.rows.Count; i++)
        {
            CureTimes row = this.rows[i];
            row.CheckOrder();
            double t = row.ReferenceTemperature.Kelvins;
            Guard.Rule(i == 0 || t > this.rows[i - 1].ReferenceTemperature.Kelvins, nameof(rows), t, Measure.Temperature, "temperatures that differ from row to row");
            if ((row.PotLife is null) != (first.PotLife is null) || (row.RecoatCloses is null) != (first.RecoatCloses is null))
            {
                throw new ArgumentException("rows differ in whether there is a pot life or a closing window; give it in every row or in none.", nameof(rows));
            }
        }
    }

    /// <summary>The rows, coldest first.</summary>
    public IReadOnlyList<CureTimes> Rows => rows;

    /// <summary>Temperature of the coldest row.</summary>
    public Temperature Coldest => rows[0].ReferenceTemperature;

    /// <summary>Temperature of the warmest row.</summary>
    public Temperature Warmest => rows[rows.Count - 1].ReferenceTemperature;

    /// <summary>The times at a temperature within the rows.</summary>
    /// <param name="temperature">From the coldest row to the warmest.</param>
    /// <returns>
    /// Times with that temperature as their reference, the limits of the outer rows, and the factor for ten kelvins of the colder
    /// neighbour.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the rows: nothing is extrapolated.</exception>
    public CureTimes At(Temperature temperature)
    {
        double t = Guard.Within(temperature, Bounds.Between(Coldest.Kelvins, Warmest.Kelvins, Measure.Temperature));
        int i = Below(t);
        CureTimes cold = rows[i];
        CureTimes warm = rows[i + 1];
        TimeSpan Mean(TimeSpan low, TimeSpan high) => Durations.FromSeconds(Interpolated(low, high, cold, warm, t).Value);
        return cold with
        {
            ReferenceTemperature = Temperature.FromKelvins(t),
            MinimumTemperature = rows[0].MinimumTemperature,
            MaximumTemperature = rows[rows.Count - 1].MaximumTemperature,
            Induction = Mean(cold.Induction, warm.Induction),
            PotLife = cold.PotLife is TimeSpan pot ? Mean(pot, warm.PotLife!.Value) : null,
            TouchDry = Mean(cold.TouchDry, warm.TouchDry),
            RecoatOpens = Mean(cold.RecoatOpens, warm.RecoatOpens),
            RecoatCloses = cold.RecoatCloses is TimeSpan closes ? Mean(closes, warm.RecoatCloses!.Value) : null,
            WaterService = Mean(cold.WaterService, warm.WaterService),
            FullCure = Mean(cold.FullCure, warm.FullCure),
        };
    }

    /// <summary>The times nearest to a temperature: <see cref="At"/> within the rows, the outer row itself outside.</summary>
    /// <param name="temperature">The temperature asked for, −20 to 60 °C.</param>
    /// <returns>Times whose reference temperature tells how near they are.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public CureTimes Near(Temperature temperature)
    {
        double t = Guard.Within(temperature, Bounds.Between(253.15, 333.15, Measure.Temperature));
        return t <= Coldest.Kelvins ? rows[0] : t >= Warmest.Kelvins ? rows[rows.Count - 1] : At(temperature);
    }

    /// <summary>How the times at a temperature within the rows follow.</summary>
    /// <param name="temperature">From the coldest row to the warmest.</param>
    /// <returns>The derivation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside the rows.</exception>
    public Workings Workings(Temperature temperature)
    {
        CureTimes at = At(temperature);
        double t = at.ReferenceTemperature.Kelvins;
        int i = Below(t);
        CureTimes cold = rows[i];
        CureTimes warm = rows[i + 1];
        Trace trace = new();
        (string Name, string Symbol, TimeSpan? Time)[] later = warm.Named();
        foreach (((string name, string symbol, TimeSpan? time), int k) in cold.Named().Select((one, k) => (one, k)))
        {
            if (time is TimeSpan low && later[k].Time is TimeSpan high)
            {
                trace.Step(name, symbol, Measure.Hours, Between, Interpolated(low, high, cold, warm, t, trace));
            }
        }

        return trace.Workings("Times between two rows of the data sheet");
    }

    /// <summary>How many rows and from where to where.</summary>
    /// <returns>Text such as <c>3 temperatures, 15 °C to 30 °C</c>.</returns>
    public override string ToString() =>
        Figures.Fixed(rows.Count, 0) + " temperatures, " + Measure.Temperature.Format(Coldest.Kelvins) + " to " + Measure.Temperature.Format(Warmest.Kelvins);

    private static Num Interpolated(TimeSpan low, TimeSpan high, CureTimes cold, CureTimes warm, double t, Trace? trace = null)
    {
        Num first = trace.Given("t_1", low.TotalSeconds, Measure.Hours);
        Num second = trace.Given("t_2", high.TotalSeconds, Measure.Hours);
        Num a = trace.Given("T_1", cold.ReferenceTemperature.Kelvins, Measure.AbsoluteTemperature);
        Num b = trace.Given("T_2", warm.ReferenceTemperature.Kelvins, Measure.AbsoluteTemperature);
        Num at = trace.Given("T", t, Measure.AbsoluteTemperature);
        return low > TimeSpan.Zero && high > TimeSpan.Zero
            ? first * Num.Exp(Num.Ln(second / first) * ((1 / a) - (1 / at)) / ((1 / a) - (1 / b)))
            : first + ((second - first) * (at - a) / (b - a));
    }

    private int Below(double t)
    {
        int i = 0;
        while (i < rows.Count - 2 && t >= rows[i + 1].ReferenceTemperature.Kelvins)
        {
            i++;
        }

        return i;
    }
}

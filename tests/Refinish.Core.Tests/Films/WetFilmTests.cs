using System;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Refinish.Films;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Films;

public class WetFilmTests
{
    [Fact]
    [Evidence(Basis.Cited, "spreading-rate chart of a trade handbook (conversion chart, 24 volume solids × 8 films); whole ft²/US gal. The row 72 % at 2 mil is a misprint (527 for 577) and is left out")]
    public void Spreading_rates_match_the_printed_chart()
    {
        foreach (Table.Row row in Table.Read("spreading_rate_chart.csv").Rows)
        {
            double solids = row.Number("volume_solids_pct");
            foreach (string column in row.Header)
            {
                if (!column.EndsWith("_mil", StringComparison.Ordinal) || row[column] == "misprint")
                {
                    continue;
                }

                double mils = double.Parse(column.Split('_')[0], System.Globalization.CultureInfo.InvariantCulture);
                WetFilm film = new(Length.FromMils(mils), Ratio.FromPercent(solids));

                // Half of the last printed digit, and the chart's own constant of 1604 for 1604.17 (0.2 at most).
                Numbers.Near(row.Number(column), film.SpreadingRate.SquareFeetPerUsGallon, 0.7);
            }
        }
    }

    [Theory]
    [InlineData(1.5, 42, 0, 3.571428571428571)]
    [InlineData(1.5, 42, 10, 3.928571428571428)]
    [Evidence(Basis.Independent, "derived by hand: 1.5/0.42 and 1.5 × 1.10/0.42 mil; no published source")]
    public void Reducer_thickens_the_wet_film(double dryMils, double solids, double reducer, double wetMils)
    {
        WetFilm film = new(Length.FromMils(dryMils), Ratio.FromPercent(solids), Ratio.FromPercent(reducer));
        Numbers.Close(wetMils, film.Thickness.Mils, 1e-12);
    }

    [Property]
    [Evidence(Basis.Identity, "solids are conserved: wet film × reduced solids = dry film; workings hold to the kernel")]
    public Property Solids_are_conserved() => Prop.ForAll(
        ArbMap.Default.ArbFor<NormalFloat>().Filter(x => Math.Abs(x.Get) > 1e-6),
        ArbMap.Default.ArbFor<NormalFloat>(),
        (a, b) =>
        {
            double dry = 1e-6 * (1 + (Math.Abs(a.Get) % 1000));
            double solids = 0.2 + (0.8 * (Math.Abs(b.Get) % 1));
            WetFilm film = new(Length.FromMeters(dry), Ratio.FromDecimalFractions(solids), Ratio.FromDecimalFractions(Math.Abs(a.Get * b.Get) % 1));
            Numbers.Close(dry, film.Thickness.Meters * film.ReducedSolids.DecimalFractions);
            Numbers.CanBeWritten(film.Workings());
        });

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstring")]
    public void Refuses_what_cannot_be()
    {
        Length dry = Length.FromMicrometers(30);
        Ratio solids = Ratio.FromPercent(40);
        Numbers.Refuses("dryFilm", () => _ = new WetFilm(Length.Zero, solids));
        Numbers.Refuses("volumeSolids", () => _ = new WetFilm(dry, Ratio.FromPercent(101)));
        Numbers.Refuses("volumeSolids", () => _ = new WetFilm(dry, Ratio.Zero));
        Numbers.Refuses("reducer", () => _ = new WetFilm(dry, solids, Ratio.FromPercent(-1)));
    }

    [Fact]
    [Evidence(Basis.Contract, "equal numbers are equal whatever unit they were given in")]
    public void Units_do_not_matter()
    {
        WetFilm metric = new(Length.FromMillimeters(0.0254), Ratio.FromPercent(50));
        WetFilm fraction = new(Length.FromMeters(0.0000254), Ratio.FromDecimalFractions(0.5));
        Assert.Equal(metric, fraction);
        Assert.Equal("50.8 µm wet for 25.4 µm dry", metric.ToString());
    }
}

using System;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

public class DilutionAirTests
{
    [Fact]
    [Evidence(Basis.Cited, "29 CFR 1910.94 Table G-11, vapour per gallon at 70 °F; the rows are from memory, the ideal gas is the independent route; tolerance of the table header")]
    public void Vapour_volumes_match_the_table()
    {
        int compared = 0;
        foreach (Table.Row row in Table.Read("solvent_dilution.csv").Rows)
        {
            DilutionAir air = new(Volume.FromUsGallons(1), Of(row));
            Numbers.Close(row.Number("ft3_per_gal"), air.Vapour.CubicFeet, row.Number("tolerance_pct") / 100);
            Numbers.Close(4 * (100 - row.Number("lel_pct")) * row.Number("ft3_per_gal") / row.Number("lel_pct"), air.Printed!.Value.CubicFeet, row.Number("tolerance_pct") / 100);
            compared++;
        }

        Assert.Equal(10, compared);
    }

    [Fact]
    [Evidence(Basis.Cited, "29 CFR 1910.94(c)(6)(ii), example for toluene: 4 (100 − 1.4) 30.4/1.4 = 8564 ft³ a gallon; from memory, and the gas differs by 0.1 %")]
    public void Toluene_example()
    {
        DilutionAir air = new(Volume.FromUsGallons(1), Solvents.Toluene with { Flammability = Flammability.Between(Ratio.FromPercent(1.4)) });
        Numbers.Close(8564, air.Printed!.Value.CubicFeet, 2e-3);
        Numbers.Close(8655, air.Exact!.Value.CubicFeet, 2e-3);
    }

    [Fact]
    [Evidence(Basis.Identity, "with the exact air the vapour is a quarter of its limit in the mixture; the regulation's form always asks for less")]
    public void The_exact_form_is_exact_and_never_less()
    {
        foreach (Solvent solvent in Solvents.All.Where(one => one.Flammability.Lower is not null))
        {
            DilutionAir air = new(Volume.FromLiters(3), solvent);
            double fraction = air.Vapour.CubicMeters / (air.Vapour + air.Exact!.Value).CubicMeters;
            Numbers.Close(0.25 * solvent.Flammability.Lower!.Value.DecimalFractions, fraction);
            Assert.True(air.Printed < air.Exact);
            Numbers.HoldsToKernel(air.Workings());
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "no limit, no air; ranges of the docstring")]
    public void Says_when_it_cannot()
    {
        DilutionAir air = new(Volume.FromLiters(1), Rooms.Solvent("x", 100, null));
        Assert.Null(air.Exact);
        Assert.Null(air.Printed);
        Numbers.HoldsToKernel(air.Workings());
        Numbers.Refuses("liquid", () => _ = new DilutionAir(Volume.Zero, Solvents.Toluene));
    }

    private static Solvent Of(Table.Row row) => new()
    {
        Name = row["solvent"],
        CasNumber = row["solvent"],
        MolarMass = MolarMass.FromGramsPerMole(row.Number("g_per_mol")),
        Density = Density.FromGramsPerMilliliter(row.Number("g_per_ml")),
        Flammability = Flammability.Between(Ratio.FromPercent(row.Number("lel_pct"))),
        Source = Source.FromMemory("header of the table"),
    };
}

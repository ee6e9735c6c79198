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
        Assert.Equal("3.7854 L of toluene: 311.89 m³ of air to 25 % of its flammable limit", new DilutionAir(Volume.FromUsGallons(1), Solvents.Toluene).ToString());
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
            Numbers.CanBeWritten(air.Workings());
        }
    }

    [Theory]
    [InlineData("67-64-1", 6593.2)]
    [InlineData("123-86-4", 5736.1)]
    [InlineData("71-36-3", 9916.3)]
    [InlineData("141-78-6", 5116.8)]
    [InlineData("64-17-5", 4914.1)]
    [InlineData("67-56-1", 4104.2)]
    [InlineData("67-63-0", 8624.0)]
    [InlineData("108-88-3", 8564.1)]
    [InlineData("95-47-6", 10454.4)]
    [InlineData("108-94-1", 11220.7)]
    [Evidence(Basis.Cited, "29 CFR 1910.94(c)(6)(ii) with Table G-11: cubic feet of air a gallon, worked out by another program from the table's rows, which are "
        + "from memory; a tenth of a cubic foot")]
    public void The_tables_own_figures_stand_beside(string cas, double cubicFeet)
    {
        DilutionAir air = new(Volume.FromUsGallons(1), Rooms.Solvent("x", 100) with { CasNumber = cas });
        Numbers.Near(cubicFeet, air.Tabled!.Value.CubicFeet, 0.051);
        Numbers.Near(2 * cubicFeet, new DilutionAir(Volume.FromUsGallons(2), air.Solvent).Tabled!.Value.CubicFeet, 0.11);
        Numbers.Close((air.Tabled.Value / air.Printed!.Value) - 1, air.TabledDifference!.Value.DecimalFractions, 1e-12);
        Numbers.CanBeWritten(air.Workings());
    }

    [Fact]
    [Evidence(Basis.Cited, "Table G-11 has 1.4 % for toluene and NIOSH 1.1 %: 4 (98.6/1.4)/(4 (98.9/1.1)) − 1 = −21.7 %, the table asks for a fifth less; the gas "
        + "differs by 0.1 %. Rows from memory")]
    public void The_tables_limit_may_ask_for_less()
    {
        DilutionAir air = new(Volume.FromUsGallons(1), Solvents.Toluene);
        Numbers.Near((98.6 / 1.4 / (98.9 / 1.1)) - 1, air.TabledDifference!.Value.DecimalFractions, 2e-3);
        Assert.Null(new DilutionAir(Volume.FromUsGallons(1), Solvents.Xylene).Tabled);
        Assert.Null(new DilutionAir(Volume.FromUsGallons(1), Solvents.Xylene).TabledDifference);
        DilutionAir unknown = new(Volume.FromUsGallons(1), Solvents.Toluene with { Flammability = Flammability.Unknown });
        Assert.NotNull(unknown.Tabled);
        Assert.Null(unknown.TabledDifference);
        Numbers.CanBeWritten(unknown.Workings());
    }

    [Fact]
    [Evidence(Basis.Contract, "what does not burn asks for no air on that account")]
    public void What_does_not_burn_needs_none()
    {
        DilutionAir air = new(Volume.FromLiters(1), Rooms.Solvent("x", 100) with { Flammability = Flammability.NonBurning(Source.Invented("test")) });
        Assert.Equal(0, air.Exact!.Value.CubicMeters);
        Assert.Equal(0, air.Printed!.Value.CubicMeters);
        Assert.Contains("does not burn", air.ToString(), StringComparison.Ordinal);
        Numbers.CanBeWritten(air.Workings());
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 30.37 ft³ of toluene vapour to a tenth of 1.4 % is 30.37 · 0.9986/0.0014 = 21 662 ft³; over an hour, with mixing factor 3, 1083 ft³/min; gas to 0.1 %")]
    public void Any_share_and_its_airflow_by_hand()
    {
        Volume gallon = Volume.FromUsGallons(1);
        Solvent toluene = Solvents.Toluene with { Flammability = Flammability.Between(Ratio.FromPercent(1.4)) };
        DilutionAir air = new(gallon, toluene, Ratio.FromPercent(10), TimeSpan.FromHours(1), 3);
        Numbers.Close(21662, air.Exact!.Value.CubicFeet, 1e-3);
        Numbers.Close(1083, air.Airflow!.Value.CubicFeetPerMinute, 1e-3);
        Assert.Null(air.Printed);
        Numbers.CanBeWritten(air.Workings());
        Assert.Null(new DilutionAir(gallon, toluene, Ratio.FromPercent(10), null, 3).Airflow);
        Assert.True(new DilutionAir(gallon, toluene, Ratio.FromPercent(5), null, 1).Exact > air.Exact);
        Assert.Contains(Cautions.IgnitionSources, air.Cautions);
    }

    [Fact]
    [Evidence(Basis.Identity, "with the airflow for a share of the limit the peak of the room is that share")]
    public void The_room_held_at_any_share()
    {
        AirStudy study = Rooms.Study(Rooms.Bathroom, Rooms.Fan(10, 3), Rooms.Coat(0, 6, 164, 0.4, 15));
        foreach (double percent in new[] { 5.0, 10, 20 })
        {
            VolumeFlow flow = study.AirflowToHold(Ratio.FromPercent(percent))!.Value;
            AirStudy held = Rooms.Study(Rooms.Bathroom, new Exhaust { LabelFlow = flow, DeliveredFraction = Ratio.FromPercent(100), MixingFactor = 3 }, [.. study.Emissions]);
            Numbers.Close(percent, held.PeakFlammableFraction!.Value.Percent, 1e-9);
        }

        Assert.Equal(study.AirflowForFlammableLimit, study.AirflowToHold(Ratio.FromPercent(25)));
        Numbers.Refuses("ofLowerFlammableLimit", () => study.AirflowToHold(Ratio.Zero));
    }

    [Fact]
    [Evidence(Basis.Contract, "no limit, no air; ranges of the docstring")]
    public void Says_when_it_cannot()
    {
        DilutionAir air = new(Volume.FromLiters(1), Rooms.Solvent("x", 100, null));
        Assert.Null(air.Exact);
        Assert.Null(air.Printed);
        Numbers.CanBeWritten(air.Workings());
        Assert.Null(new DilutionAir(air.Liquid, air.Solvent, air.OfLimit, TimeSpan.FromHours(1), 1).Airflow);
        Assert.Contains(Cautions.LimitUnknown, air.Cautions);
        Numbers.Refuses("liquid", () => _ = new DilutionAir(Volume.Zero, Solvents.Toluene));
        Numbers.Refuses("ofLimit", () => _ = new DilutionAir(air.Liquid, air.Solvent, Ratio.Zero, null, 1));
        Numbers.Refuses("evaporationTime", () => _ = new DilutionAir(air.Liquid, air.Solvent, air.OfLimit, TimeSpan.Zero, 1));
        Numbers.Refuses("mixingFactor", () => _ = new DilutionAir(air.Liquid, air.Solvent, air.OfLimit, null, 11));
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

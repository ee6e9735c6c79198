using System;
using System.Linq;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

public class ExposureLimitTests
{
    [Fact]
    [Evidence(Basis.Cited, "pairs of ppm and mg/m³ printed in OSHA's tables, NIOSH's and the EU directive; tolerance is the source's rounding")]
    public void Printed_pairs_agree_at_25_degrees()
    {
        int compared = 0;
        foreach (Table.Row row in Table.Read("printed_limit_pairs.csv").Rows)
        {
            ExposureLimit limit = PublishedLimits.For(row["cas"]).Single(l => l.Authority == row["authority"] && l.Kind.ToString() == row["kind"]);
            MolarMass molarMass = MolarMass.FromGramsPerMole(row.Number("g_per_mol"));
            double tolerance = row.Number("tolerance_pct") / 100;
            Numbers.Close(row.Number("ppm"), limit.VolumeFraction!.Value.PartsPerMillion);
            Numbers.Close(row.Number("mg_m3"), limit.MassConcentration!.Value.MilligramsPerCubicMeter);
            Numbers.Close(row.Number("mg_m3"), limit.MassConcentrationOf(molarMass)!.Value.MilligramsPerCubicMeter, tolerance);
            Numbers.Close(row.Number("ppm"), (limit with { VolumeFraction = null }).VolumeFractionOf(molarMass)!.Value.PartsPerMillion, tolerance);
            compared++;
        }

        Assert.Equal(24, compared);
    }

    [Fact]
    [Evidence(Basis.Cited, "NIOSH Pocket Guide, hexamethylene diisocyanate: 1 ppm = 6.88 mg/m³; three figures")]
    public void Conversion_of_hexamethylene_diisocyanate()
    {
        ExposureLimit limit = Rooms.Limit("822-06-0", 1);
        Numbers.Near(6.88, limit.MassConcentrationOf(MolarMass.FromGramsPerMole(168.2))!.Value.MilligramsPerCubicMeter, 0.005);
    }

    [Property]
    [Evidence(Basis.Identity, "ppm to mg/m³ and back")]
    public Property Conversion_round_trips() => Prop.ForAll(
        ArbMap.Default.ArbFor<NormalFloat>(),
        ArbMap.Default.ArbFor<NormalFloat>(),
        (a, b) =>
        {
            MolarMass molarMass = MolarMass.FromGramsPerMole(10 + (Math.Abs(a.Get) % 300));
            double ppm = 0.001 + (Math.Abs(b.Get) % 5000);
            ExposureLimit byVolume = Rooms.Limit("x", ppm);
            ExposureLimit byMass = byVolume with { VolumeFraction = null, MassConcentration = byVolume.MassConcentrationOf(molarMass) };
            Numbers.Close(ppm, byMass.VolumeFractionOf(molarMass)!.Value.PartsPerMillion);
        });

    [Fact]
    [Evidence(Basis.Cited, "29 CFR 1910.1000 Table Z-1 and NIOSH Pocket Guide: no OSHA limit for HDI; none for 1-methoxy-2-propyl acetate (its absence from Z-1 is from memory)")]
    public void What_has_no_limit_has_no_row()
    {
        Assert.DoesNotContain(PublishedLimits.For("822-06-0"), limit => limit.Authority == "OSHA PEL");
        Assert.DoesNotContain(PublishedLimits.For("108-65-6"), limit => limit.Jurisdiction == "United States");
        Assert.Empty(PublishedLimits.For("no such number"));
    }

    [Fact]
    [Evidence(Basis.Cited, "NIOSH IDLH documentation: the immediately dangerous concentration of these is 10 % of the lower explosive limit")]
    public void Immediately_dangerous_is_a_tenth_of_the_flammable_limit()
    {
        foreach (Solvent solvent in new[] { Solvents.Acetone, Solvents.ButylAcetate, Solvents.EthylAcetate })
        {
            ExposureLimit idlh = PublishedLimits.For(solvent.CasNumber).Single(limit => limit.Kind == ExposureLimitKind.Idlh);
            Numbers.Close(solvent.Flammability.Lower!.Value.PartsPerMillion / 10, idlh.VolumeFraction!.Value.PartsPerMillion);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "each row has a figure, and one recalled from memory says so in its source too")]
    public void Rows_state_what_they_rest_on()
    {
        foreach (ExposureLimit limit in PublishedLimits.All)
        {
            Assert.True(limit.VolumeFraction is not null || limit.MassConcentration is not null, limit.ToString());
            Assert.Equal(limit.Standing == Standing.FromMemory, limit.Source.Kind == SourceKind.FromMemory);
        }

        Assert.Equal(PublishedLimits.All.Count, PublishedLimits.All.Select(limit => (limit.CasNumber, limit.Authority, limit.Kind)).Distinct().Count());
        foreach (LegalFact fact in LegalFacts.All)
        {
            Assert.Equal(fact.Standing == Standing.FromMemory, fact.Source.Kind == SourceKind.FromMemory);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "ranges of the docstrings; units do not matter to equality")]
    public void Refuses_what_cannot_be()
    {
        ExposureLimit limit = Rooms.Limit("x", 100);
        Numbers.Refuses("VolumeFraction", () => _ = limit with { VolumeFraction = Ratio.Zero });
        Numbers.Refuses("MassConcentration", () => _ = limit with { MassConcentration = MassConcentration.FromKilogramsPerCubicMeter(-1) });
        Numbers.Refuses("molarMass", () => limit.VolumeFractionOf(MolarMass.Zero));
        Assert.Throws<ArgumentException>(() => _ = limit with { CasNumber = " " });
        Assert.Null((limit with { VolumeFraction = null }).VolumeFractionOf(MolarMass.FromGramsPerMole(100)));
        Assert.Equal(limit, limit with { VolumeFraction = Ratio.FromPercent(0.01) });
        Assert.Equal("x, OSHA PEL: 100 ppm", limit.ToString());
    }
}

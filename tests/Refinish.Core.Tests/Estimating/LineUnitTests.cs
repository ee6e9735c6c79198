using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Estimating;

/// <summary>Units of lines against UN/ECE Recommendation 20.</summary>
public class LineUnitTests
{
    [Fact]
    [Evidence(Basis.Cited, "UN/ECE Recommendation 20, annex II, in a public-domain reprint; each code allowed by "
        + "the EN 16931 validation artefacts 1.3.16")]
    public void Every_unit_has_the_published_code()
    {
        Dictionary<string, string> codes = Table.Read("unece_units.csv").Rows.ToDictionary(row => row["unit"], row => row["code"]);
        LineUnit[] units = Enum.GetValues<LineUnit>();
        Assert.Equal(units.Length, codes.Count);
        Assert.All(units, unit => Assert.Equal(codes[unit.ToString()], unit.ExchangeCode()));
    }

    [Fact]
    [Evidence(Basis.Contract, "no two units look alike; an unnamed value is refused")]
    public void Symbols_tell_the_units_apart()
    {
        LineUnit[] units = Enum.GetValues<LineUnit>();
        Assert.Equal(units.Length, units.Select(unit => unit.Symbol()).Distinct().Count());
        Assert.Throws<ArgumentOutOfRangeException>(() => ((LineUnit)units.Length).ExchangeCode());
        Assert.Throws<ArgumentOutOfRangeException>(() => ((LineUnit)(-1)).Symbol());
    }
}

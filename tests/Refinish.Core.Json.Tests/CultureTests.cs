using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Xunit;

namespace Refinish.Json.Tests;

public class CultureTests
{
    /// <summary>A dotless i, a decimal comma, and digits and a calendar of its own.</summary>
    [Theory]
    [InlineData("tr-TR")]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    public void Documents_and_faults_are_the_same_under_every_culture(string culture)
    {
        string broken = FaultTests.Put(JobJson.Write(Examples.Bathroom()), "$.shop.losses.residue.value", "80.5");
        string[] here = Everything(broken);
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(culture);
            Assert.Equal(here, Everything(broken));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
            CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        }
    }

    private static string[] Everything(string broken)
    {
        JobJson.TryRead(broken, out _, out IReadOnlyList<JsonFault> faults);
        string everything = JobJson.Write(Examples.Everything());
        string plan = PlanJson.Write(Examples.Bathroom().Plan());
        return
        [
            everything,
            JobJson.Write(JobJson.Read(everything), new JsonLayout { Units = DisplayUnits.UsCustomary }),
            plan,
            PlanJson.Read(plan).Differences.Count.ToString(CultureInfo.InvariantCulture),
            .. faults.Select(fault => fault.ToString()),
        ];
    }
}

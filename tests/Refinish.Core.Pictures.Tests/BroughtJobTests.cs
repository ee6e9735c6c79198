using System;
using System.Linq;
using Refinish.Jobs;
using Refinish.Tests.Jobs;
using Xunit;

namespace Refinish.Pictures.Tests;

/// <summary>What a shop brings is drawn with the plan.</summary>
public class BroughtJobTests
{
    private static readonly JobPlan Plan = BroughtJob.Job().Plan();

    [Fact]
    public void Its_fixtures_are_drawn()
    {
        foreach (FixtureJob fixture in Plan.Job.Fixtures)
        {
            SvgFile file = new(new FixturePicture(fixture.Fixture, fixture.Name).ToSvg());
            Assert.NotEmpty(file.Elements("path"));
            Assert.All(fixture.Fixture.Zones.Select(zone => zone.Kind).Distinct(), kind => Assert.Contains(
                kind.ToString("G"), file.AllWords, StringComparison.OrdinalIgnoreCase));
        }
    }

    [Fact]
    public void Its_operation_and_its_products_stand_in_the_timeline_and_its_limit_in_the_air()
    {
        SvgFile time = new(new TimelinePicture(Plan).ToSvg());
        Assert.Contains("three-part urethane topcoat", time.AllWords, StringComparison.Ordinal);
        SvgFile air = new(new AirPicture(Plan.Air[0].Study!).ToSvg());
        Assert.Contains("20 %", air.AllWords, StringComparison.Ordinal);
    }
}

using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.Jobs;

/// <summary>Keys of lines stay where they are while other things change.</summary>
public class LineKeyTests
{
    private static readonly Job House = InventedJobs.OccupiedHouse();

    private static string[] Labour(Job job) =>
        [.. job.Plan().Price!.Lines.Where(line => line.Category == LineCategory.Labour).Select(line => line.Id).OrderBy(id => id, StringComparer.Ordinal)];

    [Fact]
    [Evidence(Basis.Contract, "a wage that is that of the price book moves no key and no amount")]
    public void A_wage_that_changes_nothing_moves_no_key()
    {
        Shop shop = House.Shop;
        Job paid = House with { Shop = shop with { Crew = [.. shop.Crew.Select(worker => worker with { Wage = shop.Prices.LabourRate })] } };
        Assert.Equal(Labour(House), Labour(paid));
        Assert.Equal(House.Plan().Price!.Total, paid.Plan().Price!.Total);
    }

    [Fact]
    [Evidence(Basis.Contract, "a fixture that goes takes the lines of its own repairs with it and moves none of the others")]
    public void A_fixture_that_goes_moves_no_key()
    {
        Job job = InventedJobs.Rental();
        foreach (FixtureJob gone in job.Fixtures.Where(fixture => job.Fixtures.Count(other => other.Room == fixture.Room) > 1))
        {
            Job rest = job with { Fixtures = [.. job.Fixtures.Where(fixture => fixture.Id != gone.Id)] };
            if (rest.Plan().Price is null)
            {
                continue;
            }

            HashSet<string> before = [.. Labour(job)];
            Assert.DoesNotContain(Labour(rest), id => id.StartsWith("labour/", StringComparison.Ordinal) && !before.Contains(id));
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "operations of the caller's own are lines under their own identity, whatever signs are in it, beside the library's")]
    public void Operations_of_ones_own_are_lines_of_their_own()
    {
        string room = House.Fixtures[0].Room;
        Refinish.Jobs.Operation Own(string id) => new() { Id = id, Kind = WorkKind.Other, Room = room, Instruction = "own work " + id, Time = TimeSpan.FromMinutes(30) };
        string[] ids = [room + "/gc", room + ".gc", "waiting", "stand-by", "overtime"];
        Job job = House with { Changes = [.. ids.Select(id => OperationChange.Add(Own(id), room + "/demask"))] };
        EstimateLine[] lines = [.. job.Plan().Price!.Lines.Where(line => line.Item.StartsWith("operation/", StringComparison.Ordinal))];
        Assert.Equal(ids.OrderBy(id => id, StringComparer.Ordinal), lines.Select(line => line.Code).OrderBy(id => id, StringComparer.Ordinal));
        Assert.All(lines, line => Assert.Equal(0.5m, line.Quantity));
    }
}

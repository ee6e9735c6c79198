using System;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Scheduling;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Jobs;

public class OperationChangeTests
{
    private static readonly Job Job = InventedJobs.OccupiedHouse();

    private static readonly Refinish.Jobs.Operation Polish = new() { Id = "bath/polish", Kind = WorkKind.Other,
        Instruction = "polish the taps", Room = "bath", Time = TimeSpan.FromMinutes(40) };

    [Fact]
    [Evidence(Basis.Contract, "an added operation stands where it was put, is scheduled, waits as told, is paid, and is told with its id")]
    public void An_operation_is_added()
    {
        JobPlan before = Job.Plan();
        JobPlan plan = Changed(OperationChange.Add(Polish, "bath/demask") with { Lags = [new StepLag("bath/demask", "bath/polish",
            TimeSpan.FromMinutes(90), null, "wax dry")] });
        Assert.Empty(plan.Objections);
        Assert.Equal("bath/polish", plan.Operations[IndexOf(plan, "bath/demask") + 1].Id);
        Assert.True(plan.Schedule!.TryFind("bath/polish")!.Start >= plan.Schedule.TryFind("bath/demask")!.End.AddMinutes(90));
        Assert.Equal(before.Operations.Count + 1, plan.Operations.Count);
        Assert.Contains(plan.Price!.Lines, line => line.Item == "operation/bath/polish" && line.Quantity == 0.667m);
        Assert.True(plan.Price.Total > before.Price!.Total);
    }

    [Theory]
    [InlineData("attic", null, null, "Input/bath/polish/room")]
    [InlineData("bath", "ghost", null, "Input/bath/polish/fixture")]
    [InlineData("bath", null, "ghost", "Input/bath/polish/beside")]
    [InlineData("bath", null, "bath/polish", "Input/bath/polish/beside")]
    [Evidence(Basis.Contract, "an added operation whose room, fixture or neighbour is not there is objected to by the identifier, and is not in the list")]
    public void An_operation_that_belongs_to_nothing_is_objected_to(string room, string? fixture, string? beside, string id)
    {
        JobPlan plan = Changed(OperationChange.Add(Polish with { Room = room, Fixtures = fixture is null ? [] : [fixture], Beside = beside }, "bath/demask"));
        PlanObjection objection = Assert.Single(plan.Objections);
        Assert.Equal(id, objection.Id);
        Assert.DoesNotContain(plan.Operations, operation => operation.Id == "bath/polish");
        Assert.Null(plan.Handover);
    }

    [Fact]
    [Evidence(Basis.Contract, "a coat that is replaced by an operation loses film, material and air, which is objected to")]
    public void A_replaced_coat_is_objected_to()
    {
        Refinish.Jobs.Operation coat = Job.Plan().Operations.First(operation => operation.Kind == WorkKind.SprayPrimer);
        JobPlan plan = Changed(OperationChange.Replace(coat.Id, coat with { Time = TimeSpan.FromHours(2) }));
        Assert.Contains(plan.Objections, objection => objection.Id == "Order/" + coat.Id + "/coat");
        Assert.Null(plan.Handover);
    }

    [Fact]
    [Evidence(Basis.Contract, "an operation cannot be moved behind itself, and the objection says so")]
    public void An_operation_is_not_moved_behind_itself() =>
        Assert.Equal("Order/bath/mask/itself", Assert.Single(Changed(OperationChange.Move("bath/mask", "bath/mask")).Objections).Id);

    [Fact]
    [Evidence(Basis.Contract, "without an operation to stand after, an added one is the first")]
    public void Nothing_before_it_means_first() => Assert.Equal("bath/polish", Changed(OperationChange.Add(Polish, null)).Operations[0].Id);

    [Fact]
    [Evidence(Basis.Contract, "a replaced operation keeps id, place, room and fixtures, and takes the time of the new one")]
    public void An_operation_is_replaced()
    {
        JobPlan plan = Changed(OperationChange.Replace("bath/mask", new Refinish.Jobs.Operation { Id = "other", Kind = WorkKind.Mask,
            Instruction = "mask with film", Time = TimeSpan.FromMinutes(7) }));
        Assert.Empty(plan.Objections);
        Refinish.Jobs.Operation mask = plan.Operations.Single(operation => operation.Id == "bath/mask");
        Assert.Equal("mask with film", mask.Instruction);
        Assert.Equal("bath", mask.Room);
        Assert.Equal(["tub"], mask.Fixtures);
        ScheduledOperation when = plan.Schedule!.TryFind("bath/mask")!;
        Assert.Equal(TimeSpan.FromMinutes(7), when.End - when.Start);
        Assert.Null(plan.Schedule.TryFind("other"));
    }

    [Fact]
    [Evidence(Basis.Contract, "a struck operation is gone from list, schedule and price; a struck coat takes run, standing by and "
        + "material with it")]
    public void An_operation_is_struck()
    {
        JobPlan before = Job.Plan();
        JobPlan plan = Changed(OperationChange.Strike("bath/descale"));
        Assert.Empty(plan.Objections);
        Assert.DoesNotContain(plan.Price!.Lines, line => line.Code == LabourStandards.Descale.Code);
        Assert.True(plan.Price.Total < before.Price!.Total);
        JobPlan coat = Changed(OperationChange.Strike("bath/coat/4/acrylic-urethane-topcoat"));
        Assert.Equal(3, coat.Work!.Runs.Count);
        Assert.DoesNotContain(coat.Operations, operation => operation.Id.StartsWith("bath/coat/4", StringComparison.Ordinal));
        Assert.True(Need(coat) < Need(before));

        static Volume Need(JobPlan plan) => plan.Costs!.Request.Materials.Single(need => need.Item == "acrylic-urethane-topcoat").Amount.Volume!.Value;
    }

    [Fact]
    [Evidence(Basis.Contract, "a moved operation stands in its new place; out of the trade's order it is objected to, within it is not")]
    public void An_operation_is_moved()
    {
        JobPlan inspect = Changed(OperationChange.Move("bath/broadcast/3", "bath/coat/3/acrylic-urethane-topcoat"));
        Assert.Empty(inspect.Objections);
        JobPlan broken = Changed(OperationChange.Move("bath/key", "bath/coat/1/epoxy-primer"));
        Assert.Contains(broken.Objections, objection => objection.Kind == ObjectionKind.Order && objection.About == "bath/key");
        Assert.All(broken.Objections, objection => Assert.Equal(ObjectionKind.Order, objection.Kind));
    }

    [Fact]
    [Evidence(Basis.Contract, "an id that is not there, an anchor that is not there and an id that is there already are objected to, and "
        + "change nothing")]
    public void Unknown_and_repeated_ids_are_told()
    {
        JobPlan before = Job.Plan();
        foreach ((OperationChange change, string id) in new[]
        {
            (OperationChange.Strike("bath/paint"), "Order/bath/paint/Strike"), (OperationChange.Move("bath/paint", null),
                "Order/bath/paint/Move"),
            (OperationChange.Replace("bath/paint", Polish), "Order/bath/paint/Replace"), (OperationChange.Add(Polish, "bath/paint"),
                "Order/bath/paint/Add"),
            (OperationChange.Move("bath/mask", "bath/paint"), "Order/bath/paint/Move"),
                (OperationChange.Add(Polish with { Id = "bath/mask" }, null), "Order/bath/mask/twice"),
        })
        {
            JobPlan plan = Changed(change);
            Assert.Equal(id, Assert.Single(plan.Objections).Id);
            Assert.Equal(before.Operations.Select(operation => operation.Id), plan.Operations.Select(operation => operation.Id));
            Assert.Null(plan.Handover);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "a wait for an operation that is not there is objected to")]
    public void A_wait_for_nothing_is_told()
    {
        JobPlan plan = Changed(OperationChange.Add(Polish, "bath/demask") with { Lags = [new StepLag("bath/paint", "bath/polish",
            TimeSpan.Zero, null, "paint dry")] });
        Assert.Equal("Order/bath/paint/Add", Assert.Single(plan.Objections).Id);
    }

    private static JobPlan Changed(OperationChange change) => (Job with { Changes = [change] }).Plan();

    private static int IndexOf(JobPlan plan, string id) => plan.Operations.Select(operation => operation.Id).ToList().IndexOf(id);
}

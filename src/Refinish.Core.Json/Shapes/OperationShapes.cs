using System;
using System.Collections.Generic;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Scheduling;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>Operations of the caller's own, and changes to the list that the rules make.</summary>
internal static class OperationShapes
{
    /// <summary>A need by volume, or by an amount whose unit says what it measures.</summary>
    public static ObjectShape<MaterialNeed> Need { get; } = new Fields<MaterialNeed>("materialNeed")
        .With("item", Scalars.Text, need => need.Item, out Slot<string> item)
        .With("name", Scalars.Text, need => need.Name, out Slot<string> name)
        .WithOr("volume", Quantities.Liquid.OrNull(), need => need.Amount.Volume, null, out Slot<Volume?> volume)
        .WithOr("amount", Quantities.Material.OrNull(), need => need.Amount.Volume is null ? (MaterialAmount?)need.Amount : null, null,
            out Slot<MaterialAmount?> amount)
        .WithOr("density", Quantities.Density.OrNull(), need => need.Density, null, out Slot<Density?> density)
        .Making(v => (volume(v), amount(v)) switch
        {
            (Volume liquid, null) => new MaterialNeed(item(v), name(v), liquid, density(v)),
            (null, MaterialAmount other) => new MaterialNeed(item(v), name(v), other, density(v)),
            _ => throw new ArgumentException("A need has either a volume or an amount of another kind.", nameof(amount)),
        });

    public static ObjectShape<Evaporation> Evaporation { get; } = new Fields<Evaporation>("evaporation")
        .With("name", Scalars.Text, vapour => vapour.Name, out Slot<string> name)
        .With("mass", Quantities.Mass, vapour => vapour.Mass, out Slot<Mass> mass)
        .With("solvents", CommonShapes.List(CoatingShapes.SolventShare), vapour => vapour.Solvents,
            out Slot<IReadOnlyList<SolventShare>> solvents)
        .Optional("timeConstant", Quantities.Duration, vapour => vapour.TimeConstant, (vapour, time) => vapour with { TimeConstant = time })
        .Maybe("takenOffAfter", Quantities.Duration, vapour => vapour.TakenOffAfter, (vapour, time) => vapour with { TakenOffAfter = time })
        .MakingTogether(
            () => new Evaporation
            {
                Name = "stand-in", Mass = Mass.FromGrams(1), Solvents = [new SolventShare(Solvents.Acetone, Ratio.FromPercent(100))],
            },
            v => new Evaporation { Name = name(v), Mass = mass(v), Solvents = solvents(v) });

    public static ObjectShape<Operation> Operation { get; } = new Fields<Operation>("operation")
        .With("id", Scalars.Text, operation => operation.Id, out Slot<string> id)
        .With("kind", LabourShapes.Work, Storable, out Slot<WorkKind> kind)
        .With("instruction", Scalars.Text, operation => operation.Instruction, out Slot<string> instruction)
        .MaybeOf("name", Scalars.Text,
            operation => Said.Name(operation.Name, operation.Instruction, operation, one => one with { Name = one.Name }),
            (operation, name) => operation with { Name = name })
        .MaybeOf("room", Scalars.Text, operation => operation.Room, (operation, room) => operation with { Room = room })
        .Optional("fixtures", CommonShapes.List(Scalars.Text), operation => operation.Fixtures,
            (operation, fixtures) => operation with { Fixtures = fixtures })
        .Optional("people", Scalars.Count, operation => operation.People, (operation, people) => operation with { People = people })
        .Maybe("time", Quantities.Duration, operation => operation.Time, (operation, time) => operation with { Time = time })
        .Optional("labour", CommonShapes.List(LabourShapes.Task), operation => operation.Labour,
            (operation, labour) => operation with { Labour = labour })
        .MaybeOf("beside", Scalars.Text, operation => operation.Beside, (operation, beside) => operation with { Beside = beside })
        .Optional("isInterruptible", Scalars.YesNo, operation => operation.IsInterruptible,
            (operation, said) => operation with { IsInterruptible = said })
        .Optional("sprays", Scalars.YesNo, operation => operation.Sprays, (operation, said) => operation with { Sprays = said })
        .Optional("clearing", Quantities.Duration, operation => operation.Clearing, (operation, time) => operation with { Clearing = time })
        .Optional("raisesDust", Scalars.YesNo, operation => operation.RaisesDust, (operation, said) => operation with { RaisesDust = said })
        .Optional("dustFree", Quantities.Duration, operation => operation.DustFree, (operation, time) => operation with { DustFree = time })
        .Optional("isLoud", Scalars.YesNo, operation => operation.IsLoud, (operation, said) => operation with { IsLoud = said })
        .Maybe("soundLevel", Quantities.SoundLevel, operation => operation.SoundLevel,
            (operation, level) => operation with { SoundLevel = level })
        .Optional("tools", CommonShapes.List(Scalars.Text), operation => operation.Tools,
            (operation, tools) => operation with { Tools = tools })
        .Optional("materials", CommonShapes.List(Need), operation => operation.Materials,
            (operation, materials) => operation with { Materials = materials })
        .Optional("vapours", CommonShapes.List(Evaporation), operation => operation.Vapours,
            (operation, vapours) => operation with { Vapours = vapours })
        .Optional("cautions", CommonShapes.List(CommonShapes.Caution), operation => operation.Cautions,
            (operation, cautions) => operation with { Cautions = cautions })
        .Optional("source", CommonShapes.Source, operation => operation.Source, (operation, source) => operation with { Source = source })
        .Making(v => new Operation { Id = id(v), Kind = kind(v), Instruction = instruction(v) });

    public static ObjectShape<StepLag> Lag { get; } = new Fields<StepLag>("stepLag")
        .With("before", Scalars.Text, Storable, out Slot<string> before)
        .With("after", Scalars.Text, lag => lag.After, out Slot<string> after)
        .With("minimum", Quantities.Duration, lag => lag.Minimum, out Slot<TimeSpan> minimum)
        .WithOr("maximum", Quantities.Duration.OrNull(), lag => lag.Maximum, null, out Slot<TimeSpan?> maximum)
        .With("reason", Scalars.Text, lag => lag.Reason, out Slot<string> reason)
        .MakingTogether(
            () => new StepLag("stand-in", "other stand-in", TimeSpan.Zero, null, "stand-in"),
            v => new StepLag(before(v), after(v), minimum(v), maximum(v), reason(v)));

    public static OneOfShape<OperationChange> Change { get; } = new OneOfShape<OperationChange>("operationChange")
        .Or("add", Add(), change => change.Kind == OperationChangeKind.Add)
        .Or("replace", Replace(), change => change.Kind == OperationChangeKind.Replace && change.Lags.Count == 0)
        .Or("move", Move(), change => change.Kind == OperationChangeKind.Move && change.Lags.Count == 0)
        .Or("strike", Strike(), change => change.Kind == OperationChangeKind.Strike && change.Lags.Count == 0);

    private static ObjectShape<OperationChange> Add() => new Fields<OperationChange>("addedOperation")
        .With("operation", Operation, change => change.Operation!, out Slot<Operation> operation)
        .WithOr("after", Scalars.Text.OrNull(), change => change.After, null, out Slot<string?> after)
        .Optional("lags", CommonShapes.List(Lag), change => change.Lags, (change, lags) => change with { Lags = lags })
        .Making(v => OperationChange.Add(operation(v), after(v)));

    private static ObjectShape<OperationChange> Replace() => new Fields<OperationChange>("replacedOperation")
        .With("id", Scalars.Text, change => change.Id!, out Slot<string> id)
        .With("operation", Operation, change => change.Operation!, out Slot<Operation> operation)
        .Making(v => OperationChange.Replace(id(v), operation(v)));

    private static ObjectShape<OperationChange> Move() => new Fields<OperationChange>("movedOperation")
        .With("id", Scalars.Text, change => change.Id!, out Slot<string> id)
        .WithOr("after", Scalars.Text.OrNull(), change => change.After, null, out Slot<string?> after)
        .Making(v => OperationChange.Move(id(v), after(v)));

    private static ObjectShape<OperationChange> Strike() => new Fields<OperationChange>("struckOperation")
        .With("id", Scalars.Text, change => change.Id!, out Slot<string> id)
        .Making(v => OperationChange.Strike(id(v)));

    // What the rules wrote for single fixtures can be made by the library alone.
    private static WorkKind Storable(Operation operation) => operation.ByFixture.Count == 0
        ? operation.Kind
        : throw new NotSupportedException("The operation \"" + operation.Id
            + "\" holds instructions by fixture, which only a plan can make; take it in with ByFixture empty.");

    private static string Storable(StepLag lag) => lag.Clock is null
        ? lag.Before
        : throw new NotSupportedException("The lag of \"" + lag.After + "\" after \"" + lag.Before
            + "\" is counted on a clock of its own, which has no form in JSON; give elapsed time.");
}

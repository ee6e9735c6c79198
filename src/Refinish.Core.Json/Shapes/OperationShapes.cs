using System;
using System.Collections.Generic;
using Refinish.Coatings;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Scheduling;
using UnitsNet;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>Operations of the caller's own, and changes to the list that the rules make.</summary>
internal static class OperationShapes
{
    /// <summary>A need by volume, or by an amount whose unit says what it measures.</summary>
    public static ObjectShape<MaterialNeed> Need { get; } = new Fields<MaterialNeed>("materialNeed")
        .With("item", Text, it => it.Item, out Slot<string> item)
        .With("name", Text, it => it.Name, out Slot<string> name)
        .WithOr("volume", Quantities.Liquid.OrNull(), it => it.Amount.Volume, null, out Slot<Volume?> volume)
        .WithOr("amount", Quantities.Material.OrNull(), it => it.Amount.Volume is null ? (MaterialAmount?)it.Amount : null, null,
            out Slot<MaterialAmount?> amount)
        .WithOr("density", Quantities.Density.OrNull(), it => it.Density, null, out Slot<Density?> density)
        .Making(v => (volume(v), amount(v)) switch
        {
            (Volume liquid, null) => new MaterialNeed(item(v), name(v), liquid, density(v)),
            (null, MaterialAmount other) => new MaterialNeed(item(v), name(v), other, density(v)),
            _ => throw new ArgumentException("A need has either a volume or an amount of another kind.", nameof(amount)),
        });

    public static ObjectShape<Evaporation> Evaporation { get; } = new Fields<Evaporation>("evaporation")
        .With("name", Text, it => it.Name, out Slot<string> name)
        .With("mass", Quantities.Mass, it => it.Mass, out Slot<Mass> mass)
        .With("solvents", List(CoatingShapes.SolventShare), it => it.Solvents, out Slot<IReadOnlyList<SolventShare>> solvents)
        .Optional("timeConstant", Quantities.Duration, it => it.TimeConstant, (it, time) => it with { TimeConstant = time })
        .Maybe("takenOffAfter", Quantities.Duration, it => it.TakenOffAfter, (it, time) => it with { TakenOffAfter = time })
        .MakingTogether(
            () => new Evaporation
            {
                Name = "stand-in", Mass = Mass.FromGrams(1), Solvents = [new SolventShare(Solvents.Acetone, Ratio.FromPercent(100))],
            },
            v => new Evaporation { Name = name(v), Mass = mass(v), Solvents = solvents(v) });

    public static ObjectShape<Operation> Operation { get; } = new Fields<Operation>("operation")
        .With("id", Text, it => it.Id, out Slot<string> id)
        .With("kind", LabourShapes.Work, Storable, out Slot<WorkKind> kind)
        .With("instruction", Text, it => it.Instruction, out Slot<string> instruction)
        .MaybeOf("name", Text, it => Said.Name(it.Name, it.Instruction, it, one => one with { Name = one.Name }),
            (it, name) => it with { Name = name })
        .MaybeOf("room", Text, it => it.Room, (it, room) => it with { Room = room })
        .Optional("fixtures", List(Text), it => it.Fixtures, (it, fixtures) => it with { Fixtures = fixtures })
        .Optional("people", Count, it => it.People, (it, people) => it with { People = people })
        .Maybe("time", Quantities.Duration, it => it.Time, (it, time) => it with { Time = time })
        .Optional("labour", List(LabourShapes.Task), it => it.Labour, (it, labour) => it with { Labour = labour })
        .MaybeOf("beside", Text, it => it.Beside, (it, beside) => it with { Beside = beside })
        .Optional("isInterruptible", YesNo, it => it.IsInterruptible, (it, said) => it with { IsInterruptible = said })
        .Optional("sprays", YesNo, it => it.Sprays, (it, said) => it with { Sprays = said })
        .Optional("clearing", Quantities.Duration, it => it.Clearing, (it, time) => it with { Clearing = time })
        .Optional("raisesDust", YesNo, it => it.RaisesDust, (it, said) => it with { RaisesDust = said })
        .Optional("dustFree", Quantities.Duration, it => it.DustFree, (it, time) => it with { DustFree = time })
        .Optional("isLoud", YesNo, it => it.IsLoud, (it, said) => it with { IsLoud = said })
        .Maybe("soundLevel", Quantities.SoundLevel, it => it.SoundLevel, (it, level) => it with { SoundLevel = level })
        .Optional("tools", List(Text), it => it.Tools, (it, tools) => it with { Tools = tools })
        .Optional("materials", List(Need), it => it.Materials, (it, materials) => it with { Materials = materials })
        .Optional("vapours", List(Evaporation), it => it.Vapours, (it, vapours) => it with { Vapours = vapours })
        .Optional("cautions", List(CommonShapes.Caution), it => it.Cautions, (it, cautions) => it with { Cautions = cautions })
        .Optional("source", CommonShapes.Source, it => it.Source, (it, source) => it with { Source = source })
        .Making(v => new Operation { Id = id(v), Kind = kind(v), Instruction = instruction(v) });

    public static ObjectShape<StepLag> Lag { get; } = new Fields<StepLag>("stepLag")
        .With("before", Text, Storable, out Slot<string> before)
        .With("after", Text, it => it.After, out Slot<string> after)
        .With("minimum", Quantities.Duration, it => it.Minimum, out Slot<TimeSpan> minimum)
        .WithOr("maximum", Quantities.Duration.OrNull(), it => it.Maximum, null, out Slot<TimeSpan?> maximum)
        .With("reason", Text, it => it.Reason, out Slot<string> reason)
        .MakingTogether(
            () => new StepLag("stand-in", "other stand-in", TimeSpan.Zero, null, "stand-in"),
            v => new StepLag(before(v), after(v), minimum(v), maximum(v), reason(v)));

    public static OneOfShape<OperationChange> Change { get; } = new OneOfShape<OperationChange>("operationChange")
        .Or("add", Add(), change => change.Kind == OperationChangeKind.Add)
        .Or("replace", Replace(), change => change.Kind == OperationChangeKind.Replace && change.Lags.Count == 0)
        .Or("move", Move(), change => change.Kind == OperationChangeKind.Move && change.Lags.Count == 0)
        .Or("strike", Strike(), change => change.Kind == OperationChangeKind.Strike && change.Lags.Count == 0);

    private static ObjectShape<OperationChange> Add() => new Fields<OperationChange>("addedOperation")
        .With("operation", Operation, it => it.Operation!, out Slot<Operation> operation)
        .WithOr("after", Text.OrNull(), it => it.After, null, out Slot<string?> after)
        .Optional("lags", List(Lag), it => it.Lags, (it, lags) => it with { Lags = lags })
        .Making(v => OperationChange.Add(operation(v), after(v)));

    private static ObjectShape<OperationChange> Replace() => new Fields<OperationChange>("replacedOperation")
        .With("id", Text, it => it.Id!, out Slot<string> id)
        .With("operation", Operation, it => it.Operation!, out Slot<Operation> operation)
        .Making(v => OperationChange.Replace(id(v), operation(v)));

    private static ObjectShape<OperationChange> Move() => new Fields<OperationChange>("movedOperation")
        .With("id", Text, it => it.Id!, out Slot<string> id)
        .WithOr("after", Text.OrNull(), it => it.After, null, out Slot<string?> after)
        .Making(v => OperationChange.Move(id(v), after(v)));

    private static ObjectShape<OperationChange> Strike() => new Fields<OperationChange>("struckOperation")
        .With("id", Text, it => it.Id!, out Slot<string> id)
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

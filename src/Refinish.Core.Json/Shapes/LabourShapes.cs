using System;
using System.Collections.Generic;
using Refinish.Estimating;
using UnitsNet;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>Labour standards and the tasks that are worked by them.</summary>
internal static class LabourShapes
{
    public static Shape<WorkKind> Work { get; } = new WordShape<WorkKind>();

    public static ObjectShape<LabourStandard> WholeStandard { get; } = new Fields<LabourStandard>("labourStandard")
        .With("code", Text, it => it.Code, out Slot<string> code)
        .With("description", Text, it => it.Description, out Slot<string> description)
        .Optional("fixed", Hours("hours", "h"), it => it.Fixed, (it, hours) => it with { Fixed = hours })
        .Optional("perSquareMeter", Hours("hoursPerSquareMeter", "h/m²", "h/m2"), it => it.PerSquareMeter,
            (it, hours) => it with { PerSquareMeter = hours })
        .Optional("perUnit", Hours("hours", "h"), it => it.PerUnit, (it, hours) => it with { PerUnit = hours })
        .Optional("unit", Text, it => it.Unit, (it, unit) => it with { Unit = unit })
        .Optional("oncePerVisit", Quantities.Percent, it => it.OncePerVisit, (it, share) => it with { OncePerVisit = share })
        .Optional("fromSize", Quantities.Tape, it => it.FromSize, (it, size) => it with { FromSize = size })
        .Maybe("work", Work, it => it.Work, (it, work) => it with { Work = work })
        .MaybeOf("repairs", DefectKindShape.Kind, it => it.Repairs, (it, kind) => it with { Repairs = kind })
        .Optional("isOnSite", YesNo, it => it.IsOnSite, (it, said) => it with { IsOnSite = said })
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .Making(v => new LabourStandard { Code = code(v), Description = description(v), Source = source(v) });

    /// <summary>By its code it is a standard of the shop, of its own or of the library's where the shop states none.</summary>
    public static ReferenceShape<LabourStandard> Standard { get; } = new(WholeStandard, "a labour standard", standard => standard.Code,
        new Dictionary<string, LabourStandard>());

    public static ObjectShape<LearningCurve> Learning { get; } = new Fields<LearningCurve>("learningCurve")
        .With("model", new WordShape<LearningModel>(), it => it.Model, out Slot<LearningModel> model)
        .With("slope", Quantities.Percent, it => it.Slope, out Slot<Ratio> slope)
        .Making(v => new LearningCurve(model(v), slope(v)));

    public static ObjectShape<LabourTask> Task { get; } = new Fields<LabourTask>("labourTask")
        .With("standard", Standard, it => it.Standard, out Slot<LabourStandard> standard)
        .WithOr("area", Quantities.Area.OrNull(), it => it.Area, null, out Slot<Area?> area)
        .WithOr("units", Number.OrNull(), it => it.Units, null, out Slot<double?> units)
        .WithOr("times", Count, it => it.Times, 1, out Slot<int> times)
        .MaybeOf("id", Text, it => it.Id, (it, id) => it with { Id = id })
        .MaybeOf("worker", Text, it => it.Worker, (it, worker) => it with { Worker = worker })
        .Maybe("wage", Scalars.Money, it => it.Wage, (it, wage) => it with { Wage = wage })
        .Optional("repeats", Count, it => it.Repeats, (it, repeats) => it with { Repeats = repeats })
        .MaybeOf("learning", Learning, it => it.Learning, (it, curve) => it with { Learning = curve })
        .MaybeOf("fixture", Text, it => it.Fixture, (it, fixture) => it with { Fixture = fixture })
        .MaybeOf("room", Text, it => it.Room, (it, room) => it with { Room = room })
        .Making(v => Stated(standard(v), area(v), units(v), times(v)));

    // What a standard has a rate for is stated, if only as 0; left out it would be no hours without a word.
    private static LabourTask Stated(LabourStandard standard, Area? area, double? units, int times) =>
        area is null && standard.PerSquareMeter.Maximum > 0
            ? throw new ArgumentException("area is missing: the labour standard " + standard.Code + " has hours by area.", nameof(area))
            : units is null && standard.PerUnit.Maximum > 0
                ? throw new ArgumentException(
                    "units is missing: the labour standard " + standard.Code + " has hours by " + standard.Unit + ".", nameof(units))
                : new LabourTask { Standard = standard, Area = area ?? Area.Zero, Units = units ?? 0, Times = times };

    public static ObjectShape<ThreePoint> Hours(string name, params string[] units) => new Fields<ThreePoint>(name)
        .With("minimum", Number, it => it.Minimum, out Slot<double> minimum)
        .With("mode", Number, it => it.Mode, out Slot<double> mode)
        .With("maximum", Number, it => it.Maximum, out Slot<double> maximum)
        .With("unit", new FixedUnitShape(units), _ => units[0], out _)
        .MakingTogether(() => default, v => new ThreePoint(minimum(v), mode(v), maximum(v)));
}

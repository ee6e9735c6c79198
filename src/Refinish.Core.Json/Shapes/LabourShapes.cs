using System;
using System.Collections.Generic;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>Labour standards and the tasks that are worked by them.</summary>
internal static class LabourShapes
{
    public static Shape<WorkKind> Work { get; } = new WordShape<WorkKind>();

    public static ObjectShape<LabourStandard> WholeStandard { get; } = new Fields<LabourStandard>("labourStandard")
        .With("code", Scalars.Text, standard => standard.Code, out Slot<string> code)
        .With("description", Scalars.Text, standard => standard.Description, out Slot<string> description)
        .Optional("fixed", Hours("hours", "h"), standard => standard.Fixed, (standard, hours) => standard with { Fixed = hours })
        .Optional("perSquareMeter", Hours("hoursPerSquareMeter", "h/m²", "h/m2"), standard => standard.PerSquareMeter,
            (standard, hours) => standard with { PerSquareMeter = hours })
        .Optional("perUnit", Hours("hours", "h"), standard => standard.PerUnit, (standard, hours) => standard with { PerUnit = hours })
        .Optional("unit", Scalars.Text, standard => standard.Unit, (standard, unit) => standard with { Unit = unit })
        .Optional("oncePerVisit", Quantities.Percent, standard => standard.OncePerVisit,
            (standard, share) => standard with { OncePerVisit = share })
        .Optional("fromSize", Quantities.Tape, standard => standard.FromSize, (standard, size) => standard with { FromSize = size })
        .Maybe("work", Work, standard => standard.Work, (standard, work) => standard with { Work = work })
        .MaybeOf("repairs", DefectKindShape.Kind, standard => standard.Repairs, (standard, kind) => standard with { Repairs = kind })
        .Optional("isOnSite", Scalars.YesNo, standard => standard.IsOnSite, (standard, said) => standard with { IsOnSite = said })
        .With("source", CommonShapes.Source, standard => standard.Source, out Slot<Source> source)
        .Making(v => new LabourStandard { Code = code(v), Description = description(v), Source = source(v) });

    /// <summary>By its code it is a standard of the shop, of its own or of the library's where the shop states none.</summary>
    public static ReferenceShape<LabourStandard> Standard { get; } = new(WholeStandard, "a labour standard", standard => standard.Code,
        new Dictionary<string, LabourStandard>());

    public static ObjectShape<LearningCurve> Learning { get; } = new Fields<LearningCurve>("learningCurve")
        .With("model", new WordShape<LearningModel>(), curve => curve.Model, out Slot<LearningModel> model)
        .With("slope", Quantities.Percent, curve => curve.Slope, out Slot<Ratio> slope)
        .Making(v => new LearningCurve(model(v), slope(v)));

    public static ObjectShape<LabourTask> Task { get; } = new Fields<LabourTask>("labourTask")
        .With("standard", Standard, task => task.Standard, out Slot<LabourStandard> standard)
        .WithOr("area", Quantities.Area.OrNull(), task => task.Area, null, out Slot<Area?> area)
        .WithOr("units", Scalars.Number.OrNull(), task => task.Units, null, out Slot<double?> units)
        .WithOr("times", Scalars.Count, task => task.Times, 1, out Slot<int> times)
        .MaybeOf("id", Scalars.Text, task => task.Id, (task, id) => task with { Id = id })
        .MaybeOf("worker", Scalars.Text, task => task.Worker, (task, worker) => task with { Worker = worker })
        .Maybe("wage", Scalars.Money, task => task.Wage, (task, wage) => task with { Wage = wage })
        .Optional("repeats", Scalars.Count, task => task.Repeats, (task, repeats) => task with { Repeats = repeats })
        .MaybeOf("learning", Learning, task => task.Learning, (task, curve) => task with { Learning = curve })
        .MaybeOf("fixture", Scalars.Text, task => task.Fixture, (task, fixture) => task with { Fixture = fixture })
        .MaybeOf("room", Scalars.Text, task => task.Room, (task, room) => task with { Room = room })
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
        .With("minimum", Scalars.Number, hours => hours.Minimum, out Slot<double> minimum)
        .With("mode", Scalars.Number, hours => hours.Mode, out Slot<double> mode)
        .With("maximum", Scalars.Number, hours => hours.Maximum, out Slot<double> maximum)
        .With("unit", new FixedUnitShape(units), _ => units[0], out _)
        .MakingTogether(() => default, v => new ThreePoint(minimum(v), mode(v), maximum(v)));
}

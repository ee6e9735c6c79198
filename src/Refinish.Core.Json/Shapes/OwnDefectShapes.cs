using System.Collections.Generic;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Substrates;
using UnitsNet;
using static Refinish.Json.Shapes.Quantities;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>Defects of a caller's own and what is done about them.</summary>
internal static class OwnDefectShapes
{
    public static ObjectShape<Hollow> Hollow { get; } = new Fields<Hollow>("hollow")
        .With("volume", Liquid, it => it.Volume, out Slot<Volume> volume)
        .With("depth", Tape, it => it.Depth, out Slot<Length> depth)
        .Making(v => new Hollow(volume(v), depth(v)));

    public static ObjectShape<DefectWork> Work { get; } = new Fields<DefectWork>("defectWork")
        .With("kind", LabourShapes.Work, it => it.Kind, out Slot<WorkKind> kind)
        .With("instruction", Text, it => it.Instruction, out Slot<string> instruction)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> workSource)
        .Maybe("hours", LabourShapes.Hours("hours", "h"), it => it.Hours, (it, hours) => it with { Hours = hours })
        .MaybeOf("labourCode", Text, it => it.LabourCode, (it, code) => it with { LabourCode = code })
        .Optional("materials", List(OperationShapes.Need), it => it.Materials, (it, materials) => it with { Materials = materials })
        .Optional("vapours", List(OperationShapes.Evaporation), it => it.Vapours, (it, vapours) => it with { Vapours = vapours })
        .Optional("raisesDust", YesNo, it => it.RaisesDust, (it, said) => it with { RaisesDust = said })
        .Making(v => new DefectWork { Kind = kind(v), Instruction = instruction(v), Source = workSource(v) });

    public static ObjectShape<OwnDefect> Defect { get; } = new Fields<OwnDefect>("ownDefect")
        .With("code", Text, it => it.Code, out Slot<string> code)
        .With("name", Text, it => it.Name, out Slot<string> name)
        .With("effect", new WordShape<Suitability>(), it => it.Effect, out Slot<Suitability> effect)
        .With("remedy", Text, it => it.Remedy, out Slot<string> remedy)
        .With("repeatTest", Text, it => it.RepeatTest, out Slot<string> repeatTest)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .Optional("count", Count, it => it.Count, (it, count) => it with { Count = count })
        .MaybeOf("hollow", Hollow, it => it.Hollow, (it, hollow) => it with { Hollow = hollow })
        .MaybeOf("work", Work, it => it.Work, (it, work) => it with { Work = work })
        .Optional("cautions", List(CommonShapes.Caution), it => it.Cautions, (it, cautions) => it with { Cautions = cautions })
        .Making(v => new OwnDefect
        {
            Code = code(v), Name = name(v), Effect = effect(v), Remedy = remedy(v), RepeatTest = repeatTest(v), Source = source(v),
        });
}

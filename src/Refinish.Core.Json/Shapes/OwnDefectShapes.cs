using System.Collections.Generic;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>Defects of a caller's own and what is done about them.</summary>
internal static class OwnDefectShapes
{
    public static ObjectShape<Hollow> Hollow { get; } = new Fields<Hollow>("hollow")
        .With("volume", Quantities.Liquid, hollow => hollow.Volume, out Slot<Volume> volume)
        .With("depth", Quantities.Tape, hollow => hollow.Depth, out Slot<Length> depth)
        .Making(v => new Hollow(volume(v), depth(v)));

    public static ObjectShape<DefectWork> Work { get; } = new Fields<DefectWork>("defectWork")
        .With("kind", LabourShapes.Work, work => work.Kind, out Slot<WorkKind> kind)
        .With("instruction", Scalars.Text, work => work.Instruction, out Slot<string> instruction)
        .With("source", CommonShapes.Source, work => work.Source, out Slot<Source> workSource)
        .Maybe("hours", LabourShapes.Hours("hours", "h"), work => work.Hours, (work, hours) => work with { Hours = hours })
        .MaybeOf("labourCode", Scalars.Text, work => work.LabourCode, (work, code) => work with { LabourCode = code })
        .Optional("materials", CommonShapes.List(OperationShapes.Need), work => work.Materials,
            (work, materials) => work with { Materials = materials })
        .Optional("vapours", CommonShapes.List(OperationShapes.Evaporation), work => work.Vapours,
            (work, vapours) => work with { Vapours = vapours })
        .Optional("raisesDust", Scalars.YesNo, work => work.RaisesDust, (work, said) => work with { RaisesDust = said })
        .Making(v => new DefectWork { Kind = kind(v), Instruction = instruction(v), Source = workSource(v) });

    public static ObjectShape<OwnDefect> Defect { get; } = new Fields<OwnDefect>("ownDefect")
        .With("code", Scalars.Text, defect => defect.Code, out Slot<string> code)
        .With("name", Scalars.Text, defect => defect.Name, out Slot<string> name)
        .With("effect", new WordShape<Suitability>(), defect => defect.Effect, out Slot<Suitability> effect)
        .With("remedy", Scalars.Text, defect => defect.Remedy, out Slot<string> remedy)
        .With("repeatTest", Scalars.Text, defect => defect.RepeatTest, out Slot<string> repeatTest)
        .With("source", CommonShapes.Source, defect => defect.Source, out Slot<Source> source)
        .Optional("count", Scalars.Count, defect => defect.Count, (defect, count) => defect with { Count = count })
        .MaybeOf("hollow", Hollow, defect => defect.Hollow, (defect, hollow) => defect with { Hollow = hollow })
        .MaybeOf("work", Work, defect => defect.Work, (defect, work) => defect with { Work = work })
        .Optional("cautions", CommonShapes.List(CommonShapes.Caution), defect => defect.Cautions,
            (defect, cautions) => defect with { Cautions = cautions })
        .Making(v => new OwnDefect
        {
            Code = code(v),
            Name = name(v),
            Effect = effect(v),
            Remedy = remedy(v),
            RepeatTest = repeatTest(v),
            Source = source(v),
        });
}

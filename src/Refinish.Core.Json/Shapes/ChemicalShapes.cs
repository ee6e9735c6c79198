using Refinish.Estimating;
using Refinish.Jobs;
using UnitsNet;
using static Refinish.Json.Shapes.Quantities;
using static Refinish.Json.Shapes.CommonShapes;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>Chemicals of the preparation: strippers, cleaners, wipes.</summary>
internal static class ChemicalShapes
{
    public static ObjectShape<PrepChemical> Prep { get; } = new Fields<PrepChemical>("prepChemical")
        .With("id", Text, it => it.Id, out Slot<string> id)
        .With("name", Text, it => it.Name, out Slot<string> name)
        .With("for", LabourShapes.Work, it => it.For, out Slot<WorkKind> use)
        .Optional("surfaces", List(MaterialShapes.Material), it => it.Surfaces, (it, surfaces) => it with { Surfaces = surfaces })
        .Maybe("coverage", Quantities.SpreadingRate, it => it.Coverage, (it, rate) => it with { Coverage = rate })
        .Optional("perMeterOfJoint", Liquid, it => it.PerMeterOfJoint, (it, volume) => it with { PerMeterOfJoint = volume })
        .Optional("each", Liquid, it => it.Each, (it, volume) => it with { Each = volume })
        .With("density", Quantities.Density, it => it.Density, out Slot<Density> density)
        .Maybe("volatileFraction", Percent, it => it.VolatileFraction, (it, part) => it with { VolatileFraction = part })
        .Optional("solvents", List(CoatingShapes.SolventShare), it => it.Solvents, (it, solvents) => it with { Solvents = solvents })
        .Optional("timeConstant", Quantities.Duration, it => it.TimeConstant, (it, time) => it with { TimeConstant = time })
        .Maybe("dwell", Quantities.Duration, it => it.Dwell, (it, time) => it with { Dwell = time })
        .Optional("cautions", List(CommonShapes.Caution), it => it.Cautions, (it, cautions) => it with { Cautions = cautions })
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .Making(v => new PrepChemical { Id = id(v), Name = name(v), For = use(v), Density = density(v), Source = source(v) });
}

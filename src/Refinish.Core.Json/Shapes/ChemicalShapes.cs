using Refinish.Estimating;
using Refinish.Jobs;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>Chemicals of the preparation: strippers, cleaners, wipes.</summary>
internal static class ChemicalShapes
{
    public static ObjectShape<PrepChemical> Prep { get; } = new Fields<PrepChemical>("prepChemical")
        .With("id", Scalars.Text, chemical => chemical.Id, out Slot<string> id)
        .With("name", Scalars.Text, chemical => chemical.Name, out Slot<string> name)
        .With("for", LabourShapes.Work, chemical => chemical.For, out Slot<WorkKind> use)
        .Optional("surfaces", CommonShapes.List(MaterialShapes.Material), chemical => chemical.Surfaces,
            (chemical, surfaces) => chemical with { Surfaces = surfaces })
        .Maybe("coverage", Quantities.SpreadingRate, chemical => chemical.Coverage, (chemical, rate) => chemical with { Coverage = rate })
        .Optional("perMeterOfJoint", Quantities.Liquid, chemical => chemical.PerMeterOfJoint,
            (chemical, volume) => chemical with { PerMeterOfJoint = volume })
        .Optional("each", Quantities.Liquid, chemical => chemical.Each, (chemical, volume) => chemical with { Each = volume })
        .With("density", Quantities.Density, chemical => chemical.Density, out Slot<Density> density)
        .Maybe("volatileFraction", Quantities.Percent, chemical => chemical.VolatileFraction,
            (chemical, part) => chemical with { VolatileFraction = part })
        .Optional("solvents", CommonShapes.List(CoatingShapes.SolventShare), chemical => chemical.Solvents,
            (chemical, solvents) => chemical with { Solvents = solvents })
        .Optional("timeConstant", Quantities.Duration, chemical => chemical.TimeConstant,
            (chemical, time) => chemical with { TimeConstant = time })
        .Maybe("dwell", Quantities.Duration, chemical => chemical.Dwell, (chemical, time) => chemical with { Dwell = time })
        .Optional("cautions", CommonShapes.List(CommonShapes.Caution), chemical => chemical.Cautions,
            (chemical, cautions) => chemical with { Cautions = cautions })
        .With("source", CommonShapes.Source, chemical => chemical.Source, out Slot<Source> source)
        .Making(v => new PrepChemical { Id = id(v), Name = name(v), For = use(v), Density = density(v), Source = source(v) });
}

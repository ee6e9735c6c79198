using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using Refinish.Fixtures;
using UnitsNet;
using static Refinish.Json.Shapes.Quantities;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>What fixtures are made of.</summary>
internal static class MaterialShapes
{
    public static ObjectShape<FixtureThermalData> Heat { get; } = new Fields<FixtureThermalData>("fixtureThermalData")
        .With("name", Text, it => it.Name, out Slot<string> name)
        .With("specificHeat", SpecificHeat, it => it.SpecificHeat, out Slot<SpecificEntropy> specificHeat)
        .With("specificHeatSource", CommonShapes.Source, it => it.SpecificHeatSource, out Slot<Source> specificHeatSource)
        .With("conductivity", Conductivity, it => it.Conductivity, out Slot<ThermalConductivity> conductivity)
        .With("conductivitySource", CommonShapes.Source, it => it.ConductivitySource, out Slot<Source> conductivitySource)
        .Making(v => new FixtureThermalData
        {
            Name = name(v), SpecificHeat = specificHeat(v), SpecificHeatSource = specificHeatSource(v), Conductivity = conductivity(v),
            ConductivitySource = conductivitySource(v),
        });

    public static ObjectShape<MaterialBody> Body { get; } = new Fields<MaterialBody>("materialBody")
        .With("heat", Heat, it => it.Heat, out Slot<FixtureThermalData> heat)
        .With("usualThickness", Tape, it => it.UsualThickness, out Slot<Length> usualThickness)
        .With("density", Quantities.Density, it => it.Density, out Slot<Density> density)
        .With("source", CommonShapes.Source, it => it.Source, out Slot<Source> source)
        .Making(v => new MaterialBody { Heat = heat(v), UsualThickness = usualThickness(v), Density = density(v), Source = source(v) });

    public static ObjectShape<MaterialKeying> Keying { get; } = new Fields<MaterialKeying>("materialKeying")
        .With("instruction", Text, it => it.Instruction, out Slot<string> instruction)
        .With("coarsestGrit", Count, it => it.CoarsestGrit, out Slot<int> coarsestGrit)
        .With("finestGrit", Count, it => it.FinestGrit, out Slot<int> finestGrit)
        .MakingTogether(() => new MaterialKeying("stand-in", 220, 220), v =>
            new MaterialKeying(instruction(v), coarsestGrit(v), finestGrit(v)));

    /// <summary>A material of one's own as a whole.</summary>
    public static ObjectShape<FixtureMaterial> Whole { get; } = Fields("fixtureMaterial")
        .MaybeOf("bondsLike", new MaterialShape(Fields("likeMaterial").Making(Make)), it => it.BondsLike,
            (it, like) => it with { BondsLike = like })
        .Making(Make);

    /// <summary>A ready material by its identifier, one of the catalogue by its own, or a whole one.</summary>
    public static MaterialShape Material { get; } = new(Whole);

    // The four that have to be there are the first four fields.
    private static Fields<FixtureMaterial> Fields(string what) => new Fields<FixtureMaterial>(what)
        .With("id", Text, it => it.Id, out _)
        .With("name", Text, it => it.Name, out _)
        .With("surface", new WordShape<MaterialSurface>(), it => it.Surface, out _)
        .With("source", CommonShapes.Source, it => it.Source, out _)
        .Optional("metal", new WordShape<MetalBelow>(), it => it.Metal, (it, metal) => it with { Metal = metal })
        .Optional("mayBeEtched", YesNo, it => it.MayBeEtched, (it, said) => it with { MayBeEtched = said })
        .Optional("bondsInTheField", YesNo, it => it.BondsInTheField, (it, said) => it with { BondsInTheField = said })
        .Optional("crazesInSolvent", YesNo, it => it.CrazesInSolvent, (it, said) => it with { CrazesInSolvent = said })
        .Optional("isFlexibleSheet", YesNo, it => it.IsFlexibleSheet, (it, said) => it with { IsFlexibleSheet = said })
        .Optional("hasJoints", YesNo, it => it.HasJoints, (it, said) => it with { HasJoints = said })
        .MaybeOf("keying", Keying, it => it.Keying, (it, keying) => it with { Keying = keying })
        .MaybeOf("body", Body, it => it.Body, (it, body) => it with { Body = body });

    private static FixtureMaterial Make(Values v) => new()
    {
        Id = (string)v[0]!,
        Name = (string)v[1]!,
        Surface = (MaterialSurface)v[2]!,
        Source = (Source)v[3]!,
    };
}

/// <summary>A material: ready, defined by the catalogue, or whole.</summary>
internal sealed class MaterialShape(FieldsShape<FixtureMaterial> whole) : Shape<FixtureMaterial>, IReferenceShape
{
    public Shape Whole => whole;

    public override IEnumerable<FixtureMaterial> StandIns => FixtureMaterial.All;

    public override Outcome Read(JsonElement json, Reading reading, out FixtureMaterial value)
    {
        if (json.ValueKind == JsonValueKind.Object)
        {
            return whole.Read(json, reading, out value);
        }

        if (json.ValueKind != JsonValueKind.String)
        {
            reading.WrongType(json, "a word as a text, or an object");
            return Nothing(out value);
        }

        string id = json.GetString()!;
        if (FixtureMaterial.TryFind(id) is FixtureMaterial ready)
        {
            value = ready;
            return Outcome.Read;
        }

        if (reading.Definitions.TryFind(id, out FixtureMaterial? own))
        {
            value = own;
            return reading.Definitions.IsDoubtful ? Outcome.StandIn : Outcome.Read;
        }

        if (!reading.Definitions.IsDoubtful)
        {
            string[] known = [.. FixtureMaterial.All.Select(material => material.Id), .. reading.Definitions.Ids<FixtureMaterial>()];
            reading.Fault(JsonFaultKind.UnknownKind, "\"" + id + "\" is not known; one of: " + string.Join(", ", known) + "."
                + Spelling.Suggestion(id, known));
        }

        return Nothing(out value);
    }

    public override void Write(Utf8JsonWriter json, FixtureMaterial value, Writing to)
    {
        if (value.Equals(FixtureMaterial.TryFind(value.Id))
            || (to.Definitions.TryFind(value.Id, out FixtureMaterial? own) && value.Equals(own)))
        {
            json.WriteStringValue(value.Id);
        }
        else
        {
            whole.Write(json, value, to);
        }
    }
}

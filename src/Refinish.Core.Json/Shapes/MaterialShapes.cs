using System;
using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using Refinish.Fixtures;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>What fixtures are made of.</summary>
internal static class MaterialShapes
{
    public static ObjectShape<FixtureThermalData> Heat { get; } = new Fields<FixtureThermalData>("fixtureThermalData")
        .With("name", Scalars.Text, data => data.Name, out Slot<string> name)
        .With("specificHeat", Quantities.SpecificHeat, data => data.SpecificHeat, out Slot<SpecificEntropy> specificHeat)
        .With("specificHeatSource", CommonShapes.Source, data => data.SpecificHeatSource, out Slot<Source> specificHeatSource)
        .With("conductivity", Quantities.Conductivity, data => data.Conductivity, out Slot<ThermalConductivity> conductivity)
        .With("conductivitySource", CommonShapes.Source, data => data.ConductivitySource, out Slot<Source> conductivitySource)
        .Making(v => new FixtureThermalData
        {
            Name = name(v),
            SpecificHeat = specificHeat(v),
            SpecificHeatSource = specificHeatSource(v),
            Conductivity = conductivity(v),
            ConductivitySource = conductivitySource(v),
        });

    public static ObjectShape<MaterialBody> Body { get; } = new Fields<MaterialBody>("materialBody")
        .With("heat", Heat, body => body.Heat, out Slot<FixtureThermalData> heat)
        .With("usualThickness", Quantities.Tape, body => body.UsualThickness, out Slot<Length> usualThickness)
        .With("density", Quantities.Density, body => body.Density, out Slot<Density> density)
        .With("source", CommonShapes.Source, body => body.Source, out Slot<Source> source)
        .Making(v => new MaterialBody { Heat = heat(v), UsualThickness = usualThickness(v), Density = density(v), Source = source(v) });

    public static ObjectShape<MaterialKeying> Keying { get; } = new Fields<MaterialKeying>("materialKeying")
        .With("instruction", Scalars.Text, keying => keying.Instruction, out Slot<string> instruction)
        .With("coarsestGrit", Scalars.Count, keying => keying.CoarsestGrit, out Slot<int> coarsestGrit)
        .With("finestGrit", Scalars.Count, keying => keying.FinestGrit, out Slot<int> finestGrit)
        .MakingTogether(() => new MaterialKeying("stand-in", 220, 220), v =>
            new MaterialKeying(instruction(v), coarsestGrit(v), finestGrit(v)));

    /// <summary>A material of one's own as a whole.</summary>
    public static ObjectShape<FixtureMaterial> Whole { get; } = Fields("fixtureMaterial")
        .MaybeOf("bondsLike", new MaterialShape(Fields("likeMaterial").Making(Make)), material => material.BondsLike,
            (material, like) => material with { BondsLike = like })
        .Making(Make);

    /// <summary>A ready material by its identifier, one of the catalogue by its own, or a whole one.</summary>
    public static MaterialShape Material { get; } = new(Whole);

    // The four that have to be there are the first four fields.
    private static Fields<FixtureMaterial> Fields(string what) => new Fields<FixtureMaterial>(what)
        .With("id", Scalars.Text, material => material.Id, out _)
        .With("name", Scalars.Text, material => material.Name, out _)
        .With("surface", new WordShape<MaterialSurface>(), material => material.Surface, out _)
        .With("source", CommonShapes.Source, material => material.Source, out _)
        .Optional("metal", new WordShape<MetalBelow>(), material => material.Metal, (material, metal) => material with { Metal = metal })
        .Optional("mayBeEtched", Scalars.YesNo, material => material.MayBeEtched, (material, said) => material with { MayBeEtched = said })
        .Optional("bondsInTheField", Scalars.YesNo, material => material.BondsInTheField,
            (material, said) => material with { BondsInTheField = said })
        .Optional("crazesInSolvent", Scalars.YesNo, material => material.CrazesInSolvent,
            (material, said) => material with { CrazesInSolvent = said })
        .Optional("isFlexibleSheet", Scalars.YesNo, material => material.IsFlexibleSheet,
            (material, said) => material with { IsFlexibleSheet = said })
        .Optional("hasJoints", Scalars.YesNo, material => material.HasJoints, (material, said) => material with { HasJoints = said })
        .MaybeOf("keying", Keying, material => material.Keying, (material, keying) => material with { Keying = keying })
        .MaybeOf("body", Body, material => material.Body, (material, body) => material with { Body = body });

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

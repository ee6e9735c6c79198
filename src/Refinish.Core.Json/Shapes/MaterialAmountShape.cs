using System.Collections.Generic;
using System.Linq;
using System.Text.Json;
using Refinish.Estimating;
using UnitsNet;

namespace Refinish.Json.Shapes;

/// <summary>An amount of material as value and unit, whose unit says whether it is a volume, a mass, an area, a length or pieces.</summary>
internal sealed class MaterialAmountShape : Shape<MaterialAmount>, IQuantityShape
{
    private static readonly QuantityShape<Volume> Volumes = new(Units.Volume, Measure.Liquid);
    private static readonly QuantityShape<Mass> Masses = new(Units.Mass, Measure.Mass);
    private static readonly QuantityShape<Area> Areas = new(Units.Area, Measure.Area);
    private static readonly QuantityShape<Length> Lengths = new(Units.Length, Measure.Distance);
    private static readonly QuantityShape<double> Counts = new(Units.Pieces, (_, _) => Units.Pieces.Base);

    public string Name => "amount of material";

    public override string WhereItIsSaid => ".value";

    public IEnumerable<string> Spellings =>
        [.. Volumes.Spellings, .. Masses.Spellings, .. Areas.Spellings, .. Lengths.Spellings, .. Counts.Spellings];

    public override IEnumerable<MaterialAmount> StandIns => Volumes.StandIns.Select(MaterialAmount.FromVolume);

    public override Outcome Read(JsonElement json, Reading reading, out MaterialAmount value)
    {
        JsonElement unit = default;
        bool hasUnit = json.ValueKind == JsonValueKind.Object && json.TryGetProperty("unit", out unit)
            && unit.ValueKind == JsonValueKind.String;
        Outcome outcome;
        if (!hasUnit || Units.Volume.Find(unit) is not null)
        {
            outcome = Volumes.Read(json, reading, out Volume volume);
            value = volume;
        }
        else if (Units.Mass.Find(unit) is not null)
        {
            outcome = Masses.Read(json, reading, out Mass mass);
            value = mass;
        }
        else if (Units.Area.Find(unit) is not null)
        {
            outcome = Areas.Read(json, reading, out Area area);
            value = area;
        }
        else if (Units.Length.Find(unit) is not null)
        {
            outcome = Lengths.Read(json, reading, out Length length);
            value = length;
        }
        else if (Units.Pieces.Find(unit) is not null)
        {
            outcome = Counts.Read(json, reading, out double pieces);
            value = MaterialAmount.FromPieces(pieces);
        }
        else
        {
            reading.Enter("unit");
            string given = unit.GetString()!;
            reading.Fault(
                JsonFaultKind.UnknownUnit,
                "\"" + given + "\" is no unit of volume, mass, area, length or pieces; one of: " + string.Join(", ", Spellings) + "."
                    + Spelling.UnitSuggestion(given, Spellings));
            reading.Leave();
            return Nothing(out value);
        }

        return outcome;
    }

    public override void Write(Utf8JsonWriter json, MaterialAmount value, Writing to)
    {
        switch (value.Dimension)
        {
            case MaterialDimension.Volume:
                Volumes.Write(json, value.Volume!.Value, to);
                break;
            case MaterialDimension.Mass:
                Masses.Write(json, value.Mass!.Value, to);
                break;
            case MaterialDimension.Area:
                Areas.Write(json, value.Area!.Value, to);
                break;
            case MaterialDimension.Length:
                Lengths.Write(json, value.Length!.Value, to);
                break;
            default:
                Counts.Write(json, value.Pieces!.Value, to);
                break;
        }
    }

    /// <summary>A calculated amount in the unit of the trade.</summary>
    public static MeasuredAmount Result(MaterialAmount amount) => amount.Dimension switch
    {
        MaterialDimension.Volume => new(amount.Volume!.Value.CubicMeters, Measure.Liquid),
        MaterialDimension.Mass => new(amount.Mass!.Value.Kilograms, Measure.Mass),
        MaterialDimension.Area => new(amount.Area!.Value.SquareMeters, Measure.Area),
        MaterialDimension.Length => new(amount.Length!.Value.Meters, Measure.Distance),
        _ => new(amount.Pieces!.Value, Measure.Number),
    };
}

using System.Buffers;
using System.Text.Json;
using Refinish.Jobs;

namespace Refinish.Json.Shapes;

/// <summary>Reads the document of a plan, plans its job again and compares.</summary>
internal sealed class StoredPlanShape : Shape<StoredPlan>
{
    public static StoredPlanShape Only { get; } = new();

    public override Outcome Read(JsonElement json, Reading reading, out StoredPlan value)
    {
        Outcome outcome = PlanShapes.Plan.Read(json, reading, out PlanDocument document);
        if (outcome != Outcome.Read || reading.Faults.Count > 0)
        {
            return Nothing(out value);
        }

        JobPlan plan = document.Job.Plan();
        ArrayBufferWriter<byte> bytes = new(65536);
        using (Utf8JsonWriter again = new(bytes, JsonLayout.Default.Options))
        {
            PlanResults.Plan.Write(again, plan, new Writing(document.Units));
        }

        using JsonDocument now = JsonDocument.Parse(bytes.WrittenMemory);
        value = new StoredPlan(
            plan, document.Library, FiguresReader.Read(json).Figures, ResultComparer.Compare(document.Results.Stored, now.RootElement));
        return Outcome.Read;
    }

    public override void Write(Utf8JsonWriter json, StoredPlan value, Writing to) =>
        PlanShapes.Plan.Write(json, PlanShapes.Of(value.Plan, to.Units), to);
}

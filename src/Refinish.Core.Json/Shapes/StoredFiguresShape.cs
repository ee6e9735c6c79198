using System.Collections.Generic;
using System.Text.Json;
using Refinish.Jobs;

namespace Refinish.Json.Shapes;

/// <summary>Reads the figures of a stored plan, and beside them its job as far as it can be read.</summary>
internal sealed class StoredFiguresShape : Shape<StoredFigures>
{
    public static StoredFiguresShape Only { get; } = new();

    public override Outcome Read(JsonElement json, Reading reading, out StoredFigures value)
    {
        if (json.ValueKind != JsonValueKind.Object)
        {
            reading.WrongType(json, "an object with the results of a plan");
            return Nothing(out value);
        }

        (PlanFigures figures, List<JsonFault> unread) = FiguresReader.Read(json);
        bool isRead = Document.TryRead(PlanShapes.Plan, json, out PlanDocument document, out IReadOnlyList<JsonFault> faults);
        List<JsonFault> header = [];
        Found root = new(json, "$", header);
        value = new StoredFigures(figures, root["library"].Text, root["version"].Count, isRead
            ? document.Job : null, [.. faults, .. unread]);
        return Outcome.Read;
    }

    public override void Write(Utf8JsonWriter json, StoredFigures value, Writing to) =>
        throw new System.NotSupportedException("Stored figures are not written; write the plan.");
}

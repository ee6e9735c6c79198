using System.Collections.Generic;
using System.Linq;
using System.Text.Json.Nodes;
using Refinish.Jobs;
using Refinish.Json;

namespace Refinish.Samples.QuoteService;

/// <summary>
/// What a customer asks for: the members of a job document that are not the shop's to decide. They are laid over the shop's own document and read
/// together, so that whatever the library has against a value is said with its place in the request.
/// </summary>
internal static class Ask
{
    private static readonly string[] Members = ["name", "start", "fixtures", "options"];
    private static readonly string[] SiteMembers = ["room", "air", "surface"];

    /// <summary>A request that can be answered, for the documentation.</summary>
    public static JsonObject Example()
    {
        JsonObject job = Document(Shop.Example);
        JsonObject ask = new(Members.Select(member => KeyValuePair.Create(member, job[member]?.DeepClone())));
        ask["site"] = new JsonObject(SiteMembers.Select(member => KeyValuePair.Create(member, job["site"]![member]?.DeepClone())));
        return ask;
    }

    /// <summary>Reads the job, or says everything that is wrong with the request, by JSON path.</summary>
    public static bool TryRead(JsonObject ask, out BathroomJob? job, out IReadOnlyList<(string Path, string Sentence)> faults)
    {
        List<(string Path, string Sentence)> found = [];
        JsonObject document = Document(Shop.Example);
        Lay(ask, document, [.. Members, "site"], "$", found);
        if (ask["site"] is JsonObject site)
        {
            document["site"] = Document(Shop.Example)["site"]!.DeepClone();
            Lay(site, (JsonObject)document["site"]!, SiteMembers, "$.site", found);
        }

        if (!JobJson.TryRead(document.ToJsonString(), out job, out IReadOnlyList<JsonFault> refused))
        {
            found.AddRange(refused.Select(fault => (fault.Path, fault.Sentence)));
        }

        faults = found;
        return found.Count == 0;
    }

    private static JsonObject Document(BathroomJob job) => (JsonObject)JsonNode.Parse(JobJson.Write(job))!;

    // What the customer may say and does not is missing, not the example's.
    private static void Lay(JsonObject ask, JsonObject over, string[] members, string path, List<(string Path, string Sentence)> faults)
    {
        foreach (string member in members)
        {
            over.Remove(member);
        }

        foreach ((string member, JsonNode? value) in ask)
        {
            if (members.Contains(member))
            {
                over[member] = value?.DeepClone();
            }
            else
            {
                faults.Add((path + "." + member, "The shop decides this, or nobody knows it; a request has " + string.Join(", ", members) + "."));
            }
        }
    }
}

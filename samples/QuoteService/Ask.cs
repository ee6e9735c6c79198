using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.Json.Nodes;
using Refinish.Jobs;
using Refinish.Json;

namespace Refinish.Samples.QuoteService;

/// <summary>
/// What a customer asks for: the members of a job document that are not the shop's to decide. They are laid over the shop's own document
/// and read together, so that whatever the library has against a value is said with its place in the request.
/// </summary>
internal static class Ask
{
    // What one visit to the page may ask for; a whole house is for a conversation.
    private const int MostRooms = 6;
    private const int MostFixtures = 12;

    private static readonly string[] Members = ["name", "start", "premises", "fixtures"];
    private static readonly string[] PremisesMembers = ["id", "name", "rooms", "quietHours", "closed"];
    private static readonly string[] RoomMembers = ["id", "name", "room", "climate"];
    private static readonly string[] FixtureMembers = ["id", "name", "room", "fixture", "survey", "oldColour", "newColour", "options"];

    /// <summary>A request that can be answered, for the documentation.</summary>
    public static JsonObject Example()
    {
        JsonObject ask = Only(Document(), Members);
        ask["premises"] = Only(ask["premises"]!, PremisesMembers);
        ask["premises"]!["rooms"] = new JsonArray([.. ask["premises"]!["rooms"]!.AsArray().Select(room => Only(room!, RoomMembers))]);
        ask["fixtures"] = new JsonArray([.. ask["fixtures"]!.AsArray().Select(fixture => Only(fixture!, FixtureMembers))]);
        foreach (JsonNode? fixture in ask["fixtures"]!.AsArray())
        {
            fixture!["options"] = new JsonArray([.. fixture["options"]!.AsArray().Select(option => Only(option!, ["code"]))]);
        }

        return ask;
    }

    /// <summary>Reads the job, or says everything that is wrong with the request, by JSON path.</summary>
    public static bool TryRead(JsonObject ask, out Job? job, out IReadOnlyList<(string Path, string Sentence)> faults)
    {
        List<(string Path, string Sentence)> found = [];
        JsonObject shop = Document();
        JsonNode exhaust = shop["premises"]!["rooms"]![0]!["exhaust"]!;
        Dictionary<string, JsonNode> offered = shop["fixtures"]![0]!["options"]!.AsArray()
            .ToDictionary(option => (string)option!["code"]!, option => option!);
        JsonObject document = Allowed(ask, Members, "$", found);
        if (document["premises"] is JsonObject premises)
        {
            document["premises"] = Allowed(premises, PremisesMembers, "$.premises", found);
            Each(document["premises"]!, "rooms", "$.premises.rooms", MostRooms, found, (room, path) =>
            {
                JsonObject allowed = Allowed(room, RoomMembers, path, found);
                allowed["exhaust"] = exhaust.DeepClone();
                return allowed;
            });
        }

        Each(document, "fixtures", "$.fixtures", MostFixtures, found, (fixture, path) =>
        {
            JsonObject allowed = Allowed(fixture, FixtureMembers, path, found);
            Each(allowed, "options", path + ".options", offered.Count, found,
                (option, place) => Offered(Allowed(option, ["code"], place, found), offered, place, found));
            return allowed;
        });

        foreach (KeyValuePair<string, JsonNode?> member in shop.Where(member => !Members.Contains(member.Key)))
        {
            document[member.Key] = member.Value?.DeepClone();
        }

        if (!JobJson.TryRead(document.ToJsonString(), out job, out IReadOnlyList<JsonFault> refused))
        {
            found.AddRange(refused.Select(fault => (fault.Path, fault.Sentence)));
        }

        faults = found;
        return found.Count == 0;
    }

    private static JsonObject Document() => (JsonObject)JsonNode.Parse(JobJson.Write(OurShop.Example))!;

    private static JsonObject Only(JsonNode owner, string[] members) =>
        new(owner.AsObject().Where(member => members.Contains(member.Key))
            .Select(member => KeyValuePair.Create(member.Key, member.Value?.DeepClone())));

    // What the customer may say is taken over; anything else is said to be the shop's, not dropped.
    private static JsonObject Allowed(JsonObject ask, string[] members, string path, List<(string Path, string Sentence)> faults)
    {
        faults.AddRange(ask.Where(member => !members.Contains(member.Key))
            .Select(member => (path + "." + member.Key,
                "The shop decides this, or nobody knows it; a request has " + string.Join(", ", members) + " here.")));
        return Only(ask, members);
    }

    // What is no list, or no object in it, stays as it is, for the library to refuse.
    private static void Each(
        JsonNode owner, string member, string path, int most, List<(string Path, string Sentence)> faults,
        Func<JsonObject, string, JsonNode> change)
    {
        if (owner[member] is not JsonArray list)
        {
            return;
        }

        if (list.Count > most)
        {
            faults.Add((path, string.Create(CultureInfo.InvariantCulture,
                $"There are {list.Count} entries; a request has at most {most} here.")));
            list.Clear();
        }

        for (int i = 0; i < list.Count; i++)
        {
            if (list[i] is JsonObject entry)
            {
                list[i] = change(entry, path + "[" + i.ToString(CultureInfo.InvariantCulture) + "]");
            }
        }
    }

    // An extra is ordered by its code; grains, rate and work are the shop's.
    private static JsonNode Offered(JsonObject option, Dictionary<string, JsonNode> offered, string path,
        List<(string Path, string Sentence)> faults)
    {
        if (option["code"] is JsonValue code && code.TryGetValue(out string? text) && offered.TryGetValue(text, out JsonNode? known))
        {
            return known.DeepClone();
        }

        faults.Add((path + ".code", "The shop offers " + string.Join(", ", offered.Keys) + "."));
        return offered.Values.First().DeepClone();
    }
}

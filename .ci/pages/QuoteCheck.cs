using System;
using System.IO;
using System.Linq;
using System.Net.Http;
using System.Text;
using System.Text.Json.Nodes;
using System.Threading.Tasks;
using Microsoft.Data.Sqlite;
using Refinish.Jobs;
using Refinish.Samples.QuoteService;

namespace Refinish.Pages;

/// <summary>The quote service: what its endpoints answer, that quotes outlive it, and its pages as a person at the keyboard uses them.</summary>
internal static class QuoteCheck
{
    public const string Password = "pärchen:3"; // A colon and a letter outside ASCII, which both may stand in one.

    public static async Task Run(string folder, string scratch)
    {
        string file = Path.GetFullPath(Path.Combine(scratch, "quotes.db"));
        File.Delete(file);
        string address;
        string before;
        await using (Service service = await Service.Start(folder, "QuoteService.dll", ("Quotes__File", file), ("Shop__Password", Password)))
        {
            JsonNode example = await OpenApi(service.Client);
            address = await Quote(service.Client, example);
            before = await service.Client.GetStringAsync(address);
            await Faults(service.Client, example);
            await Objection(service.Client, example);
        }

        await using (Service again = await Service.Start(folder, "QuoteService.dll", ("Quotes__File", file), ("Shop__Password", Password)))
        {
            Check.Same(before, await again.Client.GetStringAsync(address), "the quote after a restart");
            await Drift(again.Client, file, address, JsonNode.Parse(before)!);
            await QuotePages.Run(again.Client.BaseAddress!, scratch);
        }

        Console.WriteLine("QuoteService: quote, problem details, restart, OpenAPI document, pages by keyboard in light and dark");
    }

    // The document names the endpoints, and the request that it shows is one that the service answers.
    private static async Task<JsonNode> OpenApi(HttpClient client)
    {
        JsonNode document = JsonNode.Parse(await client.GetStringAsync("/openapi/v1.json"))!;
        Check.Same(
            "/quotes /quotes/{id} /quotes/{id}/pictures/{name}.svg /shop/{id}/job /shop/{id}/lines",
            string.Join(' ', document["paths"]!.AsObject().Select(path => path.Key).Order(StringComparer.Ordinal)),
            "the endpoints of the OpenAPI document");
        return document["paths"]!["/quotes"]!["post"]!["requestBody"]!["content"]!["application/json"]!["example"]!;
    }

    private static async Task<string> Quote(HttpClient client, JsonNode example)
    {
        using HttpResponseMessage created = await Post(client, example.ToJsonString());
        Check.Same(201, (int)created.StatusCode, "the status of a new quote");
        JsonNode quote = JsonNode.Parse(await created.Content.ReadAsStringAsync())!;
        Check.Same(OurShop.Example.Plan().Price!.Total!.Value, quote["price"]!["total"]!.GetValue<decimal>(), "the total, here and through the service");
        Check.That(quote["cautions"]!.AsArray().Count > 0, "a quote without a caution");
        Check.That(quote["protection"]!.AsArray().Count > 0, "a quote without breathing protection, though its topcoat holds isocyanate");
        Check.That(quote["visits"]!.AsArray().Count > 1, "nobody comes, or one person alone");
        Check.That(quote["timeline"]!.AsArray().All(step => step!["id"]!.GetValue<string>().Length > 0), "a step without an identifier");
        Check.Same("tub", quote["fixtures"]![0]!["fixture"]!.GetValue<string>(), "the fixture that may be used");
        Check.Same("m²", quote["coatedArea"]!["unit"]!.GetValue<string>(), "the unit of the area");
        Check.Holds(quote["notice"]!.GetValue<string>(), "Invented", "the notice");
        foreach (JsonNode? picture in quote["pictures"]!.AsArray())
        {
            using HttpResponseMessage svg = await client.GetAsync(picture!.GetValue<string>());
            Check.Same("image/svg+xml", svg.Content.Headers.ContentType?.MediaType!, "the type of " + picture);
            Check.Holds(await svg.Content.ReadAsStringAsync(), "<svg", "the picture");
        }

        Money(quote["price"]!);
        string job = quote["job"]!.GetValue<string>();
        await ForTheShop(client, job, quote["price"]!);
        Job stored = Refinish.Json.JobJson.Read(await Ask(client, job, Password));
        Check.Same(OurShop.Example.Fixtures[0], stored.Fixtures[0], "the tub of the job document");
        Check.Same(OurShop.Shop, stored.Shop, "the shop of the job document");
        return created.Headers.Location!.AbsolutePath;
    }

    // The customer's sums, and nothing of what it costs.
    private static void Money(JsonNode price)
    {
        decimal Sum(string list, string of) => price[list]!.AsArray().Sum(item => item![of]!.GetValue<decimal>());
        decimal Of(string name) => price[name]!.GetValue<decimal>();
        Check.Same(Of("subtotal"), Sum("items", "price"), "the items and the subtotal");
        Check.Same(Of("net"), Of("subtotal") - Of("discount"), "the net price");
        Check.Same(Of("total"), Of("net") + Sum("taxes", "amount"), "net, taxes and total");
        Check.Same(Of("payable"), Sum("payments", "amount"), "the payments and what is to be paid");
        Check.Same("fixture/tub option/drain-trim/tub option/slip-floor/tub", string.Join(' ', price["items"]!.AsArray().Select(item => item!["id"]!.GetValue<string>())), "the items");
        Check.That(price["validUntil"] is not null, "a quote that holds for ever");
        Check.That(!price.ToJsonString().Contains("cost", StringComparison.OrdinalIgnoreCase), "the customer is told a cost");
    }

    // Costs are told to whoever has the password, and add up as the prices do.
    private static async Task ForTheShop(HttpClient client, string job, JsonNode price)
    {
        string lines = job.Replace("/job", "/lines", StringComparison.Ordinal);
        foreach (string path in (string[])[job, lines, job.Replace("/job", string.Empty, StringComparison.Ordinal)])
        {
            foreach (string? password in (string?[])[null, string.Empty, Password + "x"])
            {
                using HttpRequestMessage request = Request(path, password);
                using HttpResponseMessage refused = await client.SendAsync(request);
                Check.Same(401, (int)refused.StatusCode, path + " without the shop's password");
            }
        }

        JsonNode books = JsonNode.Parse(await Ask(client, lines, Password))!;
        JsonArray all = books["lines"]!.AsArray();
        Check.Same(books["cost"]!.GetValue<decimal>(), all.Sum(line => line!["cost"]!.GetValue<decimal>()), "the costs of the lines");
        Check.Same(price["total"]!.GetValue<decimal>(), all.Sum(line => line!["price"]!.GetValue<decimal>()), "the prices of the lines, and the total that the customer is told");
        Check.Same(all.Count, all.Select(line => line!["id"]!.GetValue<string>()).Distinct().Count(), "keys of the lines");
    }

    private static async Task<string> Ask(HttpClient client, string path, string? password)
    {
        using HttpRequestMessage request = Request(path, password);
        using HttpResponseMessage answer = await client.SendAsync(request);
        Check.Same(200, (int)answer.StatusCode, "the status of " + path);
        return await answer.Content.ReadAsStringAsync();
    }

    private static HttpRequestMessage Request(string path, string? password)
    {
        HttpRequestMessage request = new(HttpMethod.Get, path);
        if (password is not null)
        {
            request.Headers.Authorization = new("Basic", Convert.ToBase64String(Encoding.UTF8.GetBytes("shop:" + password)));
        }

        return request;
    }

    private static async Task Faults(HttpClient client, JsonNode example)
    {
        JsonNode large = example.DeepClone();
        large["fixtures"]![0]!["fixture"]!["rimLength"]!["value"] = 5300;
        large["premises"]!["rooms"]![0]!["climate"]!["air"]!["relativeHumidity"]!["value"] = 130;
        large["fixtures"]![0]!["options"]![0]!["code"] = "gold";
        large["fixtures"]![0]!["gun"] = new JsonObject();
        large["shop"] = "cheap";
        JsonNode problem = await Problem(await Post(client, large.ToJsonString()), 422);
        Check.Same(
            "$.fixtures[0].fixture.rimLength.value $.fixtures[0].gun $.fixtures[0].options[0].code $.premises.rooms[0].climate.air.relativeHumidity.value $.shop",
            string.Join(' ', problem["errors"]!.AsObject().Select(error => error.Key).Order(StringComparer.Ordinal)), "the places of the errors");
        string sentence = problem["errors"]!["$.fixtures[0].fixture.rimLength.value"]![0]!.GetValue<string>();
        Check.Holds(sentence, "5300 mm", "the value that is refused");
        Check.Holds(sentence, "at least 300 mm and at most 2500 mm", "the allowed range");

        Check.Holds((await Problem(await Post(client, "{ \"name\": "), 400))["detail"]!.GetValue<string>(), "LineNumber: 0", "where a body is no JSON");
        Check.Holds((await Problem(await Post(client, "{ \"name\": 1, \"name\": 2 }"), 400))["detail"]!.GetValue<string>(), "name", "which member stands twice");
        Check.Holds((await Problem(await Post(client, "[]"), 422))["errors"]!["$"]![0]!.GetValue<string>(), "object", "a request that is a list");
        Check.Holds((await Problem(await Post(client, "{}"), 422))["errors"]!["$.fixtures"]![0]!.GetValue<string>(), "missing", "a request without fixtures");
        JsonNode house = example.DeepClone();
        house["fixtures"] = new JsonArray([.. Enumerable.Repeat(0, 13).Select(_ => example["fixtures"]![0]!.DeepClone())]);
        Check.Holds((await Problem(await Post(client, house.ToJsonString()), 422))["errors"]!["$.fixtures"]![0]!.GetValue<string>(), "at most 12", "a request for a house");
        await Problem(await client.GetAsync("/quotes/" + Guid.Empty), 404);
        await Problem(await client.GetAsync("/quotes/nothing"), 404);
    }

    // Damp air: what stands in the way is said, and there is no price to overlook it by.
    private static async Task Objection(HttpClient client, JsonNode example)
    {
        JsonNode damp = example.DeepClone();
        damp["premises"]!["rooms"]![0]!["climate"]!["air"]!["relativeHumidity"]!["value"] = 95;
        using HttpResponseMessage created = await Post(client, damp.ToJsonString());
        JsonNode quote = JsonNode.Parse(await created.Content.ReadAsStringAsync())!;
        Check.That(quote["objections"]!.AsArray().Any(objection => objection!["sentence"]!.GetValue<string>().Contains("relative humidity", StringComparison.Ordinal)), "damp air is not objected to");
        Check.That(quote["price"] is null, "a price although something stands in the way");
    }

    // A stored result that the library no longer gives is said, and the price is withdrawn.
    private static async Task Drift(HttpClient client, string file, string address, JsonNode quote)
    {
        using (SqliteConnection store = new("Data Source=" + file + ";Pooling=False"))
        {
            store.Open();
            using SqliteCommand change = store.CreateCommand();
            change.CommandText = "UPDATE quotes SET [plan] = replace([plan], $total, '1.00') WHERE '/quotes/' || id = $address";
            change.Parameters.AddWithValue("$total", quote["price"]!["total"]!.ToJsonString());
            change.Parameters.AddWithValue("$address", address);
            Check.Same(1, change.ExecuteNonQuery(), "how many quotes were changed in the store");
        }

        JsonNode changed = JsonNode.Parse(await client.GetStringAsync(address))!;
        Check.That(changed["price"] is null, "a price that is no longer what the job gives");
        Check.Holds(changed["objections"]![0]!["sentence"]!.GetValue<string>(), "other results than were stored", "why there is no price");
    }

    private static async Task<JsonNode> Problem(HttpResponseMessage response, int status)
    {
        using (response)
        {
            string what = "the answer to " + response.RequestMessage!.Method + " " + response.RequestMessage.RequestUri!.AbsolutePath;
            Check.Same(status, (int)response.StatusCode, what);
            Check.Same("application/problem+json", response.Content.Headers.ContentType?.MediaType!, what);
            JsonNode problem = JsonNode.Parse(await response.Content.ReadAsStringAsync())!;
            Check.Same(status, problem["status"]!.GetValue<int>(), what);
            Check.That(problem["title"]!.GetValue<string>().Length > 0, what + " has no title");
            return problem;
        }
    }

    private static Task<HttpResponseMessage> Post(HttpClient client, string body) => client.PostAsync("/quotes", new StringContent(body, Encoding.UTF8, "application/json"));
}

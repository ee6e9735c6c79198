using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Threading.Tasks;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.FileProviders;
using Microsoft.Extensions.Logging;
using Refinish.Coverage;
using Refinish.Samples.BrowserBath;

namespace Refinish.Pages;

/// <summary>The browser sample: the numbers that the library gives in the page are those it gives here, wrong entries are named, the keyboard is enough.</summary>
internal static class BathCheck
{
    private const string Start = "2027-03-01T08:00";

    public static async Task Run(string folder, string scratch)
    {
        await using WebApplication server = await Serve(folder);
        await using Browser browser = await Browser.Open(scratch);
        await browser.Page.GoToAsync(server.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());
        await browser.Page.WaitForSelectorAsync("#area");
        double first = await browser.Ask<double>("performance.now()");

        await browser.Ask<object>("document.getElementById('start').value = '" + Start + "'; document.getElementById('start').dispatchEvent(new Event('change', { bubbles: true }))");
        await Submit(browser, "answer");
        int numbers = await Compare(browser, new Worksheet(DateTime.Parse(Start, CultureInfo.InvariantCulture)).WorkOut()!);
        Check.Same(0, await browser.Ask<int>("document.querySelectorAll('.vapour .beyond, .objections li').length"), "objections to a sound room");
        Check.Holds(await browser.Text(".conditions"), "lead", "that nobody tested for lead");
        Check.Holds(await browser.Text(".protection"), "beyond", "breathing protection");
        await browser.IsAccessible("answer");
        await browser.FitsNarrow("answer");
        await browser.Photograph("browser-bath");

        // Two lengths out of range, each said in the library's words beside its field; then one that only does not fit the others.
        await browser.Write("RimLength", "5300");
        await browser.Write("Depth", "deep");
        await Submit(browser, "summary");
        Check.Holds(await browser.Text("#RimLength-error"), "RimLength is 5300 mm", "an entry out of range");
        Check.Holds(await browser.Text("#RimLength-error"), "allowed: at least 300 mm and at most 2500 mm.", "an entry out of range");
        Check.Same("“deep” is no number; write it like 12.5.", await browser.Text("#Depth-error"), "an entry that is no number");
        Check.Same("true", await browser.Ask<string>("document.getElementById('Depth').getAttribute('aria-invalid')"), "the field is marked");
        await browser.IsAccessible("entries to mend");
        await browser.Photograph("browser-bath-errors");
        await browser.Page.Keyboard.PressAsync("Tab");
        await browser.Page.Keyboard.PressAsync("Enter");
        await browser.Page.WaitForFunctionAsync("() => document.activeElement.id === 'RimLength'");
        await browser.Write("RimLength", "1346");
        await browser.Write("Depth", "337");
        await browser.Write("HeadRun", "150");
        await Submit(browser, "summary");
        Check.Holds(await browser.Text("#HeadRun-error"), "as long as RimLength − FloorLength", "a length that does not fit the others");

        // The five-foot tub of the library's documentation, in inches: 27.69 square feet.
        await browser.Ask<object>("document.querySelectorAll('[name=units]')[1].click()");
        Check.Same("14.4882", await browser.Ask<string>("document.getElementById('ApronHeight').value"), "368 mm in inches");
        foreach ((string name, string inches) in FiveFoot)
        {
            await browser.Write(name, inches);
        }

        await Submit(browser, "answer");
        Check.Same("27.69 ft²", await browser.Text("#area"), "the area of the five-foot tub");

        // A fan that hardly blows: the vapour is said before anything is mixed.
        await browser.Write("LabelFlow", "60");
        await Submit(browser, "answer");
        Check.Holds(await browser.Text(".vapour .beyond"), "airflow really moved", "a fan that is too weak");
        Check.Holds(await browser.Text("main"), "Not to be mixed while anything above stands in the way.", "mixing under a fan that is too weak");
        await browser.Write("LabelFlow", "1000");

        // Cold iron in damp air: said before anything is mixed.
        await browser.Write("surface", "55");
        await browser.Write("relativeHumidity", "70");
        await Submit(browser, "answer");
        Check.Holds(await browser.Text(".checks .beyond"), "surface above dew point", "a surface too near the dew point");
        await browser.IsAccessible("not fit");
        await browser.Photograph("browser-bath-cold");
        Check.That(browser.Complaints.Count == 0, "the page complains: " + string.Join("; ", browser.Complaints));

        double megabytes = Directory.EnumerateFiles(folder, "*.br", SearchOption.AllDirectories).Sum(file => new FileInfo(file).Length) / 1e6;
        Console.WriteLine(FormattableString.Invariant($"BrowserBath: {numbers} numbers as under the JIT within 1e-9; {megabytes:F2} MB as Brotli; first number after {first / 1000:F2} s"));
    }

    private static readonly (string Name, string Inches)[] FiveFoot =
    [
        ("OverallLength", "60"), ("OverallWidth", "30"), ("ApronHeight", "14.5"), ("RimLength", "53"), ("RimWidth", "23.5"), ("RimCornerRadius", "6"), ("Depth", "13.25"),
        ("FloorLength", "44"), ("FloorWidth", "19.5"), ("FloorCornerRadius", "5"), ("HeadRun", "7"), ("FootRun", "2"), ("CoveRadius", "2.5"), ("DrainDiameter", "2"), ("OverflowDiameter", "3"),
    ];

    private static async Task Submit(Browser browser, string focus)
    {
        await browser.TabTo("button");
        await browser.Page.Keyboard.PressAsync("Enter");
        await browser.Page.WaitForFunctionAsync("id => document.activeElement.id === id || document.activeElement.className === id", focus);
    }

    private static async Task<int> Compare(Browser browser, Bath bath)
    {
        List<double> expected = [bath.Tub.CoatedArea.SquareMeters, bath.Tub.MaskedEdge.Meters, bath.Tub.WaterCapacity!.Value.CubicMeters, bath.Coats[0].Run.Window.Air.DewPoint.Kelvins];
        foreach (PouredMix cup in bath.Coats.SelectMany(coat => coat.Mixes))
        {
            expected.AddRange(cup.Parts.Select(part => part.Volume.CubicMeters));
        }

        string[] found = await browser.Ask<string[]>("[...document.querySelectorAll('data')].map(data => data.value)");
        Check.Same(expected.Count, found.Length, "how many numbers the page shows");
        for (int i = 0; i < found.Length; i++)
        {
            double number = double.Parse(found[i], CultureInfo.InvariantCulture);
            Check.That(Math.Abs(number - expected[i]) <= 1e-9 * Math.Abs(expected[i]), FormattableString.Invariant($"number {i} of the page is {number:R}, here it is {expected[i]:R}"));
        }

        string[] times = await browser.Ask<string[]>("[...document.querySelectorAll('time')].map(time => time.dateTime)");
        DateTimeOffset[] planned = [.. bath.Schedule!.Operations.SelectMany(operation => new[] { operation.Start, operation.End }), bath.WaterFrom!.Value];
        Check.Same(
            string.Join(' ', planned.Select(instant => instant.ToString("yyyy-MM-ddTHH:mm:ss", CultureInfo.InvariantCulture))), string.Join(' ', times), "the times of the page");
        return found.Length + times.Length;
    }

    private static async Task<WebApplication> Serve(string folder)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        WebApplication server = builder.Build();
        PhysicalFileProvider files = new(Path.GetFullPath(folder));
        server.UseDefaultFiles(new DefaultFilesOptions { FileProvider = files });
        server.UseStaticFiles(new StaticFileOptions { FileProvider = files, ServeUnknownFileTypes = true });
        await server.StartAsync();
        return server;
    }
}

using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Text.Json;
using System.Threading.Tasks;
using Deque.AxeCore.Commons;
using PuppeteerSharp;
using PuppeteerSharp.Media;

namespace Refinish.Pages;

/// <summary>A headless Chromium with one page, used as a person at the keyboard would; it keeps every complaint of the page.</summary>
internal sealed class Browser : IAsyncDisposable
{
    private static readonly string Axe = new BundledAxeScriptProvider().GetScript();

    private readonly IBrowser chromium;
    private readonly string profile;
    private readonly string scratch;

    private Browser(IBrowser chromium, IPage page, string profile, string scratch)
    {
        this.chromium = chromium;
        this.profile = profile;
        this.scratch = scratch;
        Page = page;
        page.Console += (_, said) => { if (said.Message.Type is ConsoleType.Error or ConsoleType.Warning) { Complaints.Add(said.Message.Text); } };
        page.PageError += (_, error) => Complaints.Add(error.Message);
        // A picture that is no longer wanted, because the page was made wider meanwhile, is called off by the browser itself.
        page.RequestFailed += (_, failed) => { if (failed.Request.FailureText != "net::ERR_ABORTED") { Complaints.Add("no answer: " + failed.Request.Url); } };
    }

    public IPage Page { get; }

    /// <summary>Errors and warnings on the console, exceptions, requests without an answer.</summary>
    public List<string> Complaints { get; } = [];

    public static async Task<Browser> Open(string scratch)
    {
        string profile = Directory.CreateTempSubdirectory("chromium").FullName;
        IBrowser chromium = await Puppeteer.LaunchAsync(new LaunchOptions
        {
            ExecutablePath = Environment.GetEnvironmentVariable("CHROMIUM") ?? "/usr/bin/chromium",
            Headless = true,
            UserDataDir = profile,
            Args =
            [
                "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update",
                "--disable-sync", "--disable-dev-shm-usage", "--force-color-profile=srgb",
            ],
        });
        IPage page = (await chromium.PagesAsync())[0];
        await page.SetViewportAsync(new ViewPortOptions { Width = 1280, Height = 900 });
        await page.Client.SendAsync("Emulation.setFocusEmulationEnabled", new { enabled = true });
        return new Browser(chromium, page, profile, scratch);
    }

    public Task<T> Ask<T>(string expression) => Page.EvaluateExpressionAsync<T>(expression);

    public Task<string> Text(string selector) => Ask<string>("document.querySelector(" + Quoted(selector) + ")?.textContent.trim().replace(/\\s+/g, ' ') ?? ''");

    public Task<string> FocusOn() => Ask<string>("document.activeElement.id || document.activeElement.className || document.activeElement.tagName");

    /// <summary>Whether what has the focus shows it by an outline.</summary>
    public Task<bool> FocusIsSeen() => Ask<bool>("getComputedStyle(document.activeElement).outlineStyle === 'solid'");

    /// <summary>Presses the tabulator until the element has the focus: what cannot be reached so cannot be used without a mouse.</summary>
    public async Task TabTo(string selector)
    {
        for (int presses = 0; presses < 200; presses++)
        {
            if (await Ask<bool>("document.activeElement.matches(" + Quoted(selector) + ")"))
            {
                return;
            }

            await Page.Keyboard.PressAsync("Tab");
        }

        throw new CheckFailed("the keyboard does not reach " + selector);
    }

    /// <summary>Goes to a field by the keyboard and writes over what is in it.</summary>
    public async Task Write(string id, string text)
    {
        await TabTo("#" + Escaped(id));
        await Ask<object>("document.activeElement.select()");
        await Page.Keyboard.PressAsync("Backspace");
        await Page.Keyboard.TypeAsync(text);
    }

    /// <summary>Fails with every rule of the accessibility checker that the page breaks, in light and in dark.</summary>
    public async Task IsAccessible(string name)
    {
        foreach (string scheme in new[] { "light", "dark" })
        {
            await Scheme(scheme);
            await Ask<object>(Axe + "; null");
            JsonElement violations = await Ask<JsonElement>("axe.run(document, { resultTypes: ['violations'] }).then(run => run.violations)");
            Check.That(violations.GetArrayLength() == 0, name + ", " + scheme + ": " + string.Join("; ", violations.EnumerateArray().Select(rule =>
                rule.GetProperty("id").GetString() + " at " + rule.GetProperty("nodes")[0].GetProperty("html").GetString())));
        }

        await Scheme("light");
    }

    /// <summary>Nothing hangs over the edge of a page 320 pixels wide, which is also a page of 1280 at four times its size.</summary>
    public async Task FitsNarrow(string name)
    {
        await Width(320);
        int over = await Ask<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        Check.That(over <= 0, name + ": " + over + " pixels hang over the edge of a page 320 pixels wide");
        await Width(1280);
    }

    /// <summary>Three pictures: a desk, a telephone, the dark.</summary>
    public async Task Photograph(string name)
    {
        await Shot(name + ".png");
        await Width(360);
        await Shot(name + "-360.png");
        await Width(1280);
        await Scheme("dark");
        await Shot(name + "-dark.png");
        await Scheme("light");
    }

    public async ValueTask DisposeAsync()
    {
        await chromium.CloseAsync();
        await chromium.DisposeAsync();
        Directory.Delete(profile, true);
    }

    private Task Scheme(string scheme) => Page.EmulateMediaFeaturesAsync([new MediaFeatureValue { MediaFeature = MediaFeature.PrefersColorScheme, Value = scheme }]);

    private Task Width(int pixels) => Page.SetViewportAsync(new ViewPortOptions { Width = pixels, Height = 900 });

    private Task Shot(string file) => Page.ScreenshotAsync(Path.Combine(scratch, file), new ScreenshotOptions { FullPage = true });

    private static string Quoted(string text) => JsonSerializer.Serialize(text);

    // An id with a point in it is no class.
    private static string Escaped(string id) => id.Replace(".", "\\.", StringComparison.Ordinal);
}

using System;
using System.Threading.Tasks;

namespace Refinish.Pages;

/// <summary>The pages of the quote service, without a mouse and without a script.</summary>
internal static class QuotePages
{
    public static async Task Run(Uri address, string scratch)
    {
        await using Browser browser = await Browser.Open(scratch);
        await browser.Page.GoToAsync(address.ToString());
        Check.Same(0, await browser.Ask<int>("document.scripts.length"), "scripts of the form");
        await browser.IsAccessible("form");
        await browser.FitsNarrow("form");
        await browser.Photograph("quote-form");

        // A wrong entry is named, has the focus, and leads to its field.
        await browser.Write("rimLength", "5300");
        await browser.Write("chip-diameter", "18");
        await browser.Write("chip-depth", "1.5");
        await browser.Write("humidity", "wet");
        await Submit(browser, "#summary");
        Check.Same("summary", await browser.FocusOn(), "what has the focus after a wrong entry");
        Check.That(await browser.FocusIsSeen(), "the focus on the summary is not to be seen");
        Check.Holds(await browser.Text("#rimLength-error"), "at least 300 mm and at most 2500 mm", "the error beside the field");
        Check.Same("“wet” is no number; write it like 12.5.", await browser.Text("#humidity-error"), "the error of what is no number");
        Check.Same("rimLength-help", (await browser.Ask<string>("document.getElementById('rimLength').getAttribute('aria-describedby')")).Split(' ')[0], "the help of the field");
        Check.Same("18", await browser.Ask<string>("document.getElementById('chip-diameter').value"), "what was right is kept");
        await browser.IsAccessible("entries to mend");
        await browser.FitsNarrow("entries to mend");
        await browser.Photograph("quote-errors");
        await browser.TabTo("#summary a");
        await browser.Page.Keyboard.PressAsync("Enter");
        Check.Same("rimLength", await browser.FocusOn(), "where the summary leads");
        Check.That(await browser.FocusIsSeen(), "the focus on a field is not to be seen");

        // Mended: cautions and protection come before the price, and there are a timeline and pictures.
        await browser.Write("rimLength", "1346");
        await browser.Write("humidity", "48");
        await Submit(browser, "#total");
        string[] headings = await browser.Ask<string[]>("[...document.querySelectorAll('h2')].map(heading => heading.textContent)");
        string[] order = ["What has to be met first", "Cautions", "Price", "When", "Pictures", "What this takes for granted"];
        Check.Same(string.Join(", ", order), string.Join(", ", headings), "the order of a quote");
        Check.Holds(await browser.Text("#visits"), "Ada", "who comes");
        Check.That(decimal.Parse(await browser.Text("#total"), System.Globalization.CultureInfo.InvariantCulture) >= 390, "the price is below the shop's minimum charge");
        Check.Holds(await browser.Text("#handover"), "not before", "when water may run");
        Check.Holds(await browser.Text("#payments"), "on acceptance", "what is paid when");
        Check.That(!(await browser.Text("main")).Contains("profit", StringComparison.OrdinalIgnoreCase), "the customer is told the profit");
        Check.Holds(await browser.Text("main"), "Invented demonstration", "the notice");
        await browser.Page.WaitForFunctionAsync("() => document.readyState === 'complete'");
        Check.That(await browser.Ask<bool>("[...document.images].length > 1 && [...document.images].every(image => image.complete && image.naturalWidth > 0 && image.alt.length > 40)"), "a picture is missing, or has no words");
        Check.Same(0, await browser.Ask<int>("document.scripts.length"), "scripts of the quote");
        await browser.IsAccessible("quote");
        await browser.FitsNarrow("quote");
        await browser.Photograph("quote");

        // The shop's own page, behind its password: what protects the crew, costs beside prices, who does what.
        string customers = browser.Page.Url;
        await browser.Page.AuthenticateAsync(new PuppeteerSharp.Credentials { Username = "shop", Password = QuoteCheck.Password });
        await browser.Page.GoToAsync(customers.Replace("/sheets/", "/shop/", StringComparison.Ordinal));
        await browser.Page.WaitForSelectorAsync("#profit");
        string[] forTheShop = await browser.Ask<string[]>("[...document.querySelectorAll('h2')].map(heading => heading.textContent)");
        Check.Same("What has to be met first, Breathing protection, Cautions, Cost and price, Timeline, What this takes for granted", string.Join(", ", forTheShop), "the order of the shop's page");
        Check.That(decimal.Parse(await browser.Text("#profit"), System.Globalization.CultureInfo.InvariantCulture) > 0, "no profit");
        await browser.IsAccessible("for the shop");
        await browser.FitsNarrow("for the shop");
        await browser.Photograph("quote-shop");
        await browser.Page.AuthenticateAsync(null!);

        // Damp air, in US units: what stands in the way instead of a price.
        await browser.Page.GoToAsync(address + "?us=true");
        Check.Same("71.6", await browser.Ask<string>("document.getElementById('air').value"), "22 °C in °F");
        await browser.Write("humidity", "95");
        await Submit(browser, "#objections");
        Check.Holds(await browser.Text(".stop"), "relative humidity", "the objection");
        Check.Holds(await browser.Text(".stop"), "°F", "its units");
        Check.Same("No price while anything stands in the way.", await browser.Text("#no-price"), "the place of the price");
        Check.Same(string.Empty, await browser.Text("#total"), "a price although something stands in the way");
        await browser.IsAccessible("objections");
        await browser.FitsNarrow("objections");
        await browser.Photograph("quote-objections");

        await browser.Page.GoToAsync(address + "sheets/" + Guid.Empty);
        Check.Same("No such quote", await browser.Text("h1"), "the page of a quote that is not there");
        await browser.IsAccessible("no such quote");
        browser.Complaints.RemoveAll(complaint => complaint.Contains("status of 401", StringComparison.Ordinal) || complaint.Contains("status of 404", StringComparison.Ordinal) || complaint.Contains("status of 422", StringComparison.Ordinal));
        Check.That(browser.Complaints.Count == 0, "the pages complain: " + string.Join("; ", browser.Complaints));
    }

    private static async Task Submit(Browser browser, string until)
    {
        await browser.TabTo("button");
        await browser.Page.Keyboard.PressAsync("Enter");
        await browser.Page.WaitForSelectorAsync(until);
    }
}

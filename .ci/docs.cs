#:property PublishAot=false
#:property ManagePackageVersionsCentrally=false
// Finishes and checks a built site: names of types in the articles become links to their pages; then every internal link and anchor has
// to lead somewhere, every picture to have a text, headings to go down by one, tables to have headers. Usage: dotnet run docs.cs -- SITE_FOLDER
using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Net;
using System.Text.RegularExpressions;

string site = Path.GetFullPath(args[0]);
string[] pages = [.. Directory.EnumerateFiles(site, "*.html", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];
List<string> faults = [];

// Types and namespaces by the name that an article would use; a name that two types share is left alone.
Dictionary<string, string?> named = [];
foreach (Match entry in Regex.Matches(
    File.ReadAllText(Path.Combine(site, "xrefmap.yml")), @"^- uid: (?<uid>Refinish[\w.]*)\n  name: (?<name>\S+)\n  href: (?<href>\S+)\n  commentId: (?<kind>[TN]):", RegexOptions.Multiline))
{
    string name = entry.Groups["kind"].Value == "N" ? entry.Groups["uid"].Value : entry.Groups["name"].Value;
    named[name] = named.ContainsKey(name) ? null : entry.Groups["href"].Value;
}

int linked = 0;
foreach (string page in pages.Where(page => !page.StartsWith(Path.Combine(site, "api"), StringComparison.Ordinal)))
{
    string up = string.Concat(Enumerable.Repeat("../", Path.GetRelativePath(site, page).Count(letter => letter == Path.DirectorySeparatorChar)));
    string html = File.ReadAllText(page);
    string finished = Regex.Replace(
        html,
        @"<(?<skip>a|pre|h[1-6])\b.*?</\k<skip>>|<code>(?<code>(?<name>[A-Za-z][\w.]*)(\(.*?\))?)</code>",
        match =>
        {
            string name = match.Groups["name"].Value;
            string? href = !match.Groups["name"].Success ? null
                : named.GetValueOrDefault(name) ?? (name.Contains('.', StringComparison.Ordinal) ? named.GetValueOrDefault(name[..name.IndexOf('.', StringComparison.Ordinal)]) : null);
            if (href is null)
            {
                return match.Value;
            }

            linked++;
            return "<a href=\"" + up + href + "\">" + match.Value + "</a>";
        },
        RegexOptions.Singleline);
    if (finished != html)
    {
        File.WriteAllText(page, finished);
    }
}

// Where links may lead.
Dictionary<string, HashSet<string>> anchors = pages.ToDictionary(
    page => page,
    page => Regex.Matches(File.ReadAllText(page), @"\s(?:id|name)=""(?<id>[^""]*)""").Select(match => WebUtility.HtmlDecode(match.Groups["id"].Value)).ToHashSet(StringComparer.Ordinal));
int links = 0;
foreach (string page in pages)
{
    string shown = Path.GetRelativePath(site, page);
    string html = File.ReadAllText(page);
    foreach (Match match in Regex.Matches(html, @"<(?<tag>a|img|link|script|source|object)\b[^>]*?\s(?:href|src|data)=""(?<to>[^""]*)"""))
    {
        string to = WebUtility.HtmlDecode(match.Groups["to"].Value);
        if (to.Length == 0 || Regex.IsMatch(to, "^([a-z]+:|//)", RegexOptions.IgnoreCase))
        {
            continue;
        }

        links++;
        string[] parts = to.Split('#', 2);
        string path = Uri.UnescapeDataString(parts[0].Split('?')[0]);
        string target = path.Length == 0 ? page : Path.GetFullPath(Path.Combine(Path.GetDirectoryName(page)!, path));
        if (!File.Exists(target))
        {
            faults.Add(shown + ": nothing is at " + to);
        }
        else if (parts.Length > 1 && parts[1].Length > 0 && anchors.TryGetValue(target, out HashSet<string>? ids) && !ids.Contains(Uri.UnescapeDataString(parts[1])))
        {
            faults.Add(shown + ": no place on the page for " + to);
        }
    }

    if (!Regex.IsMatch(html, "<article.*</article>", RegexOptions.Singleline) || shown.StartsWith("api", StringComparison.Ordinal))
    {
        continue;
    }

    string article = Regex.Match(html, "<article.*</article>", RegexOptions.Singleline).Value;
    faults.AddRange(Regex.Matches(article, "<img[^>]*>").Where(image => !Regex.IsMatch(image.Value, @"alt=""[^""]+""")).Select(image => shown + ": a picture without a text: " + image.Value));
    int level = 0;
    foreach (Match heading in Regex.Matches(article, "<h(?<level>[1-6])[ >]"))
    {
        int next = heading.Groups["level"].Value[0] - '0';
        if (next > level + 1 || (level > 0 && next == 1))
        {
            faults.Add(shown + ": heading " + next + " after " + level);
        }

        level = next;
    }

    faults.AddRange(Regex.Matches(article, "<table.*?</table>", RegexOptions.Singleline).Where(table => !table.Value.Contains("<th", StringComparison.Ordinal)).Select(_ => shown + ": a table without headers"));
    faults.AddRange(Regex.Matches(article, "<a [^>]*>(?<text>[^<]*)</a>").Select(link => link.Groups["text"].Value.Trim())
        .Where(text => Regex.IsMatch(text, "^(here|click here|link|this)$", RegexOptions.IgnoreCase)).Select(text => shown + ": a link that says '" + text + "'"));
}

foreach (string fault in faults.Distinct())
{
    Console.Error.WriteLine(fault);
}

Console.WriteLine(pages.Length + " pages, " + links + " internal links, " + linked + " names of types linked, " + faults.Distinct().Count() + " faults");
return faults.Count == 0 ? 0 : 1;

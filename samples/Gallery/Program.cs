// Draws every picture of the package into a folder and writes the page that shows them: docs/gallery.md and docs/gallery/*.svg.
// dotnet run --project samples/Gallery -- docs
using System;
using System.IO;
using System.Linq;
using System.Text;
using Refinish.Pictures;
using Refinish.Samples.Gallery;

string folder = args.Length > 0 ? args[0] : "docs";
Directory.CreateDirectory(Path.Combine(folder, "gallery"));
foreach (Exhibit exhibit in Exhibits.All)
{
    // A narrow screen gets a narrow picture, not a wide one scaled down. Both follow the reader's light or dark.
    Draw(exhibit.File + ".svg", new PictureStyle { Units = exhibit.Units });
    Draw(exhibit.File + "-narrow.svg", new PictureStyle { Units = exhibit.Units, Width = 360 });

    void Draw(string file, PictureStyle style)
    {
        using FileStream stream = File.Create(Path.Combine(folder, "gallery", file));
        exhibit.Picture.WriteSvg(stream, style);
    }
}

StringBuilder page = new();
page.Append("# Gallery\n\n")
    .Append("Pictures by `Refinish.Core.Pictures`, drawn by `samples/Gallery` from invented jobs; the call that makes it stands above each.\n")
    .Append("They follow the light or dark of your system, and a narrow screen gets a narrow one.\n");
foreach (IGrouping<string, Exhibit> chapter in Exhibits.All.GroupBy(exhibit => exhibit.Chapter))
{
    page.Append("\n## ").Append(chapter.Key).Append('\n');
    foreach (Exhibit exhibit in chapter)
    {
        page.Append('\n').Append(exhibit.Caption).Append("\n\n")
            .Append("<picture><source media=\"(max-width: 560px)\" srcset=\"gallery/").Append(exhibit.File).Append("-narrow.svg\">")
            .Append("<img src=\"gallery/").Append(exhibit.File).Append(".svg\" alt=\"").Append(exhibit.Picture.Title).Append("\"></picture>\n");
    }
}

File.WriteAllText(Path.Combine(folder, "gallery.md"), page.ToString());
Console.WriteLine(Exhibits.All.Count + " pictures, wide and narrow, in " + folder);

using System;
using System.IO;
using Refinish.Jobs;
using Refinish.Pictures;
using Refinish.Samples.BathroomJob;

BathroomPlan plan = Scenario.Guesthouse().Plan();
string folder = args.Length > 0 ? args[0] : "docs/gallery";
Directory.CreateDirectory(folder);
(string Name, Picture Picture)[] pictures = [("price", new PricePicture(plan)), ("timeline", new TimelinePicture(plan)), ("fixture-recessed-tub", new FixturePicture(plan.Fixtures[0].Job.Fixture, "Bathtub"))];
foreach (var p in pictures)
{
    foreach (var (suffix, width) in new[] { ("", 720), ("-narrow", 360) })
    {
        foreach (var theme in new[] { PictureTheme.Light, PictureTheme.Dark })
        {
            File.WriteAllText(Path.Combine(folder, p.Name + suffix + "-" + theme + ".svg"), p.Picture.ToSvg(new PictureStyle { Width = width, Theme = theme }));
        }
    }
}

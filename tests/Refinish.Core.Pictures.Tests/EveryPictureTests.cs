using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Text.RegularExpressions;
using System.Threading;
using System.Xml.Linq;
using Refinish.Samples.Gallery;
using Xunit;

namespace Refinish.Pictures.Tests;

/// <summary>What holds for every picture, at every width, in both units, on both papers.</summary>
public class EveryPictureTests
{
    public static TheoryData<string, int, DisplayUnits> Drawn
    {
        get
        {
            TheoryData<string, int, DisplayUnits> data = [];
            foreach (Exhibit exhibit in Exhibits.All)
            {
                foreach (int width in (int[])[320, 360, 560, 720, 1200])
                {
                    data.Add(exhibit.File, width, DisplayUnits.Si);
                    data.Add(exhibit.File, width, DisplayUnits.UsCustomary);
                }
            }

            return data;
        }
    }

    public static TheoryData<string> Names => [.. Exhibits.All.Select(exhibit => exhibit.File)];

    [Theory]
    [MemberData(nameof(Drawn))]
    public void No_text_lies_on_another_or_leaves_the_paper(string name, int width, DisplayUnits units)
    {
        SvgFile file = new(Find(name).ToSvg(new PictureStyle { Width = width, Units = units }));
        file.HoldsTextsApart(width);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void It_says_what_it_shows_to_those_who_do_not_see_it(string name)
    {
        Picture picture = Find(name);
        SvgFile file = new(picture.ToSvg());
        Assert.Equal("img", (string?)file.Root.Attribute("role"));
        Assert.Equal(picture.Title, file.Title);
        Assert.Equal(picture.Describe(DisplayUnits.Si).Replace('\u00A0', ' '), file.Description.Replace('\u00A0', ' '));
        Assert.Matches(@"\d", file.Description);
        Assert.Equal("title", file.Root.Elements().First().Name.LocalName);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void It_never_calls_anything_safe(string name)
    {
        SvgFile file = new(Find(name).ToSvg());
        Assert.DoesNotMatch(new Regex(@"\bsafe\b", RegexOptions.IgnoreCase), file.AllWords + " " + file.Description);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void It_is_the_same_bytes_in_every_culture_and_every_time(string name)
    {
        Picture picture = Find(name);
        string expected = picture.ToSvg();
        foreach (string culture in (string[])["tr-TR", "de-DE", "ar-SA", "th-TH"])
        {
            CultureInfo before = Thread.CurrentThread.CurrentCulture;
            try
            {
                Thread.CurrentThread.CurrentCulture = new CultureInfo(culture);
                Assert.Equal(expected, picture.ToSvg());
            }
            finally
            {
                Thread.CurrentThread.CurrentCulture = before;
            }
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Text_and_lines_keep_the_contrast_of_the_guidelines(string name)
    {
        foreach (PictureTheme theme in (PictureTheme[])[PictureTheme.Light, PictureTheme.Dark])
        {
            SvgFile file = new(Find(name).ToSvg(new PictureStyle { Theme = theme }));
            string paper = (string)file.Elements("rect").First().Attribute("fill")!;
            foreach (SvgText text in file.Texts)
            {
                Assert.True(Paint.Contrast(text.Fill, paper) >= 4.5, text + " on " + paper);
            }

            // The faintest colour is that of the grid, which repeats what the tick labels say.
            string[] strokes = [.. file.Root.Descendants().Select(element => (string?)element.Attribute("stroke")).OfType<string>().Distinct()];
            string[] faint = [.. strokes.Where(stroke => Paint.Contrast(stroke, paper) < 3)];
            Assert.True(faint.Length <= 1, string.Join(", ", faint));
            Assert.All(faint, stroke => Assert.Contains(stroke, (string[])["#D9DCDD", "#343B41"]));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Following_the_system_shows_the_light_picture_and_turns_into_the_dark_one(string name)
    {
        Picture picture = Find(name);
        XElement follow = XDocument.Parse(picture.ToSvg(new PictureStyle { Theme = PictureTheme.Follow })).Root!;
        XElement light = XDocument.Parse(picture.ToSvg(new PictureStyle { Theme = PictureTheme.Light })).Root!;
        XElement dark = XDocument.Parse(picture.ToSvg(new PictureStyle { Theme = PictureTheme.Dark })).Root!;
        string style = follow.Elements().Single(element => element.Name.LocalName == "style").Value;
        Assert.StartsWith("@media (prefers-color-scheme:dark){", style, StringComparison.Ordinal);
        Assert.DoesNotContain(light.Elements().Concat(dark.Elements()), element => element.Name.LocalName == "style");
        Dictionary<string, string> rules = Regex.Matches(style, @"\.refinish-follow \.([fs]\d+)\{(?:fill|stroke):(#[0-9A-F]{6})\}").ToDictionary(match => match.Groups[1].Value, match => match.Groups[2].Value);
        XElement[] shown = [.. Painted(follow)];
        XElement[] byDay = [.. Painted(light)];
        XElement[] byNight = [.. Painted(dark)];
        Assert.Equal(byDay.Length, shown.Length);
        Assert.Equal(byNight.Length, shown.Length);
        for (int i = 0; i < shown.Length; i++)
        {
            string[] classes = ((string)shown[i].Attribute("class")!).Split(' ', StringSplitOptions.RemoveEmptyEntries);
            foreach ((string attribute, char sign) in (ValueTuple<string, char>[])[("fill", 'f'), ("stroke", 's')])
            {
                Assert.Equal((string?)byDay[i].Attribute(attribute), (string?)shown[i].Attribute(attribute));
                string? rule = classes.SingleOrDefault(one => one[0] == sign);
                string? asked = rule is null ? (string?)shown[i].Attribute(attribute) : rules[rule];
                Assert.Equal((string?)byNight[i].Attribute(attribute), asked);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void It_brings_no_names_that_could_clash_and_no_outlines_for_letters(string name)
    {
        XElement root = XDocument.Parse(Find(name).ToSvg()).Root!;
        Assert.DoesNotContain(root.DescendantsAndSelf().Attributes(), attribute => attribute.Name.LocalName is "id" or "href" or "style" or "clip-path");
        string[] families = ((string)root.Attribute("font-family")!).Split(',');
        Assert.All(families, family => Assert.Contains(family, (string[])["system-ui", "sans-serif"]));
        Assert.DoesNotContain("http", string.Join(" ", root.Descendants().Attributes().Where(attribute => !attribute.IsNamespaceDeclaration).Select(attribute => attribute.Value)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_writer_and_a_stream_get_what_the_string_holds()
    {
        Picture picture = Exhibits.All[0].Picture;
        PictureStyle style = new() { Width = 400, Theme = PictureTheme.Dark };
        using StringWriter writer = new();
        picture.WriteSvg(writer, style);
        using MemoryStream stream = new();
        picture.WriteSvg(stream, style);
        Assert.Equal(picture.ToSvg(style), writer.ToString());
        Assert.Equal(new System.Text.UTF8Encoding(false).GetBytes(picture.ToSvg(style)), stream.ToArray());
        Assert.True(stream.CanWrite);
    }

    private static IEnumerable<XElement> Painted(XElement root) => root.Elements().Where(element => element.Name.LocalName is not ("style" or "title" or "desc"));

    private static Picture Find(string file) => Exhibits.All.Single(exhibit => exhibit.File == file).Picture;
}

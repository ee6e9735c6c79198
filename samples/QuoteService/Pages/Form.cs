using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Http;
using Refinish.Fixtures;

namespace Refinish.Samples.QuoteService.Pages;

/// <summary>The form of the page: another way to write a request. It starts with an invented tub.</summary>
public sealed class Form
{
    public Form(DisplayUnits units, DateTime start)
    {
        Units = units;
        Job =
        [
            new() { Name = "name", Member = "name", Label = "Name of the job", Text = "Bathroom 3" },
            new() { Name = "start", Member = "start", Label = "Work not before", Help = "by the clock of the shop", Type = "datetime-local", Text = start.ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture) },
        ];
        Tape =
        [
            Tub("overallLength", "Whole tub, length", "over the deck", 1.524),
            Tub("overallWidth", "Whole tub, width", "over the deck", 0.762),
            Tub("apronHeight", "Front panel, height", "0 when there is none", 0.368),
            Tub("rimLength", "Mouth, length", "inside the rim", 1.346),
            Tub("rimWidth", "Mouth, width", "inside the rim", 0.597),
            Tub("rimCornerRadius", "Mouth, corner radius", "seen from above", 0.152),
            Tub("depth", "Depth", "from the rim straight down", 0.337),
            Tub("floorLength", "Floor, length", "to where the walls begin", 1.118),
            Tub("floorWidth", "Floor, width", "to where the walls begin", 0.495),
            Tub("floorCornerRadius", "Floor, corner radius", "seen from above", 0.127),
            Tub("headRun", "Backrest, run", "level, from floor to rim", 0.178),
            Tub("footRun", "Drain end, run", "level, from floor to rim", 0.05),
            Tub("coveRadius", "Rounding of the floor line", "radius; 0 when sharp", 0.064),
            Tub("drainDiameter", "Drain, diameter", "0 when it is coated over", 0.051),
            Tub("overflowDiameter", "Overflow, diameter", "0 when there is none", 0.076),
        ];
        Survey =
        [
            new()
            {
                Name = "material", Member = "material", Label = "What the tub is made of", Text = "enamelledCastIron",
                Choices = [.. FixtureMaterial.All.Select(material => (material.Id, material.Name))],
            },
            new() { Name = "built", Member = "yearBuilt", Label = "Year of the building", Help = "empty when nobody knows", Type = "number" },
            new() { Name = "lead", Member = "leadTest", Label = "Test for lead", Text = "notTested", Choices = [("notTested", "not tested"), ("negative", "no lead found"), ("positive", "lead found")] },
            new() { Name = "asbestos", Member = "asbestosTest", Label = "Test for asbestos behind and under the tub", Text = "notTested", Choices = [("notTested", "not tested"), ("negative", "none found"), ("positive", "found")] },
        ];
        Defects =
        [
            ("chip", [Small("chip-diameter", "diameter", "Chip, across"), Small("chip-depth", "depth", "Chip, depth")]),
            ("rustSpot", [Small("rust-diameter", "diameter", "Rust spot, across")]),
            ("wornPatch", [Small("worn-length", "length", "Worn patch, length"), Small("worn-width", "width", "Worn patch, width"), Small("worn-depth", "depth", "Worn patch, depth")]),
            ("siliconeResidue", [Small("silicone-joint", "joint", "Old silicone or caulk, length of joint", Measure.Distance)]),
            ("perforation", [Small("hole-diameter", "diameter", "Hole right through, across")]),
        ];
        Room = [Amount("room-length", "length", "Room, length", "", Measure.Distance, 2.6), Amount("room-width", "width", "Room, width", "", Measure.Distance, 2.1), Amount("room-height", "height", "Room, height", "", Measure.Distance, 2.5)];
        Air = [Amount("air", "dryBulb", "Air temperature", "near the tub", Measure.Temperature, 295.15), Amount("humidity", "relativeHumidity", "Relative humidity", "near the tub", Measure.Percent, 0.48)];
        Surface = [Amount("surface", "surface", "Surface temperature", "where the tub is coldest", Measure.Temperature, 293.15)];
        Options = [.. OurShop.Shop.Prices.Options.Select(option => new Field { Name = option.Code, Member = "code", Label = option.Description, Type = "checkbox" })];
    }

    public DisplayUnits Units { get; }

    public IReadOnlyList<Field> Job { get; }

    public IReadOnlyList<Field> Tape { get; }

    public IReadOnlyList<Field> Survey { get; }

    public IReadOnlyList<(string Kind, Field[] Fields)> Defects { get; }

    public IReadOnlyList<Field> Room { get; }

    public IReadOnlyList<Field> Air { get; }

    public IReadOnlyList<Field> Surface { get; }

    public IReadOnlyList<Field> Options { get; }

    /// <summary>Faults that belong to no line of the form.</summary>
    public List<string> Others { get; } = [];

    public IEnumerable<Field> All => [.. Job, .. Tape, .. Survey, .. Defects.SelectMany(defect => defect.Fields), .. Room, .. Air, .. Surface, .. Options];

    public bool IsWrong => Others.Count > 0 || All.Any(entry => entry.Error is not null);

    /// <summary>Takes over what was sent.</summary>
    public void Fill(IFormCollection sent)
    {
        foreach (Field field in All)
        {
            field.Text = sent[field.Name].ToString().Trim();
        }
    }

    /// <summary>The request that the form stands for.</summary>
    public JsonObject ToAsk()
    {
        JsonArray defects = [];
        foreach ((string kind, Field[] fields) in Defects.Where(defect => defect.Fields.Any(field => field.Text.Length > 0)))
        {
            defects.Add(Object(fields, "$.fixtures[0].survey.defects[" + defects.Count.ToString(CultureInfo.InvariantCulture) + "]", ("kind", kind)));
        }

        JsonObject ask = Object(Job, "$");
        if (ask["start"] is JsonNode start)
        {
            ask["start"] = start.GetValue<string>() + (OurShop.Clock < TimeSpan.Zero ? "-" : "+") + OurShop.Clock.ToString("hh\\:mm", CultureInfo.InvariantCulture);
        }

        JsonObject climate = Object(Surface, "$.premises.rooms[0].climate", ("kind", "held"));
        climate["air"] = Object(Air, "$.premises.rooms[0].climate.air");
        ask["premises"] = new JsonObject
        {
            ["id"] = "home",
            ["rooms"] = new JsonArray(new JsonObject { ["id"] = "bathroom", ["room"] = Object(Room, "$.premises.rooms[0].room"), ["climate"] = climate }),
        };
        ask["fixtures"] = new JsonArray(new JsonObject
        {
            ["id"] = "tub",
            ["name"] = "bathtub",
            ["room"] = "bathroom",
            ["fixture"] = Object(Tape, "$.fixtures[0].fixture", ("kind", "recessedBathtub")),
            ["survey"] = Object(Survey, "$.fixtures[0].survey", ("defects", defects)),
            ["options"] = new JsonArray([.. Options.Where(option => option.Text.Length > 0).Select(option => new JsonObject { ["code"] = option.Name })]),
        });
        return ask;
    }

    /// <summary>Puts each fault beside the line that it is about.</summary>
    public void Mark(IEnumerable<(string Path, string Sentence)> faults)
    {
        foreach ((string path, string sentence) in faults)
        {
            if (All.FirstOrDefault(field => path == field.Path || path.StartsWith(field.Path + ".", StringComparison.Ordinal)) is Field about)
            {
                about.Refuse(sentence);
            }
            else
            {
                Others.Add(sentence + " (" + path + ")");
            }
        }
    }

    private JsonObject Object(IEnumerable<Field> fields, string path, params (string Member, JsonNode Value)[] fixedMembers)
    {
        JsonObject owner = new(fixedMembers.Select(member => KeyValuePair.Create(member.Member, (JsonNode?)member.Value)));
        foreach (Field field in fields)
        {
            field.Put(owner, path, Units);
        }

        return owner;
    }

    private Field Tub(string member, string label, string help, double metres) => Amount(member, member, label, help, Measure.Length, metres);

    private static Field Small(string name, string member, string label, Measure? measure = null) =>
        new() { Name = name, Member = member, Label = label, Help = "empty when there is none", Measure = measure ?? Measure.Length };

    private Field Amount(string name, string member, string label, string help, Measure measure, double si) =>
        new() { Name = name, Member = member, Label = label, Help = help, Measure = measure, Text = measure.Shown(si, Units).ToString("G5", CultureInfo.InvariantCulture) };
}

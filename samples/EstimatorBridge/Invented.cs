using System;
using System.Globalization;
using System.IO;
using CsvHelper;

namespace Refinish.Samples.EstimatorBridge;

/// <summary>
/// A takeoff of any length, invented from a fixed seed: mostly sound rows, some fixtures that nobody should refinish, some rows that are
/// wrong.
/// </summary>
internal static class Invented
{
    private static readonly (string Kind, string Material, int Length, int Width, int Depth)[] Fixtures =
    [
        ("tub", "EnamelledCastIron", 1524, 762, 340), ("tub", "EnamelledSteel", 1600, 720, 360), ("tub", "Acrylic", 1700, 750, 400),
        ("tile", "CeramicTile", 1524, 762, 1500), ("counter", "Laminate", 1800, 560, 40), ("pan", "Gelcoat", 900, 900, 80),
    ];

    private static readonly string[] Conditions = ["", "", "", "chip", "chip*2", "worn", "silicone", "chip silicone"];

    public static void Write(TextWriter output, int rows)
    {
#pragma warning disable CA5394 // Not for secrets, and the same numbers in every run.
        Random random = new(20270301);
        using CsvWriter csv = new(output, CultureInfo.InvariantCulture, leaveOpen: true);
        foreach (string column in TakeoffRow.Columns)
        {
            csv.WriteField(column);
        }

        csv.NextRecord();
        for (int i = 0; i < rows; i++)
        {
            (string kind, string material, int length, int width, int depth) = Fixtures[random.Next(Fixtures.Length)];
            int fate = random.Next(200);
            csv.WriteField("room " + (1 + (i / 3)).ToString(CultureInfo.InvariantCulture));
            csv.WriteField(kind);
            csv.WriteField(fate == 0 ? "bidet" : kind);
            csv.WriteField(random.Next(10) == 0 ? 2 : 1);
            csv.WriteField("mm");
            csv.WriteField(fate == 1 ? "about five feet" : (length + random.Next(-40, 40)).ToString(CultureInfo.InvariantCulture));
            csv.WriteField(width + random.Next(-20, 20));
            csv.WriteField(fate == 2 ? 17000 : depth + random.Next(-20, 20));
            csv.WriteField(material);
            csv.WriteField(1950 + random.Next(70));
            csv.WriteField(fate is 3 or 4 ? "soft-floor" : kind == "tile" && random.Next(3) == 0 ? "grout*2"
                : Conditions[random.Next(Conditions.Length)]);
            csv.WriteField(kind == "tub" && random.Next(4) == 0 ? "X-SLIP X-DRAIN" : string.Empty);
            csv.NextRecord();
        }
#pragma warning restore CA5394
    }
}

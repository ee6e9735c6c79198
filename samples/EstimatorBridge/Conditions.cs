using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Samples.EstimatorBridge;

/// <summary>
/// What a contractor writes about a fixture, as the defect that the library knows, in a size that is invented: "chip" or "chip*3".
/// </summary>
internal static class Conditions
{
    private static readonly Dictionary<string, Defect> Words = new(StringComparer.Ordinal)
    {
        ["chip"] = new Chip(Length.FromMillimeters(18), Length.FromMillimeters(1.5)),
        ["worn"] = new WornPatch(Length.FromMillimeters(150), Length.FromMillimeters(100), Length.FromMillimeters(0.4)),
        ["rust"] = new RustSpot(Length.FromMillimeters(20)),
        ["silicone"] = new SiliconeResidue(Length.FromMeters(3)),
        ["grout"] = new GroutFailure(Length.FromMeters(1)),
        ["burn"] = new Burn(Length.FromMillimeters(15)),
        ["crazed"] = new Crazing(Ratio.FromPercent(10)),
        ["loose-tile"] = new LooseTiles(1),
        ["soft-floor"] = new FlexingFloor(Length.FromMillimeters(4)),
        ["hole"] = new Perforation(Length.FromMillimeters(8)),
    };

    public static IEnumerable<Defect> Of(string word)
    {
        string[] parts = word.Split('*');
        int times = 1;
        return Words.TryGetValue(parts[0], out Defect? defect)
            && (parts.Length == 1 || (parts.Length == 2 && int.TryParse(parts[1], CultureInfo.InvariantCulture, out times)
                && times is >= 1 and <= 100))
            ? Enumerable.Repeat(defect, times)
            : throw new RowException("condition",
                "'" + word + "' is none of " + string.Join(", ", Words.Keys) + ", with or without a number as in chip*3");
    }
}

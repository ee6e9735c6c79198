using UnitsNet;

namespace Refinish.Pictures.Drafting;

/// <summary>Words that several fixtures share.</summary>
internal static class Words
{
    public const string FloorIsSharp = "The floor is measured to the sharp line, as if there were no cove.";

    public const string FromTheWall = "Lengths and depths are from the bare wall, the strip below the upstand included.";

    public const string PlacesAreUsual = "Where drain, overflow, holes and cut-outs lie is not measured; they are drawn where they usually are. All lengths are level or upright.";

    public static string Length(string words, Length length, DisplayUnits units) => words + " " + Measure.Length.Format(length.Meters, units, 4);
}

using System;
using Refinish.Films;

namespace Refinish.Pictures.Drawing;

/// <summary>
/// The colours of a film map. Within the limits eight steps from light to dark blue-green, so that lightness alone tells them apart;
/// below the minimum and above the wet limit two colours of other hue, which the drawing also hatches. Chosen to hold with red-green
/// blindness.
/// </summary>
internal static class FilmMapScale
{
    /// <summary>Steps between the minimum and the wet limit.</summary>
    public const int Steps = 8;

    /// <summary>Nothing landed.</summary>
    public const int Bare = 0;

    /// <summary>Less than half of the minimum.</summary>
    public const int Thin = 1;

    /// <summary>Half of the minimum, but not the whole.</summary>
    public const int Under = 2;

    /// <summary>The first step within the limits.</summary>
    public const int First = 3;

    /// <summary>Above the wet limit.</summary>
    public const int Over = First + Steps;

    public const int Count = Over + 1;

    private static readonly int[] Light = [0xD8D3CC, 0xC2410C, 0xF59E4B, 0xCDE7DD, 0xB0D9CF, 0x92CAC3, 0x74B9B7, 0x57A5A9, 0x3E8F99, 0x2A7787, 0x0F4B60, 0x5B2A86];
    private static readonly int[] Dark = [0x4A4742, 0xC2410C, 0xF59E4B, 0xCDE7DD, 0xB0D9CF, 0x92CAC3, 0x74B9B7, 0x57A5A9, 0x3E8F99, 0x2A7787, 0x0F4B60, 0xA06CD5];

    public static int Step(double film, SprayFilmLimits limits)
    {
        if (film <= 0)
        {
            return Bare;
        }

        if (film < limits.Minimum.Meters)
        {
            return film < limits.Minimum.Meters / 2 ? Thin : Under;
        }

        return film > limits.WetLimit.Meters
            ? Over
            : First + Math.Min(Steps - 1, (int)((film - limits.Minimum.Meters) / (limits.WetLimit.Meters - limits.Minimum.Meters) * Steps));
    }

    /// <summary>Red, green and blue in one number.</summary>
    public static int Colour(int step, bool dark) => dark ? Dark[step] : Light[step];
}

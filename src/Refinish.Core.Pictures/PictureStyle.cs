using System;
using System.Globalization;

namespace Refinish.Pictures;

/// <summary>How a picture is drawn: how wide, in which units, on which paper. It never changes what is shown.</summary>
/// <remarks>The height follows from what there is to show, so that nothing is cut off or crowded.</remarks>
/// <example><code>
/// PictureStyle phone = new() { Width = 360, Units = DisplayUnits.UsCustomary, Theme = PictureTheme.Dark };
/// </code></example>
public sealed record PictureStyle
{
    /// <summary>
    /// Width in CSS pixels, 320 to 1600; 720 unless given. Text keeps its size, so a narrow screen wants a narrow picture rather than a
    /// wide one scaled down.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int Width
    {
        get;
        init => field = value is >= 320 and <= 1600
            ? value
            : throw new ArgumentOutOfRangeException(
                nameof(Width),
                value,
                string.Format(CultureInfo.InvariantCulture, "Width is {0} px; allowed: at least 320 and at most 1600.", value));
    } = 720;

    /// <summary>The reader's units; metric unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public DisplayUnits Units
    {
        get;
        init => field = value is DisplayUnits.Si or DisplayUnits.UsCustomary
            ? value
            : throw new ArgumentOutOfRangeException(nameof(Units), value, "Units is not a named value of DisplayUnits.");
    }

    /// <summary>The paper; what the reader's system asks unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public PictureTheme Theme
    {
        get;
        init => field = value is PictureTheme.Follow or PictureTheme.Light or PictureTheme.Dark
            ? value
            : throw new ArgumentOutOfRangeException(nameof(Theme), value, "Theme is not a named value of PictureTheme.");
    }

    /// <summary>The style in one line.</summary>
    /// <returns>Text such as <c>720 px, Si, Follow</c>.</returns>
    public override string ToString() => string.Format(CultureInfo.InvariantCulture, "{0} px, {1:G}, {2:G}", Width, Units, Theme);
}

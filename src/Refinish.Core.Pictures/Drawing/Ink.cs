using System;
using System.Collections.Generic;
using OxyPlot;

namespace Refinish.Pictures.Drawing;

/// <summary>
/// The few colours there are, each with its shade on light and on dark paper. Hues are those of M. Okabe and K. Ito, "Color Universal
/// Design: how to make figures and presentations that are friendly to colorblind people" (2002, revised 2008); on each paper the ones
/// that keep 3 : 1 against it (WCAG 2.1, success criterion 1.4.11). Tints are 22 % of a hue on the light paper and 28 % on the dark
/// one; papers and greys are our own.
/// </summary>
internal static class Ink
{
    public static readonly OxyColor Paper = OxyColor.Parse("#FCFBF8");

    /// <summary>Text and outlines.</summary>
    public static readonly OxyColor Line = OxyColor.Parse("#1B2126");

    /// <summary>Text of the second rank, axes, dimension lines.</summary>
    public static readonly OxyColor Note = OxyColor.Parse("#4E565D");

    /// <summary>Grid lines, which only guide the eye: every value is also written.</summary>
    public static readonly OxyColor Faint = OxyColor.Parse("#D9DCDD");

    /// <summary>Inside of a fixture.</summary>
    public static readonly OxyColor Body = OxyColor.Parse("#E8ECED");

    /// <summary>Hours in which nobody is on site.</summary>
    public static readonly OxyColor Shade = OxyColor.Parse("#F4F3F0");

    public static readonly OxyColor Blue = OxyColor.Parse("#0072B2");

    public static readonly OxyColor BlueTint = OxyColor.Parse("#C5DDE9");

    public static readonly OxyColor Vermillion = OxyColor.Parse("#D55E00");

    public static readonly OxyColor VermillionTint = OxyColor.Parse("#F3D8C1");

    public static readonly OxyColor Green = OxyColor.Parse("#009E73");

    public static readonly OxyColor GreenTint = OxyColor.Parse("#C5E7DB");

    private static readonly OxyColor[] Light =
    [
        Paper, Line, Note, Faint, Body, Shade, Blue, BlueTint, Vermillion, VermillionTint, Green, GreenTint,
    ];

    private static readonly string[] Dark =
    [
        "#14181B", "#E8EAEB", "#B0B8BE", "#343B41", "#232A2F", "#1D2226", "#56B4E9", "#264455", "#E69F00", "#4F3E13", "#009E73", "#0E3E34",
    ];

    public static int Count => Light.Length;

    /// <summary>The number of a colour. A colour that is not one of ours has no dark shade and is refused.</summary>
    public static int Number(OxyColor colour)
    {
        int number = Array.IndexOf(Light, colour);
        return number >= 0 ? number : throw new InvalidOperationException("The colour " + colour.ToString() + " is not in the palette.");
    }

    public static string Shown(int number, bool dark) => dark ? Dark[number] : Light[number].ToByteString();

    private static string ToByteString(this OxyColor colour) =>
        "#" + colour.R.ToString("X2", System.Globalization.CultureInfo.InvariantCulture)
        + colour.G.ToString("X2", System.Globalization.CultureInfo.InvariantCulture)
        + colour.B.ToString("X2", System.Globalization.CultureInfo.InvariantCulture);
}

using System.Globalization;
using System.Linq;
using System.Xml.Linq;

namespace Refinish.Pictures.Tests;

/// <summary>One text of a picture with where it stands, read back from the file.</summary>
internal sealed record SvgText(string Words, double X, double Y, double Size, string Anchor, bool IsUpright, string Fill)
{
    /// <summary>The height at which the text is centred, or its place across when it stands upright.</summary>
    public double Middle => IsUpright ? X - (0.36 * Size) : Y - (0.36 * Size);

    /// <summary>A box that the text fills in a common face, by the advance widths of Helvetica (Adobe Font Metrics, core fonts), letters of about one width taken together.</summary>
    public (double Left, double Top, double Right, double Bottom) Box
    {
        get
        {
            double width = Words.Sum(Advance) * Size / 1000;
            double start = Anchor == "middle" ? -width / 2 : Anchor == "end" ? -width : 0;
            return IsUpright
                ? (X - (0.72 * Size), Y - start - width, X + (0.2 * Size), Y - start)
                : (X + start, Y - (0.72 * Size), X + start + width, Y + (0.2 * Size));
        }
    }

    public static SvgText Of(XElement element) => new(
        element.Value.Replace('\u00A0', ' '),
        Number(element, "x"),
        Number(element, "y"),
        Number(element, "font-size"),
        (string?)element.Attribute("text-anchor") ?? "start",
        ((string?)element.Attribute("transform"))?.StartsWith("rotate(-90", System.StringComparison.Ordinal) == true,
        (string)element.Attribute("fill")!);

    private static int Advance(char c) => c switch
    {
        ' ' or 'i' or 'j' or 'l' or 't' or 'f' or '.' or ',' or ':' or ';' or '!' or '|' or '(' or ')' or '/' or '-' or '·' or '\'' or 'I' => 278,
        'r' => 333,
        'm' or 'M' => 833,
        'w' => 722,
        'W' => 944,
        '%' => 889,
        '²' or '³' or '°' => 350,
        >= 'A' and <= 'Z' => 690,
        >= 'a' and <= 'z' => 530,
        _ => 556,
    };

    internal static double Number(XElement element, string name) => double.Parse((string)element.Attribute(name)!, CultureInfo.InvariantCulture);
}

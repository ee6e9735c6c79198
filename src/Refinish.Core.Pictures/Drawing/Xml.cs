using System.Text;

namespace Refinish.Pictures.Drawing;

/// <summary>Text as XML 1.0 allows it.</summary>
internal static class Xml
{
    public static string Escaped(string text)
    {
        StringBuilder escaped = new(text.Length);
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            switch (c)
            {
                case '&':
                    escaped.Append("&amp;");
                    break;
                case '<':
                    escaped.Append("&lt;");
                    break;
                case '>':
                    escaped.Append("&gt;");
                    break;
                case '"':
                    escaped.Append("&quot;");
                    break;
                case '\t' or '\n' or '\r':
                    escaped.Append(' ');
                    break;
                default:
                    bool pair = char.IsHighSurrogate(c) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]);
                    if (pair)
                    {
                        escaped.Append(c).Append(text[++i]);
                    }
                    else
                    {
                        // What XML cannot hold is shown as missing rather than left out.
                        escaped.Append(c < ' ' || char.IsSurrogate(c) || c >= '\uFFFE' ? '\uFFFD' : c);
                    }

                    break;
            }
        }

        return escaped.ToString();
    }
}

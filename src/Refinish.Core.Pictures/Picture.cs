using System;
using System.IO;
using System.Text;
using Refinish.Pictures.Drawing;

namespace Refinish.Pictures;

/// <summary>A result of the library as an SVG picture with its title and what it shows in words.</summary>
/// <remarks>
/// One result and one style always give the same bytes, whatever the culture of the thread. The picture needs no script, no font file and
/// no other file;
/// text stays text. A reader who does not see it gets the same key numbers from its title and description.
/// Colours are those of Okabe and Ito; none stands alone, each has a label, a dash or a hatch beside it.
/// </remarks>
public abstract class Picture
{
    private readonly string heading;
    private readonly string? subject;

    private protected Picture(string title, string? subject = null)
    {
        heading = Given.Named(title, nameof(title));
        this.subject = subject;
        Title = subject is null ? heading : heading + ": " + subject;
    }

    /// <summary>What the picture is of.</summary>
    public string Title { get; }

    /// <summary>
    /// What the picture shows, in words, with the key numbers: the description that the SVG carries for readers who do not see it.
    /// </summary>
    /// <param name="units">The reader's units.</param>
    /// <returns>A few sentences.</returns>
    public abstract string Describe(DisplayUnits units);

    /// <summary>The picture in the default style as the text of an SVG file.</summary>
    /// <returns>An <c>svg</c> element that ends in a line feed.</returns>
    public string ToSvg() => ToSvg(new PictureStyle());

    /// <summary>The picture as the text of an SVG file.</summary>
    /// <param name="style">How it is drawn.</param>
    /// <returns>An <c>svg</c> element that ends in a line feed.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="style"/> is missing.</exception>
    public string ToSvg(PictureStyle style)
    {
        Page page = new(Given.NotNull(style, nameof(style)));
        page.Heading(heading, subject);
        Draw(page);
        return page.ToSvg(Title, Describe(page.Units));
    }

    /// <summary>Writes the picture.</summary>
    /// <param name="writer">Where to; it stays open.</param>
    /// <param name="style">How it is drawn.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public void WriteSvg(TextWriter writer, PictureStyle style) => Given.NotNull(writer, nameof(writer)).Write(ToSvg(style));

    /// <summary>Writes the picture in UTF-8 without a byte order mark.</summary>
    /// <param name="stream">Where to; it stays open.</param>
    /// <param name="style">How it is drawn.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public void WriteSvg(Stream stream, PictureStyle style)
    {
        byte[] bytes = new UTF8Encoding(false).GetBytes(ToSvg(style));
        Given.NotNull(stream, nameof(stream)).Write(bytes, 0, bytes.Length);
    }

    /// <summary>The title.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Title;

    private protected abstract void Draw(Page page);
}

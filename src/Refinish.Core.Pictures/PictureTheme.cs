namespace Refinish.Pictures;

/// <summary>On which paper a picture is drawn.</summary>
public enum PictureTheme
{
    /// <summary>Light or dark as the reader's system asks, by a style block; light where the viewer knows no styles.</summary>
    Follow,

    /// <summary>Light whatever the system asks, without a style block.</summary>
    Light,

    /// <summary>Dark whatever the system asks, without a style block.</summary>
    Dark,
}

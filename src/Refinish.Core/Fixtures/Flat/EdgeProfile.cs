namespace Refinish.Fixtures;

/// <summary>The profile of a counter's edge.</summary>
public enum EdgeProfile
{
    /// <summary>Square: an upright face.</summary>
    Square,

    /// <summary>An upright face whose upper edge is rounded by a quarter circle.</summary>
    Eased,

    /// <summary>A half circle over the whole thickness.</summary>
    Bullnose,

    /// <summary>Two quarter circles, hollow above and round below, each as high as half the thickness.</summary>
    Ogee,
}

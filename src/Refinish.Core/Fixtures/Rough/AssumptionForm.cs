namespace Refinish.Fixtures;

/// <summary>How the three points of an assumed reading are meant.</summary>
public enum AssumptionForm
{
    /// <summary>The points are the reading itself, such as a depth of 280, 340 or 460 mm.</summary>
    Usual,

    /// <summary>The points are shares of another reading, or of what another reading leaves of it.</summary>
    Share,

    /// <summary>The points are added to another reading.</summary>
    Beyond,
}

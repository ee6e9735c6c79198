namespace Refinish.Inspection;

/// <summary>Which way a tolerance interval is closed.</summary>
public enum ToleranceSide
{
    /// <summary>Between two limits.</summary>
    Both,

    /// <summary>Above a lower limit.</summary>
    Lower,

    /// <summary>Below an upper limit.</summary>
    Upper,
}

namespace Refinish.Inspection;

/// <summary>What a rule of acceptance counts.</summary>
public enum FilmSample
{
    /// <summary>Single gauge readings.</summary>
    Reading,

    /// <summary>Spots: means of at least three readings within a circle of 4 cm.</summary>
    Spot,
}

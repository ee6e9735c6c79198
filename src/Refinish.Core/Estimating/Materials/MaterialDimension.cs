namespace Refinish.Estimating;

/// <summary>How an amount of material is measured.</summary>
public enum MaterialDimension
{
    /// <summary>By volume, as coatings and solvents are.</summary>
    Volume,

    /// <summary>By mass, as grout and grains are.</summary>
    Mass,

    /// <summary>By area, as masking film is.</summary>
    Area,

    /// <summary>By length, as tape is.</summary>
    Length,

    /// <summary>By the piece, as sanding discs are.</summary>
    Pieces,
}

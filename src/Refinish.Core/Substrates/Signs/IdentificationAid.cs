namespace Refinish.Substrates;

/// <summary>What one can do on site to tell what a fixture is made of.</summary>
public enum IdentificationAid
{
    /// <summary>Hold a magnet to it.</summary>
    Magnet,

    /// <summary>Knock on it and listen.</summary>
    Tap,

    /// <summary>Feel how cold it is, and its surface.</summary>
    Touch,

    /// <summary>Press the floor or an edge and see whether it gives.</summary>
    Flex,

    /// <summary>Look at a chip, a hole or a cut edge, or scrape one where it does not show.</summary>
    Edge,

    /// <summary>Rub a place that does not show with a drop of solvent on a cloth.</summary>
    SolventRub,

    /// <summary>Look at the whole.</summary>
    Look,
}

using Refinish.Coatings;

namespace Refinish.Air;

/// <summary>What one substance comes to beside the source and in the rest of the room.</summary>
public sealed record ZoneAir
{
    internal ZoneAir(SubstanceAir near, SubstanceAir far)
    {
        Near = near;
        Far = far;
    }

    /// <summary>The substance.</summary>
    public Solvent Solvent => Near.Solvent;

    /// <summary>Its peak and averages in the near field.</summary>
    public SubstanceAir Near { get; }

    /// <summary>Its peak and averages in the rest of the room.</summary>
    public SubstanceAir Far { get; }

    /// <summary>Both zones.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => "near field: " + Near + "; rest of the room: " + Far;
}

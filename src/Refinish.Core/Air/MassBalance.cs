using UnitsNet;

namespace Refinish.Air;

/// <summary>Where a substance is at one moment: what has been sprayed is in the film, in the air or gone through the exhaust.</summary>
public sealed record MassBalance
{
    private readonly double sprayed;
    private readonly double inFilm;
    private readonly double inAir;
    private readonly double removed;

    internal MassBalance(double sprayed, double inFilm, double inAir, double removed)
    {
        this.sprayed = sprayed;
        this.inFilm = inFilm;
        this.inAir = inAir;
        this.removed = removed;
    }

    /// <summary>Sprayed so far.</summary>
    public Mass Sprayed => Mass.FromKilograms(sprayed);

    /// <summary>Still in the wet and drying films.</summary>
    public Mass InFilm => Mass.FromKilograms(inFilm);

    /// <summary>In the air of the room.</summary>
    public Mass InAir => Mass.FromKilograms(inAir);

    /// <summary>Carried out by the exhaust: fresh-air flow × time integral of the concentration.</summary>
    public Mass Removed => Mass.FromKilograms(removed);

    /// <summary>The four masses.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() =>
        Measure.Mass.Format(sprayed) + " sprayed: " + Measure.Mass.Format(inFilm) + " in the film, "
        + Measure.Mass.Format(inAir) + " in the air, " + Measure.Mass.Format(removed) + " removed";
}

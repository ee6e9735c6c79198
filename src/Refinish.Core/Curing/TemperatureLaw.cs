namespace Refinish.Curing;

/// <summary>Which law is laid through times at several temperatures.</summary>
public enum TemperatureLaw
{
    /// <summary>Arrhenius: ln t is straight against 1/T.</summary>
    Arrhenius,

    /// <summary>A fixed factor for ten kelvins: ln t is straight against T.</summary>
    FixedFactor,
}

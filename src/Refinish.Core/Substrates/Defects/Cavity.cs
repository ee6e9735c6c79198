namespace Refinish.Substrates;

/// <summary>A hollow: its volume and depth in SI, and the formula behind the volume.</summary>
internal readonly struct Cavity(double volume, double depth, Expression formula, Source source)
{
    public double Volume { get; } = volume;

    public double Depth { get; } = depth;

    public Expression Formula { get; } = formula;

    public Source Source { get; } = source;
}

namespace Refinish.Jobs;

/// <summary>Temperatures within which a product gives times, in kelvins.</summary>
internal readonly struct CureRange(double least, double most)
{
    public double Least { get; } = least;

    public double Most { get; } = most;
}

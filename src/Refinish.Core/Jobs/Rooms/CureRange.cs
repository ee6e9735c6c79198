namespace Refinish.Jobs;

/// <summary>Temperatures within which a product gives times, in kelvins.</summary>
internal readonly record struct CureRange(double Least, double Most);

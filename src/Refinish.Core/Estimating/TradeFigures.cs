namespace Refinish.Estimating;

/// <summary>Figures that the trade commonly states and for which no document was found. They are starting points for a talk, never for a reserve: that needs records of one's own.</summary>
/// <example><code>
/// WeibullLife first = WeibullLife.FromMeanAndSpread(TradeFigures.LifeWithCareYears, 8);   // the spread of 8 years is invented
/// </code></example>
public static class TradeFigures
{
    /// <summary>Years that a refinished tub may serve when cared for: around twenty.</summary>
    public static double LifeWithCareYears { get; } = 20;

    /// <summary>Years of warranty that it commonly carries: about five.</summary>
    public static double UsualWarrantyYears { get; } = 5;

    /// <summary>What both rest on.</summary>
    public static Source Source { get; } = Source.CommonPractice("a refinished tub may serve around twenty years with care and commonly carries about five years' warranty");
}

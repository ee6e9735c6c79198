namespace Refinish.Estimating;

/// <summary>For whose eyes a line is meant.</summary>
public enum LineReader
{
    /// <summary>The shop and its books only: it tells costs.</summary>
    Shop,

    /// <summary>The customer too.</summary>
    Customer,
}

using System;

namespace Refinish.Samples.EstimatorBridge;

/// <summary>A row that cannot be used: which column, and what is wrong there.</summary>
internal sealed class RowException(string column, string message) : Exception(message)
{
    public string Column { get; } = column;
}

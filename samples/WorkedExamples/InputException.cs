using System;

namespace Refinish.Samples.WorkedExamples;

/// <summary>What the reader typed cannot be used; the message says why.</summary>
internal sealed class InputException : Exception
{
    public InputException()
    {
    }

    public InputException(string message)
        : base(message)
    {
    }

    public InputException(string message, Exception inner)
        : base(message, inner)
    {
    }
}

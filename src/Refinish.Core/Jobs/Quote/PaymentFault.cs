namespace Refinish.Jobs;

/// <summary>A stage of payment that does not fit the total or the currency.</summary>
public sealed record PaymentFault
{
    internal PaymentFault(string stage, string field, string sentence)
    {
        Stage = stage;
        Field = field;
        Sentence = sentence;
    }

    /// <summary>Identity of the stage.</summary>
    public string Stage { get; }

    /// <summary>The property that is wrong, such as <c>Amount</c>.</summary>
    public string Field { get; }

    /// <summary>What is wrong, with the numbers and what is allowed; it ends in a full stop.</summary>
    public string Sentence { get; }

    /// <summary>The sentence.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Sentence;
}

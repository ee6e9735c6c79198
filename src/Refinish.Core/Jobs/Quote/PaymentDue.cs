namespace Refinish.Jobs;

/// <summary>When a payment falls due, in the order in which a job goes.</summary>
public enum PaymentDue
{
    /// <summary>When the customer accepts the quote: a deposit.</summary>
    OnAcceptance,

    /// <summary>On the day on which the work starts.</summary>
    AtStart,

    /// <summary>When the work is handed over.</summary>
    OnCompletion,

    /// <summary>A number of days after the work is handed over.</summary>
    AfterCompletion,
}
